/**
 * Compressed air: the machine, its heat, the water in its line, where it can stand.
 *
 * <p><b>Answers:</b> how long does the compressor run, how hot does its place get, who gets the
 * heat, and where does the water drop out?<br>
 * <b>May touch:</b> run, balance, gain, leakage, shop, climate, air.<br>
 * <b>Units:</b> W, kg/s of dry air, °C, Pa (absolute unless "above the air around" is said), kg/kg.
 * <br>
 * <b>Source:</b> ideal gas and energy balance; isentropic relations; ASHRAE saturation pressure;
 * figures of the trade where each class says "common practice".<br>
 * <b>Limits:</b> steady means of an hour; one machine, one line, one tool at a time.<br>
 * <b>Checked by:</b> {@code CompressorPublishedTest}, {@code DemandPublishedTest}, {@code
 * LineWaterPublishedTest}, {@code DryerPublishedTest}, {@code AirLineTest}, {@code
 * AirLineProperties}, {@code ClosetBalanceTest}, {@code PlacedHourTest}, {@code RankingTest},
 * {@code PlacedClosetTest}, {@code AirPlacesTest}.
 */
package org.shopclime.airline;
