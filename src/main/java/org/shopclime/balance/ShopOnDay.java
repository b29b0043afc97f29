package org.shopclime.balance;

import java.util.List;
import java.util.function.Function;
import org.shopclime.climate.HotDay;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Shop;

/**
 * A shop on one day before the temperatures are known at which its radiation is made linear.
 *
 * @param shop the shop
 * @param day weather
 * @param sky air and sky as the outer faces see them
 * @param skeleton heat paths
 * @param sun where the sun ends
 * @param week the two days that are run
 * @param gains what gives off heat and water
 * @param streams air that enters
 * @param passages what stands open between rooms
 */
record ShopOnDay(
    Shop shop,
    HotDay day,
    DaySky sky,
    Skeleton skeleton,
    SunHeat sun,
    Week week,
    GainDays gains,
    AirStreams streams,
    Passages passages) {

  static ShopOnDay of(Shop shop, HotDay day, Season season, boolean sunny) {
    return of(
        shop,
        day,
        season,
        pieces ->
            sunny
                ? SunOnShop.clear(pieces, day, shop.place().groundReflectance())
                : SunOnShop.none(pieces.size()));
  }

  /** The same under a sun of one's own. */
  static ShopOnDay of(Shop shop, HotDay day, Season season, Function<List<Piece>, SunOnShop> sun) {
    return of(shop, day, DaySky.of(day), SkeletonMaker.of(shop, season), sun);
  }

  /** The same under a sun and a sky of one's own, with heat paths already known. */
  static ShopOnDay of(
      Shop shop, HotDay day, DaySky sky, Skeleton known, Function<List<Piece>, SunOnShop> sun) {
    Skeleton skeleton = known.with(shop.rooms());
    return of(shop, day, sky, skeleton, SunHeat.of(skeleton, sun.apply(skeleton.pieces())));
  }

  private static ShopOnDay of(Shop shop, HotDay day, DaySky sky, Skeleton skeleton, SunHeat sun) {
    Week week = new Week(shop, day.date());
    return new ShopOnDay(
        shop,
        day,
        sky,
        skeleton,
        sun,
        week,
        new GainDays(skeleton, week),
        new AirStreams(skeleton, day, shop.place(), week),
        new Passages(
            skeleton.ways(),
            DayKind.values().length,
            (schedule, plan) ->
                week.slots(
                    schedule,
                    plan == Passages.plan(DayKind.WORKING) ? DayKind.WORKING : DayKind.IDLE),
            day.pressure(),
            shop.place().airDensity()));
  }

  /** The same shop and sun under other outdoor air. */
  ShopOnDay on(HotDay other) {
    return of(shop, other, DaySky.of(other), skeleton, sun);
  }
}
