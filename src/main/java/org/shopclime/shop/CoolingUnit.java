package org.shopclime.shop;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.quantity.Kind;

/**
 * The cooling unit.
 *
 * @param room name of the room it cools; empty: the first cooled room
 * @param kind what kind of unit it is
 * @param capacity rated total capacity, W; 0 of an evaporative cooler, which has no such label
 * @param capacityLabel which rating the capacity is
 * @param efficiency rated cooling for each watt drawn, W/W
 * @param label which rating the efficiency is
 * @param volts supply, V
 * @param airflow part of the clean indoor airflow that dust leaves, 0 to 1
 * @param supply the circuit it hangs on, where anything of it is known
 * @param pads what an evaporative cooler blows
 * @param heating how a heat pump heats; absent: as a usual one
 * @param fan its indoor fan where that runs on while the compressor rests; absent: it stops too
 */
public record CoolingUnit(
    @Say(
            label = "Cools",
            help = "Name of the room; leave empty for the first cooled one.",
            otherwise = "-")
        String room,
    @Say(
            label = "Kind",
            help =
                "A portable unit: see which of two figures its capacity is. An evaporative (swamp)"
                    + " cooler: see its pads.",
            otherwise = "window")
        UnitKind kind,
    @Say(
            label = "Rated capacity",
            help =
                "The {BTU/h|watts or BTU/h} on the label; leave empty for an evaporative cooler.",
            kind = Kind.POWER,
            max = 100000,
            usualMin = 1400,
            usualMax = 11000,
            zeroIsUnsaid = true,
            otherwise = "0 W")
        double capacity,
    @Say(
            label = "That capacity is",
            help =
                "SACC (on cartons also DOE): of portable units alone, the smaller of two figures, and"
                    + " the better one to type. The larger one is rated, before hose and the air"
                    + " drawn in.",
            otherwise = "rated")
        CapacityLabel capacityLabel,
    @Say(
            label = "Efficiency",
            help =
                "EER or CEER on the label, SEER2 (or SEER) of a heat pump{, BTU for each watt-hour|, divided by 3.41; or typed as it stands there, with BTU/Wh}.",
            kind = Kind.EFFICIENCY,
            min = 1,
            max = 12,
            usualMin = 2,
            usualMax = 5,
            otherwise = "10.9 BTU/Wh")
        double efficiency,
    @Say(
            label = "That figure is",
            help = "SEER2 is on heat pumps alone: a mean of the season, far above the EER.",
            otherwise = "ceer")
        EfficiencyLabel label,
    @Say(
            label = "Volts",
            help = "On its label.",
            kind = Kind.VOLTAGE,
            min = 100,
            max = 480,
            otherwise = "115 V")
        double volts,
    @Say(
            label = "Airflow left by dust",
            help = "100 % with a clean coil and filter.",
            kind = Kind.FRACTION,
            min = 0.3,
            max = 1,
            otherwise = "100 %",
            unknown = {"60 %", "85 %", "100 %"},
            lowIsKind = false)
        Span airflow,
    @Say(
            label = "Circuit",
            help = "What it hangs on; for cautions only, nothing is designed.",
            otherwise = "none")
        Optional<Supply> supply,
    @Say(
            label = "Pads",
            help = "An evaporative cooler only: what it blows into the room.",
            otherwise = "none")
        Optional<Pads> pads,
    @Say(
            label = "Heating (heat pump)",
            help = "A heat pump only: what its papers say of winter.",
            otherwise = "none")
        Optional<PumpHeat> heating,
    @Say(
            label = "Fan that runs on",
            help =
                "Only where the fan goes on blowing while the compressor rests: it warms the room and"
                    + " blows water off the coil back into it.",
            otherwise = "none")
        Optional<UnitFan> fan) {

  /**
   * A window unit of whose circuit nothing is said.
   *
   * @param room name of the room it cools; empty: the first cooled room
   * @param capacity rated total capacity, W
   * @param efficiency rated cooling for each watt drawn, W/W
   * @param label which rating the efficiency is
   * @param volts supply, V
   * @param airflow part of the clean indoor airflow that dust leaves, 0 to 1
   */
  public CoolingUnit(
      String room,
      double capacity,
      double efficiency,
      EfficiencyLabel label,
      double volts,
      Span airflow) {
    this(
        room,
        UnitKind.WINDOW,
        capacity,
        CapacityLabel.RATED,
        efficiency,
        label,
        volts,
        airflow,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The same with another airflow.
   *
   * @param airflow part of the clean indoor airflow that dust leaves, 0 to 1
   * @return the changed record
   */
  public CoolingUnit withAirflow(Span airflow) {
    return (CoolingUnit) ShopParts.with(this, "airflow", airflow);
  }

  /**
   * The same with another room.
   *
   * @param room name of the room it cools
   * @return the changed record
   */
  public CoolingUnit withRoom(String room) {
    return (CoolingUnit) ShopParts.with(this, "room", room);
  }

  /**
   * The same with another capacity.
   *
   * @param capacity rated total capacity, W
   * @return the changed record
   */
  public CoolingUnit withCapacity(double capacity) {
    return (CoolingUnit) ShopParts.with(this, "capacity", capacity);
  }

  /**
   * The same on another circuit.
   *
   * @param supply the circuit it hangs on
   * @return the changed record
   */
  public CoolingUnit withSupply(Optional<Supply> supply) {
    return (CoolingUnit) ShopParts.with(this, "supply", supply);
  }

  /**
   * The same of another kind.
   *
   * @param other kind
   * @return the changed record
   */
  public CoolingUnit withKind(UnitKind other) {
    return (CoolingUnit) ShopParts.with(this, "kind", other);
  }

  /**
   * An evaporative cooler in the place of this unit.
   *
   * @param blown what it blows
   * @return the changed record
   */
  public CoolingUnit withPads(Pads blown) {
    return new CoolingUnit(
        room,
        UnitKind.EVAPORATIVE,
        0,
        CapacityLabel.RATED,
        efficiency,
        label,
        volts,
        airflow,
        supply,
        Optional.of(blown),
        heating,
        fan);
  }

  /**
   * Whether it blows outdoor air through wet pads.
   *
   * @return true of an evaporative cooler
   */
  public boolean isEvaporative() {
    return kind == UnitKind.EVAPORATIVE;
  }

  /**
   * The same heating in another way.
   *
   * @param other how a heat pump heats
   * @return the changed record
   */
  public CoolingUnit withHeating(Optional<PumpHeat> other) {
    return (CoolingUnit) ShopParts.with(this, "heating", other);
  }

  /**
   * The same with another fan.
   *
   * @param other its indoor fan where that runs on while the compressor rests
   * @return the changed record
   */
  public CoolingUnit withFan(Optional<UnitFan> other) {
    return (CoolingUnit) ShopParts.with(this, "fan", other);
  }

  /**
   * Power of a fan that runs on; a typed one is taken to grow with the capacity.
   *
   * @param ofCapacity rated total capacity of a unit like it, W
   * @return W; nothing where it stops with the compressor, or there is no coil
   */
  public OptionalDouble fanBetweenRuns(double ofCapacity) {
    return fan.isEmpty() || isEvaporative()
        ? OptionalDouble.empty()
        : OptionalDouble.of(fan.get().watts(capacity) * ofCapacity / capacity);
  }

  /**
   * Whether it is a heat pump.
   *
   * @return true of both kinds
   */
  public boolean isHeatPump() {
    return kind == UnitKind.HEAT_PUMP || kind == UnitKind.VARIABLE_HEAT_PUMP;
  }

  /**
   * How it heats in winter.
   *
   * @return nothing of a unit that only cools
   */
  public Optional<PumpHeat> winterHeat() {
    return Optional.of(heating.orElseGet(PumpHeat::usual))
        .filter(each -> isHeatPump() && each.winter() == PumpWinter.HEATS);
  }

  /** Rated capacity for each SACC, where only that is told; high, so that amps are not too few. */
  private static final double RATED_OF_SACC = 1.7;

  /** EER at 95 °F for each SEER2, where only that is told; low, so that amps are not too few. */
  private static final double EER_OF_SEER2 = 0.55;

  /**
   * Whether its capacity is told as it is left after hose and air drawn in.
   *
   * @return true of a portable unit by its SACC
   */
  public boolean isAdjusted() {
    return capacityLabel == CapacityLabel.SACC && isPortable();
  }

  /**
   * Whether it is a portable unit.
   *
   * @return true with one hose or two
   */
  public boolean isPortable() {
    return kind == UnitKind.PORTABLE_ONE_HOSE || kind == UnitKind.PORTABLE_TWO_HOSES;
  }

  /**
   * The same unit by the figures of the machine in it, before hose and air drawn in.
   *
   * @param rated rated total capacity, W
   * @param eer cooling for each watt drawn, W/W
   * @return the changed record
   */
  public CoolingUnit asRated(double rated, double eer) {
    return new CoolingUnit(
        room,
        kind,
        rated,
        CapacityLabel.RATED,
        eer,
        EfficiencyLabel.EER,
        volts,
        airflow,
        supply,
        pads,
        heating,
        fan);
  }

  /**
   * Power drawn as its label has it. Of a SEER2, and of an EER beside a SACC, it is a cautious
   * guess, for what a circuit carries.
   *
   * @return W
   */
  public double ratedPower() {
    if (isEvaporative()) {
      return pads.map(Pads::watts).orElse(0.0);
    }
    double inTheHeat = label == EfficiencyLabel.SEER2 ? EER_OF_SEER2 * efficiency : efficiency;
    boolean smaller = isAdjusted() && label == EfficiencyLabel.EER;
    return (smaller ? RATED_OF_SACC : 1) * capacity / inTheHeat;
  }
}
