package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shopclime.quantity.Problem;

/** What must fit together, and what gets a warning. */
class ShopCheckTest {

  static Stream<Arguments> misfits() {
    return Stream.of(
        misfit(
            text -> first(text, "\"name\": \"Shop\"", "\"name\": \"nothing\""),
            "rooms[0].name: found \"nothing\", which is taken; takes a name of its own"),
        misfit(
            text -> first(text, "\"name\": \"South wall\"", "\"name\": \"West wall\""),
            "rooms[0].faces[1].name: found \"West wall\", which is taken; takes a name of its own"),
        misfit(
            text -> first(text, "\"name\": \"Radio\"", "\"name\": \"-\""),
            "rooms[0].gains[2].name: found an empty name; takes a name, such as \"West wall\""),
        misfit(
            text -> first(text, "\"behind\": \"Attic\"", "\"behind\": \"Shop\""),
            "rooms[0].faces[4].behind: found the face's own room; takes what lies on the other"
                + " side; another room, outdoors, ground or nothing"),
        misfit(
            text -> first(text, "\"behind\": \"ground\"", "\"behind\": \"nothing\""),
            "rooms[0].faces[5].behind: found \"nothing\"; takes \"ground\" behind a slab"),
        misfit(
            text -> first(text, "\"width\": \"9 ft\"", "\"width\": \"25 ft\""),
            "rooms[0].faces[0].doors[0]: found a width of 25 ft; takes what fits in its wall, at"
                + " most 24 ft"),
        misfit(
            text -> first(text, "\"offset\": \"3 ft\"", "\"offset\": \"22 ft\""),
            "rooms[0].faces[1].windows[0]: found offset and width together 25 ft; takes what fits"
                + " in its wall, at most 24 ft"),
        misfit(
            text -> first(text, "\"offset\": \"3 ft\"", "\"sill\": \"7 ft\""),
            "rooms[0].faces[1].windows[0]: found sill and height together 10 ft; takes what fits"
                + " in its wall, at most 9 ft"),
        misfit(
            text ->
                first(text, "\"lining\": [\"gypsum board 0.5 in\"]", "\"cladding\": []")
                    .replaceFirst("\"cladding\": \\[[^\\]]+\\],", ""),
            "rooms[0].faces[0].build: found framing with nothing on it; takes at least one layer in"
                + " \"cladding\" or \"lining\""),
        misfit(
            text ->
                first(
                    text,
                    "[\"gypsum board 0.5 in\"]",
                    "[{\"material\": \"gypsum board\", \"permeance\": \"5 perm\", \"sd\": \"2 m\"}]"),
            "rooms[0].faces[0].build.lining[0].sd: found an sd beside a permeance; takes either"
                + " permeance or sd, which tell the same"),
        misfit(
            text -> first(text, "[\"concrete 4 in\"]", "[]"),
            "rooms[0].faces[5].build.layers: found no layer; takes at least one layer"),
        misfit(
            text -> first(text, "Mon-Sat 8:00-12:00", "Mon-Sat 8:00-14:00"),
            "work.hours: found \"Mon-Sat 8:00-14:00, 13:00-17:00\"; takes periods in order that do"
                + " not overlap"),
        misfit(
            text -> first(text, "\"Mon-Sat 8:00-12:00, 13:00-17:00\"", "\"work\""),
            "work.hours: found \"work\"; takes days and periods such as \"Mon-Fri 8:00-17:00\""),
        misfit(
            text -> first(text, "{\"capacity\"", "{\"room\": \"Attic\", \"capacity\""),
            "unit.room: found \"Attic\"; takes a cooled room: \"Shop\""),
        misfit(
            text -> first(text, "\"use\": \"cooled\"", "\"use\": \"floating\""),
            "unit: found a unit but no cooled room; takes a room with use \"cooled\""));
  }

  @ParameterizedTest
  @MethodSource("misfits")
  void misfitsAreProblems(UnaryOperator<String> change, String sentence) {
    ShopReading reading = ShopFile.read(change.apply(Examples.text("oven-day")), Stations.any());
    assertThat(reading).isInstanceOf(ShopReading.Bad.class);
    assertThat(((ShopReading.Bad) reading).problems())
        .extracting(Problem::sentence)
        .containsExactly(sentence);
  }

  /** One fault has one line: without rooms nothing is said of the unit's room. */
  @Test
  void aShopWithoutRoomsIsToldOnce() {
    for (String rooms : java.util.List.of("[]", "{}")) {
      String text =
          "{\"shopclime\": 1, \"name\": \"a\", \"place\": {\"station\": \"722230\"}, \"work\": {\"hours\":"
              + " \"work\"}, \"unit\": {\"capacity\": \"5000 BTU/h\"}, \"rooms\": "
              + rooms
              + "}";
      assertThat(((ShopReading.Bad) ShopFile.read(text, Stations.any())).problems())
          .filteredOn(problem -> !problem.path().startsWith("work"))
          .singleElement()
          .satisfies(problem -> assertThat(problem.path()).isEqualTo("rooms"));
    }
  }

  @Test
  void aWallMayNotBeSmallerThanItsOpenings() {
    Shop shop = Examples.shop("insulated");
    Shop crowded =
        Walk.each(
            shop,
            Face.class,
            face ->
                face.name().equals("West wall")
                    ? face.withDoors(
                        List.of(
                            big(face, "one"),
                            big(face, "two"),
                            big(face, "three"),
                            big(face, "four")))
                    : face);
    assertThat(ShopCheck.check(crowded, Stations.any()).problems())
        .extracting(Problem::sentence)
        .containsExactly(
            "rooms[0].faces[0]: found openings of 252 ft²; takes openings no larger than their"
                + " wall, 216 ft²");
  }

  @Test
  void aShopNeedsARoomAndARoomNeedsFaces() {
    Shop shop = Examples.shop("insulated");
    assertThat(ShopCheck.check(shop.withRooms(List.of()), Stations.any()).problems())
        .extracting(Problem::sentence)
        .contains("rooms: found no room; takes at least one room");
    Shop bare = Walk.each(shop, Room.class, room -> room.withFaces(List.of()));
    assertThat(ShopCheck.check(bare, Stations.any()).problems())
        .extracting(Problem::path)
        .containsExactly("rooms[0].faces", "rooms[1].faces");
  }

  static Stream<Arguments> oddities() {
    return Stream.of(
        misfit(
            text -> first(text, "XPS foam 1 in", "XPS foam 2 in"),
            "rooms[0].faces[0].doors[0].boards: boards of 2.5 in together; a usual door cavity"
                + " takes 1.5 in: measure yours"),
        misfit(
            text -> first(text, "\"R-13\"", "\"R-19\""),
            "rooms[0].faces[0].build.cavity: R-19 is more than batts give in a 2x4, about R-15;"
                + " right only for foam"),
        misfit(
            text -> first(text, "\"height\": \"9 ft\"", "\"height\": \"30 ft\""),
            "rooms[0].height: 30 ft is unusual; usual is at most 26.25 ft"),
        misfit(
            text -> first(text, "\"12000 BTU/h\"", "\"1200 BTU/h\""),
            "unit.capacity: 1,200 BTU/h is unusual; usual is 4,777 BTU/h to 37,534 BTU/h"),
        misfit(
            text -> first(text, "\"tilt\": \"18.4°\"", "\"tilt\": \"90°\""),
            "rooms[1].faces[0].tilt: a roof that is upright; a flat roof has 0 deg, one of 4 in 12"
                + " has 18.4 deg"),
        misfit(
            text -> first(text, "\"tilt\": \"180°\",", ""),
            "rooms[0].faces[5].tilt: a ceiling or floor that is upright; a ceiling has 0 deg, a"
                + " floor 180 deg"),
        misfit(
            text -> first(text, "\"azimuth\": \"270°\"", "\"tilt\": \"20°\""),
            "rooms[0].faces[0].tilt: a wall that is far from upright (90 deg)"),
        misfit(
            text -> first(text, "\"floorArea\": \"576 ft²\"", "\"floorArea\": \"400 ft²\""),
            "rooms[0].floorArea: 400 ft² does not go with its floors, 576 ft² together"),
        misfit(
            text ->
                first(
                    text, "\"use\": \"floating\"", "\"use\": \"floating\", \"cooling\": \"ideal\""),
            "rooms[1].cooling: has no effect: a floating room is neither cooled nor heated"),
        misfit(
            text ->
                first(
                    text,
                    "\"use\": \"floating\"",
                    "\"use\": \"floating\", \"heatedTo\": \"60 °F\""),
            "rooms[1].heatedTo: has no effect: a floating room is neither cooled nor heated"),
        misfit(
            text ->
                first(text, "\"use\": \"cooled\"", "\"use\": \"cooled\", \"heatedTo\": \"80 °F\""),
            "rooms[0].heatedTo: above the wished temperature: in the year's run it is heated to"
                + " 78 °F"),
        misfit(
            text -> first(text, "\"Mon-Sat 8:00-12:00, 13:00-17:00\"", "\"never\""),
            "work.hours: no working hours: nothing is asked of the unit"));
  }

  @ParameterizedTest
  @MethodSource("oddities")
  void odditiesAreWarnings(UnaryOperator<String> change, String sentence) {
    String text = Examples.text("insulated-foam-door");
    assertThat(warnings(change.apply(text))).contains(sentence);
    assertThat(warnings(text)).doesNotContain(sentence);
  }

  @Test
  void cautionsNameTheirAuthority() {
    assertThat(warnings(Examples.text("bare-studs"))).isEmpty();
    assertThat(warnings(Examples.text("insulated"))).isEmpty();
    assertThat(warnings(Examples.text("insulated-foam-door")))
        .containsExactly(
            "rooms[0].faces[0].doors[0].boards: Foam on the inside needs a thermal barrier, usually"
                + " 1/2 in gypsum board, unless it is listed to stand bare (model building code,"
                + " EPA).");
    assertThat(warnings(Examples.text("oven-day")))
        .anyMatch(text -> text.startsWith("rooms[0].gains[5]: ") && text.contains("NFPA 86"))
        .anyMatch(text -> text.startsWith("rooms[0].fans[0]: ") && text.contains("CPSC"));
    String day = Examples.text("oven-day");
    assertThat(warnings(first(day, "Belt grinder", "Paint gun")))
        .anyMatch(text -> text.contains("NFPA 33"));
    assertThat(warnings(first(day, "Belt grinder", "Blast cabinet")))
        .anyMatch(text -> text.contains("OSHA 1910.1053"));
    assertThat(warnings(first(day, "Radio", "Propane heater")))
        .anyMatch(text -> text.contains("carbon monoxide: vent them"));
    assertThat(warnings(first(day, "{\"capacity\"", "{\"volts\": \"230 V\", \"capacity\"")))
        .anyMatch(text -> text.startsWith("unit.volts: ") && text.contains("NEC"));
    String heavy = first(day, "moderate work", "heavy work");
    String warm =
        first(heavy, "\"height\": \"9 ft\"", "\"height\": \"9 ft\", \"setPoint\": \"84 °F\"");
    assertThat(warnings(heavy)).noneMatch(text -> text.contains("NIOSH"));
    assertThat(warnings(warm)).anyMatch(text -> text.contains("NIOSH criteria 2016-106"));
  }

  @Test
  void foamBehindDrywallNeedsNoCaution() {
    String text = Examples.text("insulated");
    String bare = "\"lining\": [\"gypsum board 0.5 in\"]";
    String foam = "\"lining\": [\"gypsum board 0.5 in\", \"EPS board 1 in\"]";
    String thin = "\"lining\": [\"EPS board 1 in\", \"gypsum board 0.25 in\"]";
    String behind = "\"lining\": [\"EPS board 1 in\", \"drywall 1/2 in\"]";
    assertThat(warnings(first(text, bare, foam))).hasSize(1);
    assertThat(warnings(first(text, bare, thin))).hasSize(1);
    assertThat(warnings(first(text, bare, behind))).isEmpty();
  }

  private static Door big(Face face, String name) {
    Door door = face.doors().get(0);
    return new Door(
        name,
        door.type(),
        door.width(),
        door.height(),
        door.leaf(),
        door.boards(),
        door.coverage(),
        door.seal(),
        door.openMinutes(),
        door.openWhen(),
        door.screen(),
        door.absorptance());
  }

  private static List<String> warnings(String text) {
    ShopReading reading = ShopFile.read(text, Stations.any());
    assertThat(reading).isInstanceOf(ShopReading.Good.class);
    return ((ShopReading.Good) reading).warnings().stream().map(Warning::sentence).toList();
  }

  private static String first(String text, String there, String instead) {
    int at = text.indexOf(there);
    assertThat(at).as(there).isNotNegative();
    return text.substring(0, at) + instead + text.substring(at + there.length());
  }

  private static Arguments misfit(UnaryOperator<String> change, String sentence) {
    return arguments(change, sentence);
  }
}
