package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/** More of what heats a shop never asks less of its cooling, on any hot day. */
@AddLifecycleHook(MoreTries.class)
class HotDaySenseProperties {

  private static final String NEWCOMERS = "Newcomers";

  /**
   * In each hour and room, more outdoor air brings heat where it is hotter outdoors than in, and
   * water where it is moister, and takes them away where it is not.
   */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void moreLeakageBringsWhatIsOutdoors(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    double area = drawn.between(0, 0.1);
    double more = drawn.between(0.001, 0.1);
    Shop shop = drawn.shop();
    HotDay day = drawn.day(shop);
    ShopModel tight = model(leaking(shop, area), day);
    ShopLoad before = PeakLoad.totals(tight);
    ShopLoad after = PeakLoad.totals(model(leaking(shop, area + more), day));
    for (int i = 0; i < before.rooms().size(); i++) {
      RoomLoad one = before.rooms().get(i);
      RoomLoad other = after.rooms().get(i);
      int room = one.room();
      for (int hour = 1; hour <= 24; hour++) {
        double warmer = day.dryBulb().at(hour) - tight.setPoint(room);
        double moister = day.humidityRatio().at(hour) - tight.wishedHumidityRatio(room);
        assertThat(Math.signum(warmer) * (other.sensible().at(hour) - one.sensible().at(hour)))
            .isGreaterThanOrEqualTo(-slack(one.sensible()));
        assertThat(Math.signum(moister) * (other.latent().at(hour) - one.latent().at(hour)))
            .isGreaterThanOrEqualTo(-slack(one.latent()));
      }
    }
  }

  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void morePeopleNeverAskLess(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    HotDay day = drawn.day(shop);
    Gain people =
        DrawnShop.make(
            Gain.People.class,
            "name",
            NEWCOMERS,
            "count",
            drawn.between(0.5, 4),
            "activity",
            drawn.any(List.of(Gain.Activity.values())));
    Shop full =
        DrawnShop.eachRoom(
            shop,
            room -> {
              List<Gain> gains = new ArrayList<>(room.gains());
              gains.add(people);
              return room.use() == RoomUse.COOLED ? room.withGains(gains) : room;
            });
    notLessAtAnyHour(model(shop, day), model(full, day));
    theirLinesAreNeverBelowNothing(PeakLoad.of(model(full, day)));
  }

  /** What they bring by themselves is never cold, to rounding. */
  private static void theirLinesAreNeverBelowNothing(ShopLoad load) {
    double least = -Near.ROUNDING * Near.greatest(sensible(load));
    for (RoomLoad room : load.rooms()) {
      for (Line line : room.lines()) {
        for (int hour = 1; hour <= 24 && line.name().equals(NEWCOMERS); hour++) {
          assertThat(line.sensible().at(hour)).as("hour %d", hour).isGreaterThanOrEqualTo(least);
        }
      }
    }
  }

  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void aDarkerRoofNeverAsksLess(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    HotDay day = drawn.day(shop);
    double light = drawn.between(0.1, 0.5);
    double dark = drawn.between(light, 0.95);
    notLessAtAnyHour(model(roofed(shop, light), day), model(roofed(shop, dark), day));
  }

  /**
   * Sensible heat in every hour of a day moved up; outdoor air that is drier than wished for may
   * bring less water the more of it comes in, and so less in all.
   */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void aHotterDayAsksMore(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    HotDay day = drawn.day(shop);
    HotDay hotter = DesignDays.shifted(day, drawn.between(0.1, 6));
    notLessAtAnyHour(model(shop, day), model(shop, hotter));
  }

  /**
   * Insulation added to all faces, on a day on which air, sky with it, and ground are hotter than
   * any room at all hours. Without windows and work: heat set free inside goes out through bare
   * faces while they are cooler than the room's, and into their mass, both of which insulation
   * ends. On cool nights a bare roof also sheds heat that an insulated one keeps.
   */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void insulationAllRoundNeverRaisesThePeak(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop =
        DrawnShop.eachFace(
            DrawnShop.withoutGains(drawn.shop()), face -> face.withWindows(List.of()));
    HotDay day = DesignDays.shifted(TestShops.swinging(), drawn.between(8, 14));
    double more = drawn.between(0.1, 5);
    boolean inside = drawn.any(List.of(true, false));
    Shop thick = DrawnShop.eachFace(shop, face -> DrawnShop.insulated(face, more, inside));
    Profile before = sensible(PeakLoad.totals(model(shop, day)));
    Profile after = sensible(PeakLoad.totals(model(thick, day)));
    assertThat(after.peak()).isLessThanOrEqualTo(before.peak() * (1 + Near.ROUNDING));
  }

  private static void notLessAtAnyHour(ShopModel one, ShopModel other) {
    Profile before = sensible(PeakLoad.totals(one));
    Profile after = sensible(PeakLoad.totals(other));
    double least = -slack(before);
    assertThat(after.mean() - before.mean())
        .as("the day")
        .isGreaterThanOrEqualTo(-Near.ROUNDING * Near.greatest(before));
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(after.at(hour) - before.at(hour))
          .as("hour %d", hour)
          .isGreaterThanOrEqualTo(least);
    }
  }

  private static Profile sensible(ShopLoad load) {
    Profile sum = Profile.of(hour -> 0);
    for (RoomLoad room : load.rooms()) {
      sum = sum.plus(room.sensible());
    }
    return sum;
  }

  /**
   * With more heat the faces' means move, about which radiation is made linear for the day; that
   * moves the lines of other things either way: in the drawn shop 11380 by 0.12 W of 8 kW at night,
   * when the newcomers' own line is 0.11 W, so that the total falls by 1e-6 of its peak; in seven
   * of 2,500 by 1e-5 to 4e-5. The sum of the day never falls.
   */
  private static double slack(Profile profile) {
    return 1e-4 * Near.greatest(profile);
  }

  private static Shop leaking(Shop shop, double area) {
    return DrawnShop.eachRoom(
        shop,
        room ->
            room.use() == RoomUse.COOLED
                ? room.withLeakage(new Leakage.Area(Span.known(area)))
                : room);
  }

  private static Shop roofed(Shop shop, double absorptance) {
    return DrawnShop.eachFace(
        shop,
        face ->
            face.part() == Part.ROOF
                ? DrawnShop.with(face, "absorptance", Span.known(absorptance))
                : face);
  }

  private static ShopModel model(Shop shop, HotDay day) {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
  }
}
