package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * What must be cooled besides the air and the faces.
 *
 * @param iron iron and steel: machines, stock, vise, kg
 * @param wood stored wood, benches, shelves, kg
 * @param drywall extra inner walls with drywall on both sides, one side's area, m²
 */
public record Contents(
    @Say(
            label = "Iron and steel",
            help = "Machines and stock.",
            kind = Kind.MASS,
            max = 1e6,
            otherwise = "500 lb",
            unknown = {"200 lb", "1000 lb", "4000 lb"},
            lowIsKind = false)
        Span iron,
    @Say(
            label = "Wood",
            help = "Lumber, benches, shelves.",
            kind = Kind.MASS,
            max = 1e6,
            otherwise = "300 lb",
            unknown = {"100 lb", "500 lb", "2000 lb"},
            lowIsKind = false)
        Span wood,
    @Say(
            label = "Extra inner walls",
            help = "With drywall on both sides; the area of one side.",
            kind = Kind.AREA,
            max = 5000,
            otherwise = "0 ft2")
        double drywall) {}
