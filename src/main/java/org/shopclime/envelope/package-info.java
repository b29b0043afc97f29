/**
 * Materials, layers, framing, films, windows, doors, ground: conductances and masses; vapour
 * through walls.
 *
 * <p><b>Answers:</b> what are the conductance and the mass of this wall, roof, door, window or
 * slab, and where does water fall out in it?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> m, W/(m·K), kg/m³, J/(kg·K), W/(m²·K).<br>
 * <b>Source:</b> ASHRAE Handbook - Fundamentals (materials, films, parallel paths); ASHRAE 90.1
 * (framing, doors, slab edges); ISO 6946, ISO 13370, ISO 13786, ISO 13788; each class names its
 * own.<br>
 * <b>Limits:</b> heat runs straight through each path; metal crossing insulation is told for steel
 * studs only; foams and batts at their usual age, dry; films of still air inside and of two winds
 * outside.<br>
 * <b>Checked by:</b> {@code FramingPublishedTest}, {@code MaterialsPublishedTest}, {@code
 * FilmsPublishedTest}, {@code DoorsPublishedTest}, {@code WindowsPublishedTest}, {@code
 * NodesPublishedTest}, {@code GroundPublishedTest}.
 */
package org.shopclime.envelope;
