package org.shopclime.airline;

import java.util.Optional;
import org.shopclime.climate.HotDay;
import org.shopclime.run.Cooling;
import org.shopclime.shop.Shop;

/**
 * What is asked of the places of a shop.
 *
 * @param shop a shop that passed its checks
 * @param day its hot day
 * @param cooling its unit, if it has one
 * @param room index of the work room
 * @param winterDesign outdoor temperature of the winter design day, °C
 * @param winterWind wind at the weather station on that day, m/s
 */
public record PlaceQuestion(
    Shop shop,
    HotDay day,
    Optional<Cooling> cooling,
    int room,
    double winterDesign,
    double winterWind) {}
