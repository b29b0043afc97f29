package org.shopclime.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.CutFace;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Shop;

/** It is the same wall whether the owner lists it whole or in two parts. */
@AddLifecycleHook(MoreTries.class)
class CutFaceProperties {

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void aCutFaceChangesNoTotalOfTheHotDay(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    Optional<CutFace> cut = CutFace.of(drawn, shop);
    Assume.that(cut.isPresent());
    HotDay day = drawn.day(shop);
    ShopLoad whole = PeakLoad.totals(model(shop, day));
    ShopLoad parts = PeakLoad.totals(model(cut.get().shop(), day));
    for (int room = 0; room < whole.rooms().size(); room++) {
      RoomLoad one = whole.rooms().get(room);
      RoomLoad other = parts.rooms().get(room);
      Near.same("sensible", one.sensible(), other.sensible(), 1);
      Near.same("latent", one.latent(), other.latent(), 1);
    }
    for (int room = 0; room < whole.airTemperature().size(); room++) {
      Near.same("air", whole.airTemperature().get(room), parts.airTemperature().get(room), 1);
    }
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void theLinesOfBothPartsAreTheLineOfTheWhole(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    Optional<CutFace> cut = CutFace.of(drawn, shop);
    Assume.that(cut.isPresent());
    HotDay day = TestShops.constant(drawn.between(15, 40), drawn.between(0, 6));
    ShopLoad whole = PeakLoad.of(TestShops.dark(shop, day));
    ShopLoad parts = PeakLoad.of(TestShops.dark(cut.get().shop(), day));
    for (int room = 0; room < whole.rooms().size(); room++) {
      List<Line> one = whole.rooms().get(room).lines();
      List<Line> other = new ArrayList<>(parts.rooms().get(room).lines());
      double scale =
          one.stream().mapToDouble(line -> Near.greatest(line.sensible())).max().orElse(1);
      for (Line line : one) {
        Profile sum = Profile.of(hour -> 0);
        for (Line part : List.copyOf(other)) {
          boolean same =
              part.name().equals(line.name())
                  || (line.name().equals(cut.get().name())
                      && part.name().equals(cut.get().otherName()));
          if (same) {
            sum = sum.plus(part.sensible());
            other.remove(part);
          }
        }
        Near.same(line.name(), line.sensible(), sum, scale);
      }
      Near.nothing("lines left over", other.size(), 1);
    }
  }

  private static ShopModel model(Shop shop, HotDay day) {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }
}
