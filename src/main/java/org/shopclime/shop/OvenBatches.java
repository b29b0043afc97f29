package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * What is cured in an oven through a day, batch by batch.
 *
 * @param number batches a day, evenly through the time when it is hot; absent: one begins with each
 *     period of that time
 * @param parts steel in a batch, kg
 * @param thickness of its sheet or tube wall, m
 * @param cure time the parts are held at the set point, s
 * @param doorOpen time the door stands open to load, and again to unload, s
 * @param vent air that a fan draws through the box to outdoors while a batch is in it, m³/s
 * @param partsInRoom part of the hot parts' heat that they give off in the room, 0 to 1
 */
public record OvenBatches(
    @Say(
            label = "Batches a day",
            help = "Empty: one begins with each period of the times when it is hot.",
            min = 1,
            max = 48,
            otherwise = "none")
        Optional<Double> number,
    @Say(
            label = "Steel in a batch",
            help = "Parts and rack; in place of the steel an hour.",
            kind = Kind.MASS,
            max = 5000,
            otherwise = "50 lb")
        double parts,
    @Say(
            label = "Thickness of the steel",
            help = "Sheet or wall of a tube.",
            kind = Kind.LENGTH,
            min = 0.0005,
            max = 0.05,
            usualMax = 0.02,
            otherwise = "0.125 in")
        double thickness,
    @Say(
            label = "Cure",
            help = "From when the steel is hot; the powder maker tells it.",
            kind = Kind.DURATION,
            max = 36_000,
            usualMax = 7200,
            otherwise = "20 min")
        double cure,
    @Say(
            label = "Door open",
            help = "To load, and again as long to unload.",
            kind = Kind.DURATION,
            max = 3600,
            usualMax = 600,
            otherwise = "1 min")
        double doorOpen,
    @Say(
            label = "Air vented through the oven",
            help = "By its own fan, outdoors, while a batch is in it; the shop draws in as much.",
            kind = Kind.AIR_FLOW,
            max = 1,
            usualMax = 0.05,
            otherwise = "0 CFM")
        double vent,
    @Say(
            label = "Parts cool in the room",
            help = "100 % if they hang in the shop until cold, 0 % if they are rolled outdoors.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "100 %")
        double partsInRoom) {}
