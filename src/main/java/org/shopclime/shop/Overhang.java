package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Something that shades from above.
 *
 * @param depth how far it stands out, m
 * @param gap height between the top of what it shades and its underside, m
 */
public record Overhang(
    @Say(label = "Depth", kind = Kind.LENGTH, max = 10) double depth,
    @Say(label = "Gap below it", kind = Kind.LENGTH, max = 10, otherwise = "0 ft") double gap) {}
