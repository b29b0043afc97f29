package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.SunPosition;

/**
 * Finds the aerosol depth of a station whose hourly file does not tell it. With none at all the
 * clear-sky beam would come out 12 to 15 % too strong.
 *
 * <p>The nearest station within 150 km that tells it lends its own. Farther off, the clear-sky
 * model is turned round: each hour near noon with little cloud has a depth at which the model gives
 * its recorded beam, and the month takes the depth that one in five of these hours undercuts. The
 * middle one would be too hazy, as cloud reported as none often is some.
 *
 * <p>Error: at 99 stations that do tell their depth, turning round gave a noon beam 1 % stronger in
 * the mean in July than their own depth does, with a spread of 5 % (April 4 and 4 %, August 0 and 6
 * %); in cloudy winters it can be a third too weak.
 */
public final class AerosolFill {
  /** Farthest station whose aerosol depth is taken over, km. */
  public static final double FARTHEST_KM = 150;

  private static final double NOON_HALF_WIDTH_H = 2;
  private static final double LOWEST_SUN_DEG = 10;
  private static final int HOURS_ENOUGH = 12;
  private static final double CLEARER_PART = 0.2;

  /** Of grass and soil; it moves the diffuse part only, not the beam used here. */
  private static final double ALBEDO = 0.2;

  private AerosolFill() {}

  /**
   * The aerosol depth that a file tells.
   *
   * @param year a typical year
   * @return monthly means, or nothing where the depth is zero in every hour
   */
  public static Optional<Aerosol> own(WeatherYear year) {
    return year.hasAerosol()
        ? Optional.of(
            new Aerosol(StationStatistics.monthly(year, year::aerosol), new AerosolSource.Own()))
        : Optional.empty();
  }

  /**
   * The aerosol depth of a station, from the best source there is.
   *
   * @param year its typical year
   * @param telling stations whose files tell the depth, with their monthly means
   * @return depth and source
   */
  public static Aerosol of(WeatherYear year, Map<Station, Months> telling) {
    return own(year).or(() -> neighbour(year.station(), telling)).orElseGet(() -> inverted(year));
  }

  /** The depth that the nearest station within reach lends. */
  static Optional<Aerosol> neighbour(Station station, Map<Station, Months> telling) {
    return telling.entrySet().stream()
        .filter(other -> distance(station, other.getKey()) <= FARTHEST_KM)
        .min(
            Comparator.<Map.Entry<Station, Months>>comparingDouble(
                    other -> distance(station, other.getKey()))
                .thenComparing(other -> other.getKey().id()))
        .map(
            other ->
                new Aerosol(
                    other.getValue(),
                    new AerosolSource.Neighbour(
                        other.getKey().id(), distance(station, other.getKey()))));
  }

  private static double distance(Station one, Station other) {
    return one.distanceKm(other.latitudeDeg(), other.longitudeDeg());
  }

  /**
   * The aerosol depth that makes the clear-sky model give the recorded beam.
   *
   * @param year a typical year
   * @return depth of each month; a month whose sun stays below 10 degrees takes that of the nearest
   *     month
   */
  public static Aerosol inverted(WeatherYear year) {
    Map<Integer, Double> found = new HashMap<>();
    for (int month = 1; month <= Months.COUNT; month++) {
      List<NoonHour> hours = clearest(year, month);
      if (!hours.isEmpty()) {
        double[] depths = hours.stream().mapToDouble(AerosolFill::depth).sorted().toArray();
        found.put(month, depths[(int) Math.round(CLEARER_PART * (depths.length - 1))]);
      }
    }
    if (found.isEmpty()) {
      throw new IllegalArgumentException("no sun at noon all year at " + year.station().id());
    }
    return new Aerosol(
        Months.from(month -> found.get(nearest(month, found))), new AerosolSource.Inverted());
  }

  /** An hour near noon: what the model needs to give its beam, and the beam recorded. */
  record NoonHour(
      int hour,
      int month,
      double altitudeDeg,
      double cloud,
      double pressure,
      double water,
      double recorded) {
    double modelled(double depth) {
      return BirdClearSky.at(
              altitudeDeg,
              WeatherYear.dayOf(hour),
              pressure,
              BirdClearSky.USUAL_OZONE_CM,
              water,
              depth,
              ALBEDO)
          .directNormal();
    }
  }

  /** The dozen hours near noon with least cloud; more where as many are alike. */
  static List<NoonHour> clearest(WeatherYear year, int month) {
    List<NoonHour> hours = new ArrayList<>();
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      if (WeatherYear.monthOf(hour) == month && isNearNoon(year.station(), hour)) {
        NoonHour noon = noonHour(year, hour, month);
        if (noon.altitudeDeg() >= LOWEST_SUN_DEG && noon.recorded() > 0) {
          hours.add(noon);
        }
      }
    }
    hours.sort(Comparator.comparingDouble(NoonHour::cloud));
    if (hours.size() <= HOURS_ENOUGH) {
      return hours;
    }
    double least = hours.get(HOURS_ENOUGH - 1).cloud();
    return hours.stream().filter(hour -> hour.cloud() <= least).toList();
  }

  private static boolean isNearNoon(Station station, int hour) {
    double middle = WeatherYear.hourEnding(hour) - 0.5;
    double solar = middle + station.longitudeDeg() / 15 - station.timeZoneHours();
    return Math.abs(solar - 12) <= NOON_HALF_WIDTH_H;
  }

  private static NoonHour noonHour(WeatherYear year, int hour, int month) {
    Station station = year.station();
    double altitude =
        SunPosition.atStandardTime(
                WeatherYear.COMMON_YEAR,
                WeatherYear.dayOf(hour),
                WeatherYear.hourEnding(hour) - 0.5,
                station.timeZoneHours(),
                station.latitudeDeg(),
                station.longitudeDeg(),
                station.elevationM())
            .altitudeDeg();
    return new NoonHour(
        hour,
        month,
        altitude,
        year.totalCloud(hour),
        year.pressure(hour),
        year.precipitableWaterCm(hour),
        year.directNormal(hour));
  }

  /**
   * The depth at which the model gives the hour's beam, by halving; the beam falls as depth rises.
   */
  private static double depth(NoonHour hour) {
    double clean = 0;
    double hazy = 1;
    for (int i = 0; i < 30; i++) {
      double middle = (clean + hazy) / 2;
      if (hour.modelled(middle) > hour.recorded()) {
        clean = middle;
      } else {
        hazy = middle;
      }
    }
    return (clean + hazy) / 2;
  }

  private static int nearest(int month, Map<Integer, Double> found) {
    return found.keySet().stream()
        .min(
            Comparator.<Integer>comparingInt(other -> apart(month, other))
                .thenComparing(Comparator.naturalOrder()))
        .orElseThrow();
  }

  /** Months between two, the year being a circle. */
  private static int apart(int month, int other) {
    int straight = Math.abs(month - other);
    return Math.min(straight, Months.COUNT - straight);
  }
}
