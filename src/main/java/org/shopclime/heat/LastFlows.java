package org.shopclime.heat;

import java.util.Arrays;

/** Flows of air and holds that the rooms of a network were last factored for. */
final class LastFlows {

  /** Air from outside into each room, W/K. */
  final double[] inflow;

  /** Air from one room into another, at rooms * into + from, W/K. */
  final double[] exchange;

  /** Which rooms are held. */
  final boolean[] held;

  private boolean factored;

  LastFlows(int rooms) {
    inflow = new double[rooms];
    exchange = new double[rooms * rooms];
    held = new boolean[rooms];
  }

  /** Whether these drivers have the same, so that nothing need be factored anew. */
  boolean areThoseOf(Drivers d) {
    return factored
        && Arrays.equals(inflow, d.inflow)
        && Arrays.equals(exchange, d.exchange)
        && Arrays.equals(held, d.held);
  }

  /** Takes those of drivers, which are to be factored. */
  void take(Drivers d) {
    factored = false;
    System.arraycopy(d.inflow, 0, inflow, 0, inflow.length);
    System.arraycopy(d.exchange, 0, exchange, 0, exchange.length);
    System.arraycopy(d.held, 0, held, 0, held.length);
  }

  /** They were factored. */
  void factored() {
    factored = true;
  }

  /** What is told where that cannot be done. */
  static IllegalStateException free(int room) {
    return new IllegalStateException(
        "nothing fixes the temperature of room "
            + room
            + ": no boundary, no air from outside and no held room reaches it");
  }
}
