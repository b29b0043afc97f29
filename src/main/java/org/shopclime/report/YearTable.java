package org.shopclime.report;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/** The tables of a year: its months, and its rooms. */
final class YearTable {

  private final YearAnswer answer;
  private final UnitSystem units;
  private final YearFigures figures;
  private final YearResult year;

  YearTable(YearAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    figures = new YearFigures(answer);
    year = answer.described();
  }

  /** Head of the monthly table, without units; the first cell is empty. */
  static List<String> monthHead() {
    return List.of(
        "", "outdoors", "heating", "cooling", "unit draws", "hot work", "left alone", "cost");
  }

  /** Units of the monthly table. */
  String monthUnits() {
    return "outdoors in "
        + Shown.temperatureUnit(units)
        + ", energy in kWh, hot work in hours, cost in $";
  }

  /** One row for each month and one for the year. */
  List<List<String>> monthRows() {
    List<List<String>> rows = new ArrayList<>();
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      rows.add(
          List.of(
              YearFigures.monthName(month),
              degrees(figures.meanOutdoor(month)),
              whole(figures.total(Figure.HEATING, month)),
              whole(figures.total(Figure.COOLING, month)),
              figures.isCooledBy(YearAnswer.Plant.UNIT)
                  ? whole(
                      figures.total(Figure.POWER, month) + figures.total(Figure.PUMP_POWER, month))
                  : "–",
              whole(YearFigures.hotWorkHours(year, answer.room(), month)),
              whole(YearFigures.hotWorkHours(answer.alone(), answer.room(), month)),
              whole(answer.bill().cost().all().of(Month.of(month)))));
    }
    rows.add(
        List.of(
            "Year",
            degrees(figures.meanOutdoor()),
            whole(figures.total(Figure.HEATING)),
            whole(figures.total(Figure.COOLING)),
            figures.isCooledBy(YearAnswer.Plant.UNIT)
                ? whole(figures.total(Figure.POWER) + figures.total(Figure.PUMP_POWER))
                : "–",
            whole(YearFigures.hotWorkHours(year, answer.room())),
            whole(YearFigures.hotWorkHours(answer.alone(), answer.room())),
            whole(answer.bill().cost().total())));
    return rows;
  }

  /** What the columns mean. */
  String monthNote() {
    return "Outdoors: mean air. Heating and cooling: heat put in and taken out, all rooms together,"
        + " moisture left out. Hot work: working hours with "
        + Shown.line(year.year().roomName(answer.room()))
        + " above "
        + Shown.temperature(YearFigures.HOT, units)
        + "; left alone: the same without any cooling and heating. Cost: unit, heating and dehumidifier. Rounded parts may miss the sum by"
        + " one or two.";
  }

  boolean severalRooms() {
    return figures.rooms() > 1;
  }

  /** Head of the table of rooms. */
  static List<String> roomHead() {
    return List.of("", "cooled by", "heating", "cooling", "mean", "coldest", "warmest", "hot work");
  }

  List<List<String>> roomRows() {
    List<List<String>> rows = new ArrayList<>();
    for (int room = 0; room < figures.rooms(); room++) {
      int cold = year.leastHour(Figure.AIR, room);
      int warm = year.peakHour(Figure.AIR, room);
      rows.add(
          List.of(
              Shown.line(year.year().roomName(room)),
              cooledBy(room),
              whole(year.kilowattHours(Figure.HEATING, room)),
              whole(year.kilowattHours(Figure.COOLING, room)),
              Shown.temperature(year.mean(Figure.AIR, room), units),
              answer.isHourly() ? Shown.temperature(year.at(Figure.AIR, room, cold), units) : "–",
              answer.isHourly() ? Shown.temperature(year.at(Figure.AIR, room, warm), units) : "–",
              whole(YearFigures.hotWorkHours(year, room))));
    }
    return rows;
  }

  private String cooledBy(int room) {
    return switch (answer.cooling(room)) {
      case UNIT -> "the unit";
      case IDEAL -> "ideal plant";
      case NONE -> "nothing";
    };
  }

  private String degrees(double celsius) {
    return Shown.grouped(Math.round(Shown.degrees(celsius, units)));
  }

  private static String whole(double figure) {
    return Shown.grouped(Math.round(figure));
  }
}
