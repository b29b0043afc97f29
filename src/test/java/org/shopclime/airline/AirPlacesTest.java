package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.Near;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.gain.CompressorGain;
import org.shopclime.run.Cooling;
import org.shopclime.run.MadeShops;
import org.shopclime.run.RoomTooHot;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Examples;
import org.shopclime.shop.FlueKind;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Stations;

/**
 * Places of a compressor compared: the example by its magnitudes, and drawn shops by their laws.
 */
@AddLifecycleHook(MoreTries.class)
class AirPlacesTest {

  private static final double HORSEPOWER = 745.7;
  private static final double BTUH = 0.29307107;

  private static PlaceQuestion question(Shop shop) {
    Optional<Cooling> unit = Optional.of(MadeShops.unit(Cooling.Kind.WINDOW, 12_000 * BTUH));
    return new PlaceQuestion(shop, MadeShops.day(shop), unit, 0, 0, 3);
  }

  private static Map<Placement.Kind, PlaceAnswer> places(Shop shop) {
    return AirPlaces.answer(question(shop)).orElseThrow().places().stream()
        .collect(Collectors.toMap(each -> each.placement().kind(), Function.identity()));
  }

  /** The example with another compressor. */
  private static Shop withCompressor(double horsepower, double duty) {
    Shop shop = Examples.shop("insulated-foam-door");
    Room room = shop.rooms().get(0);
    List<Gain> gains =
        room.gains().stream()
            .map(
                gain ->
                    gain instanceof Gain.Compressor c
                        ? new Gain.Compressor(
                            c.name(), horsepower * HORSEPOWER, Span.known(duty), c.when())
                        : gain)
            .toList();
    return change(shop, room.withGains(gains));
  }

  private static Shop change(Shop shop, Room room) {
    List<Room> rooms = new java.util.ArrayList<>(shop.rooms());
    rooms.set(0, room);
    return shop.withRooms(rooms);
  }

  private static Shop with(Shop shop, String field, Object value) {
    return shop.withAir((CompressedAir) ShopParts.with(shop.air(), field, value));
  }

  /**
   * What bare and insulated partitions do, by pencil: two of 5 and 4 ft by 8 ft are 6.69 m², 1.56
   * W/(m²·K) bare and 0.49 with R-13, so 7.2 W for each kelvin between closet and room. With the
   * outdoor fan the closet is at 44 °C, the room at 26: 128 W kept out. Where a fan sends the
   * room's own air through, its heat comes in anyway.
   */
  @Test
  void partitionsBareAndInsulated() {
    AirlineAnswer answer =
        AirPlaces.answer(question(Examples.shop("insulated-foam-door"))).orElseThrow();
    List<ClosetWalls> closets = answer.closets();
    PlaceAnswer open =
        answer.places().stream()
            .filter(each -> each.placement().kind() == Placement.Kind.OPEN_ROOF)
            .findFirst()
            .orElseThrow();
    assertThat(closets)
        .extracting(ClosetWalls::kind)
        .containsExactly(
            Placement.Kind.CLOSED_CLOSET,
            Placement.Kind.GRILLES_TO_ROOM,
            Placement.Kind.FAN_TO_ROOM,
            Placement.Kind.STACK_OUTDOORS,
            Placement.Kind.FAN_OUTDOORS,
            Placement.Kind.OUTDOOR_LOOP,
            Placement.Kind.OUTDOOR_LOOP_FAN);
    Map<Placement.Kind, ClosetWalls> by =
        closets.stream().collect(Collectors.toMap(ClosetWalls::kind, Function.identity()));
    ClosetWalls loop = by.get(Placement.Kind.OUTDOOR_LOOP_FAN);
    double apart = loop.bare().placePeak() - loop.bare().indoorPeak();
    assertThat(loop.keptOut()).isCloseTo(7.2 * apart, within(0.15 * 7.2 * apart));
    // 163 W/K of the fan carry the heat off either way.
    assertThat(loop.hotter()).isBetween(0.2, 1.5);
    assertThat(by.get(Placement.Kind.FAN_TO_ROOM).keptOut()).isBetween(-50.0, 50.0);
    assertThat(by.get(Placement.Kind.CLOSED_CLOSET).hotter()).isGreaterThan(10);
    assertThat(closets).allMatch(each -> each.hotter() > 0);
    // Under a stair all of it, 11.2 m² of 1.56 W/(m²·K), lies within the room: 17.5 W for each
    // kelvin, and what the hose brings, as it does of a machine outdoors.
    double under = loop.stair().placePeak() - loop.stair().indoorPeak();
    double hose = open.roomLoad();
    assertThat(loop.stair().roomLoad() - hose).isCloseTo(17.5 * under, within(0.1 * 17.5 * under));
    assertThat(closets).allMatch(each -> each.stair().roomLoad() > each.bare().roomLoad() - 30);
  }

  /**
   * 2 hp a third of the time draw 1865 W · 0.33 = 600 W in the mean; about all of it is heat in the
   * room. The outdoor loop's fan of 300 cfm carries 0.1416 m³/s · 1.13 kg/m³ · 1020 J/(kg·K) = 163
   * W/K, so about 4 K over the 37.2 °C outdoors at its peak.
   */
  @Test
  void theExampleWithASmallMachine() {
    Map<Placement.Kind, PlaceAnswer> places = places(withCompressor(2, 0.33));
    assertThat(places).hasSize(13);
    // Outdoors it is 2 K over the 37.2 °C of the hour's mean; the shop gets what the hose brings:
    // hot air of 0.0011 kg/s cools in its pipes, 0.0011 · 1010 · some 15 K = 20 W, and its water.
    PlaceAnswer open = places.get(Placement.Kind.OPEN_ROOF);
    assertThat(open.placePeak()).isCloseTo(37.2 + 2, within(0.2));
    assertThat(open.roomLoad()).isBetween(0.0, 80.0);
    assertThat(open.indoorPeak()).isLessThan(places.get(Placement.Kind.LEAN_TO).indoorPeak() + 0.1);
    assertThat(open.cautions())
        .extracting(LineCaution::kind)
        .doesNotContain(LineCaution.Kind.FROST);
    double electric = CompressorGain.electricInput(2 * HORSEPOWER, 0.33);
    PlaceAnswer here = places.get(Placement.Kind.IN_ROOM);
    assertThat(here.roomLoad()).isBetween(0.9 * electric, 1.1 * electric);
    assertThat(here.placePeak()).isEqualTo(here.air().at(here.peakHour()));
    double limit = AirCompressor.MOST_AMBIENT;
    assertThat(places.get(Placement.Kind.CLOSED_CLOSET).placePeak()).isGreaterThan(limit + 8);
    assertThat(places.get(Placement.Kind.CLOSED_INSULATED_CLOSET).placePeak())
        .isGreaterThan(places.get(Placement.Kind.CLOSED_CLOSET).placePeak());
    assertThat(places.get(Placement.Kind.LOFT).placePeak()).isGreaterThan(limit + 10);
    PlaceAnswer loop = places.get(Placement.Kind.OUTDOOR_LOOP_FAN);
    assertThat(loop.placePeak()).isBetween(37.2 + 2, 37.2 + 5);
    assertThat(loop.roomLoad()).isLessThan(0.35 * electric);
    assertThat(places.get(Placement.Kind.GRILLES_TO_ROOM).placePeak()).isLessThan(limit);
    // Outdoor places leave the unit the more for the room.
    assertThat(loop.indoorPeak()).isLessThan(here.indoorPeak());
    assertThat(loop.coolingKilowattHours()).isLessThan(here.coolingKilowattHours());
    // In winter the room keeps what the loop throws away.
    assertThat(here.winterHeat()).isBetween(0.6 * electric, 1.1 * electric);
    assertThat(loop.winterHeat()).isLessThan(0.3 * electric);
    // A fan to outdoors costs 0.094 m³/s · 1.3 kg/m³ · 1006 · 18 K = 2200 W in the frost, more than
    // the machine gives; what the leaks would have brought anyway comes off.
    assertThat(places.get(Placement.Kind.FAN_OUTDOORS).winterHeat()).isBetween(-2200.0, -400.0);
  }

  /** The owner's rise under the open roof is the place's, and can take the first rank from it. */
  @Test
  void theOwnersRiseUnderAnOpenRoofDecides() {
    Shop shop = withCompressor(2, 0.33);
    PlaceAnswer usual = places(shop).get(Placement.Kind.OPEN_ROOF);
    PlaceAnswer near = places(with(shop, "openRoofRise", 8.0)).get(Placement.Kind.OPEN_ROOF);
    assertThat(near.placePeak()).isCloseTo(usual.placePeak() + 6, within(1e-9));
    assertThat(usual.ranked().rank()).contains(1);
    // 37.2 °C and 8 K are more than the 40 °C the machine takes.
    assertThat(near.ranked().rank().orElseThrow()).isGreaterThan(1);
  }

  /** Only what stands about as cold as outdoors, and only where it freezes. */
  @Test
  void frostIsToldOfColdPlaces() {
    assertThat(LineCaution.frost(Placement.Kind.OPEN_ROOF, -3))
        .contains(new LineCaution(LineCaution.Kind.FROST, -3, 0));
    assertThat(LineCaution.frost(Placement.Kind.OPEN_ROOF, 1)).isEmpty();
    assertThat(LineCaution.frost(Placement.Kind.LEAN_TO, -3)).isPresent();
    assertThat(LineCaution.frost(Placement.Kind.IN_ROOM, -30)).isEmpty();
  }

  /**
   * By pencil: 2 hp deliver 6 cfm of free air, a third of the time 0.00093 m³/s, of standard air
   * 0.00112 kg/s. What the air of the room holds (0.622 p/(P - p) of its dew point) less what air
   * of 115 psi holds at the coldest stretch drops out on the way: about 0.012 less 0.0013 kg/kg, 40
   * g an hour or more.
   */
  @Test
  void waterOfTheRoomByPencil() {
    Shop shop = withCompressor(2, 0.33);
    PlaceQuestion asked = question(shop);
    OwnedLine owned = OwnedLine.of(shop).orElseThrow();
    PlaceRun run =
        new PlaceRun(
            ShopModel.cooling(shop, asked.day(), ShopModel.Holding.HELD),
            0,
            0,
            Placement.usual().get(0),
            owned,
            asked.cooling());
    PlaceRun.Found found = run.lived();
    int hour = run.wettestHour(found);
    PlaceAnswer here = places(shop).get(Placement.Kind.IN_ROOM);
    double cold = here.coldestStretch();
    assertThat(cold).isCloseTo(found.room().air().at(hour) - 15 / 1.8, within(0.01));
    double vapour = MoistAir.saturationPressure(cold);
    double pressure = asked.day().pressure() + 115 * 6894.757;
    double kept = 0.621945 * vapour / (pressure - vapour);
    double air = 6 * 4.719474e-4 * 0.33 * 1.2014;
    double grams = air * (found.room().water().at(hour) - kept) * 3.6e6;
    assertThat(here.tankWater() + here.lineWater()).isCloseTo(grams, within(0.01 * grams));
    assertThat(grams).isBetween(35.0, 55.0);
    assertThat(here.pressureDewPoint()).isGreaterThan(cold);
    assertThat(here.cautions()).extracting(LineCaution::kind).contains(LineCaution.Kind.WET_LINE);
  }

  @Test
  void eachIsToldByTheFirstCriterionThatDecides() {
    AirlineAnswer answer = AirPlaces.answer(question(withCompressor(2, 0.33))).orElseThrow();
    List<PlaceAnswer> places = answer.places();
    for (int i = 0; i < places.size(); i++) {
      Ranking.Ranked ranked = places.get(i).ranked();
      assertThat(ranked.rank()).contains(i + 1);
      String against = places.get(i == 0 ? 1 : 0).ranked().place().name();
      assertThat(ranked.reason().against()).contains(against);
      assertThat(ranked.place().placePeak()).isEqualTo(places.get(i).placePeak());
    }
    int lastWithin = -1;
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i).placePeak() <= AirCompressor.MOST_AMBIENT) {
        assertThat(lastWithin).as("cool places before hot ones").isEqualTo(i - 1);
        lastWithin = i;
      }
    }
    assertThat(lastWithin).isBetween(1, 10);
  }

  @Test
  void hazardsExclude() {
    Shop shop = withCompressor(2, 0.33);
    Map<Placement.Kind, PlaceAnswer> fumes = places(with(shop, "fumes", CompressedAir.YesNo.YES));
    assertThat(fumes.get(Placement.Kind.IN_ROOM).ranked().rank()).isEmpty();
    assertThat(fumes.get(Placement.Kind.IN_ROOM).ranked().place().hazards())
        .containsExactly(Hazard.FUMES);
    assertThat(fumes.get(Placement.Kind.OUTDOOR_LOOP).ranked().rank()).isPresent();
    // 200 cfm out of a shop of so few leaks draw more than the 2 Pa a water heater's flue stands.
    Shop tight =
        change(
            shop,
            shop.rooms()
                .get(0)
                .withLeakage(
                    new org.shopclime.shop.Leakage.Tightness(
                        org.shopclime.shop.Leakage.Grade.TIGHT)));
    Map<Placement.Kind, PlaceAnswer> flue = places(tight.withFlue(FlueKind.WATER_HEATER));
    assertThat(flue.get(Placement.Kind.FAN_OUTDOORS).ranked().place().hazards())
        .containsExactly(Hazard.SHOP_UNDER_SUCTION);
    assertThat(flue.get(Placement.Kind.FAN_TO_ROOM).ranked().place().hazards()).isEmpty();
  }

  @Test
  void partsOfTheLineAndVents() {
    AirlineAnswer answer = AirPlaces.answer(question(withCompressor(2, 0.33))).orElseThrow();
    Map<LineChange.Kind, LineChange> changes =
        answer.changes().stream().collect(Collectors.toMap(LineChange::kind, Function.identity()));
    LineChange plain = changes.get(LineChange.Kind.AS_IT_IS);
    assertThat(changes).hasSize(LineChange.Kind.values().length);
    // Air of a small machine at 39 °C leaves its tank at some 55 °C, soaked: beyond the 120 °F at
    // which such a dryer keeps 0.65 of its flow, so it does not reach its dew point.
    assertThat(answer.places().get(0).placement().kind()).isEqualTo(Placement.Kind.OPEN_ROOF);
    LineChange dried = changes.get(LineChange.Kind.REFRIGERATED_DRYER);
    assertThat(plain.pressureDewPoint()).isGreaterThan(RefrigeratedDryer.MOST_INLET);
    assertThat(dried.pressureDewPoint())
        .isBetween(RefrigeratedDryer.USUAL_DEW_POINT + 2, plain.pressureDewPoint() - 20);
    assertThat(dried.lineWater()).isLessThan(0.25 * plain.lineWater());
    assertThat(changes.get(LineChange.Kind.DESICCANT_DRYER).pressureDewPoint())
        .isCloseTo(Desiccant.USUAL_DEW_POINT, within(0.1));
    assertThat(changes.get(LineChange.Kind.AFTERCOOLER).tankWater())
        .isGreaterThan(plain.tankWater());
    assertThat(changes.get(LineChange.Kind.OUTDOOR_INTAKE).litresToDrain())
        .isGreaterThan(changes.get(LineChange.Kind.ROOM_INTAKE).litresToDrain());
    assertThat(answer.blasting().get(0).litresToDrain()).isGreaterThan(plain.litresToDrain());
    List<VentPoint> curve = answer.ventCurve();
    assertThat(curve).hasSizeGreaterThanOrEqualTo(6);
    for (int i = 1; i < curve.size(); i++) {
      assertThat(curve.get(i).area()).isGreaterThan(curve.get(i - 1).area());
      assertThat(curve.get(i).celsius()).isLessThan(curve.get(i - 1).celsius());
    }
  }

  @Test
  void toolsAskForTheAir() {
    Shop shop = withCompressor(2, 0.33);
    CompressedAir.AirTools tools = new CompressedAir.AirTools(0, 0, 600, 0, 0, 0, 0, 0);
    OwnedLine owned = OwnedLine.of(with(shop, "tools", tools)).orElseThrow();
    // Ten minutes of 11 cfm of standard air.
    assertThat(owned.demand().mean())
        .isCloseTo(11 * Trade.CFM * ToolUse.STANDARD_DENSITY / 6, within(1e-9));
    assertThat(owned.line().machine().stages()).isEqualTo(Stages.SINGLE);
    assertThat(OwnedLine.of(withCompressor(5, 0.3)).orElseThrow().line().machine().stages())
        .isEqualTo(Stages.TWO);
  }

  @Test
  void aShopWithoutACompressorHasNoAnswer() {
    Shop shop = Examples.shop("insulated");
    Shop without = change(shop, shop.rooms().get(0).withGains(List.of()));
    assertThat(AirPlaces.answer(question(without))).isEmpty();
  }

  /** Any shop: every place is a shop that passes its checks, and all figures are finite. */
  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void anyShopHasItsPlaces(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop any = drawn.shop();
    Room room = any.rooms().get(0);
    List<Gain> gains = new java.util.ArrayList<>(room.gains());
    gains.add(
        DrawnShop.make(
            Gain.Compressor.class,
            "power",
            drawn.between(200, 5000),
            "duty",
            Span.known(drawn.between(0, 1))));
    Shop shop = change(any, room.withGains(gains));
    OwnedLine owned = OwnedLine.of(shop).orElseThrow();
    for (PlacedShop.Walls walls : PlacedShop.Walls.values()) {
      PlacedShop.of(shop, owned, 0, walls)
          .ifPresent(
              placed ->
                  assertThat(ShopCheck.check(placed.shop(), Stations.any()).problems()).isEmpty());
    }
    try {
      PlaceQuestion asked =
          new PlaceQuestion(
              shop,
              drawn.day(shop),
              drawn.between(0, 1) < 0.3
                  ? Optional.empty()
                  : Optional.of(MadeShops.unit(Cooling.Kind.WINDOW, drawn.between(1500, 12_000))),
              0,
              drawn.between(-20, 10),
              drawn.between(0, 8));
      AirlineAnswer answer = AirPlaces.answer(asked).orElseThrow();
      Set<Placement.Kind> kinds = new HashSet<>();
      for (PlaceAnswer place : answer.places()) {
        kinds.add(place.placement().kind());
        Near.finite(place.air());
        Near.finite(place.toRoom());
        Near.finite(place.duty());
        assertThat(place.winterHeat()).isFinite();
        assertThat(place.litresToDrain()).isGreaterThanOrEqualTo(0);
        for (int hour = 1; hour <= Profile.HOURS; hour++) {
          assertThat(place.duty().at(hour)).isGreaterThanOrEqualTo(0);
        }
      }
      assertThat(kinds).hasSize(answer.places().size()).hasSizeGreaterThanOrEqualTo(11);
    } catch (RoomTooHot e) {
      Assume.that(false);
    }
  }
}
