package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/**
 * A portable cooling unit that stands in the room and throws the air of its condenser out through a
 * hose.
 *
 * <p>With one hose that air is room air: as much outdoor air comes in through the leaks, and is
 * told as {@link RoomEffect#inducedAir}. With two hoses it is outdoor air. Case and hose are warm
 * and stand in the room, so a part of the heat thrown out comes back. Condensate is blown out with
 * the air, as these units do where they can. The condenser fan is taken to run with the compressor;
 * one that runs on draws in more.
 *
 * <p>Capacity follows the published set of window units with the air entering the condenser in the
 * place of outdoors ({@link CurveSet#windowUnit}): no curves of portable units are at hand.
 */
public final class PortableUnit implements RoomPlant {

  /**
   * Air through the condenser of a usual unit for each watt of capacity, m³/s: 300 cfm for 12,000
   * BTU/h; common practice, units being found from 200 to 400.
   */
  public static final double USUAL_CONDENSER_AIRFLOW_PER_WATT =
      300 * Units.CUBIC_METRES_PER_SECOND_PER_CFM / Units.WATTS_PER_TON;

  /**
   * Usual part of the heat thrown out that comes back through hose and case, 1: a bare hose of 7
   * ft² at 3 BTU/(h ft² °F), the film of 10 CFR 430 subpart B appendix CC (from memory), some 40 °F
   * above the room, beside 16,000 BTU/h thrown out.
   */
  public static final double USUAL_HEAT_BACK = 0.05;

  private static final Range PART = new Range(0, 1);

  private final RoomUnit unit;
  private final double roomAirPart;
  private final double condenserAirflow;
  private final double heatBack;
  private final Cycling cycling;

  private PortableUnit(
      RoomUnit unit,
      double roomAirPart,
      double condenserAirflow,
      double heatBack,
      Cycling cycling) {
    Figures.requirePositive("condenser airflow", condenserAirflow, "m³/s");
    PART.require("heat that comes back", heatBack, "");
    this.unit = unit;
    this.roomAirPart = roomAirPart;
    this.condenserAirflow = condenserAirflow;
    this.heatBack = heatBack;
    this.cycling = cycling;
  }

  /**
   * A usual unit with one hose.
   *
   * @param rating what the machine takes from room air of 80 °F dry and 67 °F wet bulb, its
   *     condenser breathing the same air, before anything is taken off for induced air and hose
   * @return the unit
   */
  public static PortableUnit oneHose(Rating rating) {
    return new PortableUnit(
        machine(rating, RatingPoint.INDOOR_DRY_BULB),
        1,
        rating.capacity() * USUAL_CONDENSER_AIRFLOW_PER_WATT,
        USUAL_HEAT_BACK,
        Cycling.usual());
  }

  /**
   * A usual unit with two hoses, tight.
   *
   * @param rating what the machine takes from the same room air, its condenser breathing outdoor
   *     air of 95 °F
   * @return the unit
   */
  public static PortableUnit twoHoses(Rating rating) {
    return new PortableUnit(
        machine(rating, RatingPoint.OUTDOOR_DRY_BULB),
        0,
        rating.capacity() * USUAL_CONDENSER_AIRFLOW_PER_WATT,
        USUAL_HEAT_BACK,
        Cycling.usual());
  }

  private static RoomUnit machine(Rating rating, double condenserDryBulb) {
    return RoomUnit.ofLabel(
        rating,
        condenserDryBulb,
        rating.capacity() * RoomUnit.USUAL_AIRFLOW_PER_WATT,
        RoomUnit.USUAL_SENSIBLE_HEAT_RATIO,
        CurveSet.windowUnit());
  }

  /**
   * The same unit with other air through its condenser.
   *
   * @param cubicMetresPerSecond volume as it enters, m³/s, above 0
   * @return the unit
   * @throws IllegalArgumentException if not above 0, infinite or NaN
   */
  public PortableUnit withCondenserAirflow(double cubicMetresPerSecond) {
    return new PortableUnit(unit, roomAirPart, cubicMetresPerSecond, heatBack, cycling);
  }

  /**
   * The same unit whose condenser draws another part of its air from the room, as one with two
   * leaky hoses does.
   *
   * @param part 0 (all from outdoors) to 1 (all from the room)
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public PortableUnit withRoomAirPart(double part) {
    PART.require("room air through the condenser", part, "");
    return new PortableUnit(unit, part, condenserAirflow, heatBack, cycling);
  }

  /**
   * The same unit with another hose.
   *
   * @param part part of the heat thrown out that comes back into the room, 0 to 1
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public PortableUnit withHeatBack(double part) {
    return new PortableUnit(unit, roomAirPart, condenserAirflow, part, cycling);
  }

  /**
   * The same unit with a dusty coil.
   *
   * @param fraction part of the clean indoor airflow, 0.3 to 1
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public PortableUnit withAirflowFraction(double fraction) {
    return new PortableUnit(
        unit.withAirflowFraction(fraction), roomAirPart, condenserAirflow, heatBack, cycling);
  }

  /**
   * The same unit with dust on its coil, see {@link RoomUnit#withDust}.
   *
   * @param dust one end of a band
   * @return the unit
   */
  public PortableUnit withDust(DustBand.End dust) {
    return new PortableUnit(unit.withDust(dust), roomAirPart, condenserAirflow, heatBack, cycling);
  }

  /**
   * The same unit running on and off in another way.
   *
   * @param how how it does
   * @return the unit
   */
  public PortableUnit withCycling(Cycling how) {
    return new PortableUnit(unit, roomAirPart, condenserAirflow, heatBack, how);
  }

  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    Mixed air = new Mixed(this, room, outdoor);
    Delivered flatOut = unit.at(air.dryBulb(), room);
    RoomEffect tight = RoomEffect.ofCoil(flatOut, demand, cycling, unit.ratedLatent(), room);
    double back = heatBack * tight.elsewhere().heatOutdoors();
    return new RoomEffect(
        tight.sensible() + back,
        tight.water(),
        tight.runFraction() * air.fromRoom(),
        0,
        tight.power(),
        tight.runFraction(),
        new Elsewhere(
            tight.elsewhere().heatOutdoors() - back, tight.elsewhere().waterOutdoors(), 0, 0),
        tight.limits());
  }

  /**
   * Air at the end of the hose while the unit runs flat out, the condensate blown out with it.
   *
   * @param room air of the room
   * @param outdoor outdoor air, at the same pressure
   * @return its state; fog where it is cold outdoors and the room is damp
   * @throws IllegalArgumentException as {@link #at}
   */
  public AirState exhaust(AirState room, AirState outdoor) {
    RoomEffect effect = at(room, outdoor, 1);
    Mixed air = new Mixed(this, room, outdoor);
    double mass = air.fromRoom() + air.fromOutdoors();
    double humidityRatio = air.humidityRatio() + effect.elsewhere().waterOutdoors() / mass;
    double enthalpy = air.enthalpy() + effect.elsewhere().heatOutdoors() / mass;
    return new AirState(
        MoistAir.dryBulbFromEnthalpy(enthalpy, humidityRatio), humidityRatio, room.pressure());
  }

  /**
   * Air entering the condenser.
   *
   * @param fromRoom dry air, kg/s
   * @param fromOutdoors dry air, kg/s
   * @param humidityRatio of the mixture, kg/kg
   * @param enthalpy of the mixture, J/kg
   */
  private record Mixed(
      double fromRoom, double fromOutdoors, double humidityRatio, double enthalpy) {

    Mixed(PortableUnit of, AirState room, AirState outdoor) {
      this(
          of.roomAirPart * of.condenserAirflow * room.dryAirDensity(),
          (1 - of.roomAirPart) * of.condenserAirflow * outdoor.dryAirDensity(),
          room,
          outdoor);
    }

    private Mixed(double fromRoom, double fromOutdoors, AirState room, AirState outdoor) {
      this(
          fromRoom,
          fromOutdoors,
          (fromRoom * room.humidityRatio() + fromOutdoors * outdoor.humidityRatio())
              / (fromRoom + fromOutdoors),
          (fromRoom * room.enthalpy() + fromOutdoors * outdoor.enthalpy())
              / (fromRoom + fromOutdoors));
    }

    double dryBulb() {
      return MoistAir.dryBulbFromEnthalpy(enthalpy, humidityRatio);
    }
  }
}
