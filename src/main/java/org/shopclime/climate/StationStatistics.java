package org.shopclime.climate;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.shopclime.air.MoistAir;

/**
 * Computes what {@link StationClimate} holds from a typical year.
 *
 * <p>Source: levels as in ASHRAE Handbook - Fundamentals (2001), ch. 27: the dry bulb that 0.4, 1
 * and 2 % of hours pass, with the mean coincident wet bulb; here from the 8,760 hours of a typical
 * year instead of a long record.
 *
 * <p>Error: a typical year leaves out the rarest hours. Against 20 published places (records to
 * 1993) our 0.4 % and 1 % dry bulbs lie 0.1 and 0.0 K low in the mean and single ones up to 1.4 K
 * off, their wet bulbs 0.1 K high and up to 1.3 K off; 99 % and 99.6 % winter temperatures are 1.3
 * and 1.7 K too warm in the mean, at Denver 5 K ({@code DesignTemperaturePublishedTest}); {@link
 * TypicalYearBias} takes that mean off.
 */
public final class StationStatistics {
  /** Half width of the bin of coincident values: 1 °F, the step of the older observations. */
  private static final double BIN_K = 0.6;

  private static final double HUMID_FRACTION = 0.004;

  private final WeatherYear year;

  private StationStatistics(WeatherYear year) {
    this.year = year;
  }

  /**
   * The climate of a station.
   *
   * @param year its typical year
   * @param aerosol its aerosol depth, own or found ({@link AerosolFill})
   * @return its statistics, unrounded
   */
  public static StationClimate of(WeatherYear year, Aerosol aerosol) {
    return new StationStatistics(year).climate(aerosol);
  }

  private StationClimate climate(Aerosol aerosol) {
    Map<Level, HotPoint> levels = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      levels.put(level, hotPoint(level));
    }
    double hot = levels.get(Level.P2).dryBulb();
    int hotMonth = levels.get(Level.P1).month();
    IntPredicate isHotDay = day -> highest(day) >= hot;
    IntPredicate inHotMonth = day -> WeatherYear.dateOf(day).getMonthValue() == hotMonth;
    return new StationClimate(
        year.station(),
        mean(hour -> true, year::pressure),
        levels,
        meanOfDays(isHotDay, this::range),
        meanOfDays(inHotMonth, this::range),
        shape(isHotDay),
        humidPoint(),
        winter(),
        Hours.from(ending -> meanOfDays(isHotDay, day -> year.windSpeed(hour(day, ending)))),
        mean(hour -> year.dryBulb(hour) >= hot, year::windSpeed),
        aerosol,
        monthly(year::precipitableWaterCm),
        monthly(year::dryBulb),
        GroundTemperature.ofAir(year),
        degreeDays());
  }

  private HotPoint hotPoint(Level level) {
    double dryBulb = passedIn(level.fractionAbove(), year::dryBulb);
    double wetBulb = mean(hour -> Math.abs(year.dryBulb(hour) - dryBulb) <= BIN_K, this::wetBulb);
    return new HotPoint(
        dryBulb, Math.min(wetBulb, dryBulb), busiestMonth(hour -> year.dryBulb(hour) >= dryBulb));
  }

  private double wetBulb(int hour) {
    double pressure = year.pressure(hour);
    double dryBulb = year.dryBulb(hour);
    double dewPoint = Math.min(year.dewPoint(hour), dryBulb);
    return MoistAir.wetBulb(
        dryBulb, MoistAir.humidityRatioFromDewPoint(dewPoint, pressure), pressure);
  }

  private HumidPoint humidPoint() {
    double dewPoint = passedIn(HUMID_FRACTION, year::dewPoint);
    IntPredicate reached = hour -> year.dewPoint(hour) >= dewPoint;
    IntPredicate isHumidDay =
        day -> IntStream.rangeClosed(hour(day, 1), hour(day, Hours.COUNT)).anyMatch(reached);
    return new HumidPoint(
        dewPoint,
        mean(hour -> Math.abs(year.dewPoint(hour) - dewPoint) <= BIN_K, year::dryBulb),
        busiestMonth(reached),
        meanOfDays(isHumidDay, this::highest),
        meanOfDays(isHumidDay, this::range));
  }

  private Winter winter() {
    double cold = passedIn(0.99, year::dryBulb);
    return new Winter(
        cold,
        passedIn(0.996, year::dryBulb),
        mean(hour -> year.dryBulb(hour) <= cold, year::windSpeed));
  }

  /**
   * The value that the given part of the hours lies above: the order statistic, not interpolated.
   */
  private static double passedIn(double fractionAbove, IntToDoubleFunction value) {
    double[] rising = IntStream.rangeClosed(1, WeatherYear.COUNT).mapToDouble(value).toArray();
    Arrays.sort(rising);
    int above = (int) Math.floor(fractionAbove * WeatherYear.COUNT);
    return rising[WeatherYear.COUNT - 1 - above];
  }

  /** The shape of the mean hot day, of hour means, stretched to reach from 0 to 1. */
  private Hours shape(IntPredicate isHotDay) {
    Hours curve = Hours.from(ending -> meanOfDays(isHotDay, day -> hourMean(hour(day, ending))));
    double peak = curve.max();
    double range = peak - curve.min();
    return curve.map(value -> (peak - value) / range);
  }

  /**
   * Temperatures are observed at the hour's end; its mean lies half way from the observation
   * before.
   */
  private double hourMean(int hour) {
    return (year.dryBulb(Math.max(1, hour - 1)) + year.dryBulb(hour)) / 2;
  }

  private DegreeDays degreeDays() {
    double heating = 0;
    double cooling = 0;
    for (int day = 1; day <= WeatherYear.COUNT / Hours.COUNT; day++) {
      Hours dryBulb = ofDay(day);
      double above = (dryBulb.max() + dryBulb.min()) / 2 - DegreeDays.BASE;
      heating += Math.max(0, -above);
      cooling += Math.max(0, above);
    }
    return new DegreeDays(heating, cooling);
  }

  private Months monthly(IntToDoubleFunction value) {
    return monthly(year, value);
  }

  /** Mean of a value over all hours of each month. */
  static Months monthly(WeatherYear year, IntToDoubleFunction value) {
    double[] sums = new double[Months.COUNT];
    int[] hours = new int[Months.COUNT];
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      int month = WeatherYear.monthOf(hour);
      sums[month - 1] += value.applyAsDouble(hour);
      hours[month - 1]++;
    }
    return Months.from(month -> sums[month - 1] / hours[month - 1]);
  }

  private static int busiestMonth(IntPredicate counts) {
    int[] hours = new int[Months.COUNT];
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      if (counts.test(hour)) {
        hours[WeatherYear.monthOf(hour) - 1]++;
      }
    }
    return Months.from(month -> hours[month - 1]).argMax();
  }

  private static double mean(IntPredicate counts, IntToDoubleFunction value) {
    return IntStream.rangeClosed(1, WeatherYear.COUNT)
        .filter(counts)
        .mapToDouble(value)
        .average()
        .orElseThrow();
  }

  private static double meanOfDays(IntPredicate counts, IntToDoubleFunction value) {
    return IntStream.rangeClosed(1, WeatherYear.COUNT / Hours.COUNT)
        .filter(counts)
        .mapToDouble(value)
        .average()
        .orElseThrow();
  }

  private double highest(int day) {
    return ofDay(day).max();
  }

  private double range(int day) {
    Hours dryBulb = ofDay(day);
    return dryBulb.max() - dryBulb.min();
  }

  private Hours ofDay(int day) {
    return Hours.from(ending -> year.dryBulb(hour(day, ending)));
  }

  private static int hour(int day, int ending) {
    return (day - 1) * Hours.COUNT + ending;
  }
}
