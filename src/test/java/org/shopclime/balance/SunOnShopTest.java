package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.swinging;
import static org.shopclime.balance.TestShops.wall;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Face;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Part;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.FaceSun;
import org.shopclime.sun.OverhangShade;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.Shading;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;

/** Sun on faces, against the sun's own classes at the middle of an hour. */
class SunOnShopTest {

  private static SunOnShop sun(Face... faces) {
    Skeleton skeleton =
        SkeletonMaker.of(
            shop(room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, faces)), Season.COOLING);
    return SunOnShop.clear(skeleton.pieces(), swinging(), 0.2);
  }

  private static FaceSun on(double tilt, double azimuth, int hour) {
    SunAngles sun = SunPosition.atStandardTime(2021, 202, hour - 0.5, -6, 31, -90, 0);
    ClearSky sky = BirdClearSky.at(sun.altitudeDeg(), 202, TestShops.PRESSURE, 0.3, 4, 0.1, 0.2);
    return PerezSky.on(tilt, azimuth, sun, sky.directNormal(), sky.diffuseHorizontal(), 202, 0.2);
  }

  private static Face shaded(Face face, double depth, double tree) {
    return new Face(
        face.name(),
        face.part(),
        face.behind(),
        face.azimuth(),
        face.tilt(),
        face.width(),
        face.height(),
        0,
        face.build(),
        face.absorptance(),
        0.9,
        0.9,
        face.windows(),
        List.of(),
        Optional.of(new Overhang(depth, 0)),
        tree);
  }

  @Test
  void facesTakeInTheirShare() {
    SunOnShop sun =
        sun(
            wall("West", 270, 4, 2.5, insulation(5)),
            TestShops.outside(
                face("Roof", Part.ROOF, "outdoors", 0, 0, 4, 4, insulation(5)), 0.3, 0.9),
            face("Floor", Part.FLOOR, "ground", 0, 180, 4, 4, TestShops.slab(8)));
    for (int hour : new int[] {8, 12, 17}) {
      FaceSun west = on(90, 270, hour);
      FaceSun roof = on(0, 0, hour);
      assertThat(sun.absorbed(0, hour - 1))
          .isCloseTo(0.6 * (west.beam() + west.sky() + west.ground()), within(1e-6));
      assertThat(sun.absorbed(1, hour - 1))
          .isCloseTo(0.3 * (roof.beam() + roof.sky() + roof.ground()), within(1e-6));
      assertThat(sun.absorbed(2, hour - 1)).as("on the ground").isZero();
      assertThat(sun.beam(0, hour - 1)).isZero();
    }
    assertThat(sun.absorbed(0, 2)).as("at night").isZero();
    assertThat(sun.absorbed(0, 16)).isGreaterThan(3 * sun.absorbed(0, 8));
  }

  /** At noon an eave of 2.5 m keeps a south wall in shade but for its ends: the sun is 79° high. */
  @Test
  void deepEaveLeavesSkyAndGround() {
    Face south = wall("South", 180, 4, 2.5, insulation(5));
    SunOnShop sun = sun(shaded(south, 2.5, 1), shaded(south, 0, 0.4));
    FaceSun noon = on(90, 180, 12);
    double scattered = noon.sky() + noon.ground();
    Shading eave = Shading.overhang(4, 2.5, 2.5, 0);
    double left =
        (noon.sky() - noon.around()) * OverhangShade.skyFraction(eave)
            + noon.ground() * OverhangShade.groundFraction(eave);
    assertThat(noon.beam()).isGreaterThan(100);
    assertThat(sun.absorbed(0, 11))
        .isBetween(0.6 * left, 0.6 * (left + 0.1 * (noon.beam() + noon.around())));
    assertThat(sun.absorbed(1, 11))
        .as("a tree lets 40 % of the direct sun through")
        .isCloseTo(0.6 * (scattered + 0.4 * noon.beam()), withinPercentage(0.1));
  }

  /** An eave does nothing for the roof it belongs to. */
  @Test
  void eaveDoesNotShadeSlopes() {
    Face roof = face("Roof", Part.ROOF, "outdoors", 180, 20, 4, 4, insulation(5));
    SunOnShop sun = sun(roof, shaded(roof, 2, 1));
    assertThat(sun.absorbed(1, 11)).isEqualTo(sun.absorbed(0, 11));
  }

  @Test
  void noSunAtAll() {
    SunOnShop none = SunOnShop.none(2);
    assertThat(none.absorbed(1, 11) + none.beam(0, 11) + none.diffuse(1, 11)).isZero();
  }

  /** What passes a window and what stays in it, by its optics. */
  @Test
  void glassByItsAngle() {
    Face west =
        wall("West", 270, 4, 2.5, insulation(5))
            .withWindows(List.of(TestShops.window("Window", 2, 1, 2.8, 0.6)));
    Skeleton skeleton =
        SkeletonMaker.of(shop(room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, west)), Season.COOLING);
    SunOnShop sun = SunOnShop.clear(skeleton.pieces(), swinging(), 0.2);
    Piece.Pane pane = skeleton.pieces().get(1).pane().orElseThrow();
    FaceSun face = on(90, 270, 17);
    assertThat(sun.beam(1, 16))
        .isCloseTo(face.beam() * pane.optics().transmittance(face.incidenceDeg()), within(1e-6));
    assertThat(sun.diffuse(1, 16))
        .isCloseTo(
            (face.sky() + face.ground()) * pane.optics().diffuseTransmittance(), within(1e-6));
    assertThat(sun.absorbed(1, 16))
        .isCloseTo(
            face.beam() * pane.optics().absorptance(face.incidenceDeg())
                + (face.sky() + face.ground()) * pane.optics().diffuseAbsorptance(),
            within(1e-6));
    assertThat(sun.absorbedInside(1, 16)).isCloseTo(sun.absorbed(1, 16) / 2, within(1e-9));
  }
}
