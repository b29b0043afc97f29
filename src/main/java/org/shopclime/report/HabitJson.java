package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.YearWeather;
import org.shopclime.balance.YearWeeks;
import org.shopclime.plan.Habit;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.HabitYear;
import org.shopclime.run.RustWatch;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/**
 * Habits of running the unit for machines: kWh, dollars (Usd), hours (H), °C, parts of 1
 * (Fraction). A week has 168 means of hours, local standard time, from midnight before a Monday.
 */
final class HabitJson {

  private static final int DECIMALS = 4;
  private static final double WATTS = 1000;

  private HabitJson() {}

  static void put(ObjectNode root, HabitAnswer answer) {
    ObjectNode json = root.putObject("habits");
    HabitYear any = answer.of(Habit.ALWAYS_ON);
    json.put("wishedC", rounded(any.year().year().plants().cooledTo(any.room())));
    json.put("setBackC", rounded(answer.away()));
    OptionalInt lead = answer.morning().lead();
    json.put("hotDayLeadMin", lead.isPresent() ? (Integer) lead.getAsInt() : null);
    json.put("leadH", answer.leadHours());
    begins(json, "hotWeekBegins", "hotWeekFirstHour", answer.hotWeek());
    answer
        .springWeek()
        .ifPresent(from -> begins(json, "springWeekBegins", "springWeekFirstHour", from));
    json.put("dampFraction", RustWatch.DAMP);
    json.put("bareSteelFraction", RustWatch.BARE);
    ArrayNode years = json.putArray("years");
    answer.own().forEach(year -> year(years.addObject(), answer, year));
    answer.weekends().forEach(year -> year(years.addObject(), answer, year));
  }

  private static void begins(ObjectNode json, String date, String hour, int from) {
    json.put(date, YearWeeks.date(from).toString().substring("2025-".length()));
    json.put(hour, from + 1);
  }

  private static void year(ObjectNode json, HabitAnswer answer, HabitYear year) {
    json.put("habit", year.habit().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.put("days", year.weekendsOnly() ? "weekends" : "own");
    json.put("unitKwh", rounded(year.kilowattHours()));
    BillJson.put(json, "unitCostUsd", "monthlyUnitCostUsd", year.cost().cooling());
    counts(json, year, 0, YearWeather.HOURS);
    week(json.putObject("hotWeek"), year, answer.hotWeek());
    answer.springWeek().ifPresent(from -> week(json.putObject("springWeek"), year, from));
  }

  private static void counts(ObjectNode json, HabitYear year, int from, int to) {
    RustWatch.Count count = year.rust().count(from, to);
    json.put("workHoursAboveWishedPlus1FH", rounded(year.hotWorkHours(from, to)));
    json.put("ironWetH", count.ironWet());
    json.put("slabWetH", count.slabWet());
    json.put("wetH", count.wet());
    json.put("ironDampH", count.damp());
    json.put("bareSteelDampH", count.bare());
  }

  private static void week(ObjectNode json, HabitYear year, int from) {
    YearResult result = year.year();
    RustWatch rust = year.rust();
    int room = year.room();
    json.put("unitKwh", rounded(year.kilowattHours(from, from + YearWeeks.HOURS)));
    json.put("unitCostUsd", rounded(year.weekDollars(from)));
    counts(json, year, from, from + YearWeeks.HOURS);
    hours(json, "outdoorC", from, hour -> result.year().weather().dryBulb(hour));
    hours(json, "airC", from, hour -> result.at(Figure.AIR, room, hour));
    hours(json, "dewPointC", from, rust::dewPoint);
    hours(json, "relativeHumidityFraction", from, rust::relativeHumidity);
    hours(json, "ironC", from, rust::iron);
    hours(json, "ironRelativeHumidityFraction", from, rust::atIron);
    if (Double.isFinite(rust.slab(from))) {
      hours(json, "slabC", from, rust::slab);
    }
    hours(json, "unitKw", from, hour -> result.at(Figure.POWER, room, hour) / WATTS);
  }

  private static void hours(ObjectNode json, String key, int from, IntToDoubleFunction ofHour) {
    ArrayNode array = json.putArray(key);
    for (int hour = from; hour < from + YearWeeks.HOURS; hour++) {
      array.add(rounded(ofHour.applyAsDouble(hour)));
    }
  }

  private static BigDecimal rounded(double value) {
    return SizeJson.rounded(value, DECIMALS);
  }
}
