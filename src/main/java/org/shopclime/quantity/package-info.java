/**
 * Units at the edges: text such as "24 ft", "R-15", "12000 BTU/h" to and from SI numbers.
 *
 * <p><b>Answers:</b> what does this text mean in SI, and how is this number shown to a person?<br>
 * <b>May touch:</b> the JDK only; no other room of this program.<br>
 * <b>Units:</b> text outside, SI inside.<br>
 * <b>Source:</b> NIST Special Publication 811 (2008), appendix B; the spellings are common
 * practice.<br>
 * <b>Limits:</b> ranges are for whoever asks to check; a comma only parts thousands.<br>
 * <b>Checked by:</b> {@code UnitsPublishedTest}, {@code QuantitiesTest}, {@code
 * QuantitiesProperties}.
 */
package org.shopclime.quantity;
