/**
 * Stations, hot day, humid day, winter, and the reader of weather files.
 *
 * <p><b>Answers:</b> what is the weather of the day that decides, at this place?<br>
 * <b>May touch:</b> air, sun, quantity.<br>
 * <b>Units:</b> °C, W/m², m/s, Pa, 24 hours ending 1 to 24, local standard time.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.climate;
