/**
 * Stations and the search for them, hot day, humid day, winter, typical years, and the reader of
 * weather files.
 *
 * <p><b>Answers:</b> what is the weather of the day that decides, and of a usual year, at this
 * place?<br>
 * <b>May touch:</b> air, sun, quantity.<br>
 * <b>Units:</b> °C, W/m², m/s, Pa, 24 hours ending 1 to 24, local standard time.<br>
 * <b>Source:</b> typical years of NREL TMY3 (NREL/TP-581-43156, 2008); levels and hot day as in
 * ASHRAE Handbook - Fundamentals (2001, ch. 27; 2009, ch. 14); ground after Kusuda and Achenbach
 * (1965).<br>
 * <b>Limits:</b> 1,020 US stations; a typical year leaves out the rarest hours, most of all the
 * coldest (winter figures 1.3 to 1.7 K warm in the mean, which {@code TypicalYearBias} takes off);
 * many stations borrow their aerosol depth.<br>
 * <b>Checked by:</b> {@code DesignTemperaturePublishedTest}, {@code ClearNoonWeatherTest}, {@code
 * StationWeatherTest}, {@code StationTableSanityTest}, {@code TypicalYearTableTest}, {@code
 * DesignDaysTest}, {@code WeatherGapsTest}, {@code WeatherSenseTest}, {@code
 * WeatherDamageProperties}, {@code PlaceSearchTest}, {@code ClimateKindPublishedTest}.
 */
package org.shopclime.climate;
