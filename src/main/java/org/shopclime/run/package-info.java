/**
 * Hot-day and year runs with unit and humidity.
 *
 * <p><b>Answers:</b> what temperature and humidity will the room have, and does the unit hold? What
 * does a year take?<br>
 * <b>May touch:</b> balance, unit, leakage, heat, air.<br>
 * <b>Units:</b> °C, W, kg/kg, s.<br>
 * <b>Source:</b> heat and water balances of each room, in steps of five minutes, a quarter of an
 * hour in the year; moisture store by effective penetration depth (Kerestecioglu and others, ASHRAE
 * Transactions 96(1), 1990); days that repeat by the method of Anderson (J. ACM 12, 1965).<br>
 * <b>Limits:</b> the unit takes in the air as it is at the start of each step; it cools one room,
 * and other cooled rooms float; water that condenses on faces gives them no heat; a coil gives
 * nothing back when it stops. Halved steps move the peak by less than 0.1 °F and the day's heat by
 * less than 0.5 %.<br>
 * <b>Checked by:</b> LivedDayTest (conservation to 1e-9, halved steps, more days), LumpedShopTest
 * (exponentials and moisture by pencil), OpenDoorTest, OpenStairTest, UnitSearchTest (scans); the
 * year by YearRunTest (conservation to 1e-9, steady cases by pencil), YearRunProperties,
 * DayBooksProperties, YearStepsTest, YearAgainstDayTest; habits of running a unit by HabitYearTest,
 * HabitProperties.
 */
package org.shopclime.run;
