package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * Where the shop stands and which hot day counts.
 *
 * @param station station number or name in the climate tables
 * @param level how rare the hot day is
 * @param typedPeak highest temperature of the day the owner fears, °C; replaces the station's
 * @param typedCold coldest night the owner fears, °C; replaces the station's winter temperature
 * @param groundReflectance part of the sun the ground throws back, 0 to 1
 * @param shelter what stands between the shop and the wind
 * @param airDensity density of the outdoor air that leaks and fans bring in, kg/m³, all year;
 *     absent: by its temperature, moisture and pressure
 */
public record Place(
    @Say(label = "Weather station", help = "Number or name, such as 722230 or Mobile.")
        String station,
    @Say(
            label = "Hot day",
            help = "How rare the day is: 1 % is passed in about 88 hours of a usual year.",
            otherwise = "1 %")
        HotDayLevel level,
    @Say(
            label = "Hottest hour, if you set it",
            help =
                "Type the day you fear, such as {101 °F|38 °C}; range and moisture stay the station's.",
            kind = Kind.TEMPERATURE,
            min = 10,
            max = 60,
            usualMin = 25,
            usualMax = 50,
            otherwise = "none")
        Optional<Double> typedPeak,
    @Say(
            label = "Coldest night, if you set it",
            help =
                "Type the cold you fear, such as {10 °F|-12 °C}; without it the station's 99 % counts, less"
                    + " what a typical year leaves out.",
            kind = Kind.TEMPERATURE,
            min = -60,
            max = 20,
            usualMin = -40,
            usualMax = 10,
            otherwise = "none")
        Optional<Double> typedCold,
    @Say(
            label = "Sun thrown back by the ground",
            help = "20 % for grass or soil, 30 % for pale concrete.",
            kind = Kind.FRACTION,
            max = 0.9,
            otherwise = "20 %")
        double groundReflectance,
    @Say(label = "Wind shelter", help = "What stands around the shop.", otherwise = "typical")
        Shelter shelter,
    @Say(
            label = "Density of outdoor air, if you set it",
            help = "For air changes told at one density; leave empty to reckon it hour by hour.",
            kind = Kind.DENSITY,
            min = 0.5,
            max = 1.6,
            otherwise = "none")
        Optional<Double> airDensity) {

  /**
   * A place whose air is as dense as its weather makes it.
   *
   * @param station station number or name in the climate tables
   * @param level how rare the hot day is
   * @param typedPeak highest temperature of the day the owner fears, °C
   * @param typedCold coldest night the owner fears, °C
   * @param groundReflectance part of the sun the ground throws back, 0 to 1
   * @param shelter what stands between the shop and the wind
   */
  public Place(
      String station,
      HotDayLevel level,
      Optional<Double> typedPeak,
      Optional<Double> typedCold,
      double groundReflectance,
      Shelter shelter) {
    this(station, level, typedPeak, typedCold, groundReflectance, shelter, Optional.empty());
  }
}
