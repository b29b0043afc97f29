package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * A fan between a room and outdoors.
 *
 * @param name what the owner calls it
 * @param way out, in, or both at once
 * @param flow air flow, m³/s
 * @param when when it runs
 */
public record Fan(
    @Say(label = "Name") String name,
    @Say(label = "Blows") FanWay way,
    @Say(label = "Air flow", kind = Kind.AIR_FLOW, max = 20, usualMax = 3) double flow,
    @Say(label = "Runs when", otherwise = "work") Schedule when) {}
