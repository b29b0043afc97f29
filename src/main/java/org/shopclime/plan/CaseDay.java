package org.shopclime.plan;

import org.shopclime.climate.HotDay;
import org.shopclime.load.ShopLoad;
import org.shopclime.run.LivedDay;

/**
 * How a case was lived: its weather, what had to be taken out, and the room hour by hour.
 *
 * @param weather the day
 * @param load loads with the cooled rooms held, at least their totals
 * @param lived the room with the shop's unit, or without any if the shop has none
 * @param asItIs whether it is the shop as it stands on its hot day
 */
public record CaseDay(HotDay weather, ShopLoad load, LivedDay lived, boolean asItIs) {}
