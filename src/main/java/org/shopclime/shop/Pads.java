package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * What an evaporative cooler blows through its wet pads.
 *
 * @param airflow outdoor air drawn in, m³/s
 * @param effectiveness part of the way from outdoor dry bulb to wet bulb that the pads reach, 0 to
 *     1
 * @param power power of blower and pump, W; absent: by the airflow
 */
public record Pads(
    @Say(
            label = "Airflow",
            help = "What the label says{, in cfm|; cfm may be typed}.",
            kind = Kind.AIR_FLOW,
            min = 0.02,
            max = 20,
            usualMin = 0.2,
            usualMax = 5)
        double airflow,
    @Say(
            label = "Pads cool",
            help =
                "Part of the way down to the wet bulb: 70 % through thin worn pads, 90 % through deep"
                    + " new ones.",
            kind = Kind.FRACTION,
            min = 0.2,
            max = 1,
            usualMin = 0.5,
            usualMax = 0.95,
            otherwise = "80 %")
        double effectiveness,
    @Say(
            label = "Blower and pump",
            help = "Leave empty for {0.14 W for each cfm|0.083 W for each m³/h}.",
            kind = Kind.POWER,
            min = 1,
            max = 20000,
            otherwise = "none")
        Optional<Double> power) {

  /** Power for each m³/s, W: a third of a horsepower and a pump for 3,000 cfm (common practice). */
  private static final double USUAL_POWER = 300;

  /**
   * Power drawn.
   *
   * @return of blower and pump, W
   */
  public double watts() {
    return power.orElse(USUAL_POWER * airflow);
  }
}
