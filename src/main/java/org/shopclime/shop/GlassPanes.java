package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * Equal panes of bare glass, one behind the other. Their optics are told either by what one pane
 * passes and throws back at normal incidence, or by index and extinction.
 *
 * @param count number of panes
 * @param thickness thickness of one pane, m
 * @param conductivity conductivity of the glass, W/(m·K)
 * @param transmittance sun that one pane passes at normal incidence, 0 to 1
 * @param reflectance sun that one pane throws back at normal incidence, 0 to 1
 * @param index refractive index, 1
 * @param extinction extinction coefficient, 1/m
 * @param gapConductance conductance of a gap between panes, convection and radiation together,
 *     W/(m²·K), at all temperatures
 * @param gap width of a gap of air between panes, m, in place of its conductance, which then
 *     follows temperature
 * @param emittance infrared emittance of the panes towards such a gap, 0 to 1
 */
public record GlassPanes(
    @Say(label = "Panes", min = 1, max = 4) double count,
    @Say(label = "Thickness of a pane", kind = Kind.LENGTH, min = 0.0005, max = 0.05)
        double thickness,
    @Say(
            label = "Conductivity",
            kind = Kind.CONDUCTIVITY,
            min = 0.05,
            max = 5,
            otherwise = "1 W/m·K")
        double conductivity,
    @Say(
            label = "One pane passes",
            help = "At normal incidence; 84 % for clear float of {1/8 in|3 mm}.",
            kind = Kind.FRACTION,
            min = 0.01,
            max = 0.92,
            otherwise = "none")
        Optional<Double> transmittance,
    @Say(
            label = "One pane throws back",
            help = "At normal incidence; 7.5 % for clear float of {1/8 in|3 mm}.",
            kind = Kind.FRACTION,
            min = 0.01,
            max = 0.3,
            otherwise = "none")
        Optional<Double> reflectance,
    @Say(label = "Refractive index", min = 1.3, max = 2.2, otherwise = "none")
        Optional<Double> index,
    @Say(
            label = "Extinction",
            help = "About 20 /m for clear float.",
            kind = Kind.EXTINCTION,
            max = 1000,
            otherwise = "none")
        Optional<Double> extinction,
    @Say(
            label = "Conductance of a gap",
            help =
                "Convection and radiation together; about {1.1 BTU/(h·ft²·°F) for 1/2 in|6 W/(m²·K) for 12 mm} of air.",
            kind = Kind.U_FACTOR,
            min = 0.1,
            max = 50,
            otherwise = "none")
        Optional<Double> gapConductance,
    @Say(
            label = "Width of a gap",
            help = "Of air; in place of its conductance.",
            kind = Kind.LENGTH,
            min = 0.001,
            max = 0.1,
            otherwise = "none")
        Optional<Double> gap,
    @Say(
            label = "Emittance towards a gap",
            help = "84 % for bare glass.",
            kind = Kind.FRACTION,
            min = 0.01,
            max = 1,
            otherwise = "0.84")
        double emittance) {}
