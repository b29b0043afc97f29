/**
 * Infiltration, exhaust, open doors, grilles and stack flow; the air balance of a shop and what it
 * costs.
 *
 * <p><b>Answers:</b> how much air passes?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> m³/s, m², Pa, K, m/s.<br>
 * <b>Source:</b> ASHRAE Handbook - Fundamentals, ventilation and infiltration chapter (leaks, fans,
 * vents) and residential load chapter (grades of tightness); ASHRAE Handbook - Refrigeration (open
 * doors); Brown and Solvason (1962), Epstein (1988) (openings between rooms).<br>
 * <b>Limits:</b> one room against outdoors at a time; leaks spread evenly; doors in still air;
 * leakage area is known to a factor of two unless measured.<br>
 * <b>Checked by:</b> {@code BasicLeakagePublishedTest}, {@code BlowerDoorPublishedTest}, {@code
 * TightnessPublishedTest}, {@code DoorExchangePublishedTest}, {@code DoorCrackPublishedTest},
 * {@code VentStackPublishedTest}, {@code AirFactorsPublishedTest}, {@code SuctionPublishedTest},
 * {@code AirBalanceTest}, {@code RoomExchangeTest}.
 */
package org.shopclime.leakage;
