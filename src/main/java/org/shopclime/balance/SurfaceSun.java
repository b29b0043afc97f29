package org.shopclime.balance;

/**
 * Sun of a year on one surface.
 *
 * @param name what the owner calls it
 * @param room name of the room behind it
 * @param incident sun on it, shade left out, kWh/m²
 * @param transmitted sun let through, kWh/m² of glass, shade counted; 0 where it is opaque
 */
public record SurfaceSun(String name, String room, double incident, double transmitted) {}
