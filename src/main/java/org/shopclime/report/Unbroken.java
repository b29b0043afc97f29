package org.shopclime.report;

import java.util.regex.Pattern;

/** Text whose figures keep to their units where its lines are broken. */
public final class Unbroken {

  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d) (?=(?:[°%]|BTU|kWh|fl oz|[WKV]\\b|[ap]m\\b))|(?<=\\d fl) (?=oz)");

  private Unbroken() {}

  /**
   * A text that is bound so.
   *
   * @param text any text
   * @return the same with no-break spaces between figures and units
   */
  public static String of(String text) {
    return UNIT.matcher(text).replaceAll("\u00a0");
  }
}
