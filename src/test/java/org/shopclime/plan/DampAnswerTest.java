package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampRoom;
import org.shopclime.balance.DampSpell;
import org.shopclime.balance.DampTime;
import org.shopclime.climate.Climates;
import org.shopclime.envelope.Vapour;
import org.shopclime.shop.Examples;
import org.shopclime.shop.HumidityClass;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Warning;
import org.shopclime.shop.WinterAir;

/** Damp in the walls of the example near Mobile, and of shops that differ in one thing. */
class DampAnswerTest {

  private static final Climates CLIMATES = Climates.load();
  private static final String LINING = "\"lining\": [\"gypsum board 0.5 in\"]";
  private static final String POLY =
      "\"lining\": [\"polyethylene sheet\", \"gypsum board 0.5 in\"]";

  private static Shop shop(String... changes) {
    String text = Examples.text(Examples.USUAL);
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(text).contains(changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    ShopReading reading = ShopFile.read(text, Stations.any());
    assertThat(reading).isInstanceOf(ShopReading.Good.class);
    return ((ShopReading.Good) reading).shop();
  }

  private static DampAnswer answer(Shop shop) {
    return DampAnswer.of(shop, HotDays.of(shop.place(), CLIMATES), CLIMATES);
  }

  private static DampFinding of(DampAnswer answer, String face, DampPath.Way way) {
    return answer.findings().stream()
        .filter(each -> each.path().component().name().equals(face) && each.path().way() == way)
        .findFirst()
        .orElseThrow();
  }

  private static DampSpell on(DampFinding finding, DampTime.Kind kind) {
    return finding.path().spells().stream()
        .filter(each -> each.time().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /**
   * By pencil: on the humid day the dew point outdoors is 75 to 76 °F; a sheet behind the drywall
   * of a room at 70 °F stands at about 71 °F, under the dew point. At 78 °F it stands above it, at
   * 75.5 °F against 79 °F: 0.89 of saturation.
   */
  @Test
  void plasticSheetBehindColdDrywallIsTheTrap() {
    DampFinding cold =
        of(
            answer(shop(LINING, POLY, "\"use\": \"cooled\",", cooledTo("70 °F"))),
            "North wall",
            DampPath.Way.SPACE);
    assertThat(cold.kind()).isEqualTo(DampFinding.Kind.CONDENSES);
    assertThat(DampWords.where(cold))
        .isEqualTo("between the insulation and the polyethylene sheet");
    assertThat(cold.fromRoom()).isFalse();
    assertThat(cold.times()).extracting(DampTime::kind).contains(DampTime.Kind.HUMID_DAY);
    assertThat(DampWords.sentence(cold)).contains("from outdoors").contains("dry inwards");

    DampFinding mild = of(answer(shop(LINING, POLY)), "North wall", DampPath.Way.SPACE);
    DampSpell humid = on(mild, DampTime.Kind.HUMID_DAY);
    assertThat(fahrenheit(Vapour.dewPoint(humid.outerPressure()))).isCloseTo(75.5, within(0.6));
    int sheet = sheet(mild.path());
    double there = humid.diffusion().temperature(sheet);
    assertThat(fahrenheit(there)).isCloseTo(79, within(1.0));
    assertThat(humid.diffusion().humidity(sheet)).isCloseTo(0.89, within(0.04));
    assertThat(humid.rate()).isZero();

    DampFinding bare = of(answer(shop()), "North wall", DampPath.Way.SPACE);
    DampSpell open = on(bare, DampTime.Kind.HUMID_DAY);
    assertThat(open.diffusion().humidity(sheet(bare.path()))).isLessThan(0.6);
  }

  private static String cooledTo(String temperature) {
    return "\"use\": \"cooled\", \"setPoint\": \"" + temperature + "\",";
  }

  /** The plane on the outer side of sheet or drywall. */
  private static int sheet(DampPath path) {
    return IntStream.range(1, path.planes())
        .filter(plane -> path.outerLayer(plane).equals("cavity insulation"))
        .filter(plane -> !path.innerLayer(plane).equals("cavity insulation"))
        .findFirst()
        .orElseThrow();
  }

  /** Outdoors 47 °F in January makes (20 - 8.2) / 20 of 540 Pa; class 2 of ISO 13788. */
  @Test
  void airOfTheRoomIsWhatIsSaid() {
    DampAnswer answer = answer(shop());
    assertThat(answer.walls().times()).hasSize(14);
    DampTime january = answer.walls().times().get(2);
    assertThat(january.month()).isEqualTo(1);
    DampRoom cold = answer.walls().rooms(2).get(0);
    assertThat(cold.state()).isEqualTo(DampRoom.State.HEATED);
    assertThat(fahrenheit(cold.celsius())).isCloseTo(65, within(1e-6));
    assertThat(cold.pressure() - january.outdoorPressure())
        .isCloseTo(540 * (20 - january.outdoor()) / 20, within(1e-6));
    DampRoom july = answer.walls().rooms(8).get(0);
    assertThat(july.state()).isEqualTo(DampRoom.State.COOLED);
    assertThat(fahrenheit(july.celsius())).isCloseTo(78, within(1e-6));
    assertThat(july.humidity()).isCloseTo(0.5, within(1e-9));
    assertThat(answer.walls().rooms(5).get(0).state()).isEqualTo(DampRoom.State.LEFT);
  }

  private static DampAnswer winter(HumidityClass moisture, Optional<Double> humidity) {
    Shop shop = shop();
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(0, rooms.get(0).withWinterAir(new WinterAir(moisture, humidity)));
    return answer(shop.withRooms(rooms));
  }

  /** Class 4 has twice the 540 Pa of class 2, class 1 half of them. */
  @Test
  void theOwnersClassTakesThePlaceOfTheUsualOne() {
    for (HumidityClass each : HumidityClass.values()) {
      DampAnswer answer = winter(each, Optional.empty());
      DampTime january = answer.walls().times().get(2);
      double limit =
          switch (each) {
            case CLASS_1 -> 270;
            case CLASS_2 -> 540;
            case CLASS_3 -> 810;
            case CLASS_4 -> 1080;
          };
      assertThat(answer.walls().rooms(2).get(0).pressure() - january.outdoorPressure())
          .as("%s", each)
          .isCloseTo(limit * (20 - january.outdoor()) / 20, within(1e-6));
      assertThat(answer.walls().rooms(8).get(0).humidity()).isCloseTo(0.5, within(1e-9));
    }
  }

  /** 60 % at 65 °F: 0.6 x 2,108 Pa = 1,265 Pa (steam table, 18.33 °C). Only while it is heated. */
  @Test
  void theOwnersHumidityTakesThePlaceOfTheClass() {
    DampAnswer usual = answer(shop());
    DampAnswer damp = winter(HumidityClass.CLASS_2, Optional.of(0.6));
    DampRoom january = damp.walls().rooms(2).get(0);
    assertThat(january.humidity()).isCloseTo(0.6, within(1e-9));
    assertThat(january.pressure()).isCloseTo(1265, within(4.0));
    assertThat(damp.walls().rooms(5)).isEqualTo(usual.walls().rooms(5));
    assertThat(damp.walls().rooms(8)).isEqualTo(usual.walls().rooms(8));
    assertThat(of(damp, "West wall", DampPath.Way.SPACE).path().spells().get(2).innerPressure())
        .isCloseTo(january.pressure(), within(1e-9));
  }

  /** The wall's faces lie between its airs, the outer one warmer where the sun shines on it. */
  @Test
  void facesHaveTheTemperaturesOfTheShopsOwnBalance() {
    DampFinding west = of(answer(shop()), "West wall", DampPath.Way.SPACE);
    DampSpell hot = on(west, DampTime.Kind.HOT_DAY);
    int inner = west.path().planes() - 1;
    assertThat(hot.diffusion().temperature(0)).isBetween(hot.outerAir() + 1, hot.outerAir() + 8);
    assertThat(hot.diffusion().temperature(inner)).isBetween(hot.innerAir(), hot.innerAir() + 2.5);
    DampFinding ceiling = of(answer(shop()), "Ceiling", DampPath.Way.SPACE);
    assertThat(on(ceiling, DampTime.Kind.HOT_DAY).outerAir())
        .as("attic")
        .isGreaterThan(hot.outerAir() + 2);
  }

  @Test
  void aRetarderOnTheRoomSideDriesTheWinterWall() {
    Shop north = shop("\"station\": \"722230\"", "\"station\": \"726580\"");
    DampFinding bare = of(answer(north), "North wall", DampPath.Way.SPACE);
    assertThat(bare.kind()).isEqualTo(DampFinding.Kind.CONDENSES);
    assertThat(DampWords.where(bare)).isEqualTo("between the OSB and the insulation");
    assertThat(bare.fromRoom()).isTrue();
    assertThat(bare.months()).contains(12, 1, 2).doesNotContain(6, 7, 8);
    assertThat(bare.mostWater()).isGreaterThan(0.3);
    Shop kraft =
        shop(
            "\"station\": \"722230\"",
            "\"station\": \"726580\"",
            LINING,
            "\"lining\": [\"kraft facing\", \"gypsum board 0.5 in\"]");
    DampFinding faced = of(answer(kraft), "North wall", DampPath.Way.SPACE);
    assertThat(faced.mostWater()).isLessThan(bare.mostWater() / 3);
  }

  /**
   * Classes of IRC R702.7 as a published figure of each sheet puts it: polyethylene of 6 mil 0.06
   * perm, kraft 0.8 perm, two coats of latex paint 5.4, drywall bare 28 perms.
   */
  @Test
  void theLiningIsToldByItsClass() {
    assertThat(lined("\"gypsum board 0.5 in\"")).contains("drywall, no retarder by its 28 perms.");
    assertThat(lined("\"kraft facing\", \"gypsum board 0.5 in\""))
        .contains("kraft facing, class II by its 0.79 perm.");
    assertThat(lined("\"gypsum board 0.5 in\", \"latex paint\""))
        .contains("latex paint, class III by its 5.4 perms.");
    DampPath sheet = of(answer(shop(LINING, POLY)), "North wall", DampPath.Way.SPACE).path();
    assertThat(sheet.lining().orElseThrow().retarderClass()).isEqualTo("I");
    assertThat(sheet.lining().orElseThrow().perms()).isCloseTo(0.06, within(0.005));
  }

  /** What is said of a wall in the cold of Minneapolis behind this lining. */
  private static String lined(String layers) {
    Shop shop =
        shop(
            "\"station\": \"722230\"",
            "\"station\": \"726580\"",
            LINING,
            "\"lining\": [" + layers + "]");
    return DampWords.sentence(of(answer(shop), "North wall", DampPath.Way.SPACE));
  }

  @Test
  void aLayerOfUnknownVapourIsNotJudgedAndSaidSo() {
    String own = "\"lining\": [{\"material\": \"barn board\", \"resistance\": \"R-1\"}]";
    DampAnswer answer = answer(shop(LINING, own));
    DampFinding wall = of(answer, "West wall", DampPath.Way.SPACE);
    assertThat(wall.kind()).isEqualTo(DampFinding.Kind.NOT_JUDGED);
    assertThat(DampWords.sentence(wall))
        .isEqualTo(
            "Not judged: nothing tells how \"barn board\" resists vapor; type its permeance or its"
                + " sd.");
    Shop typed = shop(LINING, own.replace("}", ", \"permeance\": \"5 perm\"}"));
    assertThat(of(answer(typed), "West wall", DampPath.Way.SPACE).kind())
        .isNotEqualTo(DampFinding.Kind.NOT_JUDGED);
  }

  /** Whatever is found, no sentence and no warning calls a wall safe. */
  @Test
  void nothingIsEverCalledSafe() {
    for (Shop shop : List.of(shop(), shop(LINING, POLY), Examples.shop("bare-studs"))) {
      DampAnswer answer = answer(shop);
      assertThat(answer.findings()).isNotEmpty();
      for (DampFinding finding : answer.findings()) {
        String text = DampWords.sentence(finding);
        assertThat(text.replace("does not make the wall safe", "")).doesNotContain("safe");
        if (finding.kind() == DampFinding.Kind.NONE) {
          assertThat(text).contains("no condensation found by this method".substring(1));
          assertThat(text).contains("that does not make the wall safe");
        }
      }
      assertThat(DampWords.warnings(answer))
          .extracting(Warning::text)
          .noneMatch(text -> text.contains("safe"));
    }
  }

  @Test
  void warningsNameTheLayerAndStandAtTheirFace() {
    DampAnswer answer = answer(shop(LINING, POLY, "\"use\": \"cooled\",", cooledTo("70 °F")));
    List<Warning> warnings = DampWords.warnings(answer);
    assertThat(warnings)
        .anySatisfy(
            warning -> {
              assertThat(warning.path()).matches("rooms\\[0]\\.faces\\[\\d]");
              assertThat(warning.text())
                  .startsWith(
                      "Between the framing: at the dew point between the insulation and the")
                  .contains("polyethylene sheet")
                  .contains("humid day");
            });
    assertThat(warnings).hasSizeLessThan(8);
  }

  @Test
  void monthsAreToldInARow() {
    assertThat(DampWords.months(List.of(1, 2, 11, 12))).isEqualTo("November to February");
    assertThat(DampWords.months(List.of(1, 7, 8))).isEqualTo("January and July and August");
    assertThat(DampWords.months(List.of())).isEmpty();
    assertThat(DampWords.months(IntStream.rangeClosed(1, 12).boxed().toList()))
        .isEqualTo("every month");
  }

  private static double fahrenheit(double celsius) {
    return 32 + 1.8 * celsius;
  }
}
