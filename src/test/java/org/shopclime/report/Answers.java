package org.shopclime.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.Profile;
import org.shopclime.climate.Climates;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.load.ShopLoad;
import org.shopclime.plan.Band;
import org.shopclime.plan.Change;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.HotDays;
import org.shopclime.plan.Progress;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.plan.WinterAnswer;
import org.shopclime.quantity.Units;
import org.shopclime.run.LivedDay;
import org.shopclime.run.PullDown;
import org.shopclime.run.Trace;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Place;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** Answers made by hand, in °F and BTU/h, and one that is reckoned. */
final class Answers {

  /** Standard time; on the wall 9 am to noon and 1 to 5 pm under daylight saving. */
  static final Set<Integer> JUDGED = new TreeSet<>(List.of(9, 10, 11, 13, 14, 15, 16));

  static final Shop SHOP = on100(Examples.shop(Examples.USUAL));
  private static final Climates CLIMATES = Climates.load();

  private Answers() {}

  /** The same shop on a 100 °F day. */
  private static Shop on100(Shop shop) {
    Place place = shop.place();
    return shop.withPlace(
        new Place(
            place.station(),
            place.level(),
            Optional.of(Units.celsius(100)),
            place.typedCold(),
            place.groundReflectance(),
            place.shelter()));
  }

  /** The usual example, reckoned once for all tests. */
  static SizeAnswer example() {
    return Example.ANSWER;
  }

  private static final class Example {
    static final SizeAnswer ANSWER =
        new Sizing(SHOP, CLIMATES)
            .answer(List.of(new Warning("unit", "Take care.")), Progress.silent());
  }

  static Profile celsius(IntToDoubleFunction fahrenheit) {
    return Profile.of(hour -> Units.celsius(fahrenheit.applyAsDouble(hour)));
  }

  static Profile watts(IntToDoubleFunction btuh) {
    return Profile.of(hour -> Units.wattsFromBtuh(btuh.applyAsDouble(hour)));
  }

  static Trace trace(
      IntToDoubleFunction airF, IntToDoubleFunction humidity, IntToDoubleFunction running) {
    return new Trace(
        celsius(airF),
        celsius(hour -> airF.applyAsDouble(hour) + 2),
        celsius(hour -> 62),
        Profile.of(humidity),
        watts(hour -> 9000 * running.applyAsDouble(hour)),
        watts(hour -> 3000 * running.applyAsDouble(hour)),
        watts(hour -> running.applyAsDouble(hour) > 0 ? 9000 : 0),
        watts(hour -> running.applyAsDouble(hour) > 0 ? 3000 : 0),
        Profile.of(running),
        Profile.of(hour -> 1000 * running.applyAsDouble(hour)),
        Profile.of(hour -> running.applyAsDouble(hour) % 1 > 0 ? 4 : 0));
  }

  static LivedDay day(IntToDoubleFunction airF, Set<Integer> judged, IntToDoubleFunction running) {
    return new LivedDay(
        trace(airF, hour -> 0.5, running), true, judged, Units.celsius(78), Set.of());
  }

  static Line line(String name, ComponentKind kind, double sensible, double latent) {
    boolean face = kind.isFace();
    return new Line(
        name,
        kind,
        face ? Units.squareMetresFromSquareFeet(100) : 0,
        face ? Units.uFactorSi(0.1) : 0,
        Profile.of(hour -> Units.kelvinDifference(20)),
        watts(hour -> hour == 15 ? sensible : sensible / 2),
        watts(hour -> hour == 15 ? latent : latent / 2));
  }

  static ShopLoad load(List<Line> lines) {
    Profile none = Profile.of(hour -> 0);
    Profile sensible = lines.stream().map(Line::sensible).reduce(none, Profile::plus);
    Profile latent = lines.stream().map(Line::latent).reduce(none, Profile::plus);
    return new ShopLoad(
        List.of(new RoomLoad(0, "Shop", lines, sensible, latent)),
        List.of(celsius(hour -> 78), celsius(hour -> 110)));
  }

  static List<Line> usualLines() {
    return List.of(
        line("West wall", ComponentKind.WALL, 4000, 0),
        line("Leakage", ComponentKind.LEAKAGE, 2300, 2700),
        line("Floor", ComponentKind.FLOOR, -300, 0),
        line("People", ComponentKind.PEOPLE, 250, 650));
  }

  static CoreAnswer core(Optional<LivedDay> unit, LivedDay without, List<Line> lines) {
    return new CoreAnswer(HotDays.of(SHOP.place(), CLIMATES), 0, load(lines), unit, without);
  }

  static LivedDay usualWithout() {
    return day(hour -> hour < 9 ? 85 : 84 + hour, JUDGED, hour -> 0);
  }

  /** An answer about a shop with its 12,000 BTU/h unit. */
  static SizeAnswer withUnit(
      LivedDay day,
      Verdict verdict,
      OptionalDouble keepsUpToF,
      OptionalDouble sizeBtuh,
      Band band) {
    CoreAnswer core = core(Optional.of(day), usualWithout(), usualLines());
    UnitAnswer unit =
        new UnitAnswer(
            Units.wattsFromBtuh(12000),
            Units.wattsFromBtuh(9000),
            Units.wattsFromBtuh(3000),
            day,
            keepsUpToF.isPresent()
                ? OptionalDouble.of(Units.celsius(keepsUpToF.getAsDouble()))
                : OptionalDouble.empty(),
            keepsUpToF.isPresent() ? Optional.empty() : Optional.of("why not"),
            verdict,
            Optional.of(new PullDown(Units.celsius(90), OptionalInt.of(85), OptionalInt.of(70))),
            Optional.empty());
    return answer(SHOP, core, Optional.of(unit), sizeBtuh, band);
  }

  static SizeAnswer withoutUnit(LivedDay day, OptionalDouble sizeBtuh, Band band) {
    CoreAnswer core = core(Optional.empty(), day, usualLines());
    return answer(SHOP.withUnit(Optional.empty()), core, Optional.empty(), sizeBtuh, band);
  }

  static SizeAnswer answer(
      Shop shop, CoreAnswer core, Optional<UnitAnswer> unit, OptionalDouble sizeBtuh, Band band) {
    OptionalDouble size =
        sizeBtuh.isPresent()
            ? OptionalDouble.of(Units.wattsFromBtuh(sizeBtuh.getAsDouble()))
            : OptionalDouble.empty();
    return new SizeAnswer(
        shop,
        core,
        unit,
        size,
        band,
        List.of(
            new Change(
                "leaks halved",
                Units.wattsFromBtuh(5100),
                Units.wattsFromBtuh(2000),
                Units.celsius(80),
                OptionalDouble.empty(),
                false),
            new Change(
                "compressor out of the room",
                Units.wattsFromBtuh(5000),
                Units.wattsFromBtuh(3350),
                Units.celsius(78),
                OptionalDouble.of(Units.wattsFromBtuh(10000)),
                true)),
        List.of(
            new Scenario(
                "work", true, Units.celsius(78), OptionalDouble.of(Units.wattsFromBtuh(10000))),
            new Scenario("most humid day", false, Units.celsius(84), OptionalDouble.empty())),
        new WinterAnswer(
            Units.celsius(29),
            OptionalDouble.of(Units.celsius(31.34)),
            Units.celsius(65),
            Units.wattsFromBtuh(9500),
            3000),
        List.of(new Warning("rooms[0].faces[0].doors[0].boards", "Foam needs a barrier.")));
  }

  static Band band(double lowF, double highF) {
    return new Band(
        Units.celsius(lowF),
        Units.celsius(highF),
        Optional.of("Part of the time running (Compressor)"));
  }

  static Band known(double peakF) {
    return new Band(Units.celsius(peakF), Units.celsius(peakF), Optional.empty());
  }

  static SizeAnswer named(SizeAnswer answer, Shop shop) {
    return new SizeAnswer(
        shop,
        answer.core(),
        answer.unit(),
        answer.recommended(),
        answer.band(),
        answer.changes(),
        answer.scenarios(),
        answer.winter(),
        answer.warnings());
  }
}
