/**
 * Component loads and peaks by superposition.
 *
 * <p><b>Answers:</b> how much heat must be removed to hold the set point, hour by hour, and where
 * does it come from?<br>
 * <b>May touch:</b> balance, heat, air.<br>
 * <b>Units:</b> W, °C, hours ending 1 to 24.<br>
 * <b>Source:</b> heat balance of the room air, lines by superposition in a network of constant
 * coefficients; air streams by enthalpy, ASHRAE Handbook - Fundamentals (2017), ch. 1 and 18; slabs
 * in winter by the F-factors of ASHRAE 90.1.<br>
 * <b>Limits:</b> air is held at its set point, so an empty room with warm faces takes in 5 to 10 %
 * less than printed films say for insulated faces, far less for bare sheet; air flows of floating
 * rooms and radiation are frozen as the day with everything on finds them, by the half hour; air
 * and stars are told within a half hour by mean and tilt; a line from another cooled room is told
 * without area.<br>
 * <b>Checked by:</b> {@code SteadyShopTest}, {@code SeveralRoomsTest}, {@code WindowLineTest},
 * {@code GroundLineTest}, {@code WinterLossTest}, {@code OpenStairLoadTest} (hand calculations),
 * {@code LoadSumProperties} (lines make the total), {@code LawsTest}, {@code BareShopTest}, {@code
 * HotAtticTest} (fourth powers), {@code SettingConvergenceTest} (a march of half the step and
 * slice), {@code SlotFlowsTest}; shops drawn by lot in {@code HotDayBooksProperties}, {@code
 * HotDaySenseProperties}, {@code SteadySenseProperties}, {@code CutFaceProperties}, {@code
 * MirrorProperties}.
 */
package org.shopclime.load;
