package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;

/** The file as a person meets it. */
class ShopFileTest {

  private static final Stations MOBILE =
      new Stations(name -> name.equals("722230"), name -> List.of("722230"));

  private static final String DAY = DayFile.text();

  @TempDir Path folder;

  static Stream<String> examples() {
    return Examples.names().stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsGoodAndIsWrittenAsItStands(String name) {
    assertThat(ShopFile.read(Examples.text(name), MOBILE)).isInstanceOf(ShopReading.Good.class);
    assertThat(ShopFile.write(Examples.shop(name))).isEqualTo(Examples.text(name));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void inMetricUnitsItIsTheSameShop(String name) {
    Shop shop = Examples.shop(name).withUnits(UnitSystem.SI);
    String text = ShopFile.write(shop);
    assertThat(text).contains("\"width\": \"7.3152 m\"").doesNotContain(" ft");
    assertThat(shop(text)).isEqualTo(shop);
  }

  @Test
  void thereIsNoOtherExample() {
    assertThatThrownBy(() -> Examples.text("barn"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "no example \"barn\"; takes one of \"bare-studs\", \"insulated\","
                + " \"insulated-foam-door\", \"oven-day\", \"powder-day\"");
    assertThat(Examples.names()).contains(Examples.USUAL);
  }

  @Test
  void theColdestNightIsReadAndWritten() {
    Shop shop = DayFile.shop();
    assertThat(shop.place().typedCold()).isEmpty();
    Place cold = (Place) ShopParts.with(shop.place(), "typedCold", Optional.of(-20.0));
    String text = ShopFile.write(shop.withPlace(cold));
    assertThat(text).contains("\"typedCold\": \"-4 °F\"");
    assertThat(ShopFile.read(text, Stations.any()))
        .isInstanceOfSatisfying(
            ShopReading.Good.class,
            good -> assertThat(good.shop().place().typedCold()).contains(-20.0));
  }

  @Test
  void vapourOfALayerIsReadAndWritten() {
    String usual = DayFile.text();
    String lining = "\"lining\": [\"gypsum board 0.5 in\"]";
    String typed =
        "\"lining\": [{\"material\": \"polyethylene sheet\", \"permeance\": \"0.06 perm\"},"
            + " {\"material\": \"gypsum board\", \"thickness\": \"0.5 in\", \"sd\": \"2 m\"}]";
    assertThat(usual).contains(lining);
    assertThat(ShopFile.read(usual.replace(lining, typed), Stations.any()))
        .isInstanceOfSatisfying(
            ShopReading.Good.class,
            good -> {
              Build.Framed wall = (Build.Framed) good.shop().rooms().get(0).faces().get(0).build();
              assertThat(wall.lining().get(0).permeance().orElseThrow())
                  .isCloseTo(3.433e-12, org.assertj.core.api.Assertions.within(0.001e-12));
              assertThat(wall.lining().get(0).sd()).isEmpty();
              assertThat(wall.lining().get(1).sd()).contains(2.0);
              String written = ShopFile.write(good.shop());
              assertThat(written).contains("\"permeance\": \"0.06 perm\"");
              assertThat(shop(written)).isEqualTo(good.shop());
              assertThat(shop(ShopFile.write(good.shop().withUnits(UnitSystem.SI))))
                  .isEqualTo(good.shop().withUnits(UnitSystem.SI));
            });
    assertThat(ShopFile.read(usual.replace(lining, typed.replace("0.06 perm", "0.06 m")), MOBILE))
        .isInstanceOfSatisfying(
            ShopReading.Bad.class,
            bad ->
                assertThat(bad.problems().get(0).sentence())
                    .startsWith(
                        "rooms[0].faces[0].build.lining[0].permeance: found \"0.06 m\"; takes a"
                            + " permeance for vapor with its unit, such as \"0.06 perm\""));
  }

  @Test
  void plantsOfTheYearAreReadAndWritten() {
    Room usual = DayFile.shop().rooms().get(0);
    assertThat(usual.cooling()).isEqualTo(RoomCooling.UNIT);
    assertThat(usual.heating()).isEqualTo(RoomHeating.IDEAL);
    assertThat(usual.heatedTo()).isEmpty();
    assertThat(usual.cooledWhen()).isEqualTo(ScheduleText.work());
    assertThat(usual.heatedWhen()).isEqualTo(ScheduleText.work());
    String typed =
        "\"use\": \"cooled\", \"cooling\": \"ideal\", \"cooledWhen\": \"always\","
            + " \"heating\": \"none\", \"heatedTo\": \"60 °F\", \"heatedWhen\": \"never\"";
    Shop shop = shop(with("\"use\": \"cooled\"", typed));
    Room room = shop.rooms().get(0);
    assertThat(room.cooling()).isEqualTo(RoomCooling.IDEAL);
    assertThat(room.cooledWhen()).isEqualTo(ScheduleText.always());
    assertThat(room.heating()).isEqualTo(RoomHeating.NONE);
    assertThat(room.heatedTo().orElseThrow())
        .isCloseTo(28 / 1.8, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(room.heatedWhen()).isEqualTo(ScheduleText.never());
    assertThat(shop(ShopFile.write(shop))).isEqualTo(shop);
    Room moved =
        room.withFaces(java.util.List.of())
            .withFans(java.util.List.of())
            .withGains(java.util.List.of())
            .withLeakage(room.leakage());
    assertThat(moved.heatedTo()).isEqualTo(room.heatedTo());
    assertThat(moved.cooling()).isEqualTo(RoomCooling.IDEAL);
    assertThat(moved.heating()).isEqualTo(RoomHeating.NONE);
    assertThat(moved.cooledWhen()).isEqualTo(room.cooledWhen());
    assertThat(moved.heatedWhen()).isEqualTo(room.heatedWhen());
  }

  @Test
  void whatIsTypedBecomesSi() {
    Shop shop = DayFile.shop();
    Room room = shop.rooms().get(0);
    Face west = room.faces().get(0);
    assertThat(west.width()).isEqualTo(7.3152); // 24 ft of 0.3048 m, exact by definition
    assertThat(west.azimuth()).isEqualTo(270);
    assertThat(west.doors().get(0).boards())
        .containsExactly(new Board("XPS foam", 0.0127), new Board("XPS foam", 0.0254));
    assertThat(west.doors().get(0).openMinutes()).isEqualTo(120); // 2 min, in s
    assertThat(shop.place().typedPeak().orElseThrow())
        .isCloseTo(37.7778, org.assertj.core.api.Assertions.within(0.0001)); // 100 °F
    assertThat(room.gains().get(4))
        .isInstanceOfSatisfying(
            Gain.Compressor.class,
            compressor -> assertThat(compressor.duty()).isEqualTo(new Span(0.1, 0.3, 0.6)));
    assertThat(room.leakage()).isEqualTo(new Leakage.Tightness(Leakage.Grade.UNKNOWN));
  }

  @Test
  void aSpanMayBeTypedWithItsEnds() {
    String ends = "{\"low\": \"20 %\", \"likely\": \"25 %\", \"high\": \"40 %\"}";
    String text = with("\"duty\": \"don't know\"", "\"duty\": " + ends);
    Shop shop = shop(text);
    assertThat(((Gain.Compressor) shop.rooms().get(0).gains().get(4)).duty())
        .isEqualTo(new Span(0.2, 0.25, 0.4));
    assertThat(ShopFile.write(shop)).contains(ends);
  }

  @Test
  void layersMayBeGivenByTheirFigures() {
    String own =
        "{\"material\": \"straw\", \"thickness\": \"4 in\", \"conductivity\": \"0.06 W/m·K\","
            + " \"density\": \"100 kg/m3\", \"specificHeat\": \"1600 J/kg·K\"}";
    Shop shop = shop(with("\"OSB\"", own));
    BuildLayer straw =
        ((Build.Framed) shop.rooms().get(0).faces().get(0).build()).cladding().get(1);
    assertThat(straw.thickness()).contains(0.1016);
    assertThat(straw.conductivity()).contains(0.06);
    assertThat(shop(ShopFile.write(shop))).isEqualTo(shop);
  }

  @Test
  void aLengthInAMaterialsNameIsNoThickness() {
    Shop shop = shop(with("\"OSB\"", "\"concrete block hollow 12 in\""));
    BuildLayer block =
        ((Build.Framed) shop.rooms().get(0).faces().get(0).build()).cladding().get(1);
    assertThat(block.material()).isEqualTo("concrete block hollow 12 in");
    assertThat(block.thickness()).isEmpty();
  }

  static Stream<Arguments> bad() {
    String width = "\"width\": \"24 ft\"";
    return Stream.of(
        // a quantity
        arguments(
            width,
            "\"width\": \"24\"",
            "rooms[0].faces[0].width: found \"24\"; takes a length with its unit, such as \"8 ft\""
                + " or \"2.4 m\", from 2 in to 650 ft"),
        arguments(
            width,
            "\"width\": 24",
            "rooms[0].faces[0].width: found 24; takes a length with its unit, such as \"8 ft\""
                + " or \"2.4 m\", from 2 in to 650 ft"),
        arguments(
            width,
            "\"width\": \"-24 ft\"",
            "rooms[0].faces[0].width: found \"-24 ft\"; takes a length with its unit, such as"
                + " \"8 ft\" or \"2.4 m\", from 2 in to 650 ft"),
        arguments(
            "\"typedPeak\": \"100 °F\"",
            "\"typedPeak\": \"100 ft\"",
            "place.typedPeak: found \"100 ft\"; takes a temperature with its unit, such as"
                + " \"78 °F\" or \"25.5 °C\", from 50 °F to 140 °F"),
        arguments(
            "\"count\": 6",
            "\"count\": [6]",
            "rooms[0].gains[1].count: found a list; takes a number, such as \"2\", from 0 to 1,000"),
        // a span
        arguments(
            "\"duty\": \"don't know\"",
            "\"duty\": \"often\"",
            "rooms[0].gains[4].duty: found \"often\"; takes a fraction, such as \"90 %\" or"
                + " \"0.9\", from 0 % to 100 %, or \"don't know\""),
        arguments(
            "\"duty\": \"don't know\"",
            "\"duty\": {\"low\": \"5 %\", \"likely\": \"2 %\", \"high\": \"7 %\"}",
            "rooms[0].gains[4].duty: found an object; takes low, likely and high in rising order"),
        arguments(
            "\"duty\": \"don't know\"",
            "\"duty\": {\"low\": \"5 %\", \"likely\": \"6 %\"}",
            "rooms[0].gains[4].duty.high: found nothing; takes a fraction, such as \"90 %\" or"
                + " \"0.9\", from 0 % to 100 %"),
        arguments(
            "\"area\": \"276 in²\"",
            "\"area\": \"don't know\"",
            "rooms[1].leakage.area: found \"don't know\"; takes a leakage area with its unit, such"
                + " as \"77 in2\" or \"500 cm2\", from 0 in² to 7,750 in²"),
        // words
        arguments(
            "\"roll-up\"",
            "\"rollup door\"",
            "rooms[0].faces[0].doors[0].type: found \"rollup door\"; takes one of \"entry\","
                + " \"roll-up\", \"side-hinged\""),
        arguments(
            "\"kind\": \"framed\"",
            "\"kind\": \"frame\"",
            "rooms[0].faces[0].build.kind: found \"frame\"; takes one of \"layers\", \"framed\","
                + " \"slab\""),
        arguments(
            "\"kind\": \"framed\",",
            "",
            "rooms[0].faces[0].build.kind: found nothing; takes one of \"layers\", \"framed\","
                + " \"slab\""),
        arguments(
            "\"leakage\": \"don't know\"",
            "\"leakage\": \"so so\"",
            "rooms[0].leakage: found \"so so\"; takes one of \"tight\", \"good\", \"average\","
                + " \"leaky\", \"very leaky\", \"don't know\", or an object with \"kind\" and what"
                + " belongs to it"),
        arguments(
            "Mon-Sat 8:00-12:00",
            "Mon-Sat 8:00-25:00",
            "work.hours: found \"Mon-Sat 8:00-25:00, 13:00-17:00\"; takes times from 0:00 to"
                + " 24:00, such as \"Mon-Fri 8:00-17:00\""),
        arguments(
            "\"XPS foam 1 in\"",
            "\"XPS foam\"",
            "rooms[0].faces[0].doors[0].boards[1]: found \"XPS foam\"; takes a foam board with its"
                + " thickness such as \"XPS foam 1 in\", or an object in curly brackets with"
                + " \"material\", \"thickness\""),
        arguments("\"722230\"", "722230", "place.station: found 722230; takes a text in quotes"),
        // names looked up
        arguments(
            "\"722230\"",
            "\"72223\"",
            "place.station: found \"72223\"; takes a station of the climate tables by number or"
                + " name; nearest: \"722230\""),
        arguments(
            "\"sheet steel\"",
            "\"sheet stele\"",
            "rooms[0].faces[0].doors[0].leaf: found \"sheet stele\"; takes a bare door of the"
                + " tables; nearest: "
                + BriefText.quoted(Tables.nearestLeaves("sheet stele"))),
        arguments(
            "\"OSB\"",
            "\"OBS\"",
            "rooms[0].faces[0].build.cladding[1].material: found \"OBS\"; takes a material of the"
                + " tables, or all its figures; nearest: "
                + BriefText.quoted(Tables.nearestMaterials("OBS"))),
        arguments(
            "\"single clear, aluminium\"",
            "\"single\"",
            "rooms[0].faces[1].windows[0].glass: found \"single\"; takes a glass of the tables;"
                + " nearest: "
                + BriefText.quoted(Tables.nearestGlasses("single"))
                + ", or an object in curly brackets with \"name\", \"uFactor\", \"shgc\""),
        arguments(
            "\"behind\": \"Attic\"",
            "\"behind\": \"Atic\"",
            "rooms[0].faces[4].behind: found \"Atic\"; takes one of \"Attic\", \"nothing\","
                + " \"ground\", \"outdoors\""),
        // fields
        arguments(
            "\"cladding\"",
            "\"clading\"",
            "rooms[0].faces[0].build.clading: found an unknown field; takes known ones, nearest"
                + " first: \"cladding\", \"spacing\", \"lining\""),
        arguments(
            "\"member\": \"2x4\",",
            "",
            "rooms[0].faces[0].build.member: found nothing; takes one of \"2x4\", \"2x6\","
                + " \"2x8\", \"2x10\""),
        arguments(
            "\"place\": {",
            "\"place\": null, \"note\": {",
            "line 5, column 24: found \"note\" a second time; takes each field once"),
        arguments(
            "\"place\": {\"station\": \"722230\", \"typedPeak\": \"100 °F\"}",
            "\"place\": null",
            "place: found null; takes an object in curly brackets with \"station\""),
        arguments(
            "\"fans\": [",
            "\"fans\": true, \"faces\": [",
            "line 140, column 28: found \"faces\" a second time; takes each field once"),
        arguments(
            "\"rooms\": [",
            "\"rooms\": [}",
            "line 7, column 13: found damaged JSON; takes a whole JSON document; look here or just"
                + " before for a missing comma, quote or bracket"),
        // version
        arguments(
            "\"shopclime\": 1",
            "\"shopclime\": 2",
            "shopclime: found 2; takes versions up to 1; a newer Shopclime wrote this file"),
        arguments(
            "\"shopclime\": 1",
            "\"shopclime\": \"one\"",
            "shopclime: found \"one\"; takes the version of the file, a whole number such as 1"),
        arguments(
            "\"shopclime\": 1,",
            "",
            "shopclime: found nothing; takes the version of the file, a whole number such as 1"));
  }

  @ParameterizedTest
  @MethodSource("bad")
  void badInputIsOneClearLine(String there, String instead, String sentence) {
    assertThat(sentences(with(there, instead))).containsExactly(sentence);
  }

  @Test
  void allProblemsComeAtOnce() {
    String text =
        with("\"width\": \"24 ft\"", "\"width\": \"24\"")
            .replace("722230", "Mobil")
            .replace("\"roll-up\"", "\"up\"")
            .replace("\"behind\": \"Attic\"", "\"behind\": \"Loft\"");
    assertThat(paths(text))
        .containsExactly(
            "rooms[0].faces[0].width",
            "rooms[0].faces[0].doors[0].type",
            "place.station",
            "rooms[0].faces[4].behind");
  }

  @Test
  void aListOrNothingIsNoShop() {
    assertThat(sentences("[]"))
        .containsExactly("file: found a list; takes a shop as one JSON object in curly brackets");
    assertThat(sentences(""))
        .containsExactly("file: found nothing; takes a shop as one JSON object in curly brackets");
    assertThat(sentences("{\"shopclime\": 1} {}")).hasSize(1);
  }

  @Test
  void filesThatCannotBeReadAreProblemsToo() throws IOException {
    Path none = folder.resolve("none.json");
    assertThat(ShopFile.read(none, MOBILE)).isEqualTo(bad(none, "no file"));
    assertThat(ShopFile.read(folder, MOBILE)).isEqualTo(bad(folder, "a folder"));
    Path picture = folder.resolve("picture.json");
    Files.write(picture, new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1});
    assertThat(ShopFile.read(picture, MOBILE))
        .isEqualTo(bad(picture, "bytes that are not UTF-8 text"));
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    assertThat(ShopFile.read("\ufeff" + DAY, MOBILE)).isInstanceOf(ShopReading.Good.class);
  }

  @Test
  void savingReplacesTheFileAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("shop.json");
    Files.writeString(file, "before");
    Shop shop = Examples.shop("insulated");
    ShopFile.save(shop, file);
    assertThat(ShopFile.read(file, MOBILE))
        .isInstanceOfSatisfying(
            ShopReading.Good.class, good -> assertThat(good.shop()).isEqualTo(shop));
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void aFileThatCannotBeSavedStaysAsItWas() throws IOException {
    Path file = Files.createDirectory(folder.resolve("taken"));
    Files.writeString(file.resolve("inside"), "before");
    assertThatThrownBy(() -> ShopFile.save(Examples.shop("insulated"), file))
        .isInstanceOf(IOException.class);
    assertThat(file.resolve("inside")).hasContent("before");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void everyDefaultIsOneThatTheReaderTakes() {
    for (Class<?> record :
        List.of(Shop.class, Place.class, Work.class, Room.class, Face.class, Window.class)) {
      assertThat(Field.absent(record)).hasSameSizeAs(Field.of(record));
    }
    assertThat(Field.absent(Room.class).get(5).orElseThrow())
        .isEqualTo(Typed.si(Kind.TEMPERATURE, "78 °F"));
  }

  private static ShopReading bad(Path file, String found) {
    return new ShopReading.Bad(
        List.of(new Problem(file.toString(), found, "a shop file that can be read")));
  }

  private static String with(String there, String instead) {
    int at = DAY.indexOf(there);
    assertThat(at).as(there).isNotNegative();
    return DAY.substring(0, at) + instead + DAY.substring(at + there.length());
  }

  private static Shop shop(String text) {
    ShopReading reading = ShopFile.read(text, MOBILE);
    assertThat(reading).isInstanceOf(ShopReading.Good.class);
    return ((ShopReading.Good) reading).shop();
  }

  private static List<Problem> problems(String text) {
    ShopReading reading = ShopFile.read(text, MOBILE);
    assertThat(reading).isInstanceOf(ShopReading.Bad.class);
    return ((ShopReading.Bad) reading).problems();
  }

  private static List<String> sentences(String text) {
    return problems(text).stream().map(Problem::sentence).toList();
  }

  private static List<String> paths(String text) {
    return problems(text).stream().map(Problem::path).toList();
  }
}
