package org.shopclime.form;

import java.awt.event.HierarchyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirDayChart;
import org.shopclime.report.AirReasons;
import org.shopclime.report.AirTable;
import org.shopclime.report.AirlineWords;
import org.shopclime.report.LineWaterChart;
import org.shopclime.report.PlacesPicture;
import org.shopclime.report.VentChart;

/**
 * The page on compressed air: where the compressor stays cool and the line dry. Above, what goes
 * on; below, the answer, every place drawn, their figures, the hot day, grilles, water.
 */
final class CompressorView {

  private static final int DAY = 380;
  private static final int VENTS = 320;
  private static final int WATER = 400;
  private static final String WIDE = "growx, wmin 60";
  private static final String WAITS =
      "One moment: places for the compressor are compared once the answer above is there.";

  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 1, fillx, hidemode 3", "[grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private final JPanel doing =
      new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow,fill][][]"));
  private final JTextArea state = Look.wrapped(WAITS);
  private final JProgressBar bar = new JProgressBar(0, 100);
  private final JButton stop = new JButton("Stop");
  private final JButton again = new JButton("Compare now");
  private final List<JTextArea> texts = new ArrayList<>();
  private final List<JComponent> parts = new ArrayList<>();
  private final JTextArea sentence = text("air.sentence");
  private final AirPictureBox picture = new AirPictureBox();
  private final TableView places =
      new TableView("table.air", "The places in figures, the best first.").whole();
  private final JTextArea note = text("air.note");
  private final JTextArea why = text("air.why");
  private final ChartPanel day =
      PicturesView.chart("chart.air", "Places for the compressor through the hot day");
  private final ChartPanel vents =
      PicturesView.chart("chart.vents", "Temperature of a closet against the area of its grilles");
  private final JTextArea ventsCaption = text("air.vents");
  private final TableView closets =
      new TableView("table.closets", "Corner bare, corner with R-13, under a stair.").whole();
  private final JTextArea closetsCaption = text("air.closets");
  private final ChartPanel water =
      PicturesView.chart("chart.water", "Water of a blasting day and where it drops out");
  private final TableView line =
      new TableView("table.line", "The same in figures, for the wettest hour.").whole();
  private final JTextArea care = text("air.care");
  private final JTextArea limits = text("air.limits");
  private UnitSystem units = UnitSystem.INCH_POUND;
  private Optional<AirlineAnswer> shown = Optional.empty();

  CompressorView() {
    panel.setName("air.page");
    scroll.setName("air.scroll");
    scroll.setBorder(BorderFactory.createEmptyBorder());
    state.setName("air.state");
    bar.setName("air.progress");
    bar.getAccessibleContext().setAccessibleName("How far the comparison is");
    stop.setName("air.stop");
    stop.setToolTipText("Stops comparing the places.");
    again.setName("air.again");
    again.setToolTipText("Compares the places of the shop as it stands.");
    doing.add(state, "wmin 60");
    doing.add(bar, "width 60:110:160");
    doing.add(stop);
    doing.add(again);
    panel.add(doing, "growx, wmin 0");
    sentence.setFocusable(true);
    sentence.getAccessibleContext().setAccessibleName("Where the compressor goes");
    Look.letters(sentence, 1.15, "TextArea.foreground");
    section("Where the compressor stays cool and the air line dry");
    part(sentence, WIDE);
    part(picture, "growx, wmin 0");
    part(places.component(), "growx, wmin 0");
    part(note, WIDE);
    section("Why they stand so");
    part(why, WIDE);
    section("Through the hot day");
    part(day, tall(DAY));
    section("How large the grilles of a closet must be");
    part(vents, tall(VENTS));
    part(ventsCaption, WIDE);
    section("The same vents in other walls");
    part(closets.component(), "growx, wmin 0");
    part(closetsCaption, WIDE);
    section("Water on a day of nothing but blasting, at the best place");
    part(water, tall(WATER));
    part(line.component(), "growx, wmin 0");
    section("Take care");
    part(care, WIDE);
    section("What it cannot tell");
    part(limits, WIDE);
    // Text and picture are as high as their last width made them.
    Look.onResized(panel, () -> panel.revalidate());
    parts.forEach(each -> each.setVisible(false));
    tell(WAITS);
  }

  private static String tall(int height) {
    return "growx, wmin 0, h " + Look.scaled(height) + "!";
  }

  private void section(String title) {
    JTextArea heading = Look.wrapped(title);
    Look.letters(heading, 1.15, java.awt.Font.BOLD);
    part(heading, WIDE + ", gaptop 14");
  }

  private void part(JComponent component, String where) {
    parts.add(component);
    panel.add(component, where);
  }

  private JTextArea text(String name) {
    JTextArea area = Look.wrapped("");
    area.setName(name);
    texts.add(area);
    return area;
  }

  JComponent component() {
    return scroll;
  }

  /** Whether the page is on the screen. */
  boolean isSeen() {
    return scroll.isShowing();
  }

  void onSeen(Runnable deed) {
    scroll.addHierarchyListener(
        event -> {
          if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isSeen()) {
            deed.run();
          }
        });
  }

  void onStop(Runnable deed) {
    stop.addActionListener(event -> deed.run());
  }

  void onAgain(Runnable deed) {
    again.addActionListener(event -> deed.run());
  }

  void use(UnitSystem system) {
    units = system;
    shown.ifPresent(this::fill);
  }

  /** An answer; none where the shop has no compressor. */
  void show(Optional<AirlineAnswer> answer) {
    shown = answer.filter(found -> !found.places().isEmpty());
    parts.forEach(each -> each.setVisible(shown.isPresent()));
    shown.ifPresent(this::fill);
    tell(shown.isPresent() ? "" : AirlineWords.NO_COMPRESSOR);
    makeStale(false);
  }

  private void fill(AirlineAnswer answer) {
    AirlineWords words = new AirlineWords(answer, units);
    AirReasons reasons = new AirReasons(answer, units);
    sentence.setText(words.sentence());
    picture.show(new PlacesPicture(answer, units, Look.charts()));
    places.show(new TableText.Table(broken(AirTable.heads(units)), AirTable.rows(answer, units)));
    note.setText(AirTable.note(answer, units));
    why.setText(String.join("\n", reasons.lines()));
    day.setChart(AirDayChart.of(answer, units, Look.charts()));
    vents.setChart(VentChart.of(answer, units, Look.charts()));
    ventsCaption.setText(reasons.vents());
    closets.show(
        new TableText.Table(
            broken(AirTable.wallHeads(units)), AirTable.wallRows(answer.closets(), units)));
    closetsCaption.setText(AirTable.walls(answer.closets(), units));
    water.setChart(LineWaterChart.of(answer.blasting(), units, Look.charts()));
    line.show(
        new TableText.Table(
            broken(AirTable.lineHeads(units)), AirTable.lineRows(answer.blasting(), units)));
    List<String> cautions = new ArrayList<>(reasons.hazards());
    cautions.addAll(words.cautions());
    care.setText(String.join("\n", cautions));
    limits.setText(String.join("\n", words.limits()));
    panel.revalidate();
    panel.repaint();
  }

  private static List<String> broken(List<String> heads) {
    return heads.stream().map(head -> head.replaceFirst(", ", "\n")).toList();
  }

  /** The answer shown is that of the shop again. */
  void freshen() {
    tell(shown.isPresent() ? "" : AirlineWords.NO_COMPRESSOR);
    makeStale(false);
  }

  /** The answer shown is older than the shop. */
  void age(String why) {
    tell(shown.isPresent() && !why.isEmpty() ? why : WAITS);
    makeStale(true);
  }

  void busy(double done) {
    tell(
        shown.isPresent()
            ? "Comparing places. Until then this is the last answer."
            : "Comparing places for the compressor.");
    bar.setValue((int) Math.round(100 * done));
    bar.setVisible(true);
    stop.setVisible(true);
    makeStale(true);
  }

  void stopped(String text) {
    tell(text);
    again.setVisible(true);
  }

  /** There will be no answer. */
  void fail(String text) {
    tell(text);
    again.setVisible(true);
    makeStale(true);
  }

  private void tell(String text) {
    state.setText(text);
    doing.setVisible(!text.isEmpty());
    bar.setVisible(false);
    stop.setVisible(false);
    again.setVisible(false);
    panel.revalidate();
  }

  private void makeStale(boolean stale) {
    texts.forEach(area -> area.setEnabled(!stale));
    places.makeStale(stale);
    closets.makeStale(stale);
    line.makeStale(stale);
  }
}
