package org.shopclime.balance;

import org.shopclime.climate.Station;
import org.shopclime.sun.SunAngles;

/**
 * Where the sun stands by another algorithm than the program's.
 *
 * <p>Source: J. W. Spencer, Fourier series representation of the position of the sun, Search 2(5),
 * 1971: declination to 0.04 degrees, equation of time to 35 s; altitude and azimuth by spherical
 * trigonometry, no refraction.
 */
final class SpencerSun {

  private final Station station;

  SpencerSun(Station station) {
    this.station = station;
  }

  private static double angle(int dayOfYear) {
    return 2 * Math.PI * (dayOfYear - 1) / 365;
  }

  /** Declination, rad. */
  private static double declination(int dayOfYear) {
    double b = angle(dayOfYear);
    return 0.006918
        - 0.399912 * Math.cos(b)
        + 0.070257 * Math.sin(b)
        - 0.006758 * Math.cos(2 * b)
        + 0.000907 * Math.sin(2 * b)
        - 0.002697 * Math.cos(3 * b)
        + 0.00148 * Math.sin(3 * b);
  }

  /** Local standard time at which the sun stands highest, h. */
  double noon(int dayOfYear) {
    double b = angle(dayOfYear);
    double minutes =
        229.18
            * (0.000075
                + 0.001868 * Math.cos(b)
                - 0.032077 * Math.sin(b)
                - 0.014615 * Math.cos(2 * b)
                - 0.04089 * Math.sin(2 * b));
    return 12 - minutes / 60 - (station.longitudeDeg() - 15 * station.timeZoneHours()) / 15;
  }

  /** From sunrise to noon without refraction, h. */
  double halfDay(int dayOfYear) {
    double latitude = Math.toRadians(station.latitudeDeg());
    double cosine = -Math.tan(latitude) * Math.tan(declination(dayOfYear));
    return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine)))) / 15;
  }

  /** Where it stands at a local standard time, h. */
  SunAngles at(int dayOfYear, double hour) {
    double latitude = Math.toRadians(station.latitudeDeg());
    double dec = declination(dayOfYear);
    double turn = Math.toRadians(15 * (hour - noon(dayOfYear)));
    double up =
        Math.sin(latitude) * Math.sin(dec) + Math.cos(latitude) * Math.cos(dec) * Math.cos(turn);
    double east = -Math.cos(dec) * Math.sin(turn);
    double north =
        Math.cos(latitude) * Math.sin(dec) - Math.sin(latitude) * Math.cos(dec) * Math.cos(turn);
    double azimuth = Math.toDegrees(Math.atan2(east, north));
    return new SunAngles(
        Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, up)))),
        azimuth < 0 ? azimuth + 360 : azimuth);
  }
}
