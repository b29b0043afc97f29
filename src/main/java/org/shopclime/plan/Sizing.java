package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import org.shopclime.balance.GainWarnings;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYearBias;
import org.shopclime.load.PeakLoad;
import org.shopclime.load.RoomLoad;
import org.shopclime.load.ShopLoad;
import org.shopclime.load.WinterLoss;
import org.shopclime.run.Cooling;
import org.shopclime.run.HeaterSize;
import org.shopclime.run.LivedDay;
import org.shopclime.run.UnitSearch;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.EfficiencyLabel;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** Answers whether a shop's unit is enough, why, and what would change it. */
public final class Sizing {

  /** Efficiency of the units tried where the shop has none: CEER 10.9 BTU/Wh. */
  private static final double USUAL_CEER = 10.9 * 2326 * 0.45359237 / 3600;

  private final Shop shop;
  private final Climates climates;
  private final HotDay day;

  /**
   * A question about a shop.
   *
   * @param shop a shop that passed its checks
   * @param climates climate tables
   */
  public Sizing(Shop shop, Climates climates) {
    this.shop = shop;
    this.climates = climates;
    this.day = HotDays.of(shop.place(), climates);
  }

  /**
   * The heart of the answer, quickly.
   *
   * @return hot day, loads, and the room with and without its unit
   */
  public CoreAnswer core() {
    ShopModel held = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
    return core(held, new UnitSearch(held, room(shop)));
  }

  private CoreAnswer core(ShopModel held, UnitSearch search) {
    int room = room(shop);
    ShopLoad load = PeakLoad.of(held);
    Optional<LivedDay> unit = shop.unit().map(owned -> search.day(cooling(shop)));
    return new CoreAnswer(day, room, load, unit, withoutUnit(shop, day));
  }

  /** What the shop's own unit does. */
  Optional<UnitAnswer> unit() {
    UnitSearch search =
        new UnitSearch(ShopModel.cooling(shop, day, ShopModel.Holding.HELD), room(shop));
    return shop.unit().map(owned -> unit(search.day(cooling(shop)), search, owned));
  }

  /**
   * The whole answer.
   *
   * @param found warnings found when the shop was read or checked
   * @param progress told how far it is
   * @return answer
   * @throws CancellationException if {@code progress} is cancelled
   */
  public SizeAnswer answer(List<Warning> found, Progress progress) {
    Steps steps = new Steps(progress);
    steps.at("loads", 0);
    ShopModel held = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
    UnitSearch search = new UnitSearch(held, room(shop));
    CoreAnswer core = core(held, search);
    steps.at("sizes", 0.2);
    OptionalDouble recommended = recommended(shop, search);
    Optional<UnitAnswer> unit =
        core.unit().map(lived -> unit(lived, search, shop.unit().orElseThrow()));
    steps.at("what would change it", 0.3);
    List<Change> changes = changes(steps);
    steps.at("what is not known", 0.6);
    Band band = new Unsure(shop, day).band(core.indoorPeak(), steps, 0.6, 0.98);
    steps.at("winter", 0.98);
    WinterAnswer winter = winter();
    List<Warning> warnings = new ArrayList<>(found);
    core.unit().ifPresent(lived -> warnings.addAll(UnitWarnings.of(lived)));
    warnings.addAll(UnitWarnings.ofRooms(shop, room(shop)));
    warnings.addAll(GainWarnings.of(shop));
    steps.at("done", 1);
    return new SizeAnswer(shop, core, unit, recommended, band, changes, winter, warnings);
  }

  /** Smallest size that holds; none where no room is meant to be cooled. */
  private static OptionalDouble recommended(Shop shop, UnitSearch search) {
    boolean cooled = shop.rooms().get(room(shop)).use() == RoomUse.COOLED;
    return cooled ? search.smallestThatHolds(units(shop)) : OptionalDouble.empty();
  }

  private UnitAnswer unit(LivedDay lived, UnitSearch search, CoolingUnit owned) {
    Cooling cooling = cooling(owned, owned.capacity(), room(shop));
    OptionalDouble keepsUpTo = search.keepsUpTo(cooling);
    int hour = lived.peakHour();
    Optional<String> reason =
        keepsUpTo.isPresent()
            ? Optional.empty()
            : Optional.of(
                lived.judged().isEmpty()
                    ? "nobody works in the shop, so nothing is asked of the unit"
                    : lived.holds()
                        ? "still holds on a 130 °F day, the hottest tried"
                        : "does not hold even on a 60 °F day, the coolest tried");
    return new UnitAnswer(
        owned.capacity(),
        lived.trace().canGive().at(hour),
        lived.trace().canGiveLatent().at(hour),
        lived,
        keepsUpTo,
        reason,
        Verdict.of(lived, keepsUpTo, day.peak()));
  }

  private List<Change> changes(Steps steps) {
    List<Map.Entry<String, Shop>> changed = List.copyOf(Changes.of(shop).entrySet());
    return Batch.within(steps, "what would change it", 0.3, 0.6)
        .run(changed, entry -> change(entry.getKey(), entry.getValue()))
        .stream()
        .map(Batch.Outcome::orThrow)
        .toList();
  }

  private Change change(String name, Shop after) {
    ShopModel model = ShopModel.cooling(after, day, ShopModel.Holding.HELD);
    UnitSearch search = new UnitSearch(model, room(after));
    ShopLoad load = PeakLoad.totals(model);
    int hour = load.peakHour();
    double sensible = 0;
    double latent = 0;
    for (RoomLoad each : load.rooms()) {
      sensible += each.sensible().at(hour);
      latent += each.latent().at(hour);
    }
    LivedDay lived =
        after.unit().isPresent() ? search.day(cooling(after)) : withoutUnit(after, day);
    return new Change(
        name,
        sensible,
        latent,
        lived.peakTemperature(),
        recommended(after, search),
        after.unit().isPresent() && lived.holds());
  }

  /** The day without a unit, radiation reckoned for the temperatures of a room left to itself. */
  static LivedDay withoutUnit(Shop shop, HotDay day) {
    return LivedDay.of(
        ShopModel.cooling(shop, day, ShopModel.Holding.FREE), Optional.empty(), room(shop));
  }

  /** Heat lost in the cold. */
  WinterAnswer winter() {
    StationClimate climate = HotDays.climate(shop.place(), climates);
    Optional<Double> typed = shop.place().typedCold();
    double design = typed.orElseGet(() -> TypicalYearBias.design99(climate.winter()));
    OptionalDouble typicalYear =
        typed.isPresent()
            ? OptionalDouble.empty()
            : OptionalDouble.of(climate.winter().dryBulb99());
    ShopModel model = ShopModel.heating(shop, day, design, climate.winter().wind());
    double indoor = shop.work().winterTemperature();
    double loss = WinterLoss.of(model, indoor);
    return new WinterAnswer(design, typicalYear, indoor, loss, HeaterSize.covering(loss));
  }

  private static DoubleFunction<Cooling> units(Shop shop) {
    int room = room(shop);
    return capacity ->
        shop.unit()
            .map(owned -> cooling(owned, capacity, room))
            .orElseGet(() -> Cooling.window(room, capacity, USUAL_CEER, Cooling.Label.CEER, 1));
  }

  private static Cooling cooling(CoolingUnit owned, double capacity, int room) {
    return Cooling.window(
        room,
        capacity,
        owned.efficiency(),
        owned.label() == EfficiencyLabel.CEER ? Cooling.Label.CEER : Cooling.Label.EER,
        owned.airflow().likely());
  }

  /** The shop's own unit in its room. */
  static Optional<Cooling> cooling(Shop shop) {
    return shop.unit().map(owned -> cooling(owned, owned.capacity(), room(shop)));
  }

  /** The room the unit cools: the one it names, or the first cooled one, or the first. */
  static int room(Shop shop) {
    int first = -1;
    for (int room = 0; room < shop.rooms().size(); room++) {
      if (shop.unit().isPresent()
          && shop.rooms().get(room).name().equals(shop.unit().get().room())) {
        return room;
      }
      if (first < 0 && shop.rooms().get(room).use() == RoomUse.COOLED) {
        first = room;
      }
    }
    return Math.max(first, 0);
  }
}
