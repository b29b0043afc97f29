/**
 * Performance of cooling and heating units, and the sizes they are sold in.
 *
 * <p><b>Answers:</b> what does this unit deliver, and draw, in this air?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> W, °C, kg/s, fractions of the rating; BTU/h only where a table is printed in it.
 * <br>
 * <b>Source:</b> NREL/TP-5500-57617 and NREL/TP-5500-56354 (2013) for the curves; 10 CFR 430
 * subpart B appendix F for ratings and labels; apparatus dew point and bypass factor as in the
 * ASHRAE handbooks; sizes by common practice.<br>
 * <b>Limits:</b> generic curves, held at the edge of their tested range and said so; steady running
 * of a clean coil, fan heat inside the net rating, no frost, no reheat by moisture at the outdoor
 * coil; a dirty coil does worse than less air alone.<br>
 * <b>Checked by:</b> {@code CurveSetPublishedTest}, {@code RatingPublishedTest}, {@code
 * RoomUnitPublishedTest}.
 */
package org.shopclime.unit;
