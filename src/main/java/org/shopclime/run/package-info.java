/**
 * Hot-day runs with unit and humidity.
 *
 * <p><b>Answers:</b> what temperature and humidity will the room have, and does the unit hold?<br>
 * <b>May touch:</b> balance, unit, leakage, heat, air.<br>
 * <b>Units:</b> °C, W, kg/kg, s.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.run;
