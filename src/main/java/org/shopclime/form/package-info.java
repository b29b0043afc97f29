/**
 * The window in which a shop is described and answered.
 *
 * <p><b>Answers:</b> how does a person enter a shop and see the answer?<br>
 * <b>May touch:</b> all rooms but {@code app}.<br>
 * <b>Units:</b> as the person chooses.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.form;
