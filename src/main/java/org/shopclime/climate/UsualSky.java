package org.shopclime.climate;

import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.SunPosition;

/**
 * A clear sky of usual haze over a station, against which sunshine is told. It need not be the
 * station's own clear sky: what is told against it is laid out against it again.
 */
final class UsualSky {

  private static final double AEROSOL = 0.1;
  private static final double WATER_CM = 1.5;
  private static final double REFLECTANCE = 0.2;

  /** Pressure of the standard atmosphere, ICAO (1993): Pa, and its fall with elevation, per m. */
  private static final double SEA_LEVEL = 101_325;

  private static final double FALL = 2.25577e-5;
  private static final double POWER = 5.2559;

  /** Nearer to the horizon than this an hour is looked at in pieces. */
  private static final double EDGE_DEG = 12;

  private static final int PIECES = 6;

  private final Station station;
  private final double pressure;

  UsualSky(Station station) {
    this.station = station;
    pressure = SEA_LEVEL * Math.pow(1 - FALL * station.elevationM(), POWER);
  }

  /**
   * The sun of a clear hour, as means over the hour.
   *
   * @param global global horizontal irradiance, W/m²
   * @param direct direct normal irradiance, W/m²
   * @param height sine of the height from which the beam comes, 0 to 1
   */
  record Sun(double global, double direct, double height) {}

  /** The sun of a clear hour: day from 0, hour of the day from 0. */
  Sun at(int day, int of) {
    double middle = altitudeDeg(day, of + 0.5);
    if (Math.abs(middle) > EDGE_DEG) {
      ClearSky clear = clear(day, middle);
      return new Sun(
          clear.globalHorizontal(),
          clear.directNormal(),
          Math.max(0, Math.sin(Math.toRadians(middle))));
    }
    double global = 0;
    double direct = 0;
    double beam = 0;
    for (int i = 0; i < PIECES; i++) {
      double altitude = altitudeDeg(day, of + (i + 0.5) / PIECES);
      ClearSky clear = clear(day, altitude);
      global += clear.globalHorizontal() / PIECES;
      direct += clear.directNormal() / PIECES;
      beam += clear.directNormal() * Math.sin(Math.toRadians(altitude)) / PIECES;
    }
    return new Sun(global, direct, direct > 0 ? beam / direct : 0);
  }

  private double altitudeDeg(int day, double time) {
    return SunPosition.atStandardTime(
            WeatherYear.COMMON_YEAR,
            day + 1,
            time,
            station.timeZoneHours(),
            station.latitudeDeg(),
            station.longitudeDeg(),
            station.elevationM())
        .altitudeDeg();
  }

  private ClearSky clear(int day, double altitudeDeg) {
    return BirdClearSky.at(
        altitudeDeg,
        day + 1,
        pressure,
        BirdClearSky.USUAL_OZONE_CM,
        WATER_CM,
        AEROSOL,
        REFLECTANCE);
  }
}
