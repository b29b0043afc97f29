/**
 * Moist air: vapour pressure, humidity ratio, dew point, wet bulb, enthalpy, density.
 *
 * <p><b>Answers:</b> given two properties of air and its pressure, what are the others?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> °C, Pa, kg of water per kg of dry air, J per kg of dry air.<br>
 * <b>Source:</b> ASHRAE Handbook - Fundamentals (2017, SI), ch. 1; each method names its equation.
 * <br>
 * <b>Limits:</b> ideal gas: humidity ratio at saturation reads 0.4 to 0.7 % below real-gas tables.
 * <br>
 * <b>Checked by:</b> {@code SaturatedVapourPublishedTest}, {@code MoistAirPublishedTest}, {@code
 * MoistAirProperties}.
 */
package org.shopclime.air;
