package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * What a window does with direct sun at one angle.
 *
 * @param angle angle from the line square to the glass, degrees
 * @param transmittance part that passes, 0 to 1
 * @param absorbedOutside part that stays in the outer pane, or in the outer half of the only one
 * @param absorbedInside part that stays in the inner pane, or in the inner half of the only one
 */
public record GlassAngle(
    @Say(label = "Angle", kind = Kind.ANGLE, max = 90) double angle,
    @Say(label = "Passes", kind = Kind.FRACTION, max = 1) double transmittance,
    @Say(label = "Stays in the outer pane", kind = Kind.FRACTION, max = 1, otherwise = "0 %")
        double absorbedOutside,
    @Say(label = "Stays in the inner pane", kind = Kind.FRACTION, max = 1, otherwise = "0 %")
        double absorbedInside) {}
