package org.shopclime.airline;

import org.shopclime.air.MoistAir;

/**
 * A dryer with a drying agent: two towers of which one is always being dried with a part of the dry
 * air, or a cartridge that is thrown away or baked.
 *
 * <p>Source: dew point -40 °F and 15 to 20 % of the air for purge: common practice of heatless
 * twin-tower dryers; a cartridge of silica gel holds about a fifth of its weight (common practice).
 *
 * <p>Limits: as long as the agent is not full. Hot or oily air spoils it.
 *
 * @param dewPoint pressure dew point it reaches, °C, -80 to 10
 * @param purgeShare part of the air let go to dry the agent, 0 (a cartridge) to 0.5
 * @param site where it stands
 */
public record Desiccant(double dewPoint, double purgeShare, LineSite site) implements LinePart {

  /** Usual dew point, °C (-40 °F). */
  public static final double USUAL_DEW_POINT = -40;

  /** Usual purge of two towers. */
  public static final double USUAL_PURGE = 0.175;

  /** Water a cartridge of silica gel takes up, kg for each kg of gel. */
  public static final double GEL_HOLDS = 0.2;

  /** Refuses what is outside the ranges above. */
  public Desiccant {
    Check.within("dew point of the desiccant, °C,", dewPoint, -80, 10);
    Check.within("purge share", purgeShare, 0, 0.5);
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    double left = Math.min(in.humidityRatio(), LineAir.capacity(dewPoint, in.pressure()));
    LineAir out = new LineAir(in.celsius(), in.pressure(), left);
    double held = flow.mean() * (in.humidityRatio() - left);
    // In towers the purge takes the water away as vapour, so no heat stays; in a cartridge it does.
    double heat = purgeShare > 0 ? 0 : held * heatOfHolding(in.celsius());
    return new LineStep(
        LineStep.Where.DRYER, out, flow.mean(), 0, held, flow.mean() * purgeShare, heat, 0, site);
  }

  /**
   * How long a cartridge lasts.
   *
   * @param gelMass drying agent in it, kg, 0 to 1000
   * @param step what became of the air in it
   * @return hours of such work; infinite where there is nothing to hold
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double hours(double gelMass, LineStep step) {
    Check.within("mass of gel, kg,", gelMass, 0, 1000);
    return step.held() > 0 ? gelMass * GEL_HOLDS / step.held() / 3600 : Double.POSITIVE_INFINITY;
  }

  /** Heat left in the agent by vapour it takes up as if it were liquid, J/kg. */
  private static double heatOfHolding(double celsius) {
    return MoistAir.LATENT_HEAT
        + (MoistAir.SPECIFIC_HEAT_VAPOUR - MoistAir.SPECIFIC_HEAT_WATER) * celsius;
  }
}
