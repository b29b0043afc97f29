package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.shopclime.plan.DampAnswer;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitSight;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AnswerText;
import org.shopclime.report.CaseChart;
import org.shopclime.report.ScenarioChart;
import org.shopclime.report.UnitChart;
import org.shopclime.report.UnitLimits;
import org.shopclime.report.WallChart;
import org.shopclime.report.WallPicture;

/**
 * The page on the cooling unit: the verdict, the unit against outdoor temperature with what that
 * covers, the day of one case or of two, which size holds when, and the wall most at risk. A
 * section is a title and what stands below it; more are added the same way.
 */
final class UnitView {

  private static final int CURVE = 380;
  private static final int DAY = 440;
  private static final int ROW = 34;
  private static final int ROWS_REST = 110;
  private static final int WALL = 360;
  private static final String WIDE = "growx, wmin 60";
  private static final String NOTHING = "nothing";

  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 1, fillx, hidemode 3", "[grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private final List<JTextArea> texts = new ArrayList<>();
  private final JTextArea sentence = text("unit.sentence");
  private final ChartPanel curve =
      PicturesView.chart("chart.unit", "The unit against outdoor temperature");
  private final JTextArea caption = text("unit.caption");
  private final JTextArea limits = text("unit.limits");
  private final JComboBox<String> first = box("unit.case", "Case that is shown");
  private final JComboBox<String> second = box("unit.over", "Case that is laid over it");
  private final ChartPanel day =
      PicturesView.chart("chart.cases", "The day of the cases chosen, hour by hour");
  private final JTextArea dayCaption = text("unit.day");
  private final ChartPanel sizes =
      PicturesView.chart("chart.sizes", "Which size holds at which work and on which day");
  private final ChartPanel wall =
      PicturesView.chart("chart.risk", "Temperature and dew point through the wall most at risk");
  private final JTextArea wallCaption = text("unit.wall");
  private List<Scenario> cases = List.of();
  private Optional<SizeAnswer> shown = Optional.empty();
  private Optional<UnitSight> sight = Optional.empty();
  private UnitSystem units = UnitSystem.INCH_POUND;
  private boolean filling;

  UnitView() {
    panel.setName("unit.page");
    scroll.setName("unit.scroll");
    scroll.setBorder(BorderFactory.createEmptyBorder());
    section("Is it enough?");
    panel.add(sentence, WIDE);
    section("The unit in the heat");
    panel.add(curve, tall(CURVE));
    panel.add(caption, WIDE);
    panel.add(limits, WIDE + ", gaptop 6");
    section("The day, at other work and on other days");
    panel.add(choices(), "growx, wmin 0");
    panel.add(day, tall(DAY));
    panel.add(dayCaption, WIDE);
    section("Which size holds");
    panel.add(sizes, tall(ROWS_REST));
    section("The wall most at risk of damp");
    panel.add(wall, tall(WALL));
    panel.add(wallCaption, WIDE);
    sentence.setText("The answer is on its way.");
    // Wrapped text is as high as its last width made it.
    Look.onResized(panel, () -> panel.revalidate());
    first.addActionListener(event -> chosen());
    second.addActionListener(event -> chosen());
  }

  private static String tall(int height) {
    return "growx, wmin 0, h " + height + "!";
  }

  private void section(String title) {
    JLabel label = new JLabel(title);
    Look.letters(label, 1.15, java.awt.Font.BOLD);
    panel.add(label, panel.getComponentCount() == 0 ? "" : "gaptop 14");
  }

  private JTextArea text(String name) {
    JTextArea area = Look.wrapped("");
    area.setName(name);
    texts.add(area);
    return area;
  }

  private static JComboBox<String> box(String name, String meaning) {
    JComboBox<String> box = new JComboBox<>();
    box.setName(name);
    box.getAccessibleContext().setAccessibleName(meaning);
    return box;
  }

  private JComponent choices() {
    JPanel choices = new JPanel(new MigLayout("insets 0, fillx, wrap 2", "[][grow,fill]"));
    choices.add(label("Show", first));
    choices.add(first, "wmin 60");
    choices.add(label("and over it, dashed,", second));
    choices.add(second, "wmin 60");
    return choices;
  }

  private static JLabel label(String text, JComponent of) {
    JLabel label = new JLabel(text);
    label.setLabelFor(of);
    return label;
  }

  JComponent component() {
    return scroll;
  }

  /** Shows an answer; the cases stay chosen if they are still there. */
  void show(SizeAnswer answer, UnitSystem system) {
    boolean another = !shown.equals(Optional.of(answer));
    shown = Optional.of(answer);
    units = system;
    sentence.setText(AnswerText.sentence(answer, units));
    if (another) {
      sight = Optional.empty();
      // takes a tenth of a second, too long for the thread that also takes the keys
      Background.run(() -> UnitSight.of(answer), found -> saw(answer, found), caption::setText);
    }
    showCurve(answer);
    offer(CaseChart.cases(answer));
    sizes.setChart(ScenarioChart.of(answer, units, Look.charts()));
    ((MigLayout) panel.getLayout())
        .setComponentConstraints(sizes, tall(answer.scenarios().size() * ROW + ROWS_REST));
    showWall(answer);
    drawDay();
    panel.revalidate();
    panel.repaint();
  }

  private void saw(SizeAnswer answer, Optional<UnitSight> found) {
    if (shown.equals(Optional.of(answer))) {
      sight = found;
      showCurve(answer);
    }
  }

  private void showCurve(SizeAnswer answer) {
    boolean none = answer.unit().isEmpty();
    curve.setVisible(!none);
    limits.setVisible(!none);
    limits.setText(String.join(" ", UnitLimits.lines(answer, units)));
    if (none) {
      caption.setText(
          "No unit is described yet. Add one at \"Cooling unit\" to see what it gives in the heat;"
              + " the sizes that would hold stand below.");
    }
    // until it is found the last curve stays, so that nothing flickers while one types
    sight.ifPresent(
        each -> {
          curve.setChart(UnitChart.of(each, answer, units, Look.charts()));
          caption.setText(UnitChart.caption(each, answer, units));
        });
    panel.revalidate();
  }

  private void showWall(SizeAnswer answer) {
    Optional<WallPicture> worst = answer.damp().flatMap(UnitView::worst);
    wall.setChart(
        worst
            .map(each -> WallChart.of(each.path(), each.spell(), units, Look.charts()))
            .orElse(null));
    wall.setVisible(worst.isPresent());
    wallCaption.setText(
        worst
            .map(
                each ->
                    WallChart.caption(each.path(), each.spell(), units)
                        + " More walls and times: \"Damp\".")
            .orElse("No wall of a held room was looked at."));
  }

  private static Optional<WallPicture> worst(DampAnswer damp) {
    return WallPicture.of(damp).stream().findFirst();
  }

  private void offer(List<Scenario> now) {
    Optional<String> one = name(first.getSelectedIndex());
    Optional<String> other = name(second.getSelectedIndex() - 1);
    boolean fresh = cases.isEmpty();
    cases = now;
    List<String> names = now.stream().map(Scenario::name).toList();
    filling = true;
    first.removeAllItems();
    second.removeAllItems();
    second.addItem(NOTHING);
    for (String name : names) {
      first.addItem(FormText.capital(name));
      second.addItem(FormText.capital(name));
    }
    int usual = CaseChart.asItIs(now).map(Scenario::name).map(names::indexOf).orElse(-1);
    int hardest = CaseChart.warmest(now).map(Scenario::name).map(names::indexOf).orElse(-1);
    first.setSelectedIndex(one.map(names::indexOf).filter(at -> at >= 0).orElse(usual));
    second.setSelectedIndex(
        fresh
            ? hardest == usual ? 0 : hardest + 1
            : other.map(names::indexOf).filter(at -> at >= 0).map(at -> at + 1).orElse(0));
    filling = false;
  }

  /** Name of a case by its place in the list. */
  private Optional<String> name(int index) {
    return index >= 0 && index < cases.size()
        ? Optional.of(cases.get(index).name())
        : Optional.empty();
  }

  private void chosen() {
    if (!filling) {
      drawDay();
    }
  }

  private void drawDay() {
    int one = first.getSelectedIndex();
    int other = second.getSelectedIndex() - 1;
    if (shown.isEmpty() || one < 0) {
      day.setChart(null);
      dayCaption.setText("No case to show.");
      return;
    }
    SizeAnswer answer = shown.get();
    Optional<Scenario> over =
        other < 0 || other == one ? Optional.empty() : Optional.of(cases.get(other));
    day.setChart(CaseChart.of(answer, cases.get(one), over, units, Look.charts()));
    dayCaption.setText(
        CaseChart.sentence(answer, cases.get(one), units)
            + over.map(each -> "\nDashed: " + CaseChart.sentence(answer, each, units)).orElse(""));
    panel.revalidate();
    panel.repaint();
  }

  void makeStale(boolean stale) {
    texts.forEach(area -> area.setEnabled(!stale));
  }
}
