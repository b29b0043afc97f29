package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Passages;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.heat.Waves;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;

/**
 * The hot day of any shop: lines make up the total, heat is neither made nor lost, all is finite.
 */
@AddLifecycleHook(MoreTries.class)
class HotDayBooksProperties {

  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void linesAddUpToTheTotalAtEveryHour(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.opened(drawn.shop());
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

  /** What comes in through the day goes out through the day, and cooled rooms are held. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void heatOfTheHeldDayIsKept(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.opened(drawn.shop());
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    HeldDay day = new HeldDay(model);
    RoomsAir between = day.between();
    Drivers means = new Drivers(model.network());
    model.drivers(DayKind.WORKING, component -> true, 0).fillMeans(means);
    double in = means.sources();
    double moved = Math.abs(in);
    for (int boundary = 0; boundary < model.network().boundaries(); boundary++) {
      in += day.boundaryHeat(boundary);
      moved += Math.abs(day.boundaryHeat(boundary));
    }
    for (int room = 0; room < model.rooms(); room++) {
      double plant = model.isCooled(room) ? day.plant(room).mean() : 0;
      double stream = 0;
      for (int step = 0; step < Waves.STEPS; step++) {
        double from = model.outdoor(step / 2 + 1) - day.steps(room)[step];
        stream += day.flow(room, step) * from / Waves.STEPS;
        for (int way = 0; way < between.count() && !model.isCooled(room); way++) {
          int other = between.other(way, room);
          double warmer = other < 0 ? 0 : day.steps(other)[step] - day.steps(room)[step];
          stream += between.conductance(way, step) * warmer / Waves.STEPS;
        }
      }
      in += plant + stream;
      moved += Math.abs(plant) + Math.abs(stream);
      for (int hour = 1; hour <= 24; hour++) {
        assertThat(day.plant(room).at(hour)).isFinite();
        if (model.isCooled(room)) {
          Near.nothing("held", day.air(room).at(hour) - model.setPoint(room), 1);
        } else {
          assertThat(day.plant(room).at(hour)).isZero();
        }
      }
    }
    assertThat(moved).isPositive();
    Near.nothing("heat of the day", in, moved);
  }

  /** What changes places between rooms is what the air that it leads to makes flow. */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void airBetweenRoomsGoesByTheAirItLeadsTo(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.opened(drawn.shop());
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    HeldDay day = new HeldDay(model);
    Passages passages = model.passages();
    int slots = DaySlots.COUNT / Waves.STEPS;
    for (int way = 0; way < passages.count(); way++) {
      for (int step = 0; step < Waves.STEPS; step++) {
        double one = day.steps(passages.first(way))[step];
        double other = day.steps(passages.second(way))[step];
        double flow =
            passages.dryAir(way, Passages.plan(DayKind.WORKING), step * slots, slots, one, other);
        double watts = (flow - day.between().flow(way, step)) * 1010 * (one - other);
        assertThat(watts).isCloseTo(0, within(1e-3));
      }
    }
  }

  /**
   * A march in steps of five minutes under the same flows of air through floating rooms tells the
   * same load: of the day within 0.05 %, of each hour within 0.1 % of the greatest (measured in
   * 2,000 shops: 0.015 % and 0.05 % at most). Ovens are left out: their batches heat by the five
   * minutes, which the load takes by the half hour, 0.24 % in one of 400 shops; they are below.
   */
  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void marchTellsTheSameLoad(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Both both = new Both(drawn, ShopEdit.withoutGains(drawn.shop(), Gain.Oven.class));
    both.march.takeFlows(both.day);
    MarchedDay.Result marched = both.march.run(both.march.everything(), new Account(both.model));
    for (RoomLoad load : PeakLoad.totals(both.model).rooms()) {
      double scale = Math.max(1, Near.greatest(load.sensible()));
      double missing = 0;
      double turned = 24;
      for (int hour = 1; hour <= 24; hour++) {
        double held = both.day.plant(load.room()).at(hour);
        assertThat(held).isCloseTo(marched.plant(load.room(), hour), within(0.001 * scale));
        missing += held - marched.plant(load.room(), hour);
        turned += Math.abs(held);
      }
      assertThat(missing).as("load of the day").isCloseTo(0, within(0.0005 * turned));
    }
  }

  /**
   * What it costs that air through a floating room, and an oven's heat, are told by the half hour:
   * where its door stands open for some minutes, a march with the flows of every five minutes
   * differs. In 2,000 shops by 0.22 % of the greatest load of the room next to it at most, in all
   * but 19 of 2,649 rooms by less than 0.05 %; held here to the 0.5 % that peaks are held to
   * elsewhere.
   */
  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void flowsByTheHalfHourCostLittle(@ForAll long lot) {
    Both both = new Both(lot);
    MarchedDay.Result marched = both.march.run(both.march.everything());
    for (RoomLoad load : PeakLoad.totals(both.model).rooms()) {
      double scale = Math.max(1, Near.greatest(load.sensible()));
      for (int hour = 1; hour <= 24; hour++) {
        assertThat(both.day.plant(load.room()).at(hour))
            .isCloseTo(marched.plant(load.room(), hour), within(0.005 * scale));
      }
    }
  }

  /** A drawn shop's day, made both ways. */
  private static final class Both {
    final ShopModel model;
    final HeldDay day;
    final MarchedDay march;

    Both(long lot) {
      this(new DrawnShop(lot));
    }

    private Both(DrawnShop drawn) {
      this(drawn, drawn.shop());
    }

    Both(DrawnShop drawn, Shop shop) {
      model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
      day = new HeldDay(model);
      march = new MarchedDay(model, 288);
    }
  }

  /** The march's own account, step by step: stored is what came in. */
  private static final class Account implements MarchedDay.Watch {
    private static final double SECONDS = 300;

    private final ShopModel model;

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
      assertThat(in - stored).as("heat of a step").isCloseTo(0, within(1e-9 * turnover(moved)));
    }

    private double most;

    /** The most that any step so far has moved. */
    private double turnover(double moved) {
      most = Math.max(most, moved);
      return most;
    }
  }
}
