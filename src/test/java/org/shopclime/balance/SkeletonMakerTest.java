package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.R;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Window;
import org.shopclime.sun.Shading;

/** How faces, doors and windows become chains. */
class SkeletonMakerTest {

  private static Piece piece(Skeleton skeleton, String name) {
    return skeleton.pieces().stream()
        .filter(p -> p.component().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Skeleton of(Season season, Face... faces) {
    return SkeletonMaker.of(shop(room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, faces)), season);
  }

  /**
   * U by hand with R-11 behind printed films, 0.61, 0.92 inside; outside in the
   * cooling season, R-0.17 in the heating season. A roof of 45° has.
   */
  @ParameterizedTest
  @CsvSource({
    "WALL, 90, outdoors, COOLING, 11.93", "WALL, 90, outdoors, HEATING, 11.85",
    "ROOF, 0, outdoors, COOLING, 12.17", "ROOF, 0, outdoors, HEATING, 11.78",
    "ROOF, 45, outdoors, COOLING, 12.01", "ROOF, 45, outdoors, HEATING, 11.79",
    "CEILING, 0, outdoors, COOLING, 12.17", "FLOOR, 180, outdoors, COOLING, 11.86",
    "FLOOR, 180, outdoors, HEATING, 12.09", "FLOOR, 180, ground, COOLING, 11.92",
    "FLOOR, 180, ground, HEATING, 11.92", "WALL, 90, ground, COOLING, 11.68"
  })
  void uFactorWithPrintedFilms(String part, double tilt, String behind, Season season, double r) {
    Face face = face("Face", Part.valueOf(part), behind, 0, tilt, 4, 4, insulation(11));
    Component component = piece(of(season, face), "Face").component();
    assertThat(component.uFactor()).isCloseTo(1 / (r * R), withinPercentage(1e-3));
    assertThat(component.area()).isCloseTo(16, within(1e-12));
    assertThat(component.kind().name()).isEqualTo(part);
  }

  /** A ceiling below an attic has the film of heat going down on both sides: twice. */
  @Test
  void ceilingHasTwoFilmsOfTheSameDirection() {
    Room attic =
        room(
            "Attic",
            RoomUse.FLOATING,
            16,
            1,
            WISHED,
            face("Roof", Part.ROOF, "outdoors", 0, 20, 4, 4, insulation(1)));
    Room below =
        room(
            "Shop",
            RoomUse.COOLED,
            16,
            2.5,
            WISHED,
            face("Ceiling", Part.CEILING, "Attic", 0, 0, 4, 4, insulation(11)));
    Skeleton cooling = SkeletonMaker.of(shop(below, attic), Season.COOLING);
    Piece ceiling = piece(cooling, "Ceiling");
    assertThat(ceiling.component().uFactor()).isCloseTo(1 / (12.84 * R), withinPercentage(1e-3));
    assertThat(ceiling.component().behindRoom()).isEqualTo(1);
    Piece.OtherRoom far = (Piece.OtherRoom) ceiling.outside();
    assertThat(ceiling.inside().convective()).isCloseTo(1.03, within(0.01));
    assertThat(far.side().convective()).isCloseTo(1.03, within(0.01));
    assertThat(ceiling.inside().plane()).isEqualTo("up");
    assertThat(far.side().plane()).isEqualTo("down");
    assertThat(far.side().isFloor()).isTrue();
    assertThat(ceiling.inside().isFloor()).isFalse();
    Piece winter = piece(SkeletonMaker.of(shop(below, attic), Season.HEATING), "Ceiling");
    assertThat(winter.inside().convective()).isCloseTo(4.17, within(0.01));
  }

  /** Seen from below, a loft's floor is a ceiling; it does not lie in the plane of the floor. */
  @Test
  void floorSeenFromBelowIsACeiling() {
    Face boards = face("Boards", Part.FLOOR, "Shop", 0, 180, 4, 4, insulation(2));
    Face slab = face("Slab", Part.FLOOR, "nothing", 0, 180, 4, 4, insulation(2));
    Room loft = room("Loft", RoomUse.FLOATING, 16, 1, WISHED, boards);
    Room below = room("Shop", RoomUse.COOLED, 16, 2.5, WISHED, slab);
    Skeleton skeleton = SkeletonMaker.of(shop(below, loft), Season.COOLING);
    Piece piece = piece(skeleton, "Boards");
    Piece.RoomSide far = ((Piece.OtherRoom) piece.outside()).side();
    assertThat(far.plane()).isEqualTo("up");
    assertThat(far.isFloor()).isFalse();
    assertThat(piece.inside().plane()).isEqualTo("down");
    assertThat(piece.inside().isFloor()).isTrue();
    assertThat(far.convective()).as("heat comes down into the shop").isCloseTo(1.03, within(0.01));
    assertThat(piece(skeleton, "Slab").inside().plane()).isEqualTo("down");
  }

  /** Above a floating cellar heat comes up into the cooled room, wherever the floor is listed. */
  @Test
  void ceilingOfACellarIsTheFloorAbove() {
    Face lid = face("Lid", Part.CEILING, "Shop", 0, 0, 4, 4, insulation(2));
    Room cellar = room("Cellar", RoomUse.FLOATING, 16, 2, WISHED, lid);
    Room above = room("Shop", RoomUse.COOLED, 16, 2.5, WISHED);
    Piece piece = piece(SkeletonMaker.of(shop(above, cellar), Season.COOLING), "Lid");
    assertThat(piece.inside().convective()).isCloseTo(4.17, within(0.01));
    assertThat(((Piece.OtherRoom) piece.outside()).side().isFloor()).isTrue();
  }

  @Test
  void wallsLieInPlanesByDirection() {
    Skeleton skeleton =
        of(
            Season.COOLING,
            wall("North", 0, 4, 3, insulation(5)),
            wall("Also north", 360, 2, 3, insulation(5)),
            wall("East", 90, 4, 3, insulation(5)),
            face("Steep", Part.ROOF, "outdoors", 90, 30, 4, 3, insulation(5)),
            face("Flat", Part.ROOF, "outdoors", 90, 3, 4, 3, insulation(5)));
    assertThat(skeleton.pieces().stream().map(p -> p.inside().plane()))
        .containsExactly("90/0", "90/0", "90/90", "30/90", "up");
  }

  @Test
  void nothingBehindPassesNoHeatNotEvenThroughADoor() {
    Face house =
        face("House wall", Part.WALL, "nothing", 0, 90, 6, 3, insulation(5))
            .withDoors(List.of(TestShops.door("Inner door", 0.9, 2, 600)))
            .withWindows(List.of(TestShops.window("Inner window", 1, 1, 3, 0.5)));
    Skeleton skeleton = of(Season.COOLING, house);
    assertThat(skeleton.pieces())
        .hasSize(3)
        .allMatch(p -> p.outside() instanceof Piece.Nothing)
        .allMatch(p -> p.component().uFactor() == 0);
    assertThat(skeleton.air().get(0).doors()).isEmpty();
  }

  @Test
  void openingsInAWallAgainstGroundLookOutdoors() {
    Face cellar =
        face("Cellar wall", Part.WALL, "ground", 0, 90, 6, 3, insulation(5))
            .withWindows(List.of(TestShops.window("Light well", 1, 1, 3, 0.5)));
    Skeleton skeleton = of(Season.COOLING, cellar);
    assertThat(piece(skeleton, "Cellar wall").outside())
        .isEqualTo(new Piece.Ground(Piece.DIRECT_CONTACT, 0.5, 2, 0));
    assertThat(piece(skeleton, "Light well").outside()).isInstanceOf(Piece.Outdoors.class);
    assertThat(piece(skeleton, "Light well").component().uFactor()).isEqualTo(3);
  }

  /** The parts of a framed wall share its area; openings are taken out of it. */
  @Test
  void pathsShareTheNetArea() {
    Build framed =
        new Build.Framed(
            org.shopclime.shop.Member.TWO_BY_FOUR,
            0.4064,
            List.of(TestShops.layer("OSB")),
            2.3,
            org.shopclime.shop.Span.known(0.03),
            0,
            List.of(TestShops.layer("gypsum board")));
    Face wall =
        wall("Wall", 90, 6, 3, framed)
            .withDoors(List.of(TestShops.door("Door", 2, 2, 0)))
            .withWindows(List.of(TestShops.window("Window", 1, 1, 3, 0.5)));
    Skeleton skeleton = of(Season.COOLING, wall);
    double area =
        skeleton.pieces().stream()
            .filter(p -> p.component().name().equals("Wall"))
            .mapToDouble(Piece::area)
            .sum();
    assertThat(area).isCloseTo(18 - 5, within(1e-9));
    assertThat(piece(skeleton, "Window").area()).isCloseTo(1, within(1e-12));
    assertThat(piece(skeleton, "Door").component().area()).isCloseTo(4, within(1e-12));
  }

  /** An eave 0.3 m above the wall's top stands 0.3 + 2.5 - 0.9 - 1 = 0.9 m above the window. */
  @Test
  void eaveShadesWindowsFromHigherUp() {
    Face bare =
        wall("South", 180, 6, 2.5, insulation(5))
            .withWindows(
                List.of(
                    TestShops.window("Plain", 1, 1, 3, 0.5),
                    awning(TestShops.window("Own", 1, 1, 3, 0.5))));
    Face wall =
        new Face(
            bare.name(),
            bare.part(),
            bare.behind(),
            bare.azimuth(),
            bare.tilt(),
            bare.width(),
            bare.height(),
            0,
            bare.build(),
            bare.absorptance(),
            0.9,
            0.9,
            bare.windows(),
            List.of(TestShops.door("Door", 1, 2, 0)),
            Optional.of(new Overhang(0.6, 0.3)),
            0.7);
    Skeleton skeleton = of(Season.COOLING, wall);
    assertThat(shade(skeleton, "South"))
        .isEqualTo(Piece.Shade.of(0.7, Shading.overhang(6, 2.5, 0.6, 0.3)));
    Shading plain = shade(skeleton, "Plain").boards().orElseThrow();
    assertThat(plain.gap()).isCloseTo(0.9, within(1e-12));
    assertThat(plain.beyondLeft()).as("the eave is as long as the wall").isZero();
    assertThat(plain.beyondRight()).isCloseTo(5, within(1e-12));
    assertThat(shade(skeleton, "Door").boards().orElseThrow().gap()).isCloseTo(0.8, within(1e-12));
    assertThat(shade(skeleton, "Own"))
        .isEqualTo(Piece.Shade.of(0.7, Shading.overhang(1, 1, 0.4, 0.1)));
  }

  private static Window awning(Window w) {
    return new Window(
        w.name(),
        w.width(),
        w.height(),
        w.offset(),
        w.sill(),
        w.glass(),
        1,
        1,
        Optional.of(new Overhang(0.4, 0.1)));
  }

  private static Piece.Shade shade(Skeleton skeleton, String name) {
    return ((Piece.Outdoors) piece(skeleton, name).outside()).shade();
  }

  /** A floor or ceiling left at the slope of a wall is level. */
  @Test
  void levelPartsAreLevel() {
    Skeleton skeleton =
        of(
            Season.COOLING,
            face("Floor", Part.FLOOR, "outdoors", 0, 90, 4, 4, insulation(5)),
            face("Ceiling", Part.CEILING, "outdoors", 0, 90, 4, 4, insulation(5)),
            face("Roof", Part.ROOF, "outdoors", 0, 30, 4, 4, insulation(5)));
    assertThat(((Piece.Outdoors) piece(skeleton, "Floor").outside()).tilt()).isEqualTo(180);
    assertThat(((Piece.Outdoors) piece(skeleton, "Ceiling").outside()).tilt()).isZero();
    assertThat(((Piece.Outdoors) piece(skeleton, "Roof").outside()).tilt()).isEqualTo(30);
  }

  /** 234 kg of iron 6 mm deep: 5 m²; 125 kg of wood 25 mm deep: 10 m²; 3 m² of wall: both sides. */
  @Test
  void contentsAsPlates() {
    Room room = box("Shop", RoomUse.COOLED, insulation(5), insulation(5));
    Skeleton skeleton =
        SkeletonMaker.of(shop(TestShops.withContents(room, 234, 125, 3)), Season.COOLING);
    List<Piece> contents = new ArrayList<>(skeleton.pieces());
    contents.removeIf(p -> p.component().kind() != ComponentKind.CONTENTS);
    double[] areas = {5, 10, 6};
    double[] stored = {234 * 490, 125 * 1600, 6 * 0.0127 * 640 * 1150};
    assertThat(contents).hasSize(3);
    for (int i = 0; i < 3; i++) {
      Piece piece = contents.get(i);
      double sum = 0;
      for (int node = 0; node < piece.nodes().count(); node++) {
        sum += piece.nodes().capacity(node) * piece.area();
      }
      assertThat(piece.area()).isCloseTo(areas[i], within(1e-9));
      assertThat(sum).as("heat of all of it, J/K").isCloseTo(stored[i], withinPercentage(0.5));
      assertThat(piece.outside()).isInstanceOf(Piece.Nothing.class);
      assertThat(piece.inside().plane()).isEqualTo("contents");
    }
    assertThat(SkeletonMaker.of(shop(room), Season.COOLING).pieces())
        .noneMatch(p -> p.component().kind() == ComponentKind.CONTENTS);
  }
}
