/**
 * Command line and entry.
 *
 * <p><b>Answers:</b> which verb with which arguments?<br>
 * <b>May touch:</b> all rooms.<br>
 * <b>Units:</b> text.<br>
 * <b>Source:</b> the verbs, their words and exit codes are the project's own; no figure is made
 * here.<br>
 * <b>Limits:</b> one command line at a time; text goes out as UTF-8, also where a terminal shows
 * another encoding.<br>
 * <b>Checked by:</b> {@code CommandsTest}, {@code BadInputTest}, {@code YearVerbTest}, {@code
 * PlacesVerbTest}.
 */
package org.shopclime.app;
