package org.shopclime.unit;

import java.util.Set;

/**
 * Published generic curves of a cooling unit: total capacity, and power per capacity, as fractions
 * of the rating, against the wet bulb of the air entering the coil, the outdoor dry bulb and the
 * indoor airflow.
 *
 * <p>Outside the tested range the nearest edge is held, and the result says which. The curves are
 * used as printed: at the rating point they give 0.994 to 1.009, not exactly 1.
 */
public final class CurveSet {

  /** Temperatures taken as an argument at all, °C; beyond it something else was meant. */
  private static final Range SENSIBLE_QUESTION = new Range(-100, 100);

  private final Biquadratic capacity;
  private final Biquadratic powerPerCapacity;
  private final AirflowCurves airflow;
  private final Range wetBulb;
  private final Range outdoor;

  private CurveSet(
      Biquadratic capacity,
      Biquadratic powerPerCapacity,
      AirflowCurves airflow,
      Range wetBulb,
      Range outdoor) {
    this.capacity = capacity;
    this.powerPerCapacity = powerPerCapacity;
    this.airflow = airflow;
    this.wetBulb = wetBulb;
    this.outdoor = outdoor;
  }

  /**
   * Window units: one generic set from laboratory tests of six units.
   *
   * <p>Source: NREL/TP-5500-57617 (2013), curves in °C; coefficients from memory, checked to give 1
   * within 0.006 at the rating point. The range held here, 57 to 73 °F entering wet bulb, 75 to 115
   * °F outdoors and 60 to 100 % of the airflow, is from memory too. Airflow has a published curve
   * for capacity only; power is taken as unmoved by airflow, as it is within 0.3 % in {@link
   * #residentialSingleSpeed()}. At a wet bulb of 57 °F the printed curves draw up to 10 % more
   * power than at the rating one, where the other set draws no more: kept as printed.
   *
   * @return the set
   */
  public static CurveSet windowUnit() {
    return new CurveSet(
        new Biquadratic(0.6405, 0.01568, 0.0004531, 0.001615, -0.0001825, 0.00006614),
        new Biquadratic(2.287, -0.1732, 0.004745, 0.01662, 0.000484, -0.001306),
        new WindowAirflow(),
        Range.ofFahrenheit(57, 73),
        Range.ofFahrenheit(75, 115));
  }

  /**
   * Single-speed residential air conditioners.
   *
   * <p>Source: NREL/TP-5500-56354 (2013), curves in °F, with its airflow curves; coefficients from
   * memory, checked to give 1 within 0.01 at the rating point. The range held here, 57 to 75 °F
   * entering wet bulb, 65 to 125 °F outdoors and 60 to 100 % of the airflow, is from memory too.
   *
   * @return the set
   */
  public static CurveSet residentialSingleSpeed() {
    return new CurveSet(
        new Biquadratic(
                3.670270705, -0.098652414, 0.000955906, 0.006552414, -0.0000156, -0.000131877)
            .fromFahrenheit(),
        new Biquadratic(
                -3.302695861, 0.137871531, -0.001056996, -0.012573945, 0.000214638, -0.000145054)
            .fromFahrenheit(),
        new ResidentialAirflow(),
        Range.ofFahrenheit(57, 75),
        Range.ofFahrenheit(65, 125));
  }

  /**
   * The curves at one state.
   *
   * @param enteringWetBulb wet bulb of the air entering the coil, °C, -100 to 100
   * @param outdoorDryBulb outdoor dry bulb, °C, -100 to 100
   * @param airflowFraction indoor airflow as a fraction of the clean one, above 0, to 1
   * @return fractions of the rating, with the edges that were held
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public Evaluation at(double enteringWetBulb, double outdoorDryBulb, double airflowFraction) {
    SENSIBLE_QUESTION.require("entering wet bulb", enteringWetBulb, "°C");
    SENSIBLE_QUESTION.require("outdoor dry bulb", outdoorDryBulb, "°C");
    if (!(airflowFraction > 0 && airflowFraction <= 1)) {
      throw new IllegalArgumentException(
          "airflow fraction " + airflowFraction + " is not above 0, to 1");
    }
    return new Evaluation(
        capacityRatio(enteringWetBulb, outdoorDryBulb) * capacityRatio(airflowFraction),
        powerPerCapacityRatio(enteringWetBulb, outdoorDryBulb)
            * powerPerCapacityRatio(airflowFraction),
        Limit.setOf(limitBits(enteringWetBulb, outdoorDryBulb) | limitBits(airflowFraction)));
  }

  /**
   * Lowest entering wet bulb of the tested range.
   *
   * @return °C
   */
  public double lowestWetBulb() {
    return wetBulb.low();
  }

  /**
   * Highest entering wet bulb of the tested range.
   *
   * @return °C
   */
  public double highestWetBulb() {
    return wetBulb.high();
  }

  /**
   * Lowest outdoor dry bulb of the tested range.
   *
   * @return °C
   */
  public double lowestOutdoor() {
    return outdoor.low();
  }

  /**
   * Highest outdoor dry bulb of the tested range.
   *
   * @return °C
   */
  public double highestOutdoor() {
    return outdoor.high();
  }

  /** Capacity fraction at full airflow; edges held, not told. */
  double capacityRatio(double enteringWetBulb, double outdoorDryBulb) {
    return capacity.at(wetBulb.nearest(enteringWetBulb), outdoor.nearest(outdoorDryBulb));
  }

  /** Power-per-capacity fraction at full airflow; edges held, not told. */
  double powerPerCapacityRatio(double enteringWetBulb, double outdoorDryBulb) {
    return powerPerCapacity.at(wetBulb.nearest(enteringWetBulb), outdoor.nearest(outdoorDryBulb));
  }

  /** What this airflow does to capacity; edge held, not told. */
  double capacityRatio(double airflowFraction) {
    return airflow.capacity(AirflowCurves.TESTED.nearest(airflowFraction));
  }

  /** What this airflow does to power per capacity; edge held, not told. */
  double powerPerCapacityRatio(double airflowFraction) {
    return airflow.powerPerCapacity(AirflowCurves.TESTED.nearest(airflowFraction));
  }

  /** The edges held at these temperatures, as bits of {@link Limit#bit}. */
  int limitBits(double enteringWetBulb, double outdoorDryBulb) {
    return wetBulb.bits(enteringWetBulb, Limit.WET_BULB_LOW, Limit.WET_BULB_HIGH)
        | outdoor.bits(outdoorDryBulb, Limit.OUTDOOR_LOW, Limit.OUTDOOR_HIGH);
  }

  /** The edge held at this airflow, as a bit of {@link Limit#bit}. */
  int limitBits(double airflowFraction) {
    return airflowFraction < AirflowCurves.TESTED.low() ? Limit.AIRFLOW_LOW.bit() : 0;
  }

  /**
   * The curves at one state.
   *
   * @param capacityRatio total capacity, fraction of the rated
   * @param powerPerCapacityRatio power drawn for each watt delivered, fraction of the rated
   * @param limits the edges that were held; empty inside the tested range
   */
  public record Evaluation(double capacityRatio, double powerPerCapacityRatio, Set<Limit> limits) {

    /** Copies the limits. */
    public Evaluation {
      limits = Limit.frozen(limits);
    }
  }
}
