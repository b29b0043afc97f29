package org.shopclime.shop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Shop files to start from: one maker of cargo-bike frames near Mobile, Alabama, with a 24 x 24 ft
 * shop, a 12,000 BTU/h window unit and a 5 hp compressor, at four stages and on a day of powder
 * coat, with batches in the oven, exhaust fans and compressed air told.
 */
public final class Examples {

  /** The one shown when none is asked for. */
  public static final String USUAL = "insulated-foam-door";

  private static final List<String> NAMES =
      List.of("bare-studs", "insulated", "insulated-foam-door", "oven-day", "powder-day");

  private Examples() {}

  /**
   * Names of the examples.
   *
   * @return from bare studs to a day of powder coat
   */
  public static List<String> names() {
    return NAMES;
  }

  /**
   * Text of an example's file.
   *
   * @param name one of {@link #names}
   * @return the file, JSON
   * @throws IllegalArgumentException if there is no such example; the message lists the names
   */
  public static String text(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException(
          "no example \"" + name + "\"; takes one of " + BriefText.quoted(NAMES));
    }
    try (InputStream stream = Examples.class.getResourceAsStream("examples/" + name + ".json")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("example " + name, e);
    }
  }

  /**
   * An example.
   *
   * @param name one of {@link #names}
   * @return the shop
   * @throws IllegalArgumentException if there is no such example
   */
  public static Shop shop(String name) {
    ShopReading reading = ShopFile.read(text(name), Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return good.shop();
    }
    throw new IllegalStateException("example " + name + " is damaged: " + reading);
  }
}
