package org.shopclime.balance;

import org.shopclime.air.MoistAir;
import org.shopclime.climate.HotDay;
import org.shopclime.sun.SkyTemperature;

/** Air and sky over a day, as the outer faces see them, by the hour and in the mean. */
final class DaySky {

  private final Profile air;
  private final Profile sky;
  private final double meanAir;
  private final double meanAirFourth;
  private final double meanSkyFourth;

  private DaySky(Profile air, Profile sky) {
    this.air = air;
    this.sky = sky;
    meanAir = air.mean();
    meanAirFourth = Profile.of(hour -> Surroundings.fourth(air.at(hour))).mean();
    meanSkyFourth = Profile.of(hour -> Surroundings.fourth(sky.at(hour))).mean();
  }

  /** Clear sky of a day. */
  static DaySky of(HotDay day) {
    return of(day, 0);
  }

  /** Sky of a day of which clouds cover a part, 0 to 1. */
  static DaySky of(HotDay day, double opaqueCloud) {
    Profile air = Profile.of(hour -> day.dryBulb().at(hour));
    return new DaySky(
        air,
        Profile.of(
            hour -> {
              double dewPoint = MoistAir.dewPoint(day.humidityRatio().at(hour), day.pressure());
              double dry = air.at(hour);
              return SkyTemperature.clarkAllen(dry, Math.min(dewPoint, dry), opaqueCloud);
            }));
  }

  /** Temperature that stands for air, sky and ground before a face in an hour ending 1 to 24. */
  double before(Piece.Outdoors outdoors, double mean, int hour) {
    return Surroundings.before(outdoors, mean, air.at(hour), sky.at(hour));
  }

  /** The same in the mean of the day, which is linear in the fourth powers. */
  double meanBefore(Piece.Outdoors outdoors, double mean) {
    return Surroundings.before(outdoors, mean, meanAir, meanAirFourth, meanSkyFourth);
  }
}
