package org.shopclime.unit;

import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.quantity.Units;

/**
 * A single-speed cooling unit: its rating, and what it delivers in any air.
 *
 * <p>Total capacity and power are the rating times the published curves. The air leaving the coil
 * follows from a bypass factor, found once from the rated point by its UA, and the apparatus dew
 * point. Ratings are net: the heat of the indoor fan is inside the capacity, and the coil line is
 * drawn with it, which reads the coil a little warmer than it is. The fan moves a fixed volume of
 * entering air; the curves feel that volume only, so that at altitude the thinner air makes a
 * colder coil and a smaller bypass, but the capacity of the curves is kept (a few per cent too much
 * at 5,000 ft; common practice).
 */
public final class RoomUnit {

  /**
   * Indoor airflow of a usual unit for each watt of capacity, m³/s: 350 cfm for 12,000 BTU/h, the
   * middle of the 300 to 400 that laboratory tests and simulation protocols tell.
   */
  public static final double USUAL_AIRFLOW_PER_WATT =
      350 * Units.CUBIC_METRES_PER_SECOND_PER_CFM / Units.WATTS_PER_TON;

  /** Sensible heat ratio of a usual unit at the rating point, the middle of 0.65 to 0.75. */
  public static final double USUAL_SENSIBLE_HEAT_RATIO = 0.70;

  /** Least part of the clean airflow taken, 1; below it the indoor fan is as good as blocked. */
  public static final double LEAST_AIRFLOW_FRACTION = 0.3;

  private static final Range ENTERING_DRY_BULB = new Range(-20, 80);
  private static final Range OUTDOOR_DRY_BULB = new Range(-60, 80);
  private static final Range PRESSURE = new Range(60000, 110000);

  /** Wet bulb above dry bulb that still passes as rounding, K. */
  private static final double FOG = 0.01;

  private final double ratedCapacity;
  private final double ratedPower;
  private final double airflowFraction;
  private final double ratedAirflow;
  private final double ratedSensibleHeatRatio;
  private final CurveSet curves;
  private final Coil coil;
  private final double capacityAtThisAirflow;
  private final double powerPerCapacityAtThisAirflow;
  private final int airflowBits;

  /**
   * A unit by its rating.
   *
   * @param ratedCapacity net total capacity at the rating point, W, above 0
   * @param ratedPower power drawn there, W, above 0
   * @param airflowFraction part of the clean indoor airflow that is left, 0.3 to 1. It stands for
   *     less air through a clean coil; published results of dirty coils are worse (one third of the
   *     air lost to blockage told as 20 % of capacity; 100 g of fouling as efficiency falling to 67
   *     %, Ali and Ismail 2008)
   * @param ratedAirflow clean indoor airflow, m³/s, above 0
   * @param ratedSensibleHeatRatio sensible part of the capacity at the rating point, above 0, to 1
   * @param curves how it answers to temperatures and airflow
   * @throws IllegalArgumentException if a figure is outside its range or NaN, or no coil gives that
   *     sensible heat ratio with that airflow
   */
  public RoomUnit(
      double ratedCapacity,
      double ratedPower,
      double airflowFraction,
      double ratedAirflow,
      double ratedSensibleHeatRatio,
      CurveSet curves) {
    Figures.requirePositive("rated capacity", ratedCapacity, "W");
    Figures.requirePositive("rated power", ratedPower, "W");
    Figures.requirePositive("rated airflow", ratedAirflow, "m³/s");
    new Range(LEAST_AIRFLOW_FRACTION, 1).require("airflow fraction", airflowFraction, "");
    if (!(ratedSensibleHeatRatio > 0 && ratedSensibleHeatRatio <= 1)) {
      throw new IllegalArgumentException(
          "sensible heat ratio " + ratedSensibleHeatRatio + " is not above 0, to 1");
    }
    this.ratedCapacity = ratedCapacity;
    this.ratedPower = ratedPower;
    this.airflowFraction = airflowFraction;
    this.ratedAirflow = ratedAirflow;
    this.ratedSensibleHeatRatio = ratedSensibleHeatRatio;
    this.curves = curves;
    double asTheCurvesGive =
        curves.at(RatingPoint.INDOOR_WET_BULB, RatingPoint.OUTDOOR_DRY_BULB, 1).capacityRatio();
    this.coil =
        Coil.ofRating(ratedCapacity * asTheCurvesGive, ratedSensibleHeatRatio, ratedAirflow);
    this.capacityAtThisAirflow = ratedCapacity * curves.capacityRatio(airflowFraction);
    this.powerPerCapacityAtThisAirflow =
        ratedPower / ratedCapacity * curves.powerPerCapacityRatio(airflowFraction);
    this.airflowBits = curves.limitBits(airflowFraction);
  }

  /**
   * A clean window unit by capacity and energy efficiency ratio, else usual.
   *
   * @param capacity rated total capacity, W, above 0
   * @param eer cooling for each watt drawn at the rating point, W/W (BTU/Wh over 3.412), above 0
   * @return the unit
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public static RoomUnit windowUnitByEer(double capacity, double eer) {
    Figures.requirePositive("capacity", capacity, "W");
    Figures.requirePositive("EER", eer, "W/W");
    return usual(capacity, capacity / eer);
  }

  /**
   * A clean window unit by capacity and combined energy efficiency ratio, else usual; standby is
   * taken as {@link Ceer#USUAL_STANDBY}.
   *
   * @param capacity rated total capacity, W, above 0
   * @param ceer label figure, W/W (BTU/Wh over 3.412), above 0
   * @return the unit
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public static RoomUnit windowUnitByCeer(double capacity, double ceer) {
    return usual(capacity, Ceer.power(capacity, ceer, Ceer.USUAL_STANDBY));
  }

  private static RoomUnit usual(double capacity, double power) {
    return new RoomUnit(
        capacity,
        power,
        1,
        capacity * USUAL_AIRFLOW_PER_WATT,
        USUAL_SENSIBLE_HEAT_RATIO,
        CurveSet.windowUnit());
  }

  /**
   * The same unit with another part of its airflow left, by its own airflow curve.
   *
   * @param fraction part of the clean indoor airflow, 0.3 to 1
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public RoomUnit withAirflowFraction(double fraction) {
    return new RoomUnit(
        ratedCapacity, ratedPower, fraction, ratedAirflow, ratedSensibleHeatRatio, curves);
  }

  /**
   * The same unit with dust on its coil, by one end of a {@link DustBand} in place of its own
   * airflow curve: less air, capacity and efficiency as told there.
   *
   * @param dust the end of the band
   * @return the unit
   */
  public RoomUnit withDust(DustBand.End dust) {
    return new RoomUnit(
        this,
        dust.airflow(),
        ratedCapacity * curves.capacityRatio(1.0) * dust.capacity(),
        ratedPower / ratedCapacity * curves.powerPerCapacityRatio(1.0) / dust.efficiency(),
        curves.limitBits(dust.airflow()));
  }

  /**
   * What the unit does, running flat out.
   *
   * <p>Wet coil: h_adp = h_in - Q / (m (1 - BF)) on the saturation line, and the air leaves on the
   * line from entering to apparatus dew point, straight in enthalpy and humidity ratio. Where that
   * line would leave fog (nearly saturated entering air) the fog is taken to stay on the coil, and
   * the air leaves saturated with the same enthalpy.
   *
   * <p>Dry coil: where the entering air is drier than saturation at the apparatus dew point, no
   * water condenses, and the curves are read at the wet bulb at which air of the same dry bulb
   * would just wet the coil; all of it is sensible.
   *
   * @param outdoorDryBulb °C, -60 to 80
   * @param entering air drawn in from the room: -20 to 80 °C, 60 to 110 kPa, not fog (wet bulb at
   *     most 0.01 K above dry bulb)
   * @return capacity, power and leaving air
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public Delivered at(double outdoorDryBulb, AirState entering) {
    double t = entering.dryBulb();
    double w = entering.humidityRatio();
    double p = entering.pressure();
    OUTDOOR_DRY_BULB.require("outdoor dry bulb", outdoorDryBulb, "°C");
    ENTERING_DRY_BULB.require("entering dry bulb", t, "°C");
    PRESSURE.require("pressure", p, "Pa");
    double massFlow = ratedAirflow * airflowFraction * entering.dryAirDensity();
    double wetBulb = entering.wetBulb();
    if (!(wetBulb <= t + FOG)) {
      throw new IllegalArgumentException(
          "entering air is fog: wet bulb " + wetBulb + " °C, " + entering);
    }
    return new CoilPass(
            this, outdoorDryBulb, t, wetBulb, w, p, massFlow, coil.bypassFactor(massFlow))
        .delivered();
  }

  /**
   * A clean unit that gives exactly its label in the state it was rated in, which may be another
   * than the usual one on the condenser side.
   *
   * @param label capacity and power in that state, indoors as in {@link RatingPoint}
   * @param condenserDryBulb air entering the condenser in that state, °C
   * @param airflow clean indoor airflow, m³/s
   * @param sensibleHeatRatio sensible part at the usual rating point
   * @param curves how it answers to temperatures and airflow
   */
  static RoomUnit ofLabel(
      Rating label,
      double condenserDryBulb,
      double airflow,
      double sensibleHeatRatio,
      CurveSet curves) {
    CurveSet.Evaluation there = curves.at(RatingPoint.INDOOR_WET_BULB, condenserDryBulb, 1);
    double capacity = label.capacity() / there.capacityRatio();
    return new RoomUnit(
        capacity,
        capacity * label.power() / label.capacity() / there.powerPerCapacityRatio(),
        1,
        airflow,
        sensibleHeatRatio,
        curves);
  }

  /**
   * The same coil behind a compressor that turns slower: capacity, power per capacity and airflow
   * are these parts of what they were. Nothing is searched anew.
   */
  RoomUnit atPart(double capacity, double powerPerCapacity, double airflow) {
    return new RoomUnit(
        this,
        airflowFraction * airflow,
        capacityAtThisAirflow * capacity,
        powerPerCapacityAtThisAirflow * powerPerCapacity,
        airflowBits);
  }

  private RoomUnit(
      RoomUnit full, double airflowFraction, double capacity, double perCapacity, int airflowBits) {
    this.ratedCapacity = full.ratedCapacity;
    this.ratedPower = full.ratedPower;
    this.airflowFraction = airflowFraction;
    this.ratedAirflow = full.ratedAirflow;
    this.ratedSensibleHeatRatio = full.ratedSensibleHeatRatio;
    this.curves = full.curves;
    this.coil = full.coil;
    this.capacityAtThisAirflow = capacity;
    this.powerPerCapacityAtThisAirflow = perCapacity;
    this.airflowBits = airflowBits;
  }

  /**
   * Latent capacity at the rating point.
   *
   * @return W; 0 where all of it is sensible
   */
  public double ratedLatent() {
    return ratedCapacity * (1 - ratedSensibleHeatRatio);
  }

  /** Total capacity at this airflow, W; edges held. */
  double total(double wetBulb, double outdoor) {
    return capacityAtThisAirflow * curves.capacityRatio(wetBulb, outdoor);
  }

  /** Power drawn while delivering this total, W; edges held. */
  double power(double wetBulb, double outdoor, double total) {
    return total * powerPerCapacityAtThisAirflow * curves.powerPerCapacityRatio(wetBulb, outdoor);
  }

  /** What was held, or ices. */
  Set<Limit> limits(double wetBulb, double outdoor, double face) {
    int bits = airflowBits | curves.limitBits(wetBulb, outdoor);
    return Limit.setOf(face < 0 ? bits | Limit.COIL_ICES.bit() : bits);
  }

  /**
   * Net total capacity at the rating point.
   *
   * @return W
   */
  public double ratedCapacity() {
    return ratedCapacity;
  }

  /**
   * Power drawn at the rating point.
   *
   * @return W
   */
  public double ratedPower() {
    return ratedPower;
  }

  /**
   * Part of the clean indoor airflow that is left.
   *
   * @return 0.3 to 1
   */
  public double airflowFraction() {
    return airflowFraction;
  }

  /**
   * Clean indoor airflow.
   *
   * @return m³/s
   */
  public double ratedAirflow() {
    return ratedAirflow;
  }

  /**
   * Sensible part of the capacity at the rating point.
   *
   * @return above 0, to 1
   */
  public double ratedSensibleHeatRatio() {
    return ratedSensibleHeatRatio;
  }

  /**
   * How the unit answers to temperatures and airflow.
   *
   * @return the curves
   */
  public CurveSet curves() {
    return curves;
  }
}
