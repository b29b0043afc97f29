package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.shop;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.SunAngles;

/** Sun let in is all accounted for: what faces take in and what glass lets out again make 1. */
class SunInsideTest {

  private static Skeleton skeleton(Room... rooms) {
    return SkeletonMaker.of(shop(rooms), Season.COOLING);
  }

  private static Room glazed() {
    Room room = box("Shop", RoomUse.COOLED, insulation(10), insulation(10));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(2, faces.get(2).withWindows(List.of(TestShops.window("Window", 3, 1.5, 3, 0.6))));
    return room.withFaces(faces);
  }

  private static double direct(SunInside inside, int side) {
    return inside.direct(0, new SunAngles(30, 180))[side];
  }

  private static double scattered(SunInside inside, int side) {
    return inside.scattered(0)[side];
  }

  private static double through(Piece piece) {
    return piece.pane().orElseThrow().optics().diffuseTransmittance();
  }

  /** Shares by hand: the floor takes 60 % of the beam, the rest is spread by area times 0.6. */
  @Test
  void beamFallsOnTheFloorFirst() {
    Skeleton skeleton = skeleton(glazed());
    SunInside inside = new PlainSunInside(skeleton.pieces(), 0);
    double level = Math.pow(24 * TestShops.FOOT, 2);
    double walls = 4 * 24 * 9 * TestShops.FOOT * TestShops.FOOT - 4.5;
    double out = 0;
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      Piece piece = skeleton.pieces().get(chain);
      if (piece.pane().isPresent()) {
        out = 4.5 * through(piece);
        assertThat(direct(inside, 2 * chain + 1)).isZero();
        assertThat(scattered(inside, 2 * chain + 1)).isZero();
      }
      assertThat(scattered(inside, 2 * chain)).as("no side of this room").isZero();
      assertThat(direct(inside, 2 * chain)).isZero();
    }
    double weight = 0.6 * (2 * level + walls) + out;
    int floor = 2 * chain(skeleton, "Floor") + 1;
    int roof = 2 * chain(skeleton, "Roof") + 1;
    assertThat(scattered(inside, roof)).isCloseTo(0.6 * level / weight, within(1e-12));
    assertThat(scattered(inside, floor)).isCloseTo(0.6 * level / weight, within(1e-12));
    assertThat(direct(inside, floor)).isCloseTo(0.6 + 0.4 * 0.6 * level / weight, within(1e-12));
    assertThat(direct(inside, roof)).isCloseTo(0.4 * 0.6 * level / weight, within(1e-12));
  }

  private static int chain(Skeleton skeleton, String name) {
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      if (skeleton.pieces().get(chain).component().name().equals(name)) {
        return chain;
      }
    }
    throw new IllegalArgumentException(name);
  }

  /** Without a floor the beam is spread like scattered sun. */
  @Test
  void withoutFloorTheBeamIsSpread() {
    Room room = glazed();
    Room open = room.withFaces(room.faces().subList(0, 5));
    SunInside inside = new PlainSunInside(skeleton(open).pieces(), 0);
    for (int side = 0; side < 12; side++) {
      assertThat(direct(inside, side)).isEqualTo(scattered(inside, side));
    }
  }

  /** The top of a ceiling is the floor of the attic above it, and takes the beam there. */
  @Test
  void topOfACeilingIsAFloor() {
    Room shop = box("Shop", RoomUse.COOLED, insulation(10), insulation(10));
    List<Face> faces = new ArrayList<>(shop.faces());
    faces.set(4, TestShops.face("Ceiling", Part.CEILING, "Attic", 0, 0, 5, 5, insulation(10)));
    Room attic =
        TestShops.room(
            "Attic",
            RoomUse.FLOATING,
            25,
            1,
            25,
            TestShops.face("Roof", Part.ROOF, "outdoors", 0, 0, 5, 5, insulation(1)));
    Skeleton skeleton = skeleton(shop.withFaces(faces), attic);
    SunInside inside = new PlainSunInside(skeleton.pieces(), 1);
    int ceiling = chain(skeleton, "Ceiling");
    assertThat(direct(inside, 2 * ceiling)).isCloseTo(0.6 + 0.4 * 0.5, within(1e-12));
    assertThat(direct(inside, 2 * chain(skeleton, "Roof") + 1)).isCloseTo(0.2, within(1e-12));
    assertThat(direct(inside, 2 * chain(skeleton, "Floor") + 1)).isZero();
  }

  @Property(tries = 50)
  void sharesAndGlassMakeOne(@ForAll @LongRange(min = 0, max = 100_000) long lot) {
    Skeleton skeleton = SkeletonMaker.of(new RandomCase(lot).shop(), Season.COOLING);
    for (int room = 0; room < skeleton.rooms().size(); room++) {
      SunInside inside = new PlainSunInside(skeleton.pieces(), room);
      double scattered = 0;
      double direct = 0;
      double weight = 0;
      double out = 0;
      for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
        Piece piece = skeleton.pieces().get(chain);
        scattered += scattered(inside, 2 * chain) + scattered(inside, 2 * chain + 1);
        direct += direct(inside, 2 * chain) + direct(inside, 2 * chain + 1);
        boolean far = piece.outside() instanceof Piece.OtherRoom other && other.room() == room;
        if (piece.room() == room || far) {
          double each = piece.pane().isPresent() ? through(piece) : 0.6;
          weight += piece.area() * each;
          out += piece.pane().isPresent() ? piece.area() * each : 0;
        }
      }
      double lost = out / weight;
      assertThat(scattered).isCloseTo(1 - lost, within(1e-12));
      assertThat(direct).isBetween(1 - lost - 1e-12, 1 - 0.4 * lost + 1e-12);
      if (room == 0) {
        assertThat(direct).as("the work room has a floor").isCloseTo(1 - 0.4 * lost, within(1e-12));
      }
    }
  }
}
