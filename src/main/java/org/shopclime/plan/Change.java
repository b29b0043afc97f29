package org.shopclime.plan;

import java.util.OptionalDouble;

/**
 * The same shop, run whole, with one thing changed.
 *
 * @param name what is changed
 * @param peakSensible peak load after the change, sensible, W
 * @param peakLatent latent, W, in the same hour
 * @param indoorPeak highest room temperature in judged hours after the change, °C; of the whole day
 *     without a unit
 * @param recommended smallest standard size that holds after the change, W; empty if none does
 * @param holds whether the shop's own unit holds after the change; false without a unit
 */
public record Change(
    String name,
    double peakSensible,
    double peakLatent,
    double indoorPeak,
    OptionalDouble recommended,
    boolean holds) {}
