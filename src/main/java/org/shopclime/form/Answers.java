package org.shopclime.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AnswerText;
import org.shopclime.report.ChartLook;
import org.shopclime.report.DayChart;
import org.shopclime.report.Figure;
import org.shopclime.report.LoadChart;
import org.shopclime.report.ScenarioChart;
import org.shopclime.report.ScenarioTable;
import org.shopclime.report.SizeFigures;
import org.shopclime.shop.Shop;

/** The answers that came, shown in words, figures and pictures. */
final class Answers {

  /** As many bars as have room for their names in half the height of a small screen. */
  private static final int BARS = 8;

  private static final String LOAD = "Where the heat comes from at the worst hour";
  private static final String DAY = "The hot day, hour by hour (work shaded)";
  private static final ChartLook LIGHT = ChartLook.light();

  private final AnswerView top = new AnswerView();
  private final PicturesView pictures;
  private UnitSystem units;
  private Optional<CoreAnswer> core = Optional.empty();
  private Optional<Shop> coreShop = Optional.empty();
  private Optional<SizeAnswer> whole = Optional.empty();
  private boolean sentenceIsOld = true;
  private boolean figuresAreOld = true;

  Answers(UnitSystem units, Function<Shop, Optional<HabitAnswer>> habits) {
    this.units = units;
    pictures = new PicturesView(habits);
    pictures.compressor().use(units);
  }

  AnswerView top() {
    return top;
  }

  PicturesView pictures() {
    return pictures;
  }

  /** The whole answer, if it is that of the shop as it stands. */
  Optional<SizeAnswer> fresh() {
    return figuresAreOld ? Optional.empty() : whole;
  }

  void quick(Shop shop, CoreAnswer answer) {
    core = Optional.of(answer);
    coreShop = Optional.of(shop);
    sentenceIsOld = false;
    draw();
    top.say("A first answer; sizes, range and changes follow.");
  }

  void whole(SizeAnswer answer) {
    core = Optional.of(answer.core());
    coreShop = Optional.of(answer.shop());
    whole = Optional.of(answer);
    sentenceIsOld = false;
    figuresAreOld = false;
    write();
  }

  /** Greys everything, and says why. */
  void age(String why) {
    sentenceIsOld = true;
    figuresAreOld = true;
    grey();
    top.say(core.isPresent() ? why : "");
  }

  void use(UnitSystem system) {
    units = system;
    redo();
  }

  /** Everything again, in other units or colours. */
  void redo() {
    top.recolour();
    pictures.compressor().use(units);
    draw();
    write();
  }

  private void draw() {
    if (core.isPresent()) {
      CoreAnswer answer = core.get();
      Shop shop = coreShop.orElseThrow();
      ChartLook look = Look.charts();
      JFreeChart load = look.headed(LoadChart.of(answer, units, look, BARS), LOAD);
      JFreeChart day = look.headed(DayChart.of(answer, shop, units, look), DAY);
      pictures.show(load, day, TableText.heat(answer, units));
      top.show(
          AnswerText.quickHeading(answer),
          FormText.verdictColour(answer),
          AnswerText.quickSentence(answer, shop, units),
          figures());
    }
    grey();
  }

  private void write() {
    if (whole.isPresent()) {
      SizeAnswer answer = whole.get();
      pictures.show(
          TableText.changes(answer, units),
          ScenarioChart.of(answer, units, Look.charts()),
          new TableText.Table(
              ScenarioTable.heads(answer).stream()
                  .map(head -> head.replaceFirst(" ", "\n"))
                  .toList(),
              ScenarioTable.rows(answer, units)),
          figures(),
          AnswerText.facts(answer, units));
      pictures.showWhole(answer, units);
      pictures.showHabits(answer, units);
      if (!figuresAreOld) {
        top.show(
            AnswerText.heading(answer),
            FormText.verdictColour(answer),
            AnswerText.sentence(answer, units),
            figures());
        top.say(AnswerText.range(answer, units));
      }
    }
    grey();
  }

  private List<Figure> figures() {
    return whole.map(answer -> SizeFigures.of(answer, units)).orElse(List.of());
  }

  private void grey() {
    top.makeStale(sentenceIsOld, figuresAreOld);
    pictures.makeStale(sentenceIsOld, figuresAreOld);
  }

  /** The sheet to print, in light colours. */
  Optional<PrintedAnswer> sheet() {
    return fresh()
        .map(
            answer ->
                new PrintedAnswer(
                    answer.shop().name(),
                    AnswerText.sentence(answer, units),
                    SizeFigures.of(answer, units),
                    List.of(
                        LIGHT.headed(LoadChart.of(answer.core(), units, LIGHT), LOAD),
                        LIGHT.headed(
                            DayChart.of(answer.core(), answer.shop(), units, LIGHT), DAY))));
  }
}
