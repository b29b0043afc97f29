package org.shopclime.sun;

/**
 * An upright board or wall that stands out beside an opening.
 *
 * @param depth how far it stands out, m, 0 to 100; 0 for none
 * @param gap from the edge of the opening sideways to it, m, 0 to 100
 * @param above how far it reaches above the top of the opening, m, -100 to 100
 * @param below how far it reaches below the bottom of the opening, m, -100 to 100
 */
public record Fin(double depth, double gap, double above, double below) {

  /** No fin. */
  public static final Fin NONE = new Fin(0, 0, 0, 0);

  /** Refuses lengths outside their ranges. */
  public Fin {
    Range.check("fin depth, m", depth, 0, 100);
    Range.check("fin gap, m", gap, 0, 100);
    Range.check("fin reach above, m", above, -100, 100);
    Range.check("fin reach below, m", below, -100, 100);
  }
}
