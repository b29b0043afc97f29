/**
 * Sun position, clear sky, irradiance on a tilted face, sky temperature, glass by angle, shade.
 *
 * <p><b>Answers:</b> how much sun and sky falls on this face, and how much passes the glass?<br>
 * <b>May touch:</b> air.<br>
 * <b>Units:</b> W/m², degrees, °C, m.<br>
 * <b>Source:</b> NREL/TP-560-34302 (position, by library); SERI/TR-642-761 (clear sky); Perez and
 * others, Solar Energy 44(5), 1990 (faces); Clark and Allen 1978, Martin and Berdahl 1984 (sky
 * temperature); LBNL-2804E and Fresnel's laws (glass); ASHRAE Handbook - Fundamentals (daily
 * range).<br>
 * <b>Limits:</b> no hills on the horizon; boards that shade are black; glass is bare, coatings only
 * by their label; a frame counts as glass.<br>
 * <b>Checked by:</b> {@code SunPositionPublishedTest}, {@code ClearSkyPublishedTest}, {@code
 * BirdClearSkyPublishedTest}, {@code GlassOpticsPublishedTest}, {@code DenverYearPublishedTest}.
 */
package org.shopclime.sun;
