/**
 * Moist air: vapour pressure, humidity ratio, dew point, wet bulb, enthalpy, density; heat index
 * and wet-bulb globe temperature of the worker in it.
 *
 * <p><b>Answers:</b> given two properties of air and its pressure, what are the others?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> °C, Pa, kg of water per kg of dry air, J per kg of dry air.<br>
 * <b>Source:</b> ASHRAE Handbook - Fundamentals (2017, SI), ch. 1; each method names its equation;
 * for the worker NWS SR 90-23, ISO 7243, ISO 7726.<br>
 * <b>Limits:</b> ideal gas: humidity ratio at saturation reads 0.4 to 0.7 % below real-gas tables.
 * <br>
 * <b>Checked by:</b> {@code SaturatedVapourPublishedTest}, {@code MoistAirPublishedTest}, {@code
 * MoistAirProperties}, {@code HeatPublishedTest}, {@code HeatProperties}.
 */
package org.shopclime.air;
