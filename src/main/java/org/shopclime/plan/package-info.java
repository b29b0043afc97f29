/**
 * Changes and upgrades, sizes, the band of the unknowns, the year.
 *
 * <p><b>Answers:</b> what would change the answer, and how sure is it; what does a year take?<br>
 * <b>May touch:</b> run, load, balance, bill, shop, climate.<br>
 * <b>Units:</b> SI.<br>
 * <b>Source:</b> the same shop run whole, with one thing changed; the ends of the unknowns as the
 * shop tells them (common practice).<br>
 * <b>Limits:</b> the band goes from all unknowns kind to all unkind, which is wider than chance;
 * the deciding unknown is found one at a time around the likely values. A year is run at the likely
 * values alone.<br>
 * <b>Checked by:</b> SizingTest (each change is one change, band, odd hours and rooms),
 * YearVerbTest (sums, peaks, what acts in a room), OutsideFiguresTest (winter by pencil, buyers'
 * rule by area, owners' reports).
 */
package org.shopclime.plan;
