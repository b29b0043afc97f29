package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.SurfaceSun;
import org.shopclime.plan.HeaterHelp;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/**
 * A year's answer for machines: one JSON object (RFC 8259). Every key of a quantity ends in its
 * unit: kWh, kW, °C, hours (H), kWh/m². Hours of the year are hour-ending 1 to 8,760, local
 * standard time, means over the hour.
 */
public final class YearJson {

  private static final int DECIMALS = 4;
  private static final double WATTS = 1000;

  private YearJson() {}

  /**
   * The answer as one JSON object, on several lines.
   *
   * @param answer the answer
   * @return JSON; figures rounded to 0.0001; what there is not is null, as are all peaks where day
   *     types were laid out
   */
  public static String of(YearAnswer answer) {
    return tree(answer).toPrettyString();
  }

  static ObjectNode tree(YearAnswer answer) {
    YearFigures figures = new YearFigures(answer);
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("shop", answer.shop().name());
    SizeJson.place(root, answer.station());
    root.put("weather", answer.weatherFile().orElse("day types"));
    root.put("peaksKnown", answer.isHourly());
    root.put("workHoursH", rounded(figures.workHours()));
    root.put("outdoorMeanC", rounded(figures.meanOutdoor()));
    months(root, "monthlyOutdoorMeanC", figures::meanOutdoor);
    ArrayNode rooms = root.putArray("rooms");
    for (int room = 0; room < figures.rooms(); room++) {
      room(rooms.addObject(), answer, room);
    }
    BillJson.put(root, answer.bill());
    answer.habits().ifPresent(habits -> HabitJson.put(root, habits));
    ArrayNode surfaces = root.putArray("surfaces");
    for (SurfaceSun sun : answer.described().year().surfaces()) {
      surfaces
          .addObject()
          .put("name", sun.name())
          .put("room", sun.room())
          .put("incidentKwhM2", rounded(sun.incident()))
          .put("transmittedKwhM2", rounded(sun.transmitted()));
    }
    ArrayNode warnings = root.putArray("warnings");
    answer
        .warnings()
        .forEach(
            warning ->
                warnings.addObject().put("path", warning.path()).put("text", warning.text()));
    YearText.ofWeather(answer, UnitSystem.INCH_POUND)
        .forEach(note -> warnings.addObject().put("path", "weather").put("text", note));
    return root;
  }

  private static void room(ObjectNode json, YearAnswer answer, int room) {
    YearResult year = answer.described();
    json.put("name", year.year().roomName(room));
    json.put("cooling", word(answer.cooling(room)));
    json.put("heating", word(answer.heating(room)));
    energy(json, year, "heating", Figure.HEATING, room);
    energy(json, year, "cooling", Figure.COOLING, room);
    if (answer.cooling(room) == YearAnswer.Plant.UNIT) {
      energy(json, year, "latent", Figure.LATENT, room);
      energy(json, year, "unit", Figure.POWER, room);
      BillJson.put(json, "unitCostUsd", "monthlyUnitCostUsd", answer.bill().cost().cooling());
    }
    if (answer.heating(room) == YearAnswer.Plant.UNIT) {
      heatPump(json, answer, room);
    }
    if (year.year().drier(room).isPresent()) {
      energy(json, year, "dehumidifier", Figure.DRIER_POWER, room);
      json.put("dehumidifierWaterGal", rounded(YearFigures.drierGallons(year, room)));
    }
    peak(json, answer, "Heating", Figure.HEATING, room);
    peak(json, answer, "Cooling", Figure.COOLING, room);
    temperatures(json, answer, year, room);
    months(json, "monthlyWorkHoursAbove85FH", month -> YearFigures.hotWorkHours(year, room, month));
    temperatures(json.putObject("leftAlone"), answer, answer.alone(), room);
  }

  /** What of the heating the unit gives and what it draws for it; when a heater helps. */
  private static void heatPump(ObjectNode json, YearAnswer answer, int room) {
    YearResult year = answer.described();
    energy(json, year, "unitHeat", Figure.PUMP_HEAT, room);
    energy(json, year, "unitHeating", Figure.PUMP_POWER, room);
    BillJson.put(
        json, "unitHeatingCostUsd", "monthlyUnitHeatingCostUsd", answer.bill().cost().pumping());
    HeaterHelp help = HeaterHelp.of(year, room);
    ObjectNode helper =
        json.putObject("heaterHelps")
            .put("hoursH", help.hours())
            .put("heatKwh", rounded(help.heat()))
            .put("warmingUpKwh", rounded(help.rising()));
    if (help.hours() > 0) {
      helper.put("coldestC", rounded(help.coldest())).put("warmestC", rounded(help.warmest()));
    } else {
      helper.putNull("coldestC").putNull("warmestC");
    }
  }

  private static String word(YearAnswer.Plant plant) {
    return plant.name().toLowerCase(Locale.ROOT);
  }

  private static void energy(
      ObjectNode json, YearResult year, String name, Figure figure, int room) {
    json.put(name + "Kwh", rounded(year.kilowattHours(figure, room)));
    String monthly =
        "monthly" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + "Kwh";
    months(json, monthly, month -> year.kilowattHours(figure, room, month));
  }

  /** The greatest hour, if peaks are known and there is any heat at all. */
  private static void peak(
      ObjectNode json, YearAnswer answer, String name, Figure figure, int room) {
    int hour = answer.described().peakHour(figure, room);
    double watts = answer.described().at(figure, room, hour);
    json.put("peak" + name + "Kw", answer.isHourly() ? rounded(watts / WATTS) : null);
    json.put("peak" + name + "Hour", answer.isHourly() && watts > 0 ? (Integer) (hour + 1) : null);
  }

  private static void temperatures(ObjectNode json, YearAnswer answer, YearResult year, int room) {
    int coldest = year.leastHour(Figure.AIR, room);
    int warmest = year.peakHour(Figure.AIR, room);
    boolean known = answer.isHourly();
    json.put("minC", known ? rounded(year.at(Figure.AIR, room, coldest)) : null);
    json.put("minHour", known ? (Integer) (coldest + 1) : null);
    json.put("maxC", known ? rounded(year.at(Figure.AIR, room, warmest)) : null);
    json.put("maxHour", known ? (Integer) (warmest + 1) : null);
    json.put("meanC", rounded(year.mean(Figure.AIR, room)));
    json.put("hoursAbove85FH", year.hoursAbove(Figure.AIR, room, YearFigures.HOT));
    json.put("workHoursAbove85FH", rounded(year.workHoursAbove(Figure.AIR, room, YearFigures.HOT)));
  }

  private static void months(ObjectNode json, String key, IntToDoubleFunction ofMonth) {
    ArrayNode array = json.putArray(key);
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      array.add(rounded(ofMonth.applyAsDouble(month)));
    }
  }

  private static BigDecimal rounded(double value) {
    return SizeJson.rounded(value, DECIMALS);
  }
}
