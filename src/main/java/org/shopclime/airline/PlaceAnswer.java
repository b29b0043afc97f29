package org.shopclime.airline;

import java.util.List;
import org.shopclime.balance.Profile;

/**
 * What becomes of the compressor, the shop and the air line with the machine in one place, on the
 * hot day as it is lived.
 *
 * @param placement the place
 * @param ranked its rank, its hazards and the criterion that put it there
 * @param air air where the machine stands, °C, each hour
 * @param peakHour hour ending 1 to 24 of the hottest working hour there
 * @param duty part of the time the machine runs, each hour, 0 or more
 * @param toRoom sensible heat that the work room gets by the machine in this place, against a shop
 *     without it, W, each hour, either sign
 * @param roomLoad the most of {@code toRoom} in a working hour, W
 * @param holds whether the shop's unit holds; false where there is no unit
 * @param indoorPeak hottest judged hour of the work room, °C
 * @param indoorPeakHour its hour ending 1 to 24
 * @param tankWater water that drops out at the machine in the worst working hour, g/h
 * @param lineWater water that drops out in pipe and hose in that hour, g/h
 * @param litresToDrain water of all parts over the day, litres
 * @param pressureDewPoint worst pressure dew point before the coldest stretch, °C
 * @param coldestStretch temperature of that stretch in that hour, °C
 * @param compressorKilowattHours electricity of the machine, its dryers and fans over the day, kWh
 * @param coolingKilowattHours electricity of the shop's unit over the day, kWh
 * @param winterHeat mean heat that the work room gets by the machine in this place over the working
 *     hours of the winter design day, W, either sign
 * @param cautions figures out of what the machine is made for, in its worst hour
 */
public record PlaceAnswer(
    Placement placement,
    Ranking.Ranked ranked,
    Profile air,
    int peakHour,
    Profile duty,
    Profile toRoom,
    double roomLoad,
    boolean holds,
    double indoorPeak,
    int indoorPeakHour,
    double tankWater,
    double lineWater,
    double litresToDrain,
    double pressureDewPoint,
    double coldestStretch,
    double compressorKilowattHours,
    double coolingKilowattHours,
    double winterHeat,
    List<LineCaution> cautions) {

  /** Keeps a copy. */
  public PlaceAnswer {
    cautions = List.copyOf(cautions);
  }

  /**
   * Hottest working hour where the machine stands.
   *
   * @return °C
   */
  public double placePeak() {
    return air.at(peakHour);
  }
}
