package org.shopclime.bill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A mean price of electricity for homes, where the owner typed none.
 *
 * <p>Source: US Energy Information Administration: Electric Power Annual, data for 2023 (released
 * October 2024), residential average revenue, for eight states; annual average residential price,
 * 2022, for the nation. Each row of the table beside this class names its own.
 *
 * @param area postal code of the state, or "US" for the nation
 * @param price $/kWh; what homes paid in the mean, charges and taxes included
 * @param year year it is of
 * @param source who says so
 */
public record KnownPrice(String area, double price, int year, String source) {

  private static final String NATION = "US";
  private static final Pattern COMMA = Pattern.compile(",");
  private static final double CENTS = 100;

  /**
   * The price to reckon with in a state.
   *
   * @param state two-letter postal code
   * @return price of the state where the table has one, otherwise the nation's
   */
  public static KnownPrice of(String state) {
    List<KnownPrice> all = all();
    return all.stream()
        .filter(price -> price.area().equals(state))
        .findFirst()
        .or(() -> all.stream().filter(price -> !price.isOfState()).findFirst())
        .orElseThrow();
  }

  /**
   * Whether it is a state's own.
   *
   * @return false for the nation's
   */
  public boolean isOfState() {
    return !area.equals(NATION);
  }

  /** The whole table. */
  static List<KnownPrice> all() {
    try (InputStream stream = KnownPrice.class.getResourceAsStream("electricity-prices.csv");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("area"))
          .map(KnownPrice::row)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("electricity-prices.csv", e);
    }
  }

  private static KnownPrice row(String line) {
    String[] cells = COMMA.split(line, 4);
    return new KnownPrice(
        cells[0], Double.parseDouble(cells[1]) / CENTS, Integer.parseInt(cells[2]), cells[3]);
  }
}
