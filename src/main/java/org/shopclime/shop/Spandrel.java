package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * An opaque panel made of panes: it resists as the glass does and lets no sun in.
 *
 * @param absorptance part of the sun the outside takes in, 0 to 1
 * @param absorptanceInside part of the sun falling on the inside that it takes in, 0 to 1
 */
public record Spandrel(
    @Say(label = "Sun taken in outside", kind = Kind.FRACTION, max = 1, otherwise = "60 %")
        double absorptance,
    @Say(label = "Sun taken in inside", kind = Kind.FRACTION, max = 1, otherwise = "60 %")
        double absorptanceInside) {}
