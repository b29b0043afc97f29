/**
 * HTML, CSV, PNG and JSON writers; chart and picture builders shared with the form.
 *
 * <p><b>Answers:</b> how is the answer shown?<br>
 * <b>May touch:</b> all rooms but {@code form} and {@code app}.<br>
 * <b>Units:</b> inch-pound or SI text outside, SI inside; the JSON of the hot day is always
 * inch-pound, that of the year in kWh, kW and °C.<br>
 * <b>Source:</b> no physics; figures are those of {@code plan}. Chart colours: palette of Okabe and
 * Ito (2008). Formats: RFC 8259 (JSON), RFC 4180 (CSV), HTML that is well-formed XML.<br>
 * <b>Limits:</b> English; sentences round to whole °F, 0.1 °C, 100 BTU/h or 10 W; without a font
 * that Java can draw with, pages come without charts.<br>
 * <b>Checked by:</b> {@code AnswerTextTest}, {@code SizeJsonTest}, {@code SizeCsvTest}, {@code
 * HtmlReportTest}, {@code ChartTest}, {@code YearChartTest}, {@code ClimateChartTest}, {@code
 * PlacesTextTest}, {@code AirPictureTest}, {@code AirReportTest}.
 */
package org.shopclime.report;
