/**
 * Command line and entry.
 *
 * <p><b>Answers:</b> which verb with which arguments?<br>
 * <b>May touch:</b> all rooms.<br>
 * <b>Units:</b> text.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.app;
