package org.shopclime.airline;

/**
 * A point of the curve of closet temperature against vent area.
 *
 * @param area free area of each of two openings, m²
 * @param celsius hottest working hour of the closet, °C
 */
public record VentPoint(double area, double celsius) {}
