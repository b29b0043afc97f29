package org.shopclime.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.swing.Box;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Work;

/** The fields of a record, one under the other, made from what is said of its components. */
final class RecordEditor implements FieldEditor {

  /** Least width of the labels, so that fields of several parts stand in one line. */
  static final int LABELS = 150;

  /** What groups of fields are set in by, pixels at 100 %. */
  private static final int GROUP = 12;

  private static final String HELP = "span 2, growx, wmin 40";

  private static final String SCHEDULE_HELP =
      "\"always\", \"never\", \"work\", or such as \"Mon-Fri 8:00-12:00, 13:00-17:00 50 %\".";

  private final Bench bench;
  private final ShopPath path;
  private final Class<?> type;
  private final JPanel panel;
  private final List<Row> rows = new ArrayList<>();
  private final int labels;
  private boolean narrow;
  private final List<FieldEditor> fields = new ArrayList<>();
  private final List<JComponent> byHand = new ArrayList<>();
  private final List<Note> byHandNotes = new ArrayList<>();
  private final List<ShopPath> byHandPaths = new ArrayList<>();
  private final Map<ShopPath, Note> groupNotes = new LinkedHashMap<>();
  private final JCheckBox byHandBox = new JCheckBox("Set its figures by hand");

  /**
   * An editor.
   *
   * @param bench where proposals go
   * @param path place of the record
   * @param type its class
   * @param brief whether figures that are mostly left out hide behind a check box
   * @param labels least width of the labels, pixels at 100 %
   */
  RecordEditor(Bench bench, ShopPath path, Class<?> type, boolean brief, int labels) {
    this.bench = bench;
    this.labels = labels;
    this.path = path;
    this.type = type;
    panel =
        new JPanel(
            new MigLayout("insets 0, hidemode 3, wrap 2, fillx, gap 8 4", "[pref!]8[grow,fill]"));
    panel.setOpaque(false);
    List<ShopParts.Entry> later = new ArrayList<>();
    int index = 0;
    for (ShopParts.Entry entry : ShopParts.of(type)) {
      if (Outline.isPart(entry)) {
        continue;
      }
      if (brief && index >= 2 && entry.type() == Optional.class) {
        later.add(entry);
      } else {
        add(entry, false);
      }
      index++;
    }
    if (!later.isEmpty()) {
      byHandBox.setName(path + ".byHand");
      byHandBox.setOpaque(false);
      byHandBox.addActionListener(event -> showByHand());
      rows.add(new Row(byHandBox, "skip 1, growx 0", "span 2, growx 0"));
      later.forEach(entry -> add(entry, true));
      showByHand();
    }
    layOut();
  }

  /** Something in the panel and where it goes, with much and with little room. */
  private record Row(JComponent component, String wide, String narrow) {}

  private void layOut() {
    panel.removeAll();
    if (!narrow) {
      panel.add(Box.createHorizontalStrut(Look.scaled(labels)), "height 0!, wrap");
    }
    rows.forEach(row -> panel.add(row.component(), narrow ? row.narrow() : row.wide()));
    panel.revalidate();
  }

  @Override
  public void makeNarrow(boolean now) {
    fields.forEach(field -> field.makeNarrow(now));
    if (now != narrow) {
      narrow = now;
      layOut();
    }
  }

  Class<?> type() {
    return type;
  }

  private void showByHand() {
    byHand.forEach(component -> component.setVisible(byHandBox.isSelected()));
    byHandNotes.forEach(note -> note.setAside(!byHandBox.isSelected()));
    panel.revalidate();
  }

  private void add(ShopParts.Entry entry, boolean hidden) {
    ShopPath at = path.child(entry.name());
    FieldEditor editor = editor(entry, at);
    fields.add(editor);
    String words = entry.say().label();
    if (editor instanceof OptionalBox box) {
      box.check().setText(words);
      bench.mnemonics().give(box.check());
      rows.add(new Row(editor.component(), "span 2, growx", "span 2, growx"));
      return;
    }
    JLabel label = new JLabel(words);
    label.setName(at + ".label");
    label.setLabelFor(editor.focus());
    editor.focus().getAccessibleContext().setAccessibleName(words);
    if (editor instanceof ListBox || editor instanceof KindBox || editor instanceof RecordEditor) {
      Look.letters(label, 1.0, java.awt.Font.BOLD);
      String head = "span 2, split 2, gaptop 8";
      rows.add(new Row(label, head, head));
      rows.add(new Row(new JSeparator(), "growx, gaptop 8", "growx, gaptop 8"));
      // set in, so that what comes after is not taken for a part of it
      String group = "span 2, growx, gapbottom 8, gapleft " + GROUP;
      if (!(editor instanceof ListBox)) {
        Note note = new Note(entry.say().help(), at.toString());
        groupNotes.put(at, note);
        rows.add(new Row(note.component(), HELP + ", gapleft " + GROUP, HELP));
      }
      rows.add(new Row(editor.component(), group, group));
    } else if (isLong(entry)) {
      rows.add(new Row(label, "span 2", "span 2"));
      rows.add(new Row(editor.component(), "span 2, growx, wmin 60", "span 2, growx, wmin 60"));
    } else {
      rows.add(new Row(label, "aligny top, gaptop 4", "span 2"));
      String room = editor instanceof SpanBox ? "growx" : "growx, wmin 60";
      rows.add(new Row(editor.component(), room, "span 2, " + room));
    }
    bench.mnemonics().give(label);
    // as wide as label and field together: beside the field it would be a column of single words
    String below = HELP + ", gapbottom 4";
    editor.note().ifPresent(note -> rows.add(new Row(note.component(), below, below)));
    editor.note().ifPresent(note -> note.describe(editor.focus()));
    if (hidden) {
      editor.note().ifPresent(byHandNotes::add);
      byHandPaths.add(at);
      byHand.add(label);
      byHand.add(editor.component());
    }
  }

  /** Whether what is typed is a line of words that needs the whole width. */
  private boolean isLong(ShopParts.Entry entry) {
    return entry.type() == Schedule.class || isStation(entry) || entry.name().equals("note");
  }

  private boolean isStation(ShopParts.Entry entry) {
    return type == Place.class && entry.name().equals("station");
  }

  private FieldEditor editor(ShopParts.Entry entry, ShopPath at) {
    Class<?> kind = entry.type();
    if (kind == Span.class) {
      return new SpanBox(bench, at, entry.say());
    }
    if (kind.isEnum()) {
      return new ChoiceBox(bench, at, entry);
    }
    if (kind == List.class) {
      return new ListBox(bench, at, entry.held(), entry.say().help());
    }
    if (kind.isSealed()) {
      return new KindBox(bench, at, kind);
    }
    if (kind == Optional.class && entry.held().isRecord()) {
      return new OptionalBox(bench, at, entry.held(), entry.say().help());
    }
    if (kind.isRecord() && kind != Schedule.class) {
      return new RecordEditor(bench, at, kind, false, LABELS);
    }
    String help = entry.say().help();
    if (kind == Schedule.class && type != Work.class) { // "work" does not explain working hours
      help = help.isEmpty() ? SCHEDULE_HELP : help + " " + SCHEDULE_HELP;
    }
    Optional<BiFunction<Shop, ShopPath, List<String>>> offers =
        KnownNames.areOffered(type, entry.name())
            ? Optional.of((shop, place) -> bench.names().get().of(type, shop, place))
            : Optional.empty();
    Wording wording = Wording.of(entry);
    if (isStation(entry)) {
      wording = wording.shown(text -> bench.names().get().spelled(text));
    }
    TextBox box = new TextBox(bench, at, wording, help, offers, refusal(entry, at));
    return isStation(entry) ? new StationBox(bench, at, box) : box;
  }

  /** A room may not be given the name of another, since walls refer to rooms by name. */
  private BiFunction<Shop, String, Optional<String>> refusal(ShopParts.Entry entry, ShopPath at) {
    return type == Room.class && entry.name().equals("name")
        ? (shop, name) ->
            Outline.taken(shop, at.parent().list()).contains(name)
                ? Optional.of("found \"" + name + "\", which is taken; takes a name of its own")
                : Optional.empty()
        : (shop, name) -> Optional.empty();
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return fields.isEmpty() ? panel : fields.get(0).focus();
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    fields.forEach(field -> field.show(shop, units));
    groupNotes.values().forEach(note -> note.use(units));
    boolean any =
        byHandPaths.stream()
            .anyMatch(at -> at.value(shop).orElse(null) instanceof Optional<?> o && o.isPresent());
    if (any && !byHandBox.isSelected()) {
      byHandBox.setSelected(true);
      showByHand();
    }
  }

  @Override
  public void complain(Map<String, String> problems) {
    fields.forEach(field -> field.complain(problems));
    groupNotes.forEach((at, note) -> note.tell(Optional.ofNullable(problems.get(at.toString()))));
  }

  @Override
  public boolean isReadable() {
    return fields.stream().allMatch(FieldEditor::isReadable);
  }
}
