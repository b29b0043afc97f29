/**
 * Shop and weather become network, drivers, air flows and lines: the one place where a shop becomes
 * numbers.
 *
 * <p><b>Answers:</b> what network, driven by what, stands for this shop on this day, and through
 * this year; is vapour caught in its walls?<br>
 * <b>May touch:</b> shop, climate, envelope, gain, leakage, sun, heat, air.<br>
 * <b>Units:</b> SI.<br>
 * <b>Source:</b> films and air flows by ASHRAE Handbook - Fundamentals; radiation between faces by
 * J. A. Carroll (1980); sky by Walton, NBSIR 83-2655; slabs by ISO 13370:2017; water in walls by
 * effective penetration depth, from memory; damp walls by ISO 13788. Each class names its own.<br>
 * <b>Limits:</b> one air temperature a room; radiation linear about the day's means; faces of a
 * room see each other by area only; light through a partition's glass is lost; beam sun falls on
 * the floor wherever the window is; open doors move air by temperature or by wind along the wall,
 * not by a cross draught; contents stand as plates of iron and wood; partly shaded sky light is not
 * reckoned; what a schedule puts past midnight of standard time stays in the same day.<br>
 * <b>Checked by:</b> {@code ConductionSeriesPublishedTest}, {@code RadiantFactorsTest}, {@code
 * SunInsideTest}, {@code AirStreamsTest}, {@code SlabPathTest}, {@code SkeletonMakerTest}, {@code
 * LineMapTest}, {@code DaySlotsTest}, {@code WeekTest}, {@code MoistureStoreTest}, {@code
 * GainWarningsTest}, {@code YearWeatherTest}, {@code WaveThroughWallTest} (ISO 13786), {@code
 * SlabSteadyPublishedTest}, {@code SunInItsHourTest}, {@code SunHourWeatherTest}, {@code
 * SeasonMakerTest}, {@code YearDriversTest}, {@code RoomYearTest}, {@code SunHeatTest}; damp walls
 * by {@code DampAnswerTest} of {@code plan}; the year against the day by {@code run}; and by the
 * hand calculations of {@code load}.
 */
package org.shopclime.balance;
