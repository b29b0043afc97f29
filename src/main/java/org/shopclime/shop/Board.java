package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * A foam board.
 *
 * @param material name in the materials table, such as "XPS foam"
 * @param thickness thickness, m
 */
public record Board(
    @Say(label = "Material", help = "XPS foam, EPS foam, polyiso foam.") String material,
    @Say(label = "Thickness", kind = Kind.LENGTH, min = 0.003, max = 0.3) double thickness) {}
