package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.shop.Shop;

/**
 * The hot day of any shop: lines make up the total, heat is neither made nor lost, all is finite.
 */
@AddLifecycleHook(MoreTries.class)
class HotDayBooksProperties {

  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void linesAddUpToTheTotalAtEveryHour(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    ShopLoad load = PeakLoad.of(ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD));
    Near.finite(load);
    for (RoomLoad room : load.rooms()) {
      Profile sensible = Profile.of(hour -> 0);
      Profile latent = Profile.of(hour -> 0);
      for (Line line : room.lines()) {
        assertThat(line.kind()).isNotEqualTo(ComponentKind.CONTENTS);
        sensible = sensible.plus(line.sensible());
        latent = latent.plus(line.latent());
      }
      Near.same("sensible sum", sensible, room.sensible(), 1);
      Near.same("latent sum", latent, room.latent(), 1);
    }
  }

  /** The network's own account, step by step: stored is what came in. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void heatOfTheHeldDayIsKept(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    HeldDay day = new HeldDay(model);
    Account account = new Account(model);
    HeldDay.Result result = day.run(day.everything(), account);
    assertThat(account.steps).isPositive();
    Near.nothing("heat of a step", account.farthest, account.turnover);
    for (int room = 0; room < model.rooms(); room++) {
      for (int hour = 1; hour <= 24; hour++) {
        assertThat(result.plant(room, hour)).isFinite();
        if (model.isCooled(room)) {
          Near.nothing("held", result.air(room, hour) - model.setPoint(room), 1);
        } else {
          assertThat(result.plant(room, hour)).isZero();
        }
      }
    }
  }

  /** Sums of each step. */
  private static final class Account implements HeldDay.Watch {
    private static final double SECONDS = 86_400.0 / HeldDay.STEPS;

    private final ShopModel model;
    private double farthest;
    private double turnover;
    private int steps;

    Account(ShopModel model) {
      this.model = model;
    }

    @Override
    public void stepped(March march, Drivers drivers) {
      double in = drivers.sources();
      double moved = Math.abs(in);
      for (int room = 0; room < model.rooms(); room++) {
        double stream = drivers.inflowHeat(room, march.meanAir(room));
        in += stream + march.plant(room);
        moved += Math.abs(stream) + Math.abs(march.plant(room));
      }
      for (int boundary = 0; boundary < model.network().boundaries(); boundary++) {
        double heat = march.boundaryHeat(boundary);
        in += heat;
        moved += Math.abs(heat);
      }
      double stored = march.storedHeatChange() / SECONDS;
      farthest = Math.max(farthest, Math.abs(in - stored));
      turnover = Math.max(turnover, moved);
      steps++;
    }
  }
}
