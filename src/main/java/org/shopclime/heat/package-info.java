/**
 * Thermal network: nodes, conductances, steps; pure numbers.
 *
 * <p><b>Answers:</b> what do the temperatures of a network of walls and rooms do under given
 * drivers?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> °C or K differences, W, W/K, J/K, s.<br>
 * <b>Source:</b> steps by Alexander (1977), the L-stable method of two stages; walls eliminated as
 * tridiagonal systems; rooms by Grassmann, Taksar and Heyman (1985); a day that repeats in its
 * waves, from the modes of the walls, with reciprocity.<br>
 * <b>Limits:</b> conductances are constant within a step; heat flows in one dimension through a
 * wall; drivers are means over a step.<br>
 * <b>Checked by:</b> {@code SteadySlabTest}, {@code LumpedRoomTest}, {@code TwoRoomsTest}, {@code
 * SineWallTest}, {@code StepWallTest}, {@code MarchConvergenceTest}, {@code MarchProperties},
 * {@code WallPublishedTest}, {@code RoomPublishedTest}; the repeating day by {@code
 * RepeatingNetworkTest}, {@code RepeatingNetworkProperties}, {@code WavesTest}.
 */
package org.shopclime.heat;
