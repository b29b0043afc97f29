package org.shopclime.airline;

/**
 * The walls of the place where a compressor stands, as two plain conductances.
 *
 * <p>Source: usual sizes are stated with each. Partitions are 1/2 in drywall (0.16 W/(m·K), ISO
 * 10456) on both sides of 2x4 studs, empty (air space) or with R-13: sums of these layers
 * with a still-air film of on each side (ASHRAE Handbook - Fundamentals), a quarter of the
 * area wood of an inch (framing share of ANSI/ASHRAE/IES 90.1, table A3.4, 16 in): 1.56 and
 * 0.49 W/(m²·K). An outside wall with R-13 has U-0.089, 0.505 W/(m²·K) (the same table). A lean-to
 * of metal or board 5: between the 6.7 of films alone and the 4.3 of 7/16 in board.
 *
 * <p>Limits: no mass: the pencil closet is a steady mean. Sun on outer walls is a typed excess over
 * the air outdoors, common practice for the worst hour.
 *
 * @param roomArea faces towards the work room, m², 0 to 1e4
 * @param roomU their U, W/(m²·K), 0 to 20
 * @param outerArea faces towards outdoors, m², 0 to 1e4
 * @param outerU their U, W/(m²·K), 0 to 20
 * @param sunExcess how much warmer than the air outdoors those faces feel in the sun, K, 0 to 60
 */
public record Closet(
    double roomArea, double roomU, double outerArea, double outerU, double sunExcess) {

  /** An R-value of 1 h·ft²·°F/BTU, m²·K/W. */
  private static final double R = Trade.FOOT * Trade.FOOT / 1.8 / (1055.05585262 / 3600);

  private static final double FILMS = 2 * 0.68 * R;
  private static final double DRYWALLS = 2 * 0.5 * Trade.INCH / 0.16;
  private static final double STUD = 3.5 * 1.25 * R;
  private static final double STUD_SHARE = 0.25;

  /** U of a bare partition, W/(m²·K). */
  public static final double BARE_PARTITION = partition(0.91);

  /** U of a partition with R-13 batts, W/(m²·K). */
  public static final double INSULATED_PARTITION = partition(13);

  private static final double OUTSIDE_WALL = 0.089 / R;
  private static final double BARE_SHED = 5;
  private static final double SQUARE_FOOT = Trade.FOOT * Trade.FOOT;

  /** U of a partition with this R-value between its studs, W/(m²·K). */
  private static double partition(double between) {
    double faces = FILMS + DRYWALLS;
    return (1 - STUD_SHARE) / (faces + between * R) + STUD_SHARE / (faces + STUD);
  }

  /** Refuses what is outside the ranges above. */
  public Closet {
    Check.within("area towards the room, m²,", roomArea, 0, 1e4);
    Check.within("U towards the room, W/(m²·K),", roomU, 0, 20);
    Check.within("area towards outdoors, m²,", outerArea, 0, 1e4);
    Check.within("U towards outdoors, W/(m²·K),", outerU, 0, 20);
    Check.within("sun on outer faces, K,", sunExcess, 0, 60);
  }

  /**
   * A corner of the shop walled off: 4 by 5 ft and 8 ft high, two partitions (72 ft²), two outside
   * walls (72 ft², R-13, 6 K of sun). Its floor and the insulated ceiling are left out.
   *
   * @param partition U of its partitions, W/(m²·K), 0 to 20
   * @return the closet
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static Closet corner(double partition) {
    return new Closet(72 * SQUARE_FOOT, partition, 72 * SQUARE_FOOT, OUTSIDE_WALL, 6);
  }

  /**
   * The space under a stair inside the shop: 3 by 7 ft and 5 ft high in the mean, all faces (121
   * ft² with the stair) towards the room.
   *
   * @param partition U of its faces, W/(m²·K), 0 to 20
   * @return the closet
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static Closet underStair(double partition) {
    return new Closet(121 * SQUARE_FOOT, partition, 0, 0, 0);
  }

  /**
   * A lean-to outside: 4 by 4 ft and 6 ft high, its back (24 ft²) the R-13 wall of the shop, three
   * sides and roof (88 ft²) of bare metal or board, 10 K of sun.
   *
   * @return the lean-to
   */
  public static Closet leanTo() {
    return new Closet(24 * SQUARE_FOOT, OUTSIDE_WALL, 88 * SQUARE_FOOT, BARE_SHED, 10);
  }

  /**
   * The loft over a shop of 20 by 24 ft: ceiling (480 ft², R-19) towards the room, roof (580 ft², U
   * 3 of a bare deck), 25 K of sun.
   *
   * @return the loft
   */
  public static Closet loft() {
    return new Closet(480 * SQUARE_FOOT, 0.3, 580 * SQUARE_FOOT, 3, 25);
  }

  /**
   * Conductance towards the room.
   *
   * @return W/K
   */
  public double towardsRoom() {
    return roomArea * roomU;
  }

  /**
   * Conductance towards outdoors.
   *
   * @return W/K
   */
  public double towardsOutdoors() {
    return outerArea * outerU;
  }
}
