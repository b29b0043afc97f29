package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.report.AirlineAsk;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.CompressedAir.AirIntake;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** Air that tools let out, in the air of the shop: drawn in the room, outdoors, or in the loft. */
class ToolAirTest {

  private static final double SEA_LEVEL = 101_325;
  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
  private static final double BTUH = 0.29307107;
  private static final Climates CLIMATES = Climates.load();
  private static final Shop FOAM = Examples.shop("insulated-foam-door");

  private static Shop from(AirIntake intake) {
    return FOAM.withAir(FOAM.air().withIntake(intake));
  }

  /** The compressor in the attic. */
  private static Shop upstairs(AirIntake intake) {
    Shop shop = from(intake);
    List<Room> rooms = new ArrayList<>(shop.rooms());
    List<Gain> gains = new ArrayList<>(rooms.get(0).gains());
    Gain machine =
        gains.stream().filter(Gain.Compressor.class::isInstance).findFirst().orElseThrow();
    gains.remove(machine);
    rooms.set(0, rooms.get(0).withGains(gains));
    List<Gain> above = new ArrayList<>(rooms.get(1).gains());
    above.add(machine);
    rooms.set(1, rooms.get(1).withGains(above));
    return shop.withRooms(rooms);
  }

  private static AirBook book(Shop shop) {
    CoreAnswer core = new Sizing(shop, CLIMATES).core();
    return ShopModel.cooling(shop, core.hotDay(), ShopModel.Holding.HELD).airBook(0);
  }

  private static AirPath path(AirBook book) {
    return book.paths().stream()
        .filter(path -> path.name().equals(ToolAir.NAME))
        .findFirst()
        .orElseThrow();
  }

  /** 5 hp at 3.5 cfm draw 17.5 cfm; running 30 % of the time, as guessed, 5.25 cfm. */
  @Test
  void drawnAirByPencil() {
    ToolAir air = ToolAir.of(from(AirIntake.OUTDOORS), SEA_LEVEL).orElseThrow();
    assertThat(air.flow()).isCloseTo(17.5 * CFM, within(0.01 * CFM));
    assertThat(air.mean()).isCloseTo(5.25 * CFM, within(0.01 * CFM));
    assertThat(air.from()).isNegative();
    assertThat(air.isExchange()).isTrue();
    Shop tools =
        from(AirIntake.OUTDOORS)
            .withAir(
                (CompressedAir)
                    ShopParts.with(
                        FOAM.air().withIntake(AirIntake.OUTDOORS),
                        "tools",
                        new CompressedAir.AirTools(0, 2400, 0, 0, 0, 0, 0, 0)));
    assertThat(ToolAir.of(tools, SEA_LEVEL).orElseThrow().duty())
        .isEqualTo(ToolTime.of(tools, SEA_LEVEL).orElseThrow().duty());
  }

  @Test
  void airOfTheRoomIsNoExchange() {
    for (Shop shop :
        List.of(from(AirIntake.PLACE), from(AirIntake.ROOM), upstairs(AirIntake.ROOM))) {
      assertThat(ToolAir.of(shop, SEA_LEVEL).orElseThrow().isExchange()).isFalse();
      assertThat(book(shop).paths()).noneMatch(path -> path.name().equals(ToolAir.NAME));
    }
    assertThat(book(from(AirIntake.ROOM)).total()).isEqualTo(book(FOAM).total());
  }

  /**
   * By pencil: 5.25 cfm come in; what leaks in by about 58 cfm without falls to √(58² + 5.25²) -
   * 5.25 = 53 cfm, so the sum grows by 0.24 cfm, and so does its cost.
   */
  @Test
  void outdoorAirComesInAndKeepsLeaksBack() {
    AirBook without = book(FOAM);
    AirBook with = book(from(AirIntake.OUTDOORS));
    AirPath line = path(with);
    assertThat(line.in()).isCloseTo(5.25 * CFM, within(0.1 * CFM));
    assertThat(line.out()).isZero();
    double leak = without.paths().get(0).in();
    double more = Math.hypot(leak, line.in()) - leak;
    assertThat(with.in() - without.in()).isCloseTo(more, within(0.02 * CFM));
    assertThat(with.in()).isCloseTo(with.out(), within(1e-9 * with.in()));
    assertThat((line.sensible() + line.latent()) / (more / leak))
        .isCloseTo(
            without.paths().get(0).sensible() + without.paths().get(0).latent(),
            within(0.1 * without.total()));
  }

  /** Where much more is drawn out, air let in by the tools is air that need not leak in. */
  @Test
  void exhaustIsMadeUpByIt() {
    Shop fans =
        FOAM.withRooms(
            List.of(
                FOAM.rooms()
                    .get(0)
                    .withFans(
                        List.of(new Fan("Booth", FanWay.OUT, 300 * CFM, FOAM.work().hours()))),
                FOAM.rooms().get(1)));
    Shop outdoors = fans.withAir(fans.air().withIntake(AirIntake.OUTDOORS));
    AirBook without = book(fans);
    AirBook with = book(outdoors);
    assertThat(with.suction().pascals()).isLessThan(without.suction().pascals());
    assertThat(with.in()).isCloseTo(without.in(), within(2 * CFM));
    assertThat(with.in()).isCloseTo(with.out(), within(1e-9 * with.in()));
  }

  @Test
  void aLoftGivesItsAirToTheRoom() {
    Shop shop = upstairs(AirIntake.PLACE);
    ToolAir air = ToolAir.of(shop, SEA_LEVEL).orElseThrow();
    assertThat(air.from()).isEqualTo(1);
    assertThat(air.fan(0).orElseThrow().way()).isEqualTo(FanWay.IN);
    assertThat(air.fan(1).orElseThrow().way()).isEqualTo(FanWay.OUT);
    assertThat(path(book(shop)).in()).isCloseTo(5.25 * CFM, within(0.1 * CFM));
    assertThat(ToolAir.of(upstairs(AirIntake.OUTDOORS), SEA_LEVEL).orElseThrow().fan(1)).isEmpty();
  }

  /** The comparison of places counts the same air once, so both tell the same room. */
  @Test
  void placesAndSizeTellTheSameRoom() {
    Shop shop = from(AirIntake.OUTDOORS);
    double size = new Sizing(shop, CLIMATES).core().unit().orElseThrow().peakTemperature();
    List<PlaceAnswer> places = AirlineAsk.answer(shop, CLIMATES).orElseThrow().places();
    PlaceAnswer here = place(places, Placement.Kind.IN_ROOM);
    assertThat(here.indoorPeak()).isCloseTo(size, within(0.5));
    // Of an open roof with and without the pipe from outdoors it is the same air.
    PlaceAnswer open = place(places, Placement.Kind.OPEN_ROOF);
    PlaceAnswer plain =
        place(AirlineAsk.answer(FOAM, CLIMATES).orElseThrow().places(), Placement.Kind.OPEN_ROOF);
    assertThat(open.roomLoad() / BTUH).isCloseTo(plain.roomLoad() / BTUH, within(20.0));
  }

  private static PlaceAnswer place(List<PlaceAnswer> places, Placement.Kind kind) {
    return places.stream()
        .filter(each -> each.placement().kind() == kind)
        .findFirst()
        .orElseThrow();
  }
}
