package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.load.SteadyShopTest.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.Profile;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Face;
import org.shopclime.shop.Glass;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Window;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.FaceSun;
import org.shopclime.sun.GlassOptics;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;

/** The line of a window: conduction, and sun by the solar heat gain coefficient. */
class WindowLineTest {

  private static final double AREA = 4.5;
  private static final double U = 2.8;
  private static final double SHGC = 0.6;

  private static Room glazed(Window window, double drywall) {
    Room room = box("Shop", RoomUse.COOLED, insulation(500), insulation(500));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(3, faces.get(3).withWindows(List.of(window)));
    return TestShops.withContents(room.withFaces(faces), 0, 0, drywall);
  }

  private static Window window(double inner, double outer) {
    return new Window(
        "Window", 3, 1.5, 0, 0.6, new Glass("glass", U, SHGC), inner, outer, Optional.empty());
  }

  private static Profile dim(Room room, double celsius) {
    return line(PeakLoad.of(dark(shop(room), constant(celsius, 2))).rooms().get(0), "Window")
        .sensible();
  }

  /**
   * Between 100 and 78 °F outdoors, in a room full of things as warm as its air: R of the glass by
   * the rating films of its label, then films of 3.2 + 5.3 inside and 17.0 + 5.8 W/(m²·K) outside.
   */
  @Test
  void conductionByHand() {
    Room room = glazed(window(1, 1), 400);
    double difference = dim(room, celsius(100)).at(12) - dim(room, celsius(78)).at(12);
    double glass = 1 / U - GlassOptics.ratingInsideFilm(U) - GlassOptics.ratingOutsideFilm(U);
    double hand = AREA * 22 / 1.8 / (glass + 1 / (3.21 + 5.1) + 1 / (17.0 + 5.7));
    assertThat(difference).isCloseTo(hand, withinPercentage(4));
  }

  /**
   * All day's sun, W on average, into a shop insulated so that nothing but the window lets heat
   * out: SHGC by angle times irradiance. What is absorbed inside warms the air by film and
   * radiation; a little of the light leaves again through the glass, so the line reads up to 5 %
   * less.
   */
  @Test
  void sunByHand() {
    HotDay day = constant(WISHED, 2);
    double hand = meanGain(day, 270);
    Profile sun = sunny(window(1, 1), day);
    assertThat(hand).isBetween(300.0, 600.0);
    assertThat(sun.mean()).isBetween(0.92 * hand, 1.0 * hand);
    assertThat(sun.peakHour()).as("west window").isBetween(16, 19);
  }

  private static Profile sunny(Window window, HotDay day) {
    Room room = glazed(window, 100);
    Profile with =
        line(PeakLoad.of(TestShops.sunny(shop(room), day)).rooms().get(0), "Window").sensible();
    Profile without = dim(room, WISHED);
    return Profile.of(hour -> with.at(hour) - without.at(hour));
  }

  private static double meanGain(HotDay day, double azimuth) {
    GlassOptics optics = GlassOptics.ofWindow(U, SHGC);
    double sum = 0;
    for (int hour = 1; hour <= 24; hour++) {
      SunAngles sun = SunPosition.atStandardTime(2021, 202, hour - 0.5, -6, 31, -90, 0);
      if (sun.isUp()) {
        ClearSky sky = BirdClearSky.at(sun.altitudeDeg(), 202, day.pressure(), 0.3, 4, 0.1, 0.2);
        FaceSun face =
            PerezSky.on(90, azimuth, sun, sky.directNormal(), sky.diffuseHorizontal(), 202, 0.2);
        sum += face.beam() * optics.shgc(face.incidenceDeg());
        sum += (face.sky() + face.ground()) * optics.diffuseShgc();
      }
    }
    return AREA * sum / 24;
  }

  /** A curtain and a screen that each let half through leave a quarter. */
  @Test
  void shadesMultiply() {
    HotDay day = constant(WISHED, 2);
    double bare = sunny(window(1, 1), day).mean();
    assertThat(sunny(window(0.5, 0.5), day).mean()).isCloseTo(bare / 4, withinPercentage(2));
    assertThat(sunny(window(0.5, 1), day).mean()).isCloseTo(bare / 2, withinPercentage(2));
  }

  /** A tree that lets 30 % of the direct sun through takes less than 70 % away: the sky stays. */
  @Test
  void treeHoldsBackDirectSunOnly() {
    HotDay day = constant(WISHED, 2);
    Room room = glazed(window(1, 1), 100);
    List<Face> faces = new ArrayList<>(room.faces());
    Face west = faces.get(3);
    faces.set(
        3,
        new Face(
            west.name(),
            west.part(),
            west.behind(),
            west.azimuth(),
            west.tilt(),
            west.width(),
            west.height(),
            0,
            west.build(),
            west.absorptance(),
            0.9,
            0.9,
            west.windows(),
            List.of(),
            Optional.empty(),
            0.3));
    Profile shaded =
        line(
                PeakLoad.of(TestShops.sunny(shop(room.withFaces(faces)), day)).rooms().get(0),
                "Window")
            .sensible();
    double share = (shaded.mean() - dim(room, WISHED).mean()) / sunny(window(1, 1), day).mean();
    assertThat(share).isBetween(0.45, 0.75);
  }
}
