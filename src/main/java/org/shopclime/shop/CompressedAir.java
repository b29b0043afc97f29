package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * What an owner can say of the compressor and its line beside the heat from work it stands among.
 * All of it may be left out.
 *
 * @param stages how often the machine compresses
 * @param freeAir air it delivers, m³/s of air as it is drawn in; absent: usual for its power
 * @param pressure mean pressure in its tank, Pa above the air around; absent: usual
 * @param tank volume of its tank, m³; absent: usual for its power
 * @param tools what uses the air
 * @param toolsDraw what they draw, as part of what is usual for them in that time, 0.1 to 5; a
 *     fourth more or less where nobody measured it: makers' figures differ as much, common practice
 * @param coldest coldest stretch of the line in working hours, °C; absent: the air of the room, or
 *     that of the unit's cold stream where there is a unit
 * @param intake where it draws its air
 * @param aftercooler whether a cooler sits before the tank
 * @param dropLeg length of metal pipe before the hose, m
 * @param dryer dryer in the line
 * @param closetWidth width of a closet for it, m
 * @param closetDepth depth of that closet, m
 * @param closetHeight height of that closet, m
 * @param openRoofRise how much warmer than the air outdoors it is around the machine under an open
 *     roof, K
 * @param fumes whether solvent fumes or powder hang in the air of the room
 * @param flame whether a flame or things that burn are where it would stand in the room
 */
public record CompressedAir(
    @Say(
            label = "Stages",
            help = "One or two cylinders in a row; unknown: two from {5 hp|3.7 kW} on.",
            otherwise = "don't know")
        PumpStages stages,
    @Say(
            label = "Free air delivered",
            help = "The {cfm|flow} on its plate; leave empty for what is usual for its power.",
            kind = Kind.AIR_FLOW,
            min = 1e-4,
            max = 1,
            usualMax = 0.1,
            otherwise = "none")
        Optional<Double> freeAir,
    @Say(
            label = "Tank pressure",
            help = "Between cut-in and cut-out; leave empty for what is usual.",
            kind = Kind.PRESSURE,
            min = 1e5,
            max = 1.5e6,
            usualMin = 4e5,
            usualMax = 1.3e6,
            otherwise = "none")
        Optional<Double> pressure,
    @Say(
            label = "Tank",
            help = "Leave empty for what is usual for its power.",
            kind = Kind.VOLUME,
            min = 0.001,
            max = 10,
            usualMax = 1,
            otherwise = "none")
        Optional<Double> tank,
    @Say(
            label = "Tools: time they draw air in a working hour",
            help = "All at 0 min: by the part of the time the compressor runs.",
            otherwise = "{}")
        AirTools tools,
    @Say(
            label = "Air the tools draw, of the usual",
            help = "Of what such tools usually draw in those minutes; 100 % where you measured it.",
            kind = Kind.FRACTION,
            min = 0.1,
            max = 5,
            usualMin = 0.5,
            usualMax = 2,
            otherwise = "don't know",
            unknown = {"75 %", "100 %", "125 %"})
        Span toolsDraw,
    @Say(
            label = "Coldest stretch",
            help =
                "Where hose or pipe is coldest; leave empty for the cold air of the unit, {15 °F|8 K} below"
                    + " the room, or the room itself without a unit.",
            kind = Kind.TEMPERATURE,
            min = -30,
            max = 50,
            usualMin = 0,
            usualMax = 35,
            otherwise = "none")
        Optional<Double> coldest,
    @Say(
            label = "Draws its air from",
            help = "Place: where it stands. Room or outdoors: by a pipe from there.",
            otherwise = "place")
        AirIntake intake,
    @Say(label = "Aftercooler", help = "Before the tank.", otherwise = "no") YesNo aftercooler,
    @Say(
            label = "Metal drop leg",
            help = "Length of bare metal pipe, with drains, before the hose.",
            kind = Kind.LENGTH,
            max = 200,
            usualMax = 60,
            otherwise = "0 ft")
        double dropLeg,
    @Say(label = "Dryer", otherwise = "none") AirDryer dryer,
    @Say(
            label = "Closet width",
            help = "Inside the closet you could build for it.",
            kind = Kind.LENGTH,
            min = 0.5,
            max = 6,
            otherwise = "5 ft")
        double closetWidth,
    @Say(label = "Closet depth", kind = Kind.LENGTH, min = 0.5, max = 6, otherwise = "4 ft")
        double closetDepth,
    @Say(label = "Closet height", kind = Kind.LENGTH, min = 1, max = 6, otherwise = "8 ft")
        double closetHeight,
    @Say(
            label = "Open roof outdoors, warmer by",
            help =
                "Than the outdoor air, around the running machine: {3.6 °F|2 K} free on all sides, more"
                    + " near a wall or under sun-hot sheet metal; a thermometer there tells.",
            kind = Kind.TEMPERATURE_DIFFERENCE,
            min = 0.1,
            max = 30,
            usualMin = 1,
            usualMax = 12,
            otherwise = "2 K")
        double openRoofRise,
    @Say(
            label = "Fumes or powder in the room",
            help = "Solvent, spray or powder where a motor would spark.",
            otherwise = "no")
        YesNo fumes,
    @Say(
            label = "Flame or rags near",
            help = "A flame, or things that burn, where it would stand in the room.",
            otherwise = "no")
        YesNo flame) {

  /** How often a machine compresses. */
  public enum PumpStages {
    /** Nobody knows: two from 5 hp on, common practice. */
    UNKNOWN,
    /** One cylinder stage. */
    SINGLE,
    /** Two in a row. */
    TWO
  }

  /** Where a compressor draws its air. */
  public enum AirIntake {
    /** From where it stands. */
    PLACE,
    /** By a pipe from the work room. */
    ROOM,
    /** By a pipe from outdoors. */
    OUTDOORS
  }

  /** Dryers. */
  public enum AirDryer {
    /** None. */
    NONE,
    /** A refrigerated dryer. */
    REFRIGERATED,
    /** Two towers with a drying agent. */
    DESICCANT
  }

  /** Whether something is there. */
  public enum YesNo {
    /** It is not. */
    NO,
    /** It is. */
    YES
  }

  /**
   * Minutes that tools draw air in a working hour, as times.
   *
   * @param blastCabinet blast cabinet, s in an hour
   * @param blastPot pressure pot, s in an hour
   * @param sanding air sander, s in an hour
   * @param spraying spray gun, s in an hour
   * @param grinding die or angle grinder, s in an hour
   * @param wrench impact wrench, s in an hour
   * @param blowing blow gun, s in an hour
   * @param inflating tyre chuck, s in an hour
   */
  public record AirTools(
      @Say(label = "Blast cabinet", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double blastCabinet,
      @Say(label = "Blast pot", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double blastPot,
      @Say(label = "Sanding", kind = Kind.DURATION, max = 3600, otherwise = "0 min") double sanding,
      @Say(label = "Spraying", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double spraying,
      @Say(label = "Grinding", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double grinding,
      @Say(label = "Impact wrench", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double wrench,
      @Say(label = "Blow gun", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double blowing,
      @Say(label = "Inflating", kind = Kind.DURATION, max = 3600, otherwise = "0 min")
          double inflating) {

    /**
     * All of them together.
     *
     * @return s in an hour
     */
    public double together() {
      return blastCabinet + blastPot + sanding + spraying + grinding + wrench + blowing + inflating;
    }
  }

  /**
   * How much warmer than the air outdoors it is under an open roof unless the owner says otherwise,
   * K. By pencil: 2,500 W of a 5 hp machine warm air that drifts at 0.5 m/s through 4 x 6 ft, 1.14
   * kg/m³, by 2 K. Nearer to a wall, or under a low roof of sheet metal in the sun, it is more:
   * common practice is to keep a foot or more free on all sides.
   */
  public static final double OPEN_ROOF_RISE = 2;

  private static final double FOOT = 0.3048;

  /**
   * The same without a word on tools.
   *
   * @return the changed record
   */
  public CompressedAir withoutTools() {
    return (CompressedAir) ShopParts.with(this, "tools", new AirTools(0, 0, 0, 0, 0, 0, 0, 0));
  }

  /**
   * The same drawing its air elsewhere.
   *
   * @param from where it draws its air
   * @return the changed record
   */
  public CompressedAir withIntake(AirIntake from) {
    return (CompressedAir) ShopParts.with(this, "intake", from);
  }

  /**
   * Compressed air of which nothing is said.
   *
   * @return the same as an absent field
   */
  static CompressedAir unsaid() {
    return new CompressedAir(
        PumpStages.UNKNOWN,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new AirTools(0, 0, 0, 0, 0, 0, 0, 0),
        new Span(0.75, 1, 1.25),
        Optional.empty(),
        AirIntake.PLACE,
        YesNo.NO,
        0,
        AirDryer.NONE,
        5 * FOOT,
        4 * FOOT,
        8 * FOOT,
        OPEN_ROOF_RISE,
        YesNo.NO,
        YesNo.NO);
  }
}
