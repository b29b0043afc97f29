package org.shopclime.form;

import java.util.function.Supplier;

/**
 * What the editors of one part have in common.
 *
 * @param proposals where changes go
 * @param names names that fields offer
 * @param mnemonics keys not yet taken
 */
record Bench(Proposals proposals, Supplier<KnownNames> names, Mnemonics mnemonics) {

  /** Where editors take their proposals. */
  interface Proposals {

    /** Asks for another value at a place. */
    void propose(ShopPath path, Object value);

    /** Says that what stands in a field cannot be taken, or can be again. */
    void readableChanged();

    /** Asks for the station to be chosen from map and list. */
    void choosePlace();
  }
}
