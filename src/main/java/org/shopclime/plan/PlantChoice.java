package org.shopclime.plan;

import java.util.List;
import org.shopclime.bill.Course;
import org.shopclime.bill.Use;

/**
 * A way to cool and heat a shop through the year: what is bought, and what it draws and burns.
 *
 * @param name what the owner calls it
 * @param purchases what is bought for it, each with its price and life
 * @param cooling electricity for cooling
 * @param heating electricity for heating; none where a fuel heats
 * @param fuelHeat heat of the year that the shop's fuel gives, kWh in the room, 0 or more
 */
public record PlantChoice(
    String name, List<Course.Purchase> purchases, Use cooling, Use heating, double fuelHeat) {

  /** Copies the list; refuses heat below 0, and heat of fuel that is NaN. */
  public PlantChoice {
    purchases = List.copyOf(purchases);
    if (!(fuelHeat >= 0)) {
      throw new IllegalArgumentException("heat of fuel " + fuelHeat + " kWh is not 0 or more");
    }
  }
}
