package org.shopclime.report;

import java.util.Optional;
import org.shopclime.balance.ToolTime;
import org.shopclime.shop.Shop;

/** How long the tools make the compressor run, where they are told. */
final class ToolText {

  private ToolText() {}

  /** One fact; nothing where no tools are told. */
  static Optional<String> fact(Shop shop, double pressure) {
    return ToolTime.of(shop, pressure).map(ToolText::fact);
  }

  private static String fact(ToolTime time) {
    String name = Shown.line(time.machine().machine().name());
    return time.asked() > 1
        ? name
            + " runs all of a working hour and cannot keep up: the tools you told ask for "
            + Shown.percent(time.asked())
            + " of the air it delivers."
        : name
            + " runs "
            + Shown.percent(time.duty())
            + " of a working hour for the tools you told; its heat is that, whatever part of the time"
            + " is told with it.";
  }
}
