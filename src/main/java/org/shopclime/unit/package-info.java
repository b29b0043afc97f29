/**
 * Performance of cooling and heating units, and the sizes they are sold in.
 *
 * <p><b>Answers:</b> what does this unit deliver, and draw, in this air? Where do its heat and its
 * water go?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> W, °C, kg/s, fractions of the rating; BTU/h and label figures only where they are
 * printed so.<br>
 * <b>Source:</b> NREL/TP-5500-57617 and NREL/TP-5500-56354 (2013) for the curves of coolers and
 * heat pumps, NREL/TP-5500-52791 (2011) for dehumidifiers; 10 CFR 430 subpart B appendices F, M,
 * M1, X1 and CC for ratings, labels and frost; apparatus dew point, bypass factor and saturation
 * effectiveness as in the ASHRAE handbooks; sizes by common practice.<br>
 * <b>Plants:</b> every kind answers {@code RoomPlant.at(room, outdoor, demand)} with a {@code
 * RoomEffect}: {@code WindowUnit}, {@code PortableUnit} (one hose, two, leaky), {@code
 * DuctlessHeatPump} (cooling, heating), {@code EvaporativeCooler}, {@code Dehumidifier}, {@code
 * Heater}. Heat and water of each close to 1e-9.<br>
 * <b>Altitude:</b> fans move a volume, so thin air is less mass: coils run colder, take out more
 * water and a little less of it sensible, hoses and wet pads carry less. Capacity and power of the
 * curves are kept as at sea level, a few per cent too much at 5,000 ft.<br>
 * <b>Limits:</b> generic curves, held at the edge of their tested range and said so; steady running
 * of a clean coil, fan heat inside the net rating, no loss by ice (a coil face below 0 °C is told),
 * no reheat by moisture at the outdoor coil; a dirty coil does worse than less air alone ({@code
 * DustBand}). Water re-evaporates from a stopped coil only where its fan is said to run on.<br>
 * <b>Checked by:</b> {@code CurveSetPublishedTest}, {@code RatingPublishedTest}, {@code
 * RoomUnitPublishedTest}, {@code PlantPublishedTest}, {@code RoomPlantProperties}.
 */
package org.shopclime.unit;
