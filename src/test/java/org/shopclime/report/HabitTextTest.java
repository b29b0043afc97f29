package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.YearWeeks;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Habit;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.HabitYear;
import org.shopclime.plan.Progress;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.Yearly;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Work;

/** The example left on, set back and on demand: its answer, words, JSON and picture. */
class HabitTextTest {

  private static YearAnswer year;
  private static HabitAnswer answer;

  @BeforeAll
  static void run() {
    year =
        new Yearly(Examples.shop(Examples.USUAL), Climates.load())
            .ofDayTypes(List.of(), Progress.silent())
            .orElseThrow();
    answer = year.habits().orElseThrow();
  }

  /** Held at 78 °F and 85 °F; the hot day's lead is 90 min, so two hours; work begins at 8. */
  @Test
  void threeHabitsOnTheOwnersDaysAndOnWeekends() {
    assertThat(answer.own().stream().map(HabitYear::habit)).containsExactly(Habit.values());
    assertThat(answer.weekends().stream().map(HabitYear::habit)).containsExactly(Habit.values());
    assertThat(answer.leadHours() * 60)
        .isBetween(answer.morning().lead().orElseThrow(), 59 + answer.morning().lead().orElse(0));
    assertThat(answer.switchedOn()).hasValue((8 - answer.leadHours()) * 60);
    assertThat(answer.away()).isCloseTo((85 - 32) / 1.8, within(1e-9));
    HabitYear always = answer.of(Habit.ALWAYS_ON);
    HabitYear demand = answer.of(Habit.ON_DEMAND);
    assertThat(always.kilowattHours()).isGreaterThan(demand.kilowattHours());
    assertThat(demand.kilowattHours())
        .as("the plain year has no lead")
        .isGreaterThanOrEqualTo(year.described().kilowattHours(Figure.POWER, 0));
    assertThat(always.hotWorkHours(0, 8760)).isLessThanOrEqualTo(demand.hotWorkHours(0, 8760));
    assertThat(answer.weekends().get(2).kilowattHours()).isLessThan(demand.kilowattHours() / 2);
    for (HabitYear each : answer.own()) {
      double price = each.dollars() / each.kilowattHours();
      assertThat(each.weekDollars(answer.hotWeek()))
          .as("one price for all kWh")
          .isCloseTo(
              price * each.kilowattHours(answer.hotWeek(), answer.hotWeek() + YearWeeks.HOURS),
              within(1e-6));
      assertThat(each.rust().count().bare()).isGreaterThan(each.rust().count().damp());
    }
  }

  @Test
  void theFirstSentenceTellsMoneyAndDampHours() {
    HabitText text = new HabitText(answer, UnitSystem.INCH_POUND);
    HabitYear always = answer.of(Habit.ALWAYS_ON);
    HabitYear demand = answer.of(Habit.ON_DEMAND);
    double more = always.monthDollars(answer.hotWeek()) - demand.monthDollars(answer.hotWeek());
    int damp = demand.rust().count().damp();
    assertThat(text.sentence())
        .isEqualTo(
            "Leaving it on costs $"
                + Math.round(more)
                + " more in July than switching it on at 6 am, and spares the iron "
                + (damp - always.rust().count().damp())
                + " of "
                + damp
                + " damp hours a year.");
    assertThat(text.lines()).hasSize(8).allMatch(line -> line.endsWith("."));
    assertThat(String.join(" ", new HabitText(answer, UnitSystem.SI).lines()))
        .contains("25.6 °C")
        .contains("29.4 °C")
        .doesNotContain("°F");
    assertThat(text.rows()).hasSize(6).allMatch(row -> row.size() == HabitText.head().size());
    assertThat(YearText.of(year, UnitSystem.INCH_POUND))
        .contains("Leaving it on or switching it on")
        .contains(text.name(Habit.SET_BACK));
    assertThat(YearText.of(year, UnitSystem.INCH_POUND).lines())
        .allMatch(line -> line.length() <= 100);
  }

  @Test
  void machinesGetEveryHourOfTheWeeks() {
    JsonNode habits = YearJson.tree(year).get("habits");
    assertThat(habits.get("setBackC").asDouble()).isCloseTo(29.4444, within(1e-4));
    assertThat(habits.get("hotWeekFirstHour").asInt()).isEqualTo(answer.hotWeek() + 1);
    assertThat(habits.get("years")).hasSize(6);
    for (JsonNode each : habits.get("years")) {
      for (String week : List.of("hotWeek", "springWeek")) {
        double sum = 0;
        for (int hour = 0; hour < YearWeeks.HOURS; hour++) {
          sum += each.at("/" + week + "/unitKw/" + hour).asDouble();
          assertThat(each.at("/" + week + "/dewPointC/" + hour).asDouble())
              .isLessThanOrEqualTo(each.at("/" + week + "/airC/" + hour).asDouble() + 0.5);
        }
        assertThat(each.get(week).get("airC")).hasSize(YearWeeks.HOURS);
        assertThat(sum).isCloseTo(each.at("/" + week + "/unitKwh").asDouble(), within(0.02));
      }
    }
    assertThat(habits.at("/years/0/habit").asText()).isEqualTo("always on");
    assertThat(habits.at("/years/0/unitKwh").asDouble())
        .isCloseTo(answer.of(Habit.ALWAYS_ON).kilowattHours(), within(1e-3));
  }

  @Test
  void thePictureHasAPanelForEachHabit() {
    CombinedDomainXYPlot all =
        (CombinedDomainXYPlot)
            HabitChart.of(answer, answer.hotWeek(), UnitSystem.SI, ChartLook.light()).getPlot();
    assertThat(all.getSubplots()).hasSize(3);
    for (int i = 0; i < 3; i++) {
      XYPlot panel = all.getSubplots().get(i);
      assertThat(panel.getDatasetCount()).isEqualTo(5);
      assertThat(panel.getDataset(3).getSeriesKey(0).toString()).isEqualTo("Room");
      assertThat(panel.getDataset(3).getItemCount(0)).isEqualTo(YearWeeks.HOURS);
      assertThat(panel.getDataset(3).getYValue(0, 10))
          .isEqualTo(answer.own().get(i).year().at(Figure.AIR, 0, answer.hotWeek() + 10));
      // Standard time's first hour is centred at half past one on the summer's clock.
      assertThat(panel.getDataset(3).getXValue(0, 0)).isEqualTo(1.5);
    }
    assertThat(all.getFixedLegendItems().getItemCount()).isEqualTo(5);
  }

  @Test
  void aShopWithoutAUnitHasNoHabits() {
    assertThat(
            new Yearly(
                    Examples.shop(Examples.USUAL).withUnit(java.util.Optional.empty()),
                    Climates.load())
                .habits(Progress.silent()))
        .isEmpty();
  }

  /** Where work is on weekends already, there is nothing beside it. */
  @Test
  void anOwnerOfWeekendsHasNoOtherDays() {
    Shop shop = Examples.shop(Examples.USUAL);
    Schedule hours = ScheduleText.read("Sat-Sun 9:00-17:00").orElseThrow();
    HabitAnswer found =
        new Yearly(
                shop.withWork((Work) ShopParts.with(shop.work(), "hours", hours)), Climates.load())
            .habits(Progress.silent())
            .orElseThrow();
    assertThat(found.own()).hasSize(3);
    assertThat(found.weekends()).isEmpty();
    HabitText text = new HabitText(found, UnitSystem.INCH_POUND);
    assertThat(text.rows()).hasSize(3);
    assertThat(text.lines()).noneMatch(line -> line.contains("Sunday"));
  }

  /** The owner's temperature is held, unless it is too near to the wished one: then it is said. */
  @Test
  void theOwnersSetBackIsHeld() {
    HabitAnswer warmer = weekendsSetBackTo((95 - 32) / 1.8);
    assertThat(warmer.away()).isCloseTo((95 - 32) / 1.8, within(1e-9));
    HabitAnswer nearer = weekendsSetBackTo((79 - 32) / 1.8);
    // 78 °F wished and 5 °F more.
    assertThat(nearer.away()).isCloseTo((83 - 32) / 1.8, within(1e-9));
    assertThat(nearer.of(Habit.SET_BACK).kilowattHours())
        .isGreaterThan(1.05 * warmer.of(Habit.SET_BACK).kilowattHours());
    String said = "You set it back to 79 °F; as that is too near";
    assertThat(String.join(" ", new HabitText(nearer, UnitSystem.INCH_POUND).lines()))
        .contains(said);
    assertThat(String.join(" ", new HabitText(warmer, UnitSystem.INCH_POUND).lines()))
        .contains("set back to 95 °F")
        .doesNotContain("You set it back");
  }

  private static HabitAnswer weekendsSetBackTo(double celsius) {
    Shop shop = Examples.shop(Examples.USUAL);
    Schedule hours = ScheduleText.read("Sat-Sun 9:00-17:00").orElseThrow();
    Object work = ShopParts.with(shop.work(), "hours", hours);
    return new Yearly(
            shop.withWork((Work) ShopParts.with((Work) work, "setBackTo", celsius)),
            Climates.load())
        .habits(Progress.silent())
        .orElseThrow();
  }

  /** Asked for alone, the answer is that of the whole year. */
  @Test
  void askedForAloneItIsTheSame() {
    HabitAnswer alone =
        new Yearly(Examples.shop(Examples.USUAL), Climates.load())
            .habits(Progress.silent())
            .orElseThrow();
    assertThat(alone.hotWeek()).isEqualTo(answer.hotWeek());
    for (Habit habit : Habit.values()) {
      assertThat(alone.of(habit).kilowattHours()).isEqualTo(answer.of(habit).kilowattHours());
      assertThat(alone.of(habit).dollars()).isEqualTo(answer.of(habit).dollars());
    }
  }
}
