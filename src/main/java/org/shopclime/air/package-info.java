/**
 * Moist air: vapour pressure, humidity ratio, dew point, wet bulb, enthalpy, density.
 *
 * <p><b>Answers:</b> given two properties of air and its pressure, what are the others?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> °C, Pa, kg of water per kg of dry air, J per kg of dry air.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.air;
