/**
 * The window in which a shop is described and answered.
 *
 * <p><b>Answers:</b> how does a person enter a shop and see the answer?<br>
 * <b>May touch:</b> all rooms but {@code app}.<br>
 * <b>Units:</b> as the person chooses; inside, SI as everywhere.<br>
 * <b>Source:</b> fields, help and ranges are those said once in the shop's records; the sentence,
 * the figures and the pictures are those of the report; verdict colours after Okabe and Ito (2008);
 * map of the stations by Snyder, USGS Professional Paper 1395 (1987). <br>
 * <b>Limits:</b> one shop in a window; nothing is reckoned here; a figure too long to be shown
 * whole is shown rounded and kept as it was until it is typed anew.<br>
 * <b>Checked by:</b> {@code ShopWindowTest} (every figure shown against the saved file), {@code
 * LayoutWindowTest} (nothing clipped at 100 and 200 %), {@code PlacePickerWindowTest}, {@code
 * AirWindowTest}, all four only where there is a display; {@code AlbersPublishedTest}, {@code
 * StationMapTest}, {@code PlaceFinderTest}, {@code WordingTest}, {@code ShopPathTest}, {@code
 * ShopSessionTest}, {@code OutlineTest}.
 */
package org.shopclime.form;
