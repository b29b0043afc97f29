package org.shopclime.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.YearWeather;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.YearAnswer.Plant;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/**
 * A year's hours and months as CSV (RFC 4180), every heading of a quantity ending in its unit.
 * Hours are hour-ending, local standard time, means over the hour.
 */
public final class YearCsv {

  private static final int HOURS_A_DAY = 24;

  private final YearAnswer answer;
  private final UnitSystem units;
  private final String degree;

  private YearCsv(YearAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    degree = units == UnitSystem.SI ? "C" : "F";
  }

  /**
   * Writes the hours: some lines that begin with "#" and tell what is in them, one line of
   * headings, 8,760 rows. The file is written aside and then moved.
   *
   * @param answer the answer
   * @param units system of units of temperatures; heat and power are in W in both
   * @param file where to
   * @throws IOException if it cannot be written
   */
  public static void writeHours(YearAnswer answer, UnitSystem units, Path file) throws IOException {
    FileAside.write(file, hours(answer, units).getBytes(StandardCharsets.UTF_8));
  }

  static String hours(YearAnswer answer, UnitSystem units) {
    return new YearCsv(answer, units).hours();
  }

  /** The monthly table. */
  static String months(YearAnswer answer, UnitSystem units) {
    return new YearCsv(answer, units).months();
  }

  private String hours() {
    StringBuilder text = new StringBuilder();
    head().forEach(line -> text.append("# ").append(Shown.line(line)).append("\r\n"));
    YearResult year = answer.described();
    try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
      rows.printRecord(headings());
      for (int hour = 0; hour < YearWeather.HOURS; hour++) {
        rows.printRecord(row(year, hour));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private List<String> head() {
    List<String> head = new ArrayList<>();
    head.add(answer.shop().name() + ", hour by hour through a typical year");
    head.add(
        "Weather: "
            + answer.weatherFile().map(name -> "the hours of " + name).orElse("day types")
            + " of "
            + ClimateFacts.name(answer.station())
            + " ("
            + answer.station().id()
            + ")");
    if (!answer.isHourly()) {
      head.add(
          "A year laid out from day types: good for sums and means. It is no forecast, and its"
              + " greatest and least hours are no peaks: means flatten them.");
    }
    head.add("A typical year is no forecast. 1 January is a Wednesday.");
    head.add(
        "hour 1 to 8760, hour-ending, local standard time; hourEnding 1 to 24; working: part of the"
            + " hour that is worked, 0 to 1. All figures are means over the hour.");
    head.add(
        "Temperatures in °"
            + degree
            + ", heat and power in W. outdoor: dry bulb. Of each room: air, operative (mean of air"
            + " and radiant), dewPoint of its air, heating (heat put in), cooling (sensible heat"
            + " taken out), latent (as water, by the unit), unitPower (electricity the unit draws"
            + (pumps() ? " to cool)." : ").")
            + (pumps() ? " unitHeatingPower: electricity it draws to heat." : ""));
    return head;
  }

  /** Whether the unit heats too; only then is there a column for what it draws then. */
  private boolean pumps() {
    return answer.unit().filter(unit -> answer.heating(unit.room()) == Plant.UNIT).isPresent();
  }

  private List<String> headings() {
    List<String> headings =
        new ArrayList<>(
            List.of("hour", "month", "day", "hourEnding", "working", "outdoor" + degree));
    for (int room = 0; room < answer.described().year().rooms(); room++) {
      String name = Shown.line(answer.described().year().roomName(room)) + ": ";
      headings.add(name + "air" + degree);
      headings.add(name + "operative" + degree);
      headings.add(name + "dewPoint" + degree);
      headings.add(name + "heatingW");
      headings.add(name + "coolingW");
      headings.add(name + "latentW");
      headings.add(name + "unitPowerW");
      if (pumps()) {
        headings.add(name + "unitHeatingPowerW");
      }
    }
    return headings;
  }

  private List<String> row(YearResult year, int hour) {
    LocalDate date = YearFigures.date(hour);
    List<String> row = new ArrayList<>();
    row.add(Integer.toString(hour + 1));
    row.add(Integer.toString(date.getMonthValue()));
    row.add(Integer.toString(date.getDayOfMonth()));
    row.add(Integer.toString(hour % HOURS_A_DAY + 1));
    row.add(number(year.year().working(hour)));
    row.add(temperature(year.year().weather().dryBulb(hour)));
    for (int room = 0; room < year.year().rooms(); room++) {
      row.add(temperature(year.at(Figure.AIR, room, hour)));
      row.add(temperature(year.at(Figure.OPERATIVE, room, hour)));
      row.add(
          temperature(
              MoistAir.dewPoint(
                  year.at(Figure.HUMIDITY_RATIO, room, hour), year.year().pressure())));
      row.add(number(year.at(Figure.HEATING, room, hour)));
      row.add(number(year.at(Figure.COOLING, room, hour)));
      row.add(number(year.at(Figure.LATENT, room, hour)));
      row.add(number(year.at(Figure.POWER, room, hour)));
      if (pumps()) {
        row.add(number(year.at(Figure.PUMP_POWER, room, hour)));
      }
    }
    return row;
  }

  private String months() {
    YearFigures figures = new YearFigures(answer);
    StringBuilder text = new StringBuilder();
    try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
      rows.printRecord(monthHeadings());
      for (int month = 1; month <= YearFigures.MONTHS; month++) {
        rows.printRecord(monthRow(figures, month));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private List<String> monthHeadings() {
    List<String> headings =
        new ArrayList<>(
            List.of(
                "month",
                "outdoorMean" + degree,
                "heatingKwh",
                "coolingKwh",
                "latentKwh",
                "unitKwh",
                "workHoursAbove85FH",
                "leftAloneWorkHoursAbove85FH",
                "unitCostUsd",
                "heatingCostUsd"));
    if (pumps()) {
      headings.add("unitHeatingKwh");
    }
    return headings;
  }

  private List<String> monthRow(YearFigures figures, int month) {
    List<String> row =
        new ArrayList<>(
            List.of(
                Integer.toString(month),
                temperature(figures.meanOutdoor(month)),
                number(figures.total(Figure.HEATING, month)),
                number(figures.total(Figure.COOLING, month)),
                number(figures.total(Figure.LATENT, month)),
                number(figures.total(Figure.POWER, month)),
                number(YearFigures.hotWorkHours(answer.described(), answer.room(), month)),
                number(YearFigures.hotWorkHours(answer.alone(), answer.room(), month)),
                number(answer.bill().cost().cooling().of(Month.of(month))),
                number(answer.bill().cost().heating().of(Month.of(month)))));
    if (pumps()) {
      row.add(number(figures.total(Figure.PUMP_POWER, month)));
    }
    return row;
  }

  private String temperature(double celsius) {
    return number(Shown.degrees(celsius, units));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value + 0.0);
  }
}
