package org.shopclime.report;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.shopclime.climate.DayType;
import org.shopclime.climate.GeoPoint;
import org.shopclime.climate.HotPoint;
import org.shopclime.climate.HumidPoint;
import org.shopclime.climate.Level;
import org.shopclime.climate.Months;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/** What a station's figures mean to someone who chooses it, in words. */
public final class ClimateFacts {

  private static final double HOURS_A_DAY = 24;
  private static final double METRES_PER_KILOMETRE = 1000;
  private static final double WATTS_PER_KILOWATT = 1000;

  private ClimateFacts() {}

  /**
   * Name and state.
   *
   * @param station the station
   * @return such as "Mobile Regional AP, AL"
   */
  public static String name(Station station) {
    return station.name() + ", " + station.state();
  }

  /**
   * Number, coordinates and height.
   *
   * @param station the station
   * @param units system of units to show
   * @return such as "Station 722230, 30.69° N, 88.25° W, 220 ft above the sea"
   */
  public static String where(Station station, UnitSystem units) {
    return "Station "
        + station.id()
        + ", "
        + point(GeoPoint.of(station))
        + ", "
        + height(Math.abs(station.elevationM()), units)
        + (station.elevationM() < 0 ? " below the sea" : " above the sea");
  }

  /**
   * Coordinates.
   *
   * @param point the point
   * @return such as "30.69° N, 88.25° W"
   */
  public static String point(GeoPoint point) {
    return degrees(point.latitudeDeg(), "N", "S") + ", " + degrees(point.longitudeDeg(), "E", "W");
  }

  private static String degrees(double value, String plus, String minus) {
    return String.format(Locale.ROOT, "%.2f° %s", Math.abs(value), value < 0 ? minus : plus);
  }

  /**
   * A height above the sea.
   *
   * @param metres height, m
   * @param units system of units to show
   * @return whole feet or metres with their unit
   */
  public static String height(double metres, UnitSystem units) {
    boolean si = units == UnitSystem.SI;
    long figure = Math.round(si ? metres : Units.feet(metres));
    return String.format(Locale.ROOT, "%,d %s", figure, si ? "m" : "ft").replace('-', '−');
  }

  /**
   * A distance over land.
   *
   * @param kilometres distance, km
   * @param units system of units to show
   * @return whole miles or kilometres with their unit
   */
  public static String distance(double kilometres, UnitSystem units) {
    boolean si = units == UnitSystem.SI;
    long figure = Math.round(si ? kilometres : Units.miles(kilometres * METRES_PER_KILOMETRE));
    return String.format(Locale.ROOT, "%,d %s", figure, si ? "km" : "mi");
  }

  /**
   * The days that decide.
   *
   * @param climate what is known of the station
   * @param units system of units to show
   * @return hot day, hottest hour, humid day and winter, each with its meaning
   */
  public static List<Figure> of(StationClimate climate, UnitSystem units) {
    HotPoint hot = climate.at(Level.P1);
    HotPoint hottest = climate.at(Level.HOTTEST);
    HumidPoint humid = climate.humid();
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure(
            "climate.hotDay",
            "Hot day (1 % of hours are hotter)",
            temperature(hot.dryBulb(), units)
                + " in "
                + month(hot.month())
                + ", wet bulb "
                + temperature(hot.wetBulb(), units)
                + "; "
                + Shown.difference(climate.dailyRange(), units)
                + " from low to high"));
    figures.add(
        new Figure(
            "climate.hottestHour",
            "Hottest hour of the typical year",
            temperature(hottest.dryBulb(), units)
                + " in "
                + month(hottest.month())
                + ", wet bulb "
                + temperature(hottest.wetBulb(), units)));
    figures.add(
        new Figure(
            "climate.humidDay",
            "Humid day (0.4 % of hours are moister)",
            "dew point "
                + temperature(humid.dewPoint(), units)
                + " at "
                + temperature(humid.dryBulb(), units)
                + " in "
                + month(humid.month())
                + ", up to "
                + temperature(humid.dayPeak(), units)
                + " on such a day"));
    figures.add(
        new Figure(
            "climate.winter",
            "Winter (1 % of hours are colder)",
            temperature(climate.winter().dryBulb99(), units)));
    return figures.stream()
        .map(figure -> new Figure(figure.key(), figure.label(), Unbroken.of(figure.value())))
        .toList();
  }

  /**
   * What the typical figures leave out.
   *
   * @return two sentences
   */
  public static String caution() {
    return "Typical years leave out the rarest hours, most of all the coldest. If you fear a hotter"
        + " day, type its highest temperature in the place's fields.";
  }

  /**
   * What the chart shows, for someone who cannot see it.
   *
   * @param climate what is known of the station
   * @param year its typical year, where there is one
   * @param units system of units to show
   * @return coldest and warmest month, and the sunniest and darkest where known
   */
  public static String year(StationClimate climate, Optional<TypicalYear> year, UnitSystem units) {
    if (year.isEmpty()) {
      Months means = climate.monthDryBulb();
      int cold = month(means::at, false);
      int warm = month(means::at, true);
      return "Mean temperature from "
          + temperature(means.at(cold), units)
          + " in "
          + month(cold)
          + " to "
          + temperature(means.at(warm), units)
          + " in "
          + month(warm)
          + ". How the days of each month differ, and their sun, is not known here.";
    }
    TypicalYear known = year.get();
    int cold = month(month -> known.mean(month, DayType::mean), false);
    int warm = month(month -> known.mean(month, DayType::mean), true);
    int dark = month(month -> known.mean(month, DayType::global), false);
    int sunny = month(month -> known.mean(month, DayType::global), true);
    return "A usual day has "
        + day(known, cold, units)
        + " in "
        + month(cold)
        + " and "
        + day(known, warm, units)
        + " in "
        + month(warm)
        + ". Sun on level ground: "
        + sunText(known.mean(dark, DayType::global), units)
        + " a day in "
        + month(dark)
        + ", "
        + sunText(known.mean(sunny, DayType::global), units)
        + " in "
        + month(sunny)
        + ".";
  }

  private static String day(TypicalYear year, int month, UnitSystem units) {
    return temperature(year.mean(month, DayType::low), units)
        + " to "
        + temperature(year.mean(month, DayType::high), units);
  }

  private static int month(IntToDoubleFunction figure, boolean highest) {
    int best = 1;
    for (int month = 2; month <= Months.COUNT; month++) {
      double more = figure.applyAsDouble(month) - figure.applyAsDouble(best);
      if (highest ? more > 0 : more < 0) {
        best = month;
      }
    }
    return best;
  }

  /** Sun of a day from its mean over 24 hours, W/m²: kWh/m² or BTU/ft². */
  static double sun(double watts, UnitSystem units) {
    double kilowattHours = watts * HOURS_A_DAY / WATTS_PER_KILOWATT;
    return units == UnitSystem.SI
        ? kilowattHours
        : Units.btu(Units.joulesFromKilowattHours(kilowattHours))
            * Units.SQUARE_METRES_PER_SQUARE_FOOT;
  }

  /** Unit of {@link #sun}. */
  static String sunUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "kWh/m²" : "BTU/ft²";
  }

  private static String sunText(double watts, UnitSystem units) {
    String figure =
        units == UnitSystem.SI
            ? String.format(Locale.ROOT, "%.1f", sun(watts, units))
            : String.format(Locale.ROOT, "%,d", 10 * Math.round(sun(watts, units) / 10));
    return figure + " " + sunUnit(units);
  }

  private static String temperature(double celsius, UnitSystem units) {
    return Shown.temperature(celsius, units).replace('-', '−');
  }

  private static String month(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
