/**
 * What the owner describes (immutable records), its file, presets and validation; no physics.
 *
 * <p><b>Answers:</b> what does the owner have?<br>
 * <b>May touch:</b> quantity, envelope, climate.<br>
 * <b>Units:</b> SI inside the records, text with units in the file.<br>
 * <b>Source:</b> the file is JSON (RFC 8259), its schema JSON Schema draft 2020-12; presets are
 * common practice and say what they take for granted; cautions name the authority behind them.<br>
 * <b>Limits:</b> a building is rooms bounded by flat faces; a week is one set of days with the same
 * periods; materials, doors and glass are those of the tables or typed by hand.<br>
 * <b>Checked by:</b> {@code ShopFileTest}, {@code ShopFileProperties}, {@code ShopCheckTest},
 * {@code ShopSchemaTest}, {@code ShopEditTest}, {@code PresetsTest}, {@code DuctPublishedTest}.
 */
package org.shopclime.shop;
