package org.shopclime.shop;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shopclime.quantity.UnitSystem;

/**
 * The help of {@link Say} in the reader's units. Where it names quantities, both systems stand side
 * by side in braces, such as {@code "{101 °F|38 °C}"}.
 */
public final class Help {

  private static final Pattern BOTH = Pattern.compile("\\{([^{}|]*)\\|([^{}|]*)\\}");

  private Help() {}

  /**
   * The help as one system of units has it.
   *
   * @param help as it stands in {@link Say#help}
   * @param units system of the reader
   * @return the same without braces
   */
  public static String in(String help, UnitSystem units) {
    return BOTH.matcher(help)
        .replaceAll(both -> Matcher.quoteReplacement(both.group(units == UnitSystem.SI ? 2 : 1)));
  }
}
