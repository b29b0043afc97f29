package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Face;
import org.shopclime.shop.Shop;

/**
 * A shop without work in steady heat, without sun: outdoors, sky with it, and the ground are hotter
 * than any room, so that every face brings heat in. A wall between two cooled rooms is left alone:
 * it only passes heat from one to the other.
 */
@AddLifecycleHook(MoreTries.class)
class SteadySenseProperties {

  private static final int HOUR = 12;

  private final double slack = Near.ROUNDING;

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void moreResistanceLowersItsLineAndTheTotal(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = DrawnShop.withoutGains(drawn.shop());
    HotDay day = TestShops.constant(drawn.between(34, 40), drawn.between(0, 6));
    Face face = chosen(drawn, shop);
    double more = drawn.between(0.05, 4);
    boolean inside = drawn.any(List.of(true, false));
    ShopLoad before = load(shop, day);
    ShopLoad after = load(changed(shop, face, DrawnShop.insulated(face, more, inside)), day);
    assertThat(total(after)).as(face.name()).isLessThanOrEqualTo(total(before) * (1 + slack));
    if (hasLine(before, face)) {
      assertThat(line(after, face)).as(face.name()).isLessThan(line(before, face));
    }
  }

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void twiceTheAreaLowersNeitherItsLineNorTheTotal(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = DrawnShop.withoutGains(drawn.shop());
    HotDay day = TestShops.constant(drawn.between(34, 40), drawn.between(0, 6));
    Face face = chosen(drawn, shop);
    ShopLoad before = load(shop, day);
    Face wide = DrawnShop.with(face, "width", 2 * face.width());
    ShopLoad after = load(changed(shop, face, wide), day);
    assertThat(total(after)).as(face.name()).isGreaterThanOrEqualTo(total(before) * (1 - slack));
    if (hasLine(before, face)) {
      assertThat(line(after, face)).as(face.name()).isGreaterThan(line(before, face));
    }
  }

  private static ShopLoad load(Shop shop, HotDay day) {
    return PeakLoad.of(TestShops.dark(shop, day));
  }

  private static Face chosen(DrawnShop drawn, Shop shop) {
    List<Face> faces =
        shop.rooms().stream()
            .flatMap(room -> room.faces().stream())
            .filter(face -> !face.behind().equals("nothing") && !face.behind().equals("Office"))
            .toList();
    Face face = drawn.any(faces);
    Assume.that(face.netArea() > 0.1);
    return face;
  }

  private static Shop changed(Shop shop, Face face, Face other) {
    return DrawnShop.eachFace(shop, each -> each.equals(face) ? other : each);
  }

  private static double total(ShopLoad load) {
    return load.rooms().stream().mapToDouble(room -> room.sensible().at(HOUR)).sum();
  }

  /** A face of a floating room counts in the line of what parts it from the cooled one. */
  private static boolean hasLine(ShopLoad load, Face face) {
    return load.rooms().stream()
        .flatMap(room -> room.lines().stream())
        .anyMatch(line -> line.name().equals(face.name()) && line.uFactor() > 0);
  }

  private static double line(ShopLoad load, Face face) {
    return load.rooms().stream()
        .flatMap(room -> room.lines().stream())
        .filter(line -> line.name().equals(face.name()))
        .mapToDouble(line -> line.sensible().at(HOUR))
        .sum();
  }
}
