/**
 * Changes and upgrades, sizes, the band of the unknowns.
 *
 * <p><b>Answers:</b> what would change the answer, and how sure is it?<br>
 * <b>May touch:</b> run, load, balance, bill, shop, climate.<br>
 * <b>Units:</b> SI.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.plan;
