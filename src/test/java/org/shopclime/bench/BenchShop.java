package org.shopclime.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/** A shop with an attic at Mobile, Alabama, with 12,000 BTU/h: two rooms and 25 chains. */
public final class BenchShop {

  private static final String FILE = "two-rooms.json";

  private BenchShop() {}

  /**
   * The shop of the file.
   *
   * @return two rooms and 25 surfaces
   */
  public static Shop shop() {
    try (InputStream stream = BenchShop.class.getResourceAsStream(FILE)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      if (ShopFile.read(text, Stations.any()) instanceof ShopReading.Good good) {
        return good.shop();
      }
      throw new IllegalStateException(FILE + " is damaged");
    } catch (IOException e) {
      throw new UncheckedIOException(FILE, e);
    }
  }

  /** The hot day it is sized for. */
  static HotDay day() {
    return DesignDays.hotDay(Climates.load().find("722230").orElseThrow(), Level.P1);
  }

  /** Its network on that day. */
  static ShopModel model() {
    return ShopModel.cooling(shop(), day(), ShopModel.Holding.HELD);
  }
}
