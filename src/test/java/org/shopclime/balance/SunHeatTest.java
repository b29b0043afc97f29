package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** Sun ends somewhere: on the outside, in the glass, on the faces inside, or out again. */
class SunHeatTest {

  private static final int NOON = 12;

  private final Skeleton skeleton = SkeletonMaker.of(shop(), Season.COOLING);
  private final SunOnShop sun = SunOnShop.clear(skeleton.pieces(), TestShops.swinging(), 0.2);
  private final SunHeat heat = SunHeat.of(skeleton, sun);
  private final double[] left = new double[skeleton.pieces().size()];
  private final double[] right = new double[skeleton.pieces().size()];

  private static Shop shop() {
    Room room =
        TestShops.room(
            "Box",
            RoomUse.COOLED,
            20,
            2.5,
            TestShops.WISHED,
            TestShops.wall("South", 180, 4, 2.5, TestShops.concrete())
                .withWindows(List.of(TestShops.window("Glass", 1.5, 1, 5, 0.7))),
            TestShops.wall("East", 90, 5, 2.5, TestShops.insulation(5)),
            TestShops.face(
                "Floor",
                org.shopclime.shop.Part.FLOOR,
                "nothing",
                0,
                180,
                4,
                5,
                TestShops.concrete()));
    return TestShops.shop(room);
  }

  private int chain(String name) {
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      if (skeleton.pieces().get(chain).component().name().equals(name)) {
        return chain;
      }
    }
    throw new IllegalArgumentException(name);
  }

  private void put(int chain) {
    heat.put(
        chain,
        NOON,
        new HourSink() {
          @Override
          public void addLeft(int other, int hour, double watts) {
            assertThat(hour).isEqualTo(NOON);
            left[other] += watts;
          }

          @Override
          public void addRight(int other, int hour, double watts) {
            assertThat(hour).isEqualTo(NOON);
            right[other] += watts;
          }
        });
  }

  /** The test's own list of what is nowhere else than told. */
  private void nothingBut(int... chains) {
    for (int chain = 0; chain < left.length; chain++) {
      int each = chain;
      if (java.util.Arrays.stream(chains).noneMatch(other -> other == each)) {
        assertThat(left[chain]).isZero();
        assertThat(right[chain]).isZero();
      }
    }
  }

  @Test
  void sunOnAWallStaysOnItsOutside() {
    int south = chain("South");
    put(south);
    assertThat(left[south])
        .isPositive()
        .isCloseTo(sun.absorbed(south, NOON) * (4 * 2.5 - 1.5), within(1e-9));
    assertThat(right[south]).isZero();
    nothingBut(south);
  }

  @Test
  void whatGlassAbsorbsIsSharedByItsFaces() {
    int glass = chain("Glass");
    put(glass);
    double inner = skeleton.pieces().get(glass).pane().orElseThrow().optics().diffuseInnerShare();
    double absorbed = 1.5 * sun.absorbed(glass, NOON);
    assertThat(left[glass]).isPositive().isCloseTo(absorbed * (1 - inner), within(1e-9));
    // The inner face of the glass keeps nothing of what comes through it.
    assertThat(right[glass]).isCloseTo(absorbed * inner, within(1e-9));
  }

  /**
   * The floor takes 0.6 of the beam first. The rest, and scattered light, goes to all sides by area
   * and what each takes: 0.6 of opaque ones, and what lets it out of the glass.
   */
  @Test
  void whatComesThroughEndsInsideButForWhatGlassLetsOut() {
    int glass = chain("Glass");
    put(glass);
    double out = skeleton.pieces().get(glass).pane().orElseThrow().optics().diffuseTransmittance();
    double opaque = 0.6 * (8.5 + 12.5 + 20);
    double weight = opaque + 1.5 * out;
    double beam = 1.5 * sun.beam(glass, NOON);
    double diffuse = 1.5 * sun.diffuse(glass, NOON);
    assertThat(beam).isPositive();
    double floor = 0.6 * beam + (0.4 * beam + diffuse) * 0.6 * 20 / weight;
    assertThat(right[chain("Floor")]).isCloseTo(floor, within(1e-9));
    double south = (0.4 * beam + diffuse) * 0.6 * 8.5 / weight;
    assertThat(right[chain("South")]).isCloseTo(south, within(1e-9));
    double kept = right[chain("Floor")] + right[chain("South")] + right[chain("East")];
    double let = (0.4 * beam + diffuse) * 1.5 * out / weight;
    assertThat(kept).isCloseTo(beam + diffuse - let, within(1e-9));
    assertThat(left[chain("South")] + left[chain("East")] + left[chain("Floor")]).isZero();
  }

  @Test
  void noSunIsNoHeat() {
    SunHeat dark = SunHeat.of(skeleton, SunOnShop.none(skeleton.pieces().size()));
    YearDrivers drivers = new YearDrivers(skeleton.pieces().size());
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      dark.put(chain, NOON, drivers);
    }
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      assertThat(drivers.left(chain, NOON)).isZero();
      assertThat(drivers.right(chain, NOON)).isZero();
    }
  }
}
