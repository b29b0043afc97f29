/**
 * HTML, CSV, PNG and JSON writers; chart and picture builders shared with the form.
 *
 * <p><b>Answers:</b> how is the answer shown?<br>
 * <b>May touch:</b> all rooms but {@code form} and {@code app}.<br>
 * <b>Units:</b> inch-pound or SI text outside, SI inside.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.report;
