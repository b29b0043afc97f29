package org.shopclime.balance;

import java.util.List;
import org.shopclime.climate.WeatherYear;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Part;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.SunAngles;

/** Light of a recorded year on a face, kWh/m²: the program's, and by {@link SpencerSun}. */
final class YearSunSums {

  private static final double GROUND = 0.2;
  private static final int PER_HOUR = 12;

  /** Altitude of the sun's middle as its upper edge rises, refraction counted, degrees. */
  private static final double RISES = -0.833;

  private final WeatherYear year;
  private final SpencerSun sun;

  YearSunSums(WeatherYear year) {
    this.year = year;
    this.sun = new SpencerSun(year.station());
  }

  /** The program's sum. */
  static double engine(YearWeather weather, double tilt, double azimuth) {
    Part part = tilt == 90 ? Part.WALL : Part.ROOF;
    List<Piece> pieces =
        SkeletonMaker.of(
                TestShops.shop(
                    TestShops.room(
                        "Shop",
                        RoomUse.COOLED,
                        20,
                        2.5,
                        TestShops.WISHED,
                        TestShops.face(
                            "Face",
                            part,
                            "outdoors",
                            azimuth,
                            tilt,
                            4,
                            4,
                            TestShops.insulation(5)))),
                Season.COOLING)
            .pieces();
    return new YearSun(pieces, weather, GROUND).incident((Piece.Outdoors) pieces.get(0).outside());
  }

  /** By the sun of Spencer, so many hours ahead, and the program's model of the sky. */
  double withSameSky(double tilt, double azimuth, double shift) {
    return sum(
        shift,
        (day, at, direct, diffuse) ->
            PerezSky.on(tilt, azimuth, at, direct, diffuse, day, GROUND).total());
  }

  /** By the sun of Spencer and an evenly bright sky (Liu and Jordan 1963). */
  double withEvenSky(double tilt, double azimuth) {
    double slope = Math.cos(Math.toRadians(tilt));
    return sum(
        0,
        (day, at, direct, diffuse) -> {
          double height = Math.max(0, Math.sin(Math.toRadians(at.altitudeDeg())));
          double beam = direct * Math.max(0, at.cosineOn(tilt, azimuth));
          return beam
              + diffuse * (1 + slope) / 2
              + GROUND * (diffuse + direct * height) * (1 - slope) / 2;
        });
  }

  private interface Light {
    double on(int day, SunAngles sun, double direct, double diffuse);
  }

  private double sum(double shift, Light light) {
    double sum = 0;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      double direct = year.directNormal(hour + 1);
      double diffuse = year.diffuseHorizontal(hour + 1);
      if (direct + diffuse > 0) {
        int day = hour / 24 + 1;
        double part = 0;
        int up = 0;
        for (int i = 0; i < PER_HOUR; i++) {
          SunAngles at = sun.at(day, hour % 24 + (i + 0.5) / PER_HOUR + shift);
          if (at.altitudeDeg() > RISES) {
            part += light.on(day, at, direct, diffuse);
            up++;
          }
        }
        sum += up == 0 ? 0 : part / up;
      }
    }
    return sum / 1000;
  }
}
