package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.shop;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Face;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.SunAngles;

/** Sun followed inside a box: geometry known by hand, and nothing lost but through the glass. */
class TracedSunInsideTest {

  /** A window 2 m square, 1 m above the floor, in the middle of a south wall 8 m wide, 3 m high. */
  private static final Piece.Place SOUTH = new Piece.Place(180, 8, 3, 3, 1, 2, 2);

  private static double[] trace(double altitude, double azimuth) {
    return TracedSunInside.trace(SOUTH, 48, new SunAngles(altitude, azimuth));
  }

  @Test
  void fallsWhereGeometrySays() {
    // 60 degrees high, straight in: the top of the window lands 3 / 1.73 = 1.7 m from the wall.
    assertThat(trace(60, 180)).containsExactly(new double[] {1, 0, 0, 0}, within(1e-9));
    // Straight in, 18.43 degrees: rays from above 2 m reach the opposite wall, 6 m away.
    assertThat(trace(Math.toDegrees(Math.atan(2 / 6.0)), 180))
        .containsExactly(new double[] {0.5, 0.5, 0, 0}, within(1e-9));
    // Low sun from the west goes to the right seen from outdoors, from the east to the left.
    assertThat(trace(1, 250)[3]).isGreaterThan(0.9);
    assertThat(trace(1, 110)[2]).isGreaterThan(0.9);
  }

  /** What sides take in and what glass lets out make 1, wherever the sun stands. */
  @Test
  void nothingIsLostButThroughTheGlass() {
    Room room = box("Shop", RoomUse.COOLED, insulation(10), insulation(10));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(2, faces.get(2).withWindows(List.of(TestShops.window("Window", 3, 1.5, 3, 0.6))));
    Skeleton skeleton = SkeletonMaker.of(shop(room.withFaces(faces)), Season.COOLING);
    int window = 0;
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      window = skeleton.pieces().get(chain).pane().isPresent() ? chain : window;
    }
    SunInside traced = new TracedSunInside(new SunBounces(skeleton.pieces(), 0), room.floorArea());
    double scattered = sum(traced.scattered(window));
    assertThat(scattered).isBetween(0.97, 0.9999);
    for (int azimuth = 100; azimuth <= 260; azimuth += 20) {
      double[] direct = traced.direct(window, new SunAngles(25, azimuth));
      assertThat(sum(direct)).isBetween(0.97, 0.9999);
    }
    double[] high = traced.direct(window, new SunAngles(70, 180));
    int floor = 2 * chain(skeleton, "Floor") + 1;
    assertThat(high[floor]).as("floor first, none back to itself at once").isBetween(0.6, 0.7);
  }

  private static int chain(Skeleton skeleton, String name) {
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      if (skeleton.pieces().get(chain).component().name().equals(name)) {
        return chain;
      }
    }
    throw new IllegalArgumentException(name);
  }

  private static double sum(double[] parts) {
    double sum = 0;
    for (double part : parts) {
      sum += part;
    }
    return sum;
  }
}
