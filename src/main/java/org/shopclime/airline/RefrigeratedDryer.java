package org.shopclime.airline;

/**
 * A refrigerated dryer, derated from the point at which it is rated.
 *
 * <p>It can take out so much heat: at its rating point, that of its rated flow from saturated inlet
 * air to its dew point. Hotter, wetter or more air asks for more, and hotter surroundings leave it
 * less; then its dew point rises to where both are equal.
 *
 * <p>Source: rating point 100 °F inlet, 100 psig, 100 °F ambient: Compressed Air and Gas Institute,
 * ADF 100. Less heat taken out in hotter surroundings by 0.6 % for each °F, as of small
 * refrigeration (the mean of published curves of room units). The factors of the trade for inlet
 * temperature (0.82 at 110, 0.65 at 120 °F) follow from the heat by themselves ({@code
 * DryerPublishedTest}).
 *
 * <p>Limits: three quarters of the cooling is given back to its own outlet air (common practice),
 * which moves the temperature of the air but not its water. Above 110 °F ambient or 120 °F inlet
 * such dryers switch off (common practice): see {@link LineCaution}.
 *
 * @param ratedFlow standard air at its rating point, m³/s, 1e-4 to 1
 * @param dewPoint pressure dew point at its rating point, °C, 1 to 20
 * @param electricWatts power it draws, W, 0 to 1e5
 * @param site where it stands
 */
public record RefrigeratedDryer(
    double ratedFlow, double dewPoint, double electricWatts, LineSite site) implements LinePart {

  /** Inlet air at the rating point, saturated, °C (100 °F). */
  public static final double RATED_INLET = Trade.celsius(100);

  /** Pressure at the rating point, Pa above the air around (100 psig). */
  public static final double RATED_PRESSURE = 100 * Trade.PSI;

  /** Air around at the rating point, °C (100 °F). */
  public static final double RATED_AMBIENT = Trade.celsius(100);

  /** Highest temperature around, °C (110 °F), common practice. */
  public static final double MOST_AMBIENT = Trade.celsius(110);

  /** Highest inlet temperature, °C (120 °F), common practice. */
  public static final double MOST_INLET = Trade.celsius(120);

  /** Usual pressure dew point, °C (38 °F). */
  public static final double USUAL_DEW_POINT = Trade.celsius(38);

  private static final double STANDARD_PRESSURE = 101_325;
  private static final double LOST_PER_KELVIN = 0.006 * 1.8;
  private static final double WATTS_PER_FLOW = 16 / Trade.CFM;
  private static final double REHEAT = 0.75;
  private static final double SMALL = 1e-10;

  /** Refuses what is outside the ranges above. */
  public RefrigeratedDryer {
    Check.within("rated flow of the dryer, m³/s,", ratedFlow, 1e-4, 1);
    Check.within("dew point of the dryer, °C,", dewPoint, 1, 20);
    Check.within("power of the dryer, W,", electricWatts, 0, 1e5);
  }

  /**
   * A usual dryer: 38 °F, 16 W for each cfm (common practice of small ones).
   *
   * @param ratedFlow standard air at its rating point, m³/s, 1e-4 to 1
   * @param site where it stands
   * @return it
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static RefrigeratedDryer usual(double ratedFlow, LineSite site) {
    return new RefrigeratedDryer(ratedFlow, USUAL_DEW_POINT, ratedFlow * WATTS_PER_FLOW, site);
  }

  /**
   * Heat it can take out of air.
   *
   * @param ambient air around it, °C, -50 to 150
   * @return W; less where it is hotter, never less than nothing
   */
  public double capacity(double ambient) {
    LineAir rated = new LineAir(RATED_INLET, STANDARD_PRESSURE + RATED_PRESSURE, 1).at(RATED_INLET);
    double full = ratedFlow * ToolUse.STANDARD_DENSITY * LineStep.taken(rated, rated.at(dewPoint));
    return full * Math.max(0, 1 - LOST_PER_KELVIN * (ambient - RATED_AMBIENT));
  }

  /**
   * Flow it dries to its rated dew point.
   *
   * @param inlet air that comes
   * @param ambient air around it, °C, -50 to 150
   * @return standard air, m³/s; infinite where the air comes as cold as that
   */
  public double flowAt(LineAir inlet, double ambient) {
    double heat = LineStep.taken(inlet, inlet.at(Math.min(dewPoint, inlet.celsius())));
    return heat > 0
        ? capacity(ambient) / heat / ToolUse.STANDARD_DENSITY
        : Double.POSITIVE_INFINITY;
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    LineAir cold = in.at(coldest(in, flow.drawing(), capacity(around.at(site))));
    double celsius = cold.celsius() + REHEAT * (in.celsius() - cold.celsius());
    LineAir out = new LineAir(celsius, in.pressure(), cold.humidityRatio());
    double dropped = in.humidityRatio() - out.humidityRatio();
    double heat = flow.mean() * LineStep.taken(in, out) + electricWatts;
    return new LineStep(
        LineStep.Where.DRYER,
        out,
        flow.mean(),
        flow.mean() * dropped,
        0,
        0,
        heat,
        electricWatts,
        site);
  }

  /** Temperature to which it can bring the air, °C. */
  private double coldest(LineAir in, double drawing, double capacity) {
    double low = Math.min(dewPoint, in.celsius());
    double high = in.celsius();
    if (drawing * LineStep.taken(in, in.at(low)) <= capacity) {
      return low;
    }
    while (high - low > SMALL) {
      double middle = (low + high) / 2;
      if (drawing * LineStep.taken(in, in.at(middle)) > capacity) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
