package org.shopclime.load;

import org.shopclime.heat.Driven;

/** One thing that a component does to the network through the day. */
@FunctionalInterface
interface Part {

  /**
   * Drives something by this part.
   *
   * @param to what is driven
   * @param reference temperature that all temperatures are told from, °C
   */
  void drive(Driven to, double reference);
}
