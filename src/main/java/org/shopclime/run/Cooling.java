package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.unit.Compressor;
import org.shopclime.unit.CoolingSeason;
import org.shopclime.unit.Cycling;
import org.shopclime.unit.DuctlessHeatPump;
import org.shopclime.unit.DustBand;
import org.shopclime.unit.EvaporativeCooler;
import org.shopclime.unit.FanRunsOn;
import org.shopclime.unit.HeatingSeason;
import org.shopclime.unit.PortableUnit;
import org.shopclime.unit.Rating;
import org.shopclime.unit.RoomPlant;
import org.shopclime.unit.RoomUnit;
import org.shopclime.unit.StandardSizes;

/** A cooling unit in a room of the shop. */
public final class Cooling {

  /** Which rating an efficiency is. */
  public enum Label {
    /** Cooling for each watt-hour while running. */
    EER,
    /** The same with a year's standby added. */
    CEER,
    /** Cooling of a season for what it draws in it: of heat pumps only. */
    SEER2
  }

  /** What kind of unit it is. */
  public enum Kind {
    /** In a window or through the wall. */
    WINDOW,
    /**
     * On wheels, throwing room air out through one hose; its label before anything is taken off.
     */
    PORTABLE_ONE_HOSE,
    /** On wheels, with a hose for outdoor air in and one for it out. */
    PORTABLE_TWO_HOSES,
    /** Ductless, one speed. */
    HEAT_PUMP,
    /** Ductless, of variable speed. */
    VARIABLE_HEAT_PUMP
  }

  /** What lost airflow comes with. */
  public enum Dust {
    /** Less air through a clean coil: the kind end of {@link DustBand}. */
    LESS_AIR,
    /** A dirty coil: the unkind end. */
    DIRTY_COIL;

    /**
     * Capacity lost at the rating point.
     *
     * @param airflow part of the clean airflow that is left, 0.3 to 1
     * @return part of the clean capacity
     */
    public double capacityLost(double airflow) {
      return end(airflow).capacityGivenBack();
    }

    /**
     * Electricity for the same cooling beyond that of the clean unit.
     *
     * @param airflow part of the clean airflow that is left, 0.3 to 1
     * @return part of the clean unit's
     */
    public double extraEnergy(double airflow) {
      return end(airflow).energy() - 1;
    }

    private DustBand.End end(double airflow) {
      DustBand band = new DustBand(1 - airflow);
      return this == DIRTY_COIL ? band.unkind() : band.kind();
    }
  }

  /**
   * A label, and how dusty the unit is.
   *
   * @param capacity rated total capacity, W
   * @param efficiency rated cooling for each watt, W/W
   * @param label which rating that is
   * @param airflow part of the clean indoor airflow that dust leaves, 0.3 to 1
   * @param dust what that comes with
   * @param fan power of an indoor fan that runs on while the compressor stands, W; nothing where it
   *     stops with it
   */
  public record Plate(
      double capacity,
      double efficiency,
      Label label,
      double airflow,
      Dust dust,
      OptionalDouble fan) {

    /**
     * A label, its lost airflow that of a clean coil.
     *
     * @param capacity rated total capacity, W
     * @param efficiency rated cooling for each watt, W/W
     * @param label which rating that is
     * @param airflow part of the clean indoor airflow that dust leaves, 0.3 to 1
     */
    public Plate(double capacity, double efficiency, Label label, double airflow) {
      this(capacity, efficiency, label, airflow, Dust.LESS_AIR);
    }

    /**
     * A label of a unit whose fan stops with the compressor.
     *
     * @param capacity rated total capacity, W
     * @param efficiency rated cooling for each watt, W/W
     * @param label which rating that is
     * @param airflow part of the clean indoor airflow that dust leaves, 0.3 to 1
     * @param dust what that comes with
     */
    public Plate(double capacity, double efficiency, Label label, double airflow, Dust dust) {
      this(capacity, efficiency, label, airflow, dust, OptionalDouble.empty());
    }

    /**
     * The same with a fan that runs on while the compressor stands.
     *
     * @param watts power of the fan, W, above 0, less than the unit draws
     * @return the label
     */
    public Plate withFan(double watts) {
      return new Plate(capacity, efficiency, label, airflow, dust, OptionalDouble.of(watts));
    }

    /** The end of the band, where the coil is dirty. */
    private Optional<DustBand.End> dirt() {
      return dust == Dust.DIRTY_COIL ? Optional.of(dust.end(airflow)) : Optional.empty();
    }
  }

  /** Heat for each watt at 47 °F of a heat pump of which nothing is said; common practice. */
  public static final double USUAL_COP = 3.6;

  /**
   * How a heat pump heats.
   *
   * @param capacity heat at 47 °F outdoors, W, above 0
   * @param hspf2 heat of its label's season for the electricity drawn, W/W; nothing: {@value
   *     #USUAL_COP} W for each watt at 47 °F
   * @param lowestOutdoor lowest outdoor temperature at which it heats, °C, -60 to 20
   */
  public record Heat(double capacity, OptionalDouble hspf2, double lowestOutdoor) {}

  /**
   * What heats in winter; nothing is reckoned before it is asked for.
   *
   * @param cooling rating in cooling
   * @param compressor one speed or variable
   * @param heat its figures in heating
   */
  private record Winter(Rating cooling, Compressor compressor, Heat heat) {

    /** Heat for each watt at 47 °F. */
    double cop() {
      return heat.hspf2().isPresent()
          ? HeatingSeason.copAt47(
              cooling,
              heat.capacity(),
              compressor,
              heat.lowestOutdoor(),
              heat.hspf2().getAsDouble())
          : USUAL_COP;
    }

    RoomPlant plant() {
      return DuctlessHeatPump.usual(cooling, Rating.ofCop(heat.capacity(), cop()), compressor)
          .withLowestOutdoor(heat.lowestOutdoor())
          .heating();
    }
  }

  /** Asks a unit for all it can do. */
  private interface Plant {
    Able at(double outdoorDryBulb, double outdoorHumidityRatio, AirState room);
  }

  /** Water of any cold air, kg/kg; heating does not ask for it. */
  private static final double DRY = 0.0001;

  private final Plant plant;
  private final int room;

  /** What blows outdoor air in; nothing of a unit with a coil. */
  private final Optional<EvaporativeCooler> pads;

  /** What heats in winter; nothing of a unit that only cools. */
  private final Optional<Winter> winter;

  private Cooling(
      Plant plant, int room, Optional<EvaporativeCooler> pads, Optional<Winter> winter) {
    this.plant = plant;
    this.room = room;
    this.pads = pads;
    this.winter = winter;
  }

  /**
   * A unit of some kind from its label.
   *
   * @param kind its kind
   * @param room index of the room it cools
   * @param plate its label
   * @return the unit in its room
   */
  public static Cooling of(Kind kind, int room, Plate plate) {
    return new Cooling(plant(kind, plate), room, Optional.empty(), Optional.empty());
  }

  /**
   * A heat pump from its labels, which heats its room too.
   *
   * @param kind one speed or variable
   * @param room index of its room
   * @param plate its label in cooling; dust is felt there only
   * @param heat its figures in heating
   * @return the unit in its room
   * @throws IllegalArgumentException if that kind is no heat pump
   */
  public static Cooling heatPump(Kind kind, int room, Plate plate, Heat heat) {
    if (kind != Kind.HEAT_PUMP && kind != Kind.VARIABLE_HEAT_PUMP) {
      throw new IllegalArgumentException(kind + " is no heat pump");
    }
    Compressor compressor = compressor(kind);
    return new Cooling(
        plant(kind, plate),
        room,
        Optional.empty(),
        Optional.of(new Winter(rating(kind, plate), compressor, heat)));
  }

  private static RoomUnit window(Plate plate) {
    return plate.label() == Label.CEER
        ? RoomUnit.windowUnitByCeer(plate.capacity(), plate.efficiency())
        : RoomUnit.windowUnitByEer(plate.capacity(), plate.efficiency());
  }

  private static Compressor compressor(Kind kind) {
    return kind == Kind.VARIABLE_HEAT_PUMP ? Compressor.variableSpeed() : Compressor.singleSpeed();
  }

  private static Rating rating(Kind kind, Plate plate) {
    if (plate.label() != Label.SEER2) {
      return new Rating(plate.capacity(), window(plate).ratedPower());
    }
    if (kind != Kind.HEAT_PUMP && kind != Kind.VARIABLE_HEAT_PUMP) {
      throw new IllegalArgumentException(kind + " has no SEER2");
    }
    return Rating.ofCop(
        plate.capacity(),
        CoolingSeason.eer(plate.capacity(), compressor(kind), plate.efficiency()));
  }

  private static Plant plant(Kind kind, Plate plate) {
    Rating rating = rating(kind, plate);
    return switch (kind) {
      case WINDOW -> {
        RoomUnit window = window(plate);
        RoomUnit dusty =
            plate.dirt().map(window::withDust).orElse(window.withAirflowFraction(plate.airflow()));
        yield withFan((outdoor, water, air) -> Able.of(dusty.at(outdoor, air)), plate);
      }
      case PORTABLE_ONE_HOSE -> onOff(dusty(PortableUnit.oneHose(rating), plate), plate);
      case PORTABLE_TWO_HOSES -> onOff(dusty(PortableUnit.twoHoses(rating), plate), plate);
      case HEAT_PUMP ->
          onOff(heatPump(rating, plate, Compressor.singleSpeed(), Cycling.usual()), plate);
      case VARIABLE_HEAT_PUMP -> {
        double fan = plate.fan().orElse(0);
        Cycling cycling =
            fan > 0 ? Cycling.usual().withFanRunningOn(FanRunsOn.usual(fan)) : Cycling.usual();
        RoomPlant pump = heatPump(rating, plate, Compressor.variableSpeed(), cycling);
        yield (outdoor, water, air) ->
            Able.variable(pump, air, new AirState(outdoor, water, air.pressure()), fan);
      }
    };
  }

  private static Plant onOff(RoomPlant plant, Plate plate) {
    return withFan(
        (outdoor, water, air) ->
            Able.onOff(plant, air, new AirState(outdoor, water, air.pressure())),
        plate);
  }

  /** Its coil is taken to be that of a window unit of the same capacity. */
  private static Plant withFan(Plant plant, Plate plate) {
    if (plate.fan().isEmpty()) {
      return plant;
    }
    FanRunsOn fan = FanRunsOn.usual(plate.fan().getAsDouble());
    double latent = window(plate).ratedLatent();
    return (outdoor, water, air) ->
        plant.at(outdoor, water, air).withFanOver(fan.over(latent, air));
  }

  private static PortableUnit dusty(PortableUnit clean, Plate plate) {
    return plate.dirt().map(clean::withDust).orElse(clean.withAirflowFraction(plate.airflow()));
  }

  /** How it heats is not asked here, so its heating label may be any. */
  private static RoomPlant heatPump(
      Rating rating, Plate plate, Compressor compressor, Cycling cycling) {
    DuctlessHeatPump clean =
        DuctlessHeatPump.usual(rating, rating, compressor).withCycling(cycling);
    return plate
        .dirt()
        .map(clean::withDust)
        .orElse(clean.withAirflowFraction(plate.airflow()))
        .cooling();
  }

  /**
   * A window unit from its label.
   *
   * @param room index of the room it cools
   * @param capacity rated total capacity, W
   * @param efficiency rated cooling for each watt, W/W
   * @param label which rating that is
   * @param airflow part of the clean indoor airflow that dust leaves, 0.3 to 1
   * @return the unit in its room
   */
  public static Cooling window(
      int room, double capacity, double efficiency, Label label, double airflow) {
    return of(Kind.WINDOW, room, new Plate(capacity, efficiency, label, airflow));
  }

  /**
   * An evaporative cooler.
   *
   * @param room index of the room it cools
   * @param airflow outdoor air drawn in, m³/s, above 0
   * @param power power of blower and pump, W, above 0
   * @param effectiveness part of the way to the outdoor wet bulb that the pads reach, above 0, to 1
   * @return the cooler in its room
   */
  public static Cooling evaporative(int room, double airflow, double power, double effectiveness) {
    EvaporativeCooler pads =
        new EvaporativeCooler(airflow, power, effectiveness, EvaporativeCooler.USUAL_BLEED);
    return new Cooling(
        (outdoor, water, air) ->
            Able.inProportion(pads, air, new AirState(outdoor, water, air.pressure())),
        room,
        Optional.of(pads),
        Optional.empty());
  }

  /**
   * Air that a cooler blows in.
   *
   * @param dryBulb of outdoor air, °C
   * @param humidityRatio of outdoor air, kg/kg
   * @param pressure Pa
   * @return °C; that of outdoor air for a unit with a coil, or where the pads would freeze
   */
  public double supplyTemperature(double dryBulb, double humidityRatio, double pressure) {
    Blown blown = blown(dryBulb, humidityRatio, pressure);
    return blown.dryAir() == 0 ? dryBulb : blown.dryBulb();
  }

  /**
   * Water that a cooler draws from the tap, evaporated and bled, running all the time.
   *
   * @param dryBulb of outdoor air, °C
   * @param humidityRatio of outdoor air, kg/kg
   * @param pressure Pa
   * @return kg/s; 0 for a unit with a coil, or where the pads would freeze
   */
  public double waterUsed(double dryBulb, double humidityRatio, double pressure) {
    return blown(dryBulb, humidityRatio, pressure).waterUsed();
  }

  /** Whether it cools by blowing outdoor air in. */
  boolean blows() {
    return pads.isPresent();
  }

  /** What it blows in, running all the time; nothing of a unit with a coil. */
  Blown blown(double outdoorDryBulb, double outdoorHumidityRatio, double pressure) {
    AirState outdoor = new AirState(outdoorDryBulb, outdoorHumidityRatio, pressure);
    if (pads.isEmpty() || Math.min(outdoor.wetBulb(), outdoorDryBulb) < 0) {
      return Blown.NOTHING;
    }
    EvaporativeCooler.Supply supply = pads.get().supply(outdoor);
    return new Blown(
        supply.dryAir(), supply.air().dryBulb(), supply.air().humidityRatio(), supply.waterUsed());
  }

  /** What heats its room; nothing of a unit that only cools. */
  Optional<RoomPlant> heater() {
    return winter.map(Winter::plant);
  }

  /**
   * Whether it heats its room in winter.
   *
   * @return true of a heat pump whose heating is told
   */
  public boolean heats() {
    return winter.isPresent();
  }

  /**
   * Heat for each watt at 47 °F outdoors that is taken where no usual unit makes the label.
   *
   * @return W/W, the nearest there is; nothing where the label can be made or none is told
   */
  public OptionalDouble heldAt47() {
    double cop = winter.map(Winter::cop).orElse(USUAL_COP);
    return cop > HeatingSeason.LEAST_COP && cop < HeatingSeason.MOST_COP
        ? OptionalDouble.empty()
        : OptionalDouble.of(cop);
  }

  /**
   * Heat it can give its room in the cold, running all the time.
   *
   * @param indoor air of the room, °C
   * @param outdoor outdoor air, °C
   * @return W; 0 where it stands, or only cools
   */
  public double heatAt(double indoor, double outdoor) {
    return heater()
        .map(
            plant ->
                plant
                    .at(
                        new AirState(indoor, DRY, MoistAir.STANDARD_PRESSURE),
                        new AirState(outdoor, DRY, MoistAir.STANDARD_PRESSURE),
                        1)
                    .sensible())
        .orElse(0.0);
  }

  /**
   * Index of the room it cools.
   *
   * @return from 0
   */
  public int room() {
    return room;
  }

  /**
   * What it can do.
   *
   * @param outdoorDryBulb °C
   * @param outdoorHumidityRatio kg/kg
   * @param air air of the room
   */
  Able at(double outdoorDryBulb, double outdoorHumidityRatio, AirState air) {
    return plant.at(outdoorDryBulb, outdoorHumidityRatio, air);
  }

  /**
   * The sizes window units are sold in.
   *
   * @return rated total capacity, W, rising
   */
  public static List<Double> sizes() {
    return StandardSizes.watts();
  }
}
