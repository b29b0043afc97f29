/**
 * Infiltration, exhaust, open doors, grilles and stack flow.
 *
 * <p><b>Answers:</b> how much air passes?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> m³/s, m², Pa, K, m/s.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.leakage;
