/**
 * Sun position, clear sky, irradiance on a tilted face, sky temperature, glass by angle, shade.
 *
 * <p><b>Answers:</b> how much sun and sky falls on this face, and how much passes the glass?<br>
 * <b>May touch:</b> air.<br>
 * <b>Units:</b> W/m², degrees, °C, m.<br>
 * <b>Source:</b> to be told.<br>
 * <b>Limits:</b> to be told.<br>
 * <b>Checked by:</b> to be told.
 */
package org.shopclime.sun;
