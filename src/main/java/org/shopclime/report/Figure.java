package org.shopclime.report;

/**
 * One figure of an answer, ready to be shown.
 *
 * @param key its place in the JSON of the same answer, such as {@code peak.totalBtuh}
 * @param label what it means, in a shop owner's words
 * @param value the figure with its unit, or words
 */
public record Figure(String key, String label, String value) {}
