/**
 * Performance of cooling and heating units, and the sizes they are sold in.
 *
 * <p><b>Answers:</b> what does this unit deliver, and draw, in this air?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> W, °C, kg/s, fractions of the rating.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.unit;
