package org.shopclime.envelope;

/**
 * Insulation at the edge of a slab on the ground.
 *
 * @param placement down along the foundation, or level under or beside the slab
 * @param resistance resistance, m²·K/W, 0 to 20
 * @param reach how far down, or how far in or out from the edge, m, 0 to 5
 */
public record EdgeInsulation(Placement placement, double resistance, double reach) {

  /** Which way it lies. */
  public enum Placement {
    /** Down along the foundation. */
    VERTICAL,
    /** Level, from the edge inwards or outwards. */
    HORIZONTAL
  }

  /** Refuses figures outside their ranges. */
  public EdgeInsulation {
    Range.require("edge insulation, m²·K/W,", resistance, 0, 20);
    Range.require("reach of the edge insulation, m,", reach, 0, 5);
  }

  /**
   * No insulation at the edge.
   *
   * @return of no resistance and no reach
   */
  public static EdgeInsulation none() {
    return new EdgeInsulation(Placement.VERTICAL, 0, 0);
  }
}
