/**
 * Materials, layers, framing, films, windows, doors, ground: conductances and masses.
 *
 * <p><b>Answers:</b> what are the conductance and the mass of this wall, roof, door, window or
 * slab?<br>
 * <b>May touch:</b> air, quantity.<br>
 * <b>Units:</b> m, W/(m·K), kg/m³, J/(kg·K), W/(m²·K).<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.envelope;
