package org.shopclime.airline;

import java.util.List;
import java.util.Optional;
import org.shopclime.leakage.VentStack;
import org.shopclime.shop.CompressedAir;

/**
 * A place for the compressor.
 *
 * <p>Source: sizes, openings and fans of {@link #usual} are ours, stated with each kind: common
 * practice of small shops.
 *
 * @param kind which kind
 * @param closet its walls; none in the room itself and under an open roof
 * @param venting how air passes
 * @param intake where the machine draws its air
 * @param openRise how much warmer than the air outdoors it is under an open roof, K, more than 0;
 *     of no meaning in other places
 */
public record Placement(
    Kind kind, Optional<Closet> closet, Venting venting, Intake intake, double openRise) {

  /** Free area of a grille, m²: 1 ft², a louvre of about 14 by 20 in. */
  public static final double GRILLE = Trade.FOOT * Trade.FOOT;

  private static final double CLOSET_HEIGHT = 6 * Trade.FOOT;
  private static final double SMALL_FAN = 200 * Trade.CFM;
  private static final double LOOP_FAN = 300 * Trade.CFM;

  /** Kinds of places. */
  public enum Kind {
    /** In the work room. */
    IN_ROOM,
    /** Corner closet, shut. */
    CLOSED_CLOSET,
    /** Corner closet with insulated partitions, shut. */
    CLOSED_INSULATED_CLOSET,
    /** Under a stair, shut. */
    UNDER_STAIR,
    /** Corner closet, a grille of 1 ft² low and one high, 6 ft apart, to the room. */
    GRILLES_TO_ROOM,
    /** Corner closet, a fan of 200 cfm from and to the room. */
    FAN_TO_ROOM,
    /** Corner closet, grille from the room, stack of 8 in and 10 ft to outdoors. */
    STACK_OUTDOORS,
    /** Corner closet, grille from the room, fan of 200 cfm to outdoors. */
    FAN_OUTDOORS,
    /** Insulated corner closet, openings of 1 ft² low and high, 6 ft apart, to outdoors. */
    OUTDOOR_LOOP,
    /** Insulated corner closet, a fan of 300 cfm from and to outdoors. */
    OUTDOOR_LOOP_FAN,
    /** Lean-to outside, louvres of 2 ft² of free area low and high, 5 ft apart. */
    LEAN_TO,
    /** In the loft, vents of 1.6 ft² at eaves and ridge, 6 ft apart. */
    LOFT,
    /** Outdoors under a roof without walls, out of rain and sun. */
    OPEN_ROOF;

    /**
     * Whether the air around it is that of outdoors, not of the room.
     *
     * @return true of a place taken as out of reach of the room's fumes, and as cold as outdoors
     */
    public boolean isApart() {
      return switch (this) {
        case OUTDOOR_LOOP, OUTDOOR_LOOP_FAN, LEAN_TO, LOFT, OPEN_ROOF -> true;
        case IN_ROOM,
            CLOSED_CLOSET,
            CLOSED_INSULATED_CLOSET,
            UNDER_STAIR,
            GRILLES_TO_ROOM,
            FAN_TO_ROOM,
            STACK_OUTDOORS,
            FAN_OUTDOORS ->
            false;
      };
    }
  }

  /**
   * The usual places, each with its usual size; machines draw from where they stand.
   *
   * @return one of each kind, in their order
   */
  public static List<Placement> usual() {
    Closet bare = Closet.corner(Closet.BARE_PARTITION);
    Closet insulated = Closet.corner(Closet.INSULATED_PARTITION);
    double eightInches = Math.PI / 4 * 64 * Trade.INCH * Trade.INCH;
    Venting stack =
        new Venting(
            Side.ROOM, Side.OUTDOORS, new VentStack(GRILLE, eightInches, 10 * Trade.FOOT), 0);
    return List.of(
        bare(Kind.IN_ROOM),
        of(Kind.CLOSED_CLOSET, bare, Venting.CLOSED),
        of(Kind.CLOSED_INSULATED_CLOSET, insulated, Venting.CLOSED),
        of(Kind.UNDER_STAIR, Closet.underStair(Closet.BARE_PARTITION), Venting.CLOSED),
        of(
            Kind.GRILLES_TO_ROOM,
            bare,
            Venting.openings(Side.ROOM, Side.ROOM, GRILLE, CLOSET_HEIGHT)),
        of(Kind.FAN_TO_ROOM, bare, Venting.fan(Side.ROOM, Side.ROOM, SMALL_FAN)),
        of(Kind.STACK_OUTDOORS, bare, stack),
        of(Kind.FAN_OUTDOORS, bare, Venting.fan(Side.ROOM, Side.OUTDOORS, SMALL_FAN)),
        of(
            Kind.OUTDOOR_LOOP,
            insulated,
            Venting.openings(Side.OUTDOORS, Side.OUTDOORS, GRILLE, CLOSET_HEIGHT)),
        of(Kind.OUTDOOR_LOOP_FAN, insulated, Venting.fan(Side.OUTDOORS, Side.OUTDOORS, LOOP_FAN)),
        of(
            Kind.LEAN_TO,
            Closet.leanTo(),
            Venting.openings(Side.OUTDOORS, Side.OUTDOORS, 2 * GRILLE, 5 * Trade.FOOT)),
        of(
            Kind.LOFT,
            Closet.loft(),
            Venting.openings(Side.OUTDOORS, Side.OUTDOORS, 0.15, 6 * Trade.FOOT)),
        bare(Kind.OPEN_ROOF));
  }

  /**
   * This place with another intake.
   *
   * @param other where the machine draws its air
   * @return the place
   */
  public Placement withIntake(Intake other) {
    return new Placement(kind, closet, venting, other, openRise);
  }

  /**
   * This place with other openings or fans.
   *
   * @param other how air passes
   * @return the place
   */
  public Placement withVenting(Venting other) {
    return new Placement(kind, closet, other, intake, openRise);
  }

  /**
   * This place with another rise under an open roof.
   *
   * @param kelvin how much warmer than the air outdoors it is there, K, more than 0
   * @return the place
   */
  public Placement withOpenRise(double kelvin) {
    return new Placement(kind, closet, venting, intake, kelvin);
  }

  private static Placement of(Kind kind, Closet closet, Venting venting) {
    return new Placement(
        kind, Optional.of(closet), venting, Intake.PLACE, CompressedAir.OPEN_ROOF_RISE);
  }

  private static Placement bare(Kind kind) {
    return new Placement(
        kind, Optional.empty(), Venting.CLOSED, Intake.PLACE, CompressedAir.OPEN_ROOF_RISE);
  }
}
