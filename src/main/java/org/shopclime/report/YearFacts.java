package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shopclime.climate.Station;
import org.shopclime.plan.HeaterHelp;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.YearAnswer.Plant;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/** What a year's figures mean to an owner, in words. */
final class YearFacts {

  /** Why there are no peaks, and what to do. */
  static final String NO_PEAKS =
      "No hottest or coldest hour and no greatest load is told: this year is laid out from day types,"
          + " which are means, and means flatten peaks. For the hottest day see size; for peaks of a"
          + " year give an hourly file with --weather.";

  /** What an ideal plant stands for. */
  static final String IDEAL =
      "An ideal plant always holds the wished temperature, whatever that takes, and moves sensible"
          + " heat only: no moisture, no machine. Its kWh are heat, not electricity.";

  static final String CALENDAR =
      "A typical year is no forecast: a true one takes more or less. 1 January is taken as"
          + " a Wednesday; holidays count as working days. What you do not know stands at its likely"
          + " value.";

  private static final double WATTS = 1000;

  private final YearAnswer answer;
  private final UnitSystem units;
  private final YearFigures figures;
  private final BillText bill;
  private final YearResult year;
  private final boolean unit;
  private final boolean ideal;

  YearFacts(YearAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    figures = new YearFigures(answer);
    bill = new BillText(answer);
    year = answer.described();
    unit = figures.isCooledBy(Plant.UNIT);
    ideal = figures.isCooledBy(Plant.IDEAL);
  }

  /** The answer in one or two sentences. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    if (unit) {
      parts.add(
          "the unit draws "
              + about(Figure.POWER)
              + (figures.total(Figure.PUMP_POWER) >= 0.5 ? " to cool" : "")
              + worst(Figure.POWER));
    }
    if (ideal) {
      double taken =
          IntStream.range(0, figures.rooms())
              .filter(room -> answer.cooling(room) == Plant.IDEAL)
              .mapToDouble(room -> year.kilowattHours(Figure.COOLING, room))
              .sum();
      parts.add("an ideal plant takes out " + kwh(taken) + " of heat");
    }
    if (figures.isHeated()) {
      parts.add(
          "heating takes " + about(Figure.HEATING) + " of heat" + byPump() + worst(Figure.HEATING));
    }
    if (parts.isEmpty()) {
      parts.add("nothing cools or heats the shop");
    }
    return "In a typical year at "
        + ClimateFacts.name(answer.station())
        + " "
        + String.join("; ", parts)
        + "."
        + bill.sentence()
        + " "
        + hot();
  }

  private String byPump() {
    double drawn = figures.total(Figure.PUMP_POWER);
    return drawn < 0.5
        ? ""
        : " (" + about(Figure.PUMP_HEAT) + " of it by the unit, which draws " + kwh(drawn) + ")";
  }

  private String about(Figure figure) {
    return kwh(figures.total(figure));
  }

  private String worst(Figure figure) {
    int month = figures.worstMonth(figure);
    double most = figures.total(figure, month);
    return most < 0.5
        ? ""
        : ", " + kwh(most) + " of it in " + YearFigures.monthName(month) + ", the worst month";
  }

  /** Working hours above 85 °F, with and without plants. */
  private String hot() {
    int room = answer.room();
    double work = figures.workHours();
    if (work == 0) {
      return "No working hours are given.";
    }
    String left = hours(YearFigures.hotWorkHours(answer.alone(), room));
    String above =
        "above "
            + limit()
            + " in "
            + hours(YearFigures.hotWorkHours(year, room))
            + " of "
            + hours(work);
    String name = Shown.line(year.year().roomName(room));
    return answer.cooling(room) == Plant.NONE
        ? name + " is " + above + " working hours, as nothing cools it."
        : name
            + " is "
            + above
            + " working hours; left alone, without cooling and heating, in "
            + left
            + ".";
  }

  private String limit() {
    return Shown.temperature(YearFigures.HOT, units);
  }

  /** Further facts, a sentence or two each. */
  List<String> facts() {
    List<String> facts = new ArrayList<>();
    facts.add(weather());
    if (unit) {
      facts.add(ofUnit());
    }
    if (ideal) {
      facts.add(IDEAL);
    }
    ToolText.fact(answer.shop(), year.year().weather().pressure()).ifPresent(facts::add);
    facts.addAll(bill.facts());
    if (figures.isHeated()) {
      facts.add(ofHeating());
    }
    facts.addAll(ofDriers());
    facts.add(allHours());
    facts.add(answer.isHourly() ? peaks() : NO_PEAKS);
    facts.add(CALENDAR);
    return facts;
  }

  private String weather() {
    return answer
        .weatherFile()
        .map(
            file ->
                "Weather: the hours of "
                    + Shown.line(file)
                    + ". "
                    + ClimateFacts.where(answer.station(), units)
                    + ".")
        .orElse(
            "Weather: the station's day types, five for each month, laid out as 365 days. Sums and"
                + " means are the better part of such a year; hours above a limit are rougher. "
                + ClimateFacts.where(answer.station(), units)
                + ".");
  }

  private String ofUnit() {
    double drawn = figures.total(Figure.POWER);
    int room = answer.unit().orElseThrow().room();
    double heat = year.kilowattHours(Figure.COOLING, room);
    double water = year.kilowattHours(Figure.LATENT, room);
    double out = heat + Math.max(0, water);
    return taken(heat, water)
        + (drawn > 0
            ? String.format(
                Locale.ROOT,
                water < 0
                    ? "; %.1f kWh of heat for each kWh it draws."
                    : ", %.1f kWh for each kWh it draws.",
                out / drawn)
            : ".")
        + ofFan();
  }

  private String ofFan() {
    boolean runsOn =
        answer.shop().unit().filter(unit -> unit.fanBetweenRuns(1).isPresent()).isPresent();
    return runsOn
        ? " Its fan runs on between runs and blows water off the coil back into the room; what it"
            + " draws in hours in which nothing is cooled is not counted."
        : "";
  }

  /**
   * What a unit does to a room in a year. A cooler with wet pads leaves more water in the air than
   * it finds there.
   *
   * @param heat sensible heat taken out, kWh
   * @param water latent heat taken out, kWh; below 0: brought in
   */
  static String taken(double heat, double water) {
    return "The unit takes out "
        + kwh(heat)
        + " of heat"
        + (water < 0
            ? " and adds " + kwh(-water) + " of moisture"
            : " and " + kwh(water) + " as water in the air");
  }

  private String ofHeating() {
    if (figures.total(Figure.PUMP_HEAT) < 1) {
      return "Heating is the heat an ideal heater puts in. A plain electric heater draws as many kWh; a"
          + " heat pump or a fuel draws another figure.";
    }
    int room = answer.unit().orElseThrow().room();
    double given = year.kilowattHours(Figure.PUMP_HEAT, room);
    double drawn = year.kilowattHours(Figure.PUMP_POWER, room);
    return "Heating is the heat that holds the winter temperature. The heat pump gives "
        + kwh(given)
        + " of it for "
        + kwh(drawn)
        + " of electricity"
        + String.format(Locale.ROOT, ", %.1f kWh for each. ", given / drawn)
        + help(HeaterHelp.of(year, room), units);
  }

  /** When a heater helps the heat pump. */
  static String help(HeaterHelp help, UnitSystem units) {
    if (help.hours() == 0) {
      return "No heater has to help it.";
    }
    String text =
        "A heater must help in "
            + (help.hours() == 1 ? "1 hour" : whole(help.hours()) + " hours")
            + " with "
            + kwh(help.heat())
            + ", while it is "
            + Shown.range(help.coldest(), help.warmest(), units)
            + " outdoors";
    return text
        + (help.rising() > help.heat() / 2
            ? "; most of that as the room is warmed up again after a set-back or a time off."
            : ".")
        + (help.rising() > 0
            ? " That is more than it need be: the room is reckoned as warm within the hour it is"
                + " asked for. Switched on sooner, or left to warm up slowly, the heat pump gives"
                + " more of it and the heater less."
            : "");
  }

  /** What a dehumidifier draws and takes out; nothing of rooms without one. */
  private List<String> ofDriers() {
    List<String> lines = new ArrayList<>();
    for (int room = 0; room < year.year().rooms(); room++) {
      if (year.year().drier(room).isPresent()) {
        lines.add(
            "The dehumidifier in "
                + Shown.line(year.year().roomName(room))
                + " draws "
                + kwh(year.kilowattHours(Figure.DRIER_POWER, room))
                + " beside the unit, and takes out "
                + Math.round(YearFigures.drierGallons(year, room))
                + " gal of water.");
      }
    }
    return lines;
  }

  private String allHours() {
    int room = answer.room();
    return "In all 8,760 hours, nights and days off counted: "
        + Shown.line(year.year().roomName(room))
        + " is above "
        + limit()
        + " in "
        + hours(year.hoursAbove(Figure.AIR, room, YearFigures.HOT))
        + ", left alone in "
        + hours(answer.alone().hoursAbove(Figure.AIR, room, YearFigures.HOT))
        + "; its mean is "
        + Shown.temperature(year.mean(Figure.AIR, room), units)
        + ", left alone "
        + Shown.temperature(answer.alone().mean(Figure.AIR, room), units)
        + ".";
  }

  private String peaks() {
    int room = answer.room();
    List<String> peaks = new ArrayList<>();
    peak(peaks, "most heating", Figure.HEATING, room);
    peak(peaks, "most heat taken out", Figure.COOLING, room);
    int warm = year.peakHour(Figure.AIR, room);
    int cold = year.leastHour(Figure.AIR, room);
    peaks.add("warmest " + at(room, warm));
    peaks.add("coldest " + at(room, cold));
    return "Hours that stand out in "
        + Shown.line(year.year().roomName(room))
        + ": "
        + String.join("; ", peaks)
        + ".";
  }

  private String at(int room, int hour) {
    return Shown.temperature(year.at(Figure.AIR, room, hour), units)
        + " ("
        + YearFigures.when(hour)
        + ")";
  }

  private void peak(List<String> into, String name, Figure figure, int room) {
    int hour = year.peakHour(figure, room);
    double watts = year.at(figure, room, hour);
    if (watts > 0) {
      into.add(
          String.format(
              Locale.ROOT, "%s %.1f kW (%s)", name, watts / WATTS, YearFigures.when(hour)));
    }
  }

  /** What is odd about the weather: another station than the shop's, hours that were filled. */
  List<String> ofWeather() {
    List<String> notes = new ArrayList<>();
    Station there = answer.station();
    Station home = answer.home();
    if (!there.id().equals(home.id())) {
      notes.add(
          "the file is from "
              + ClimateFacts.name(there)
              + " ("
              + there.id()
              + "), "
              + ClimateFacts.distance(
                  home.distanceKm(there.latitudeDeg(), there.longitudeDeg()), units)
              + " from the shop's station "
              + ClimateFacts.name(home)
              + "; sun, air and ground are those of the file.");
    }
    notes.addAll(answer.notes());
    return notes;
  }

  private static String whole(double figure) {
    return Shown.grouped(Math.round(figure));
  }

  private static String hours(double hours) {
    return whole(hours);
  }

  private static String kwh(double energy) {
    return whole(energy) + " kWh";
  }
}
