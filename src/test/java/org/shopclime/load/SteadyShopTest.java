package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.BTUH;
import static org.shopclime.balance.TestShops.FOOT;
import static org.shopclime.balance.TestShops.R;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.concrete;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.layer;
import static org.shopclime.balance.TestShops.layers;
import static org.shopclime.balance.TestShops.outside;
import static org.shopclime.balance.TestShops.shop;

import org.junit.jupiter.api.Test;
import org.shopclime.balance.Profile;
import org.shopclime.balance.TestShops;
import org.shopclime.shop.Build;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/**
 * A shop of 24 x 24 x 9 ft, walls R-13, roof R-30 (flat), floor passing no heat, 0.5 air changes an
 * hour; 100 °F outdoors at all hours, 78 °F inside, no sun: dT = 22 °F.
 *
 * <p>By pencil with the printed films (R-0.25 outside, R-0.68 on walls and under the roof):
 *
 * <pre>
 * walls  4 x 24 x 9 ft2 = 864 ft2  x 22 / (0.25 + 13 + 0.68) = 1365 BTU/h
 * roof      24 x 24 ft2 = 576 ft2  x 22 / (0.25 + 30 + 0.92) =  407 BTU/h
 * air   0.5 x 5184 ft3 / 60 = 43.2 cfm x 1.02 x 22           =  972 BTU/h
 *                                                             -----
 *                                                              2744 BTU/h
 * </pre>
 *
 * <p>(1.10 is the factor for air of 70 °F; a cubic foot of outdoor air at 100 °F and this moisture
 * holds 0.0697 lb of dry air, 7 % less: 60 x 0.0697 x (0.240 + 0.444 x 0.0103) = 1.02.)
 *
 * <p>The printed films count radiation as if each face looked at surroundings as warm as the room's
 * air. That is so in a room full of things (here 300 m² of drywall on both sides), and there the
 * program must follow the pencil. In an empty room the faces look at each other, all of them are
 * warm, and what they radiate must leave by the convective film of walls and floor in the end: an
 * inside film of about instead of. A second calculation has one unknown, the
 * temperature of the radiant node, found from the balance of all faces; in the empty box it is 7 %
 * below the printed films for, and 40 % below for all round. There the program
 * must follow the second.
 */
class SteadyShopTest {

  private static final double OUTDOORS = celsius(100);
  private static final double DIFFERENCE = 22 / 1.8;
  private static final double SIGMA = 5.670374419e-8;
  private static final Build DRYWALL = layers(layer("gypsum board"));
  private static final double WALL = 24 * FOOT * 9 * FOOT;
  private static final double LEVEL = 24 * FOOT * 24 * FOOT;

  /** Films by the published table, without the radiation of emittance 0.9 at 20 °C, W/(m²·K). */
  private static final double INSIDE_RADIATION = 4 * 0.9 * SIGMA * Math.pow(293.15, 3);

  private static final double UPRIGHT = 1 / (0.68 * R) - INSIDE_RADIATION;
  private static final double DOWN = 1 / (0.92 * R) - INSIDE_RADIATION;
  private static final double UP = 1 / (0.61 * R) - INSIDE_RADIATION;
  private static final double OUTSIDE = 1 / (0.25 * R) - 4 * 0.9 * SIGMA * Math.pow(303.15, 3);

  /** The box with outer faces that do not radiate, so that the sky has no part in it. */
  private static Room plain(double walls, double roof) {
    Room room = box("Shop", RoomUse.COOLED, insulation(walls), insulation(roof));
    return room.withFaces(room.faces().stream().map(face -> outside(face, 0.6, 0)).toList());
  }

  @Test
  void insulatedShopAsByPencil() {
    Room room =
        TestShops.withContents(plain(13, 30), 0, 0, 300)
            .withLeakage(new Leakage.AirChanges(Span.known(0.5)));
    RoomLoad load = PeakLoad.of(dark(shop(room), constant(OUTDOORS, 0))).rooms().get(0);
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(sum(load, "North", "East", "South", "West").at(hour) / BTUH)
          .isCloseTo(1365, withinPercentage(3));
      assertThat(line(load, "Roof").sensible().at(hour) / BTUH).isCloseTo(407, withinPercentage(3));
      assertThat(line(load, "Leakage").sensible().at(hour) / BTUH)
          .isCloseTo(972, withinPercentage(3));
      assertThat(line(load, "Leakage").latent().at(hour)).isCloseTo(0, within(1e-9));
      assertThat(line(load, "Floor").sensible().at(hour)).isCloseTo(0, within(1e-6));
      assertThat(load.sensible().at(hour) / BTUH).isCloseTo(2744, withinPercentage(3));
    }
  }

  @Test
  void pencilColumnIsPrintedFilmsTimesArea() {
    RoomLoad load = PeakLoad.of(dark(shop(plain(13, 30)), constant(OUTDOORS, 0))).rooms().get(0);
    assertThat(4 * line(load, "East").pencil(12) / BTUH).isCloseTo(1365, within(1.0));
    assertThat(line(load, "Roof").pencil(12) / BTUH).isCloseTo(407, within(1.0));
    assertThat(line(load, "Roof").drive().at(12)).isCloseTo(DIFFERENCE, within(1e-9));
    assertThat(line(load, "Leakage").pencil(12)).isEqualTo(line(load, "Leakage").sensible().at(12));
  }

  @Test
  void insulatedShopAsWithOneRadiantTemperature() {
    RoomLoad load = PeakLoad.of(dark(shop(plain(13, 30)), constant(OUTDOORS, 0))).rooms().get(0);
    double right = byHand(13, 30);
    assertThat(load.sensible().at(15)).isCloseTo(right, withinPercentage(0.1));
    double printed = (1365 + 407) * BTUH;
    assertThat(printed / right).isBetween(1.05, 1.08);
  }

  @Test
  void bareShopAsWithOneRadiantTemperatureAndFarFromPrintedFilms() {
    RoomLoad load = PeakLoad.of(dark(shop(plain(0.5, 0.5)), constant(OUTDOORS, 0))).rooms().get(0);
    double right = byHand(0.5, 0.5);
    assertThat(load.sensible().at(15)).isCloseTo(right, withinPercentage(0.5));
    double printed =
        DIFFERENCE * (4 * WALL / ((0.25 + 0.5 + 0.68) * R) + LEVEL / ((0.25 + 0.5 + 0.92) * R));
    assertThat(printed / right).isBetween(1.6, 1.8);
  }

  /**
   * Four walls, a roof, and a floor that passes no heat (radiation warms it, so its film leads heat
   * upwards), each tied to the air by its convective film and to one radiant node by 4 σ T³ / ((1 -
   * ε)/ε + 1/F); T of the node from the condition that it stores nothing. F by Carroll's rule for
   * planes of these areas: F = 1 / (1 - A F / Σ A F).
   */
  private static double byHand(double walls, double roof) {
    double[] area = {WALL, WALL, WALL, WALL, LEVEL, LEVEL};
    double[] film = {UPRIGHT, UPRIGHT, UPRIGHT, UPRIGHT, DOWN, UP};
    double wall = 1 / (1 / OUTSIDE + walls * R);
    double[] conductance = {wall, wall, wall, wall, 1 / (1 / OUTSIDE + roof * R), 0};
    double[] factor = {1, 1, 1, 1, 1, 1};
    for (int round = 0; round < 100; round++) {
      double sum = 0;
      for (int i = 0; i < 6; i++) {
        sum += area[i] * factor[i];
      }
      for (int i = 0; i < 6; i++) {
        factor[i] = 0.5 * factor[i] + 0.5 / (1 - area[i] * factor[i] / sum);
      }
    }
    double star = WISHED;
    double load = 0;
    for (int round = 0; round < 20; round++) {
      double heat = 0;
      double tie = 0;
      load = 0;
      for (int i = 0; i < 6; i++) {
        double kelvin = 273.15 + star;
        double radiation = 4 * SIGMA * Math.pow(kelvin, 3) / (0.1 / 0.9 + 1 / factor[i]);
        double all = conductance[i] + film[i] + radiation;
        double without = conductance[i] * OUTDOORS + film[i] * WISHED;
        heat += area[i] * radiation * without / all;
        tie += area[i] * radiation * (1 - radiation / all);
        load += area[i] * film[i] * ((without + radiation * star) / all - WISHED);
      }
      star = heat / tie;
    }
    return load;
  }

  /**
   * With an emittance of 0.9 outside, the flat roof sees a sky that is colder than the air, by the
   * sky model named in {@code SkyTemperature}: its line is smaller, though no sun shines.
   */
  @Test
  void clearSkyCoolsRoofsMoreThanWalls() {
    Room black = box("Shop", RoomUse.COOLED, insulation(13), insulation(13));
    Room shiny = black.withFaces(black.faces().stream().map(f -> outside(f, 0.6, 0)).toList());
    RoomLoad seeing = PeakLoad.of(dark(shop(black), constant(OUTDOORS, 0))).rooms().get(0);
    RoomLoad blind = PeakLoad.of(dark(shop(shiny), constant(OUTDOORS, 0))).rooms().get(0);
    double roof = drop(seeing, blind, "Roof");
    double wall = drop(seeing, blind, "East");
    assertThat(roof).isBetween(0.1, 0.4);
    assertThat(wall).isBetween(0.03, roof / 2);
  }

  private static double drop(RoomLoad with, RoomLoad without, String name) {
    return 1 - line(with, name).sensible().at(12) / line(without, name).sensible().at(12);
  }

  /**
   * A ceiling of 576 ft² under an attic at 135 °F over a room at 78 °F, both full of things as warm
   * as their air: 57 °F x 576 ft² = 32,832; bare 1/2 in drywall about 16,000 BTU/h (R-0.45 and two
   * films, of which the hot one radiates more than the printed ), R-19 about 1,600, R-30
   * about 1,000 (common practice).
   */
  @Test
  void ceilingUnderHotAttic() {
    assertThat(ceiling(DRYWALL, 500)).isCloseTo(16_000, withinPercentage(15));
    assertThat(ceiling(insulation(19.45), 500)).isCloseTo(1_600, withinPercentage(15));
    assertThat(ceiling(insulation(30.45), 500)).isCloseTo(1_000, withinPercentage(15));
  }

  /**
   * The same under and over empty rooms, where the radiant part must warm a floor or roof first.
   */
  @Test
  void ceilingBetweenEmptyRoomsBringsLess() {
    assertThat(ceiling(DRYWALL, 0) / ceiling(DRYWALL, 500)).isBetween(0.35, 0.6);
    assertThat(ceiling(insulation(30), 0) / ceiling(insulation(30), 500)).isBetween(0.9, 0.97);
  }

  private static double ceiling(Build build, double drywall) {
    double side = 24 * FOOT;
    Room below =
        TestShops.room(
            "Shop",
            RoomUse.COOLED,
            LEVEL,
            9 * FOOT,
            WISHED,
            face("Ceiling", Part.CEILING, "Attic", 0, 0, side, side, build),
            face("Floor", Part.FLOOR, "nothing", 0, 180, side, side, concrete()));
    Room attic =
        TestShops.room(
            "Attic",
            RoomUse.COOLED,
            LEVEL,
            1,
            celsius(135),
            face("Roof", Part.ROOF, "nothing", 0, 0, side, side, concrete()));
    Shop shop =
        shop(
            TestShops.withContents(below, 0, 0, drywall),
            TestShops.withContents(attic, 0, 0, drywall));
    RoomLoad load = PeakLoad.of(dark(shop, constant(OUTDOORS, 0))).rooms().get(0);
    double heat = line(load, "from Attic").sensible().at(9);
    assertThat(load.sensible().at(9)).isCloseTo(heat, within(1e-6));
    return heat / BTUH;
  }

  static Line line(RoomLoad load, String name) {
    return load.lines().stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }

  private static Profile sum(RoomLoad load, String... names) {
    Profile sum = Profile.of(hour -> 0);
    for (String name : names) {
      sum = sum.plus(line(load, name).sensible());
    }
    return sum;
  }
}
