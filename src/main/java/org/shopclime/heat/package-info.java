/**
 * Thermal network: nodes, conductances, steps; pure numbers.
 *
 * <p><b>Answers:</b> what do the temperatures of a network of walls and rooms do under given
 * drivers?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> °C or K differences, W, W/K, J/K, s.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.heat;
