package org.shopclime.unit;

/**
 * Where the heat and water of a plant go, or come from, beside its room. Signed: positive leaves
 * the plant, negative is taken from there.
 *
 * @param heatOutdoors enthalpy to the outdoors with air, casing and what drips or blows off there,
 *     W, counted as in {@link org.shopclime.air.MoistAir#enthalpy}
 * @param waterOutdoors water to the outdoors, kg/s
 * @param waterPiped liquid water to a drain or bucket, or (negative) from the tap, kg/s
 * @param heatPiped the heat that water carries, liquid at 0 °C carrying none, W
 */
public record Elsewhere(
    double heatOutdoors, double waterOutdoors, double waterPiped, double heatPiped) {

  /** Nothing goes anywhere but into the room. */
  public static final Elsewhere NOTHING = new Elsewhere(0, 0, 0, 0);
}
