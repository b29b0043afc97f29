package org.shopclime.plan;

import java.util.Optional;

/**
 * The answer as a band over what the owner does not know.
 *
 * @param low indoor peak with every unknown at its kind end, °C
 * @param high indoor peak with every unknown at its unkind end, °C
 * @param decidedBy the unknown that moves the peak most; empty if nothing is unknown, or nothing
 *     unknown moves it by 0.2 °F, as where the unit holds either way
 */
public record Band(double low, double high, Optional<String> decidedBy) {}
