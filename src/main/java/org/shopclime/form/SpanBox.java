package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Say;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Words;

/** A figure its owner may know, not know, or know within a range. */
final class SpanBox implements FieldEditor {

  private static final List<String> ENDS = List.of("low", "likely", "high");

  private final Bench bench;
  private final ShopPath path;
  private final Wording wording;
  private final Optional<Span> unknownSpan;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 0, hidemode 3, gap 4 3", "[grow,fill]"));
  private final JPanel three =
      new JPanel(new MigLayout("insets 0, gap 6 1, fill", "[sg,grow,fill]"));
  private final JTextField one = new JTextField(11);
  private final List<JTextField> ends = new ArrayList<>();
  private final List<Typing> typings = new ArrayList<>();
  private final JCheckBox unknown = new JCheckBox(FormText.capital(Words.UNKNOWN));
  private final JCheckBox range = new JCheckBox("A range");
  private final Note note;

  private UnitSystem units;
  private Span shown;
  private final List<String> stood = new ArrayList<>(List.of("", "", "", ""));
  private Span stoodSpan;
  private boolean readable = true;
  private boolean wantsRange;

  SpanBox(Bench bench, ShopPath path, Say say) {
    this.bench = bench;
    this.path = path;
    this.wording = Wording.number(say);
    this.unknownSpan = ShopParts.unknown(say);
    this.note = new Note(say.help(), path.toString());
    panel.setOpaque(false);
    three.setOpaque(false);
    watch(one, path.toString());
    for (String end : ENDS) {
      JTextField field = new JTextField(5);
      ends.add(field);
      watch(field, path + "." + end);
      JLabel label = new JLabel(FormText.capital(end));
      Look.letters(label, 0.9, "Shopclime.quiet");
      label.setLabelFor(field);
      three.add(label, end.equals("high") ? "wrap" : "");
    }
    ends.forEach(field -> three.add(field, "wmin 48"));
    JPanel figures = new JPanel(new MigLayout("insets 0, hidemode 3, fillx", "[grow,fill]"));
    figures.setOpaque(false);
    figures.add(one, "growx, wmin 60, wrap");
    figures.add(three, "growx");
    panel.add(figures, "growx, wrap");
    unknown.setName(path + ".unknown");
    unknown.setToolTipText("Reckons with the whole range of what is usual.");
    range.setName(path + ".range");
    range.setToolTipText("Type a low, a likely and a high figure.");
    unknown.addActionListener(event -> unknownClicked());
    range.addActionListener(event -> rangeClicked());
    JPanel checks = new JPanel(new MigLayout("insets 0, hidemode 3, gap 10 0"));
    checks.setOpaque(false);
    unknown.setOpaque(false);
    range.setOpaque(false);
    if (unknownSpan.isPresent()) {
      checks.add(unknown);
    }
    checks.add(range);
    panel.add(checks);
  }

  private void watch(JTextField field, String name) {
    field.setName(name);
    typings.add(new Typing(field, this::commit, this::settle, this::write));
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return one;
  }

  @Override
  public Optional<Note> note() {
    return Optional.of(note);
  }

  @Override
  public void show(Shop shop, UnitSystem system) {
    note.use(system);
    Span value = (Span) path.value(shop).orElseThrow();
    if (system == units && value.equals(shown)) {
      return;
    }
    units = system;
    shown = value;
    wantsRange = !value.isKnown();
    write();
  }

  private boolean isUnknown() {
    return unknownSpan.isPresent() && unknownSpan.get().equals(shown);
  }

  private void write() {
    stoodSpan = shown;
    double[] figures = {shown.likely(), shown.low(), shown.likely(), shown.high()};
    for (int i = 0; i < figures.length; i++) {
      stood.set(i, wording.write(figures[i], units));
      typings.get(i).show(stood.get(i));
    }
    unknown.setSelected(isUnknown());
    range.setSelected(wantsRange && !isUnknown());
    range.setVisible(!isUnknown());
    one.setVisible(!wantsRange && !isUnknown());
    three.setVisible(wantsRange || isUnknown());
    ends.forEach(field -> field.setEnabled(!isUnknown()));
    makeReadable(true);
    note.calm();
  }

  private void commit() {
    if (isUnknown()) {
      return;
    }
    List<Double> figures = new ArrayList<>();
    double[] before = {stoodSpan.likely(), stoodSpan.low(), stoodSpan.likely(), stoodSpan.high()};
    for (int i = wantsRange ? 1 : 0; i < (wantsRange ? 4 : 1); i++) {
      String text = typings.get(i).text();
      if (text.equals(stood.get(i))) {
        figures.add(before[i]);
        continue;
      }
      if (i == 0 && unknownSpan.isPresent() && Words.isUnknown(text)) {
        propose(unknownSpan.get());
        return;
      }
      Wording.Read read = wording.read(text, stood.get(i), units);
      if (read.value().isEmpty()) {
        refuse(read.complaint());
        return;
      }
      figures.add((Double) read.value().get());
    }
    if (figures.size() == 3
        && !(figures.get(0) <= figures.get(1) && figures.get(1) <= figures.get(2))) {
      refuse("low, likely and high must rise");
      return;
    }
    if (!readable) {
      note.calm();
    }
    makeReadable(true);
    Span span =
        figures.size() == 1
            ? Span.known(figures.get(0))
            : new Span(figures.get(0), figures.get(1), figures.get(2));
    if (!span.equals(shown)) {
      shown = span;
      bench.proposals().propose(path, span);
    }
  }

  private void refuse(String complaint) {
    note.complain(complaint);
    makeReadable(false);
  }

  private void settle() {
    boolean moving = ends.stream().anyMatch(JTextField::isFocusOwner);
    if (readable && !moving) {
      write();
    }
  }

  private void unknownClicked() {
    propose(unknown.isSelected() ? unknownSpan.orElseThrow() : Span.known(shown.likely()));
  }

  private void rangeClicked() {
    if (range.isSelected()) {
      wantsRange = true;
      write();
      ends.get(0).requestFocusInWindow();
    } else {
      propose(Span.known(shown.likely()));
    }
  }

  private void propose(Span span) {
    shown = span;
    wantsRange = !span.isKnown();
    write();
    bench.proposals().propose(path, span);
  }

  private void makeReadable(boolean now) {
    one.putClientProperty("JComponent.outline", now ? null : "warning");
    if (now != readable) {
      readable = now;
      bench.proposals().readableChanged();
    }
  }

  @Override
  public void complain(Map<String, String> problems) {
    if (readable) {
      note.tell(Optional.ofNullable(problems.get(path.toString())));
    }
  }

  @Override
  public boolean isReadable() {
    return readable;
  }
}
