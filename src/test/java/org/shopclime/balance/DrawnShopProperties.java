package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/** Drawn shops are such as an owner may write: their files are read without a problem. */
@AddLifecycleHook(MoreTries.class)
class DrawnShopProperties {

  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void drawnShopsPassTheChecks(@ForAll long lot) {
    Shop shop = new DrawnShop(lot).shop();
    ShopReading reading = ShopFile.read(ShopFile.write(shop), Stations.any());
    assertThat(reading).as("lot %d", lot).isInstanceOf(ShopReading.Good.class);
  }
}
