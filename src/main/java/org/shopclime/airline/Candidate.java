package org.shopclime.airline;

import java.util.List;

/**
 * A place to be ranked, with the figures of its worst working hour.
 *
 * @param name what the owner calls it
 * @param hazards what excludes it; none if safe
 * @param placePeak hottest working hour where the machine stands, °C
 * @param placeLimit the most its machine takes, °C
 * @param indoorPeak hottest judged hour in the shop, °C
 * @param indoorLimit the most at which the shop counts as held, °C
 * @param pressureDewPoint worst pressure dew point before the coldest stretch, °C
 * @param coldest that stretch, °C
 * @param kilowattHours electricity of compressor, fan and cooling, kWh over the time compared
 */
public record Candidate(
    String name,
    List<Hazard> hazards,
    double placePeak,
    double placeLimit,
    double indoorPeak,
    double indoorLimit,
    double pressureDewPoint,
    double coldest,
    double kilowattHours) {

  /** Keeps a copy; refuses what is not a number. */
  public Candidate {
    hazards = List.copyOf(hazards);
    Check.within("hottest hour of the place, °C,", placePeak, -100, 1e6);
    Check.within("limit of the machine, °C,", placeLimit, -100, 1e6);
    Check.within("hottest hour of the shop, °C,", indoorPeak, -100, 1e6);
    Check.within("limit of the shop, °C,", indoorLimit, -100, 1e6);
    Check.within("pressure dew point, °C,", pressureDewPoint, -100, 200);
    Check.within("coldest stretch, °C,", coldest, -100, 200);
    Check.within("electricity, kWh,", kilowattHours, -1e9, 1e9);
  }
}
