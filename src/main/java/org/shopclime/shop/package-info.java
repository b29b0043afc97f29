/**
 * What the owner describes (immutable records), its file, presets and validation; no physics.
 *
 * <p><b>Answers:</b> what does the owner have?<br>
 * <b>May touch:</b> quantity, envelope, climate.<br>
 * <b>Units:</b> SI inside the records, text with units in the file.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.shop;
