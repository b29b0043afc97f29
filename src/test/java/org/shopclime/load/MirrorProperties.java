package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MirroredDay;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Shop;

/** A shop in a mirror, under a sun in the same mirror, has the same load line by line. */
@AddLifecycleHook(MoreTries.class)
class MirrorProperties {

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void aMirroredShopUnderTheMirroredSunHasTheSameLines(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    HotDay day = drawn.day(shop);
    ShopLoad here = PeakLoad.of(ShopModel.cooling(shop, day, ShopModel.Holding.HELD));
    ShopLoad there = PeakLoad.of(MirroredDay.model(MirroredDay.shop(shop), day));
    for (int room = 0; room < here.rooms().size(); room++) {
      RoomLoad one = here.rooms().get(room);
      RoomLoad other = there.rooms().get(room);
      double scale = Math.max(1, Near.greatest(one.sensible()));
      assertThat(other.lines()).hasSameSizeAs(one.lines());
      for (int line = 0; line < one.lines().size(); line++) {
        Line mine = one.lines().get(line);
        Line its = other.lines().get(line);
        assertThat(its.name()).isEqualTo(mine.name());
        Near.same(mine.name(), mine.sensible(), its.sensible(), scale);
        Near.same(mine.name(), mine.latent(), its.latent(), scale);
      }
      Near.same("total", one.sensible(), other.sensible(), scale);
    }
  }

  /** The mirror is no plain glass: under the true sun the mirrored shop has another load. */
  @Property(tries = 5, shrinking = ShrinkingMode.OFF)
  void theSunTellsEastFromWest(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop =
        DrawnShop.eachFace(
            drawn.shop(),
            face ->
                face.name().equals("Right")
                    ? DrawnShop.with(face, "azimuth", 90.0, "treeShade", 1.0)
                    : DrawnShop.with(face, "azimuth", 0.0));
    HotDay day = drawn.day(shop);
    Profile here = PeakLoad.totals(model(shop, day)).total();
    Profile there = PeakLoad.totals(model(MirroredDay.shop(shop), day)).total();
    double farthest = Near.greatest(Profile.of(hour -> here.at(hour) - there.at(hour)));
    assertThat(farthest).isGreaterThan(0.01);
  }

  private static ShopModel model(Shop shop, HotDay day) {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }
}
