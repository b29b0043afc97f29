package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;

/** A way that stands open between two rooms, in the shop file. */
class PassageFileTest {

  private static final String LAYERS =
      "\"build\": {\"kind\": \"layers\", \"layers\": [\"plywood\"]}";

  private static final String STAIR =
      "\"passage\": {\"name\": \"Stair\", \"kind\": \"floor opening\", \"width\": \"3 ft\","
          + " \"length\": \"8 ft\"}";

  private static final String DOORWAY =
      "\"passage\": {\"name\": \"Doorway\", \"kind\": \"doorway\", \"width\": \"3 ft\","
          + " \"length\": \"7 ft\", \"openWhen\": \"work\"}";

  /** A shop with a loft over it and one face more, told by what comes after its name. */
  private static ShopReading read(String face) {
    return ShopFile.read(
        """
        {"shopclime": 1, "name": "Two", "place": {"station": "722230"},
         "work": {"hours": "Mon-Fri 8:00-17:00"},
         "rooms": [
           {"name": "Shop", "use": "cooled", "floorArea": "240 ft2", "height": "8 ft", "leakage": "tight",
            "faces": [
             {"name": "West", "part": "wall", "width": "12 ft", "height": "8 ft", %s},
             {"name": "Between", "width": "12 ft", "height": "20 ft", %s, %s}]},
           {"name": "Loft", "use": "floating", "floorArea": "240 ft2", "height": "6 ft", "leakage": "tight",
            "faces": [
             {"name": "Roof", "part": "roof", "tilt": "0°", "width": "12 ft", "height": "20 ft",
              %s}]}]}
        """
            .formatted(LAYERS, face, LAYERS, LAYERS),
        Stations.any());
  }

  private static List<String> problems(String face) {
    return read(face) instanceof ShopReading.Bad bad
        ? bad.problems().stream().map(Problem::sentence).toList()
        : List.of();
  }

  private static String ceiling(String passage) {
    return "\"part\": \"ceiling\", \"tilt\": \"0°\", \"behind\": \"Loft\", " + passage;
  }

  private static String wall(String behind, String passage) {
    return "\"part\": \"wall\", \"behind\": \"" + behind + "\", " + passage;
  }

  @Test
  void aStairIsReadWrittenAndReadAgain() {
    ShopReading.Good good = (ShopReading.Good) read(ceiling(STAIR));
    Face face = good.shop().rooms().get(0).faces().get(1);
    Passage stair = face.passage().orElseThrow();
    assertThat(stair.kind()).isEqualTo(PassageKind.FLOOR_OPENING);
    assertThat(stair.area()).isCloseTo(24 * 0.3048 * 0.3048, within(1e-12));
    assertThat(stair.depth()).isCloseTo(0.3048, within(1e-12));
    assertThat(ScheduleText.write(stair.openWhen())).isEqualTo("always");
    assertThat(face.netArea()).as("the face counts whole").isEqualTo(face.grossArea());
    String written = ShopFile.write(good.shop());
    assertThat(written).contains("\"passage\"", "\"floor opening\"");
    assertThat(((ShopReading.Good) ShopFile.read(written, Stations.any())).shop())
        .isEqualTo(good.shop());
    assertThat(ShopFile.write(good.shop().withRooms(without(good.shop()))))
        .doesNotContain("assage");
  }

  private static List<Room> without(Shop shop) {
    return shop.rooms().stream()
        .map(
            room ->
                room.withFaces(
                    room.faces().stream().map(f -> f.withPassage(Optional.empty())).toList()))
        .toList();
  }

  @Test
  void aDoorwayMayGoThroughAWallOrStandAtTheFootOfAStair() {
    assertThat(problems(wall("Loft", DOORWAY))).isEmpty();
    assertThat(problems(ceiling(DOORWAY))).isEmpty();
  }

  @Test
  void thereMustBeARoomBehindIt() {
    assertThat(problems(wall("outdoors", DOORWAY)))
        .containsExactly(
            "rooms[0].faces[1].passage: found a way through to \"outdoors\"; takes a face with"
                + " another room behind it; to outdoors goes a door or a window");
  }

  @Test
  void aFloorOpeningLiesFlat() {
    assertThat(problems(wall("Loft", STAIR)))
        .containsExactly(
            "rooms[0].faces[1].passage.kind: found \"floor opening\"; takes \"doorway\" in a face"
                + " that is not level");
  }

  @Test
  void itFitsInItsFace() {
    assertThat(problems(ceiling(STAIR.replace("8 ft", "30 ft"))))
        .contains(
            "rooms[0].faces[1].passage: found a length of 30 ft; takes what fits in its wall, at"
                + " most 20 ft");
    assertThat(problems(ceiling(STAIR.replace("3 ft", "20 ft").replace("8 ft", "20 ft"))))
        .containsExactly(
            "rooms[0].faces[1].passage: found a way through of 400 ft²; takes one no larger than its"
                + " face, 240 ft²");
    assertThat(problems(ceiling(STAIR.replace("\"3 ft\"", "\"0 ft\""))))
        .singleElement()
        .asString()
        .startsWith("rooms[0].faces[1].passage.width: found \"0 ft\"; takes");
  }

  @Test
  void twoWaysOfARoomHaveTwoNames() {
    String door =
        "\"doors\": [{\"name\": \"Doorway\", \"type\": \"entry\", \"width\": \"3 ft\", \"height\":"
            + " \"7 ft\", \"leaf\": \"sheet steel\"}], ";
    assertThat(problems(wall("Loft", door + DOORWAY)))
        .containsExactly(
            "rooms[0].faces[1].passage.name: found \"Doorway\", which is taken; takes a name of its"
                + " own");
  }
}
