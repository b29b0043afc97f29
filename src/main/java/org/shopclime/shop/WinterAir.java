package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * How moist a room's air is in winter, for the look at damp walls.
 *
 * @param moisture what is made of moisture, by class
 * @param humidity relative humidity in the months in which the room is heated, 0 to 1; absent: by
 *     the class
 */
public record WinterAir(
    @Say(
            label = "Moisture in winter",
            help =
                "Classes of ISO 13788: 1 dry store, 2 shop or office, 3 many people or unknown, 4 kitchen"
                    + " or wet work.",
            otherwise = "class 2")
        HumidityClass moisture,
    @Say(
            label = "Humidity in winter",
            help = "What a meter shows while the room is heated; takes the place of the class.",
            kind = Kind.FRACTION,
            min = 0.05,
            max = 0.95,
            usualMin = 0.2,
            usualMax = 0.7,
            otherwise = "none")
        Optional<Double> humidity) {

  /**
   * Air of which nothing is said.
   *
   * @return class 2
   */
  static WinterAir unsaid() {
    return new WinterAir(HumidityClass.CLASS_2, Optional.empty());
  }
}
