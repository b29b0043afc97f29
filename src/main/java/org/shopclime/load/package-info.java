/**
 * Component loads and peaks by superposition.
 *
 * <p><b>Answers:</b> how much heat must be removed to hold the set point, hour by hour, and where
 * does it come from?<br>
 * <b>May touch:</b> balance, heat, air.<br>
 * <b>Units:</b> W, °C, hours ending 1 to 24.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.load;
