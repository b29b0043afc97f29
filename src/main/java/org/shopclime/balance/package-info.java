/**
 * Shop and weather become network, drivers, air flows and lines: the one place where a shop becomes
 * numbers.
 *
 * <p><b>Answers:</b> what network, driven by what, stands for this shop on this day?<br>
 * <b>May touch:</b> shop, climate, envelope, gain, leakage, sun, heat, air.<br>
 * <b>Units:</b> SI.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.balance;
