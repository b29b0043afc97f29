package org.shopclime.run;

import org.shopclime.balance.Profile;

/**
 * A room of a shop with a placed machine, means of each hour.
 *
 * @param air air temperature, °C
 * @param water humidity ratio of its air, kg/kg
 * @param plant heat put into its air to hold it, W; below 0 where it is cooled; 0 where it floats
 */
public record RoomHours(Profile air, Profile water, Profile plant) {}
