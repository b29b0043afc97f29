package org.shopclime.shop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A shop file that stays as it is when the examples change. */
final class DayFile {

  private DayFile() {}

  /** Its text. */
  static String text() {
    try (InputStream in = DayFile.class.getResourceAsStream("day.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The shop in it. */
  static Shop shop() {
    return ((ShopReading.Good) ShopFile.read(text(), Stations.any())).shop();
  }
}
