package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
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
import org.shopclime.shop.Pads;
import org.shopclime.shop.PumpHeat;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.UnitKind;
import org.shopclime.shop.Warning;

/** Answers whether a shop's unit is enough, why, and what would change it. */
public final class Sizing {

  /** Efficiency of the units tried where the shop has none: CEER 10.9 BTU/Wh. */
  static final double USUAL_CEER = 10.9 * 2326 * 0.45359237 / 3600;

  /** What a size that holds mostly has over the load: where the search for it begins. */
  private static final double USUAL_RESERVE = 1.1;

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
    Optional<LivedDay> unit = unitDay(new UnitSearch(held, room(shop)));
    return new CoreAnswer(day, room(shop), PeakLoad.of(held), unit, withoutUnit(shop, day));
  }

  private Optional<LivedDay> unitDay(UnitSearch search) {
    return shop.unit().map(owned -> search.day(cooling(shop)));
  }

  /** What the shop's own unit does. */
  Optional<UnitAnswer> unit() {
    UnitSearch search =
        new UnitSearch(ShopModel.cooling(shop, day, ShopModel.Holding.HELD), room(shop));
    return machine(shop).map(owned -> unit(search.day(cooling(shop)), search, owned));
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
    steps.at("loads and sizes", 0);
    Later<Own> own = new Later<>(this::own);
    Later<LivedDay> without = new Later<>(() -> withoutUnit(shop, day));
    Later<WinterAnswer> winter = new Later<>(this::winter);
    Later<DampAnswer> damp = new Later<>(() -> DampAnswer.of(shop, day, climates));
    Unsure unsure = new Unsure(shop, day);
    List<Later<Change>> changes = new ArrayList<>();
    Changes.of(shop).forEach((name, after) -> changes.add(new Later<>(() -> change(name, after))));
    List<Scenarios.Case> cases = Scenarios.of(shop, day, climates);
    List<Later<Optional<Scenario>>> scenarios =
        cases.stream().map(each -> new Later<>(() -> scenario(each))).toList();
    List<Later<Double>> peaks = unsure.peaks();
    Later<AirAnswer> air = new Later<>(() -> AirAnswer.of(shop, day, room(shop)));
    List<Later<Change>> oven = new ArrayList<>();
    OvenAnswer.ways(shop)
        .forEach((name, after) -> oven.add(new Later<>(() -> change(name, after))));
    // One batch of all, the longest first, so that no thread waits for another.
    List<Later<?>> all = new ArrayList<>(List.of(own, without, damp));
    all.addAll(changes);
    all.addAll(scenarios);
    all.addAll(peaks);
    all.addAll(oven);
    all.add(air);
    all.add(winter);
    Batch.within(steps, "loads, sizes, changes, other days", 0, 0.98).run(all, Later::find).stream()
        .forEach(Batch.Outcome::orThrow);
    CoreAnswer core =
        new CoreAnswer(day, room(shop), own.found().load(), own.found().day(), without.found());
    Band band = unsure.band(core.indoorPeak(), peaks.stream().map(Later::found).toList());
    Scenario asItIs = asItIs(core, own.found().recommended());
    List<Scenario> told = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      told.add(scenarios.get(i).found().orElse(asItIs.named(cases.get(i).name())));
    }
    List<Warning> warnings = new ArrayList<>(found);
    core.unit().ifPresent(lived -> warnings.addAll(UnitWarnings.of(lived)));
    PadsAnswer.of(shop, core).ifPresent(pads -> warnings.addAll(PadsWords.warnings(pads)));
    warnings.addAll(UnitWarnings.ofRooms(shop, room(shop)));
    warnings.addAll(GainWarnings.of(shop));
    warnings.addAll(DampWords.warnings(damp.found()));
    warnings.addAll(air.found().warnings());
    steps.at("done", 1);
    return new SizeAnswer(
        shop,
        core,
        own.found().unit(),
        own.found().recommended(),
        band,
        changes.stream().map(Later::found).toList(),
        told,
        winter.found(),
        Optional.of(damp.found()),
        Optional.of(air.found()),
        ovens(oven.stream().map(Later::found).toList()),
        warnings);
  }

  private Optional<OvenAnswer> ovens(List<Change> variants) {
    List<OvenAnswer.Oven> ovens =
        OvenAnswer.ovens(shop, ShopModel.cooling(shop, day, ShopModel.Holding.HELD));
    return ovens.isEmpty() ? Optional.empty() : Optional.of(new OvenAnswer(ovens, variants));
  }

  /** What is told of the shop as it is. */
  private record Own(
      ShopLoad load,
      Optional<LivedDay> day,
      Optional<UnitAnswer> unit,
      OptionalDouble recommended) {}

  private Own own() {
    ShopModel held = ShopModel.cooling(shop, day, ShopModel.Holding.HELD);
    UnitSearch search = new UnitSearch(held, room(shop));
    ShopLoad load = PeakLoad.of(held);
    Optional<LivedDay> lived = unitDay(search);
    return new Own(
        load,
        lived,
        lived.map(each -> unit(each, search, machine(shop).orElseThrow())),
        recommended(shop, search, lived, load.total().peak()));
  }

  /** Smallest size that holds; none where no room is meant to be cooled. */
  private static OptionalDouble recommended(
      Shop shop, UnitSearch search, Optional<LivedDay> lived, double load) {
    return recommended(shop, search, lived, load, units(shop, Cooling.Dust.LESS_AIR));
  }

  private static OptionalDouble recommended(
      Shop shop,
      UnitSearch search,
      Optional<LivedDay> lived,
      double load,
      DoubleFunction<Cooling> units) {
    if (shop.rooms().get(room(shop)).use() != RoomUse.COOLED) {
      return OptionalDouble.empty();
    }
    // The sizes tried beside an evaporative cooler are those of window units, and it is none.
    boolean sized = lived.isPresent() && !shop.unit().map(CoolingUnit::isEvaporative).orElse(false);
    double own = machine(shop).map(CoolingUnit::capacity).orElse(0.0);
    boolean fails = sized && !lived.get().holds();
    boolean holds = sized && lived.get().holds();
    return search.smallestThatHolds(
        units, fails ? own : 0, holds ? own : Double.POSITIVE_INFINITY, USUAL_RESERVE * load);
  }

  private UnitAnswer unit(LivedDay lived, UnitSearch search, CoolingUnit owned) {
    Cooling cooling = cooling(owned, owned.capacity(), room(shop));
    OptionalDouble keepsUpTo = search.keepsUpTo(cooling, lived);
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
        Verdict.of(lived, keepsUpTo, day.peak()),
        search.pullDown(cooling),
        fan(lived, search, owned));
  }

  /** What a fan that runs on does, beside one that stops. */
  private Optional<FanAnswer> fan(LivedDay lived, UnitSearch search, CoolingUnit owned) {
    if (owned.fanBetweenRuns(owned.capacity()).isEmpty()) {
      return Optional.empty();
    }
    CoolingUnit stopping = owned.withFan(Optional.empty());
    Cooling cooling = cooling(stopping, owned.capacity(), room(shop));
    return Optional.of(FanAnswer.of(lived, search.day(Optional.of(cooling))));
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
    Optional<LivedDay> lived = cooling(after).map(unit -> search.day(Optional.of(unit)));
    return new Change(
        name,
        sensible,
        latent,
        lived.orElseGet(() -> withoutUnit(after, day)).peakTemperature(),
        recommended(after, search, lived, sensible + latent),
        lived.isPresent() && lived.get().holds());
  }

  private static Scenario asItIs(CoreAnswer core, OptionalDouble recommended) {
    boolean holds = core.unit().isPresent() && core.unit().get().holds();
    CaseDay lived =
        new CaseDay(core.hotDay(), core.load(), core.unit().orElse(core.without()), true);
    return new Scenario("as it is", holds, core.indoorPeak(), recommended, Optional.of(lived));
  }

  /** Another day or other work; nothing where that is the shop as it is. */
  private Optional<Scenario> scenario(Scenarios.Case on) {
    if (on.day().isEmpty()
        && on.dust() == Cooling.Dust.LESS_AIR
        && ShopParts.alike(on.shop(), shop)) {
      return Optional.empty();
    }
    HotDay then = on.day().orElse(day);
    ShopModel model = ShopModel.cooling(on.shop(), then, ShopModel.Holding.HELD);
    UnitSearch search = new UnitSearch(model, room(on.shop()));
    DoubleFunction<Cooling> units = units(on.shop(), on.dust());
    Optional<LivedDay> lived =
        machine(on.shop())
            .map(owned -> cooling(owned, owned.capacity(), room(on.shop()), on.dust()))
            .map(unit -> search.day(Optional.of(unit)));
    LivedDay told = lived.orElseGet(() -> withoutUnit(on.shop(), then));
    ShopLoad load = PeakLoad.totals(model);
    return Optional.of(
        new Scenario(
            on.name(),
            lived.isPresent() && lived.get().holds(),
            told.peakTemperature(),
            recommended(on.shop(), search, lived, load.total().peak(), units),
            Optional.of(new CaseDay(then, load, told, false))));
  }

  /** The day without a unit, radiation reckoned for the temperatures of a room left to itself. */
  static LivedDay withoutUnit(Shop shop, HotDay day) {
    return LivedDay.of(
        ShopModel.cooling(shop, day, ShopModel.Holding.FREE), Optional.empty(), room(shop));
  }

  /**
   * Heat lost in the cold.
   *
   * @return design temperature and loss
   */
  public WinterAnswer winter() {
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
    OptionalDouble pump =
        cooling(shop)
            .filter(Cooling::heats)
            .map(unit -> OptionalDouble.of(unit.heatAt(indoor, design)))
            .orElseGet(OptionalDouble::empty);
    return new WinterAnswer(design, typicalYear, indoor, loss, HeaterSize.covering(loss), pump);
  }

  /** The shop's unit by the figures of its machine. */
  private static Optional<CoolingUnit> machine(Shop shop) {
    return shop.unit().map(PortableAnswer::asMachine);
  }

  private static DoubleFunction<Cooling> units(Shop shop, Cooling.Dust dust) {
    int room = room(shop);
    Optional<CoolingUnit> machine = machine(shop).filter(owned -> !owned.isEvaporative());
    return capacity ->
        machine
            .map(owned -> cooling(owned, capacity, room, dust))
            .orElseGet(() -> Cooling.window(room, capacity, USUAL_CEER, Cooling.Label.CEER, 1));
  }

  private static Cooling cooling(CoolingUnit owned, double capacity, int room) {
    return cooling(owned, capacity, room, Cooling.Dust.LESS_AIR);
  }

  private static Cooling cooling(CoolingUnit owned, double capacity, int room, Cooling.Dust dust) {
    if (owned.isEvaporative()) {
      Pads pads = owned.pads().orElseThrow();
      double airflow = owned.airflow().likely() * pads.airflow();
      return Cooling.evaporative(room, airflow, pads.watts(), pads.effectiveness());
    }
    Cooling.Label label = Cooling.Label.valueOf(owned.label().name());
    Cooling.Plate plate =
        new Cooling.Plate(
            capacity,
            owned.efficiency(),
            label,
            owned.airflow().likely(),
            dust,
            owned.fanBetweenRuns(capacity));
    return owned
        .winterHeat()
        .map(heat -> Cooling.heatPump(kind(owned.kind()), room, plate, heat(capacity, heat)))
        .orElseGet(() -> Cooling.of(kind(owned.kind()), room, plate));
  }

  private static Cooling.Heat heat(double capacity, PumpHeat told) {
    return new Cooling.Heat(
        told.capacity().orElse(capacity),
        told.hspf2().map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
        told.lowestOutdoor());
  }

  static Cooling.Kind kind(UnitKind kind) {
    return switch (kind) {
      case WINDOW -> Cooling.Kind.WINDOW;
      case PORTABLE_ONE_HOSE -> Cooling.Kind.PORTABLE_ONE_HOSE;
      case PORTABLE_TWO_HOSES -> Cooling.Kind.PORTABLE_TWO_HOSES;
      case HEAT_PUMP -> Cooling.Kind.HEAT_PUMP;
      case VARIABLE_HEAT_PUMP -> Cooling.Kind.VARIABLE_HEAT_PUMP;
      case EVAPORATIVE -> throw new IllegalArgumentException("it has no coil");
    };
  }

  /**
   * The shop's own unit in its room.
   *
   * @param shop a shop that passed its checks
   * @return the unit, if there is one
   */
  public static Optional<Cooling> cooling(Shop shop) {
    return machine(shop).map(owned -> cooling(owned, owned.capacity(), room(shop)));
  }

  /**
   * The room the unit cools: the one it names, or the first cooled one, or the first.
   *
   * @param shop a shop that passed its checks
   * @return index of the room
   */
  public static int room(Shop shop) {
    return shop.unitRoom();
  }
}
