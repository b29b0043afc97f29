package org.shopclime.report;

import java.util.Optional;
import org.shopclime.balance.ToolAir;
import org.shopclime.balance.ToolTime;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** How long the tools make the compressor run, where they are told, and what air they let out. */
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

  /** Where the air that tools let out in the room comes from; nothing without a compressor. */
  static Optional<String> air(SizeAnswer answer, UnitSystem units) {
    Shop shop = answer.shop();
    return ToolAir.of(shop, answer.core().hotDay().pressure()).map(air -> air(air, shop, units));
  }

  private static String air(ToolAir air, Shop shop, UnitSystem units) {
    String draws =
        Shown.line(air.machine().machine().name())
            + " draws "
            + AirText.flow(air.mean(), units)
            + " in the mean of its hours from ";
    if (!air.isExchange()) {
      return draws + "this room, and the tools let it out here again: it is neither in nor out.";
    }
    String from = air.from() < 0 ? "outdoors" : Shown.line(shop.rooms().get(air.from()).name());
    return draws + from + ", and the tools let it out here; it keeps about as much leakage back.";
  }
}
