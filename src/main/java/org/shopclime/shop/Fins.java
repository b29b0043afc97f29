package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Two upright boards or walls that stand out, one at the left and one at the right edge.
 *
 * @param depth how far they stand out, m
 * @param gap from each edge sideways to the board, m
 * @param above how far they reach above the top of what they belong to, m
 * @param below how far they reach below its bottom, m
 */
public record Fins(
    @Say(label = "Depth", kind = Kind.LENGTH, max = 10) double depth,
    @Say(label = "Beside the edge by", kind = Kind.LENGTH, max = 10, otherwise = "0 ft") double gap,
    @Say(label = "Reach above the top", kind = Kind.LENGTH, max = 10, otherwise = "0 ft")
        double above,
    @Say(label = "Reach below the bottom", kind = Kind.LENGTH, max = 10, otherwise = "0 ft")
        double below) {}
