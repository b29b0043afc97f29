package org.shopclime.shop;

import java.util.List;
import org.shopclime.quantity.Problem;

/** What reading a shop file gives: a shop, or everything that is wrong with it. */
public sealed interface ShopReading permits ShopReading.Good, ShopReading.Bad {

  /**
   * A shop that can be reckoned with.
   *
   * @param shop the shop
   * @param warnings what is unusual or asks for caution
   */
  record Good(Shop shop, List<Warning> warnings) implements ShopReading {

    /** Copies the list. */
    public Good {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * A file that cannot be taken.
   *
   * @param problems every problem found, at least one
   */
  record Bad(List<Problem> problems) implements ShopReading {

    /** Copies the list. */
    public Bad {
      problems = List.copyOf(problems);
    }
  }
}
