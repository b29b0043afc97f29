package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Something in a shop that its owner does not know exactly.
 *
 * @param path place, such as {@code rooms[0].gains[3].duty}
 * @param label the field's short name, such as "Part of the time running"
 * @param of name of the thing it belongs to, such as "Compressor"; empty if it has none
 * @param kind what is measured; a plain count for an unknown tightness
 * @param span low, likely and high, SI; for an unknown tightness the numbers of the grades in
 *     {@link Leakage.Grade}, from 0
 * @param lowIsKind whether the low end is the one with less to cool
 */
public record SpanPlace(
    String path, String label, String of, Kind kind, Span span, boolean lowIsKind) {}
