package org.shopclime.airline;

/**
 * The walls of the place where a compressor stands, as two plain conductances.
 *
 * <p>Source: usual sizes are stated with each; U of a bare partition 1.8 W/(m²·K) (drywall on both
 * sides of empty studs), of one with R-13 batts 0.42, of an outside wall with R-13 0.45, of a metal
 * or board lean-to 5: steady sums of layers with still-air films, studs counted.
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

  /** U of a bare partition, W/(m²·K). */
  public static final double BARE_PARTITION = 1.8;

  /** U of a partition with R-13 batts, W/(m²·K). */
  public static final double INSULATED_PARTITION = 0.42;

  private static final double OUTSIDE_WALL = 0.45;
  private static final double BARE_SHED = 5;
  private static final double SQUARE_FOOT = Trade.FOOT * Trade.FOOT;

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
