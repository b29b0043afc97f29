package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.concrete;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.gain;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.layer;
import static org.shopclime.balance.TestShops.layers;
import static org.shopclime.balance.TestShops.resisting;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.sunny;
import static org.shopclime.balance.TestShops.swinging;
import static org.shopclime.balance.TestShops.turned;
import static org.shopclime.load.SteadyShopTest.line;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.Profile;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Build;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Drier;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/** What must hold of any load, whatever the figures. */
class LawsTest {

  private static final Build WALL = layers(layer("OSB"), resisting(8), layer("gypsum board"));
  private static final Leakage CHANGES = new Leakage.AirChanges(Span.known(0.5));

  private static Room plain() {
    return box("Shop", RoomUse.COOLED, WALL, WALL).withLeakage(CHANGES);
  }

  private static RoomLoad load(Shop shop, HotDay day) {
    return PeakLoad.of(sunny(shop, day)).rooms().get(0);
  }

  private static RoomLoad load(Room room) {
    return load(shop(room), swinging());
  }

  /** A closed box into which only 300 W of moisture comes, and its dehumidifier. */
  private static Room damp(Drier drier) {
    return room(
            "Shop",
            RoomUse.COOLED,
            20,
            2.5,
            WISHED,
            face("Floor", Part.FLOOR, "nothing", 0, 180, 5, 4, concrete()))
        .withGains(List.of(gain("Steam", 0, 0, 300, "always")))
        .withLeakage(new Leakage.AirChanges(Span.known(0)))
        .withDehumidifier(Optional.of(drier));
  }

  /**
   * By pencil: 16.56 L a day at 1.57 L/kWh are 0.1917 g/s and 439.5 W. 300 W of moisture at 78 °F,
   * h_g = 2,501 + 1.86 x 25.56 = 2,548.5 J/g, are 0.1177 g/s, 61.4 % of it: 269.9 W of power, and
   * the 300 W less 0.1177 x 4.186 x 25.56 = 12.6 W that stay in the water: 557.3 W sensible, none
   * latent.
   */
  @Test
  void aDehumidifierTurnsMoistureIntoHeat() {
    Drier drier = new Drier(16.56 / 86_400, 1.57, 0.45);
    RoomLoad load = load(damp(drier));
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(load.latent().at(hour)).isCloseTo(0, within(1e-9));
      assertThat(load.sensible().at(hour)).isCloseTo(557.3, within(0.2));
    }
    Line line = load.lines().get(load.lines().size() - 1);
    assertThat(line.kind()).isEqualTo(ComponentKind.DEHUMIDIFIER);
    assertThat(line.latent().at(12)).isCloseTo(-300, within(1e-9));
    double sensible = load.lines().stream().mapToDouble(each -> each.sensible().at(12)).sum();
    double latent = load.lines().stream().mapToDouble(each -> each.latent().at(12)).sum();
    assertThat(sensible).isCloseTo(load.sensible().at(12), within(1e-9 * 557));
    assertThat(latent).isCloseTo(load.latent().at(12), within(1e-9 * 557));
  }

  /** One too small runs all the time; one set above the wish stands. */
  @Test
  void aDehumidifierTakesNoMoreThanItsLabelAndOnlyAboveItsHumidity() {
    RoomLoad small = load(damp(new Drier(4.14 / 86_400, 1.57, 0.5)));
    assertThat(small.latent().at(7)).isCloseTo(300 - 4.14 / 86.4 * 2548.5, within(0.1));
    RoomLoad stands = load(damp(new Drier(16.56 / 86_400, 1.57, 0.6)));
    assertThat(stands.latent().at(7)).isCloseTo(300, within(1e-9));
    assertThat(stands.sensible().at(7)).isCloseTo(0, within(1e-6));
  }

  /** All of a faces' heat stays: a constant gain is its load at every hour (handbook, G-21). */
  @Test
  void constantGainIsItsLoadWhereNothingLeaves() {
    Room room =
        room(
                "Shop",
                RoomUse.COOLED,
                20,
                2.5,
                WISHED,
                face("Floor", Part.FLOOR, "nothing", 0, 180, 5, 4, concrete()),
                face("Lid", Part.CEILING, "nothing", 0, 0, 5, 4, WALL),
                face("Wall", Part.WALL, "nothing", 0, 90, 5, 2.5, WALL))
            .withGains(
                List.of(
                    gain("Lamp", 500, 1, 0, "always"),
                    gain("Heater", 300, 0, 0, "always"),
                    gain("Kettle", 100, 0.3, 50, "always")));
    RoomLoad load = load(TestShops.withContents(room, 300, 100, 10));
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(line(load, "Lamp").sensible().at(hour)).isCloseTo(500, within(0.01));
      assertThat(line(load, "Heater").sensible().at(hour)).isCloseTo(300, within(0.01));
      assertThat(line(load, "Kettle").sensible().at(hour)).isCloseTo(100, within(0.01));
      assertThat(line(load, "Kettle").latent().at(hour)).isCloseTo(50, within(1e-9));
      assertThat(load.sensible().at(hour)).isCloseTo(900, within(0.01));
      assertThat(load.latent().at(hour)).isCloseTo(50, within(1e-9));
    }
  }

  /** In a real shop part of the radiant heat leaves through the walls; convective heat does not. */
  @Test
  void partOfRadiantGainLeavesThroughWalls() {
    RoomLoad load =
        load(
            plain()
                .withGains(
                    List.of(gain("Lamp", 500, 1, 0, "always"), gain("Air", 300, 0, 0, "always"))));
    assertThat(line(load, "Air").sensible().at(15)).isCloseTo(300, within(0.01));
    assertThat(line(load, "Lamp").sensible().at(15)).isBetween(400.0, 497.0);
    assertThat(line(load, "Lamp").sensible().at(3))
        .isCloseTo(line(load, "Lamp").sensible().at(15), within(0.01));
  }

  /** A gain of eight hours comes later and flatter, and its day's sum is kept in a tight box. */
  @Test
  void radiantGainIsStoredAndGivenBack() {
    Room room =
        room(
                "Shop",
                RoomUse.COOLED,
                20,
                2.5,
                WISHED,
                face("Floor", Part.FLOOR, "nothing", 0, 180, 5, 4, concrete()),
                face("Lid", Part.CEILING, "nothing", 0, 0, 5, 4, concrete()))
            .withGains(List.of(gain("Lamp", 500, 1, 0, "work")));
    Profile heat = line(load(room), "Lamp").sensible();
    assertThat(heat.mean()).isCloseTo(500 * 9 / 24.0, withinPercentage(0.01));
    assertThat(heat.peakHour()).isEqualTo(17);
    assertThat(heat.peak()).isBetween(200.0, 450.0);
    assertThat(heat.at(23)).isBetween(20.0, heat.at(18));
    assertThat(heat.at(9)).isLessThan(heat.at(10));
  }

  @Test
  void moreInsulationLowersItsLine() {
    double before = Double.POSITIVE_INFINITY;
    for (double r : new double[] {1, 4, 13, 30}) {
      Room room = box("Shop", RoomUse.COOLED, insulation(r), insulation(13));
      RoomLoad load = load(room);
      double now = line(load, "West").sensible().at(16);
      assertThat(now).isLessThan(0.75 * before).isPositive();
      before = now;
    }
  }

  @Test
  void cuttingAFaceInTwoChangesNothing() {
    Room whole = plain();
    List<Face> faces = new ArrayList<>(whole.faces());
    Face south = faces.remove(2);
    faces.add(turned(south, "South a", 180, 0.4 * south.width()));
    faces.add(turned(south, "South b", 180, 0.6 * south.width()));
    RoomLoad one = load(whole);
    RoomLoad two = load(whole.withFaces(faces));
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(two.sensible().at(hour))
          .isCloseTo(one.sensible().at(hour), within(1e-9 * one.sensible().peak()));
      assertThat(
              line(two, "South a").sensible().at(hour) + line(two, "South b").sensible().at(hour))
          .isCloseTo(line(one, "South").sensible().at(hour), within(1e-9 * one.sensible().peak()));
      assertThat(line(two, "South a").sensible().at(hour) * 1.5)
          .isCloseTo(
              line(two, "South b").sensible().at(hour), within(1e-9 * one.sensible().peak()));
    }
  }

  /**
   * On 13 June the sun crosses the meridian at noon by the clock (equation of time 0.1 min): what
   * the east wall takes in by 9:30 the west wall takes in at 14:30.
   */
  @Test
  void mirroredShopMirrorsItsLines() {
    Room room = box("Shop", RoomUse.COOLED, insulation(5), insulation(5));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(5, face("Floor", Part.FLOOR, "nothing", 0, 180, 7, 7, insulation(5)));
    List<Face> mirrored = new ArrayList<>(faces);
    Face dark = TestShops.outside(faces.get(1), 0.95, 0.9);
    faces.set(1, dark);
    mirrored.set(3, turned(dark, "West", 270, dark.width()));
    HotDay day = TestShops.on(constant(celsius(90), 2), LocalDate.of(2021, 6, 13));
    RoomLoad east = load(shop(room.withFaces(faces)), day);
    RoomLoad west = load(shop(room.withFaces(mirrored)), day);
    double peak = line(east, "East").sensible().peak();
    assertThat(peak).isGreaterThan(2 * line(east, "East").sensible().at(24));
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(line(west, "West").sensible().at(25 - hour))
          .as("hour %d", hour)
          .isCloseTo(line(east, "East").sensible().at(hour), within(0.01 * peak));
      assertThat(line(west, "East").sensible().at(25 - hour))
          .isCloseTo(line(east, "West").sensible().at(hour), within(0.01 * peak));
    }
  }

  /** 78 °F outside and in, faces that see no sky, nothing on: no load at any hour. */
  @Test
  void roomAtOutdoorTemperatureHasNoLoad() {
    Room room = plain();
    Room blind =
        room.withFaces(room.faces().stream().map(f -> TestShops.outside(f, 0, 0)).toList());
    ShopLoad load = PeakLoad.of(dark(shop(blind), constant(WISHED, 3)));
    RoomLoad only = load.rooms().get(0);
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(only.sensible().at(hour)).isCloseTo(0, within(1e-6));
      assertThat(only.latent().at(hour)).isCloseTo(0, within(1e-9));
      for (Line line : only.lines()) {
        assertThat(line.sensible().at(hour)).isCloseTo(0, within(1e-6));
        assertThat(line.pencil(hour)).isCloseTo(0, within(1e-6));
      }
    }
    assertThat(load.total().at(3)).isCloseTo(0, within(1e-5));
  }

  /** On a cool day every line of the shell is negative, and so is the total. */
  @Test
  void negativeLoadsAreNotClipped() {
    RoomLoad load =
        PeakLoad.of(dark(shop(plain()), constant(celsius(50), 3, 0.004))).rooms().get(0);
    assertThat(line(load, "North").sensible().at(12)).isNegative();
    assertThat(line(load, "Roof").sensible().at(12)).isNegative();
    assertThat(line(load, "Leakage").sensible().at(12)).isNegative();
    assertThat(line(load, "Leakage").latent().at(12)).isNegative();
    assertThat(load.sensible().at(12)).isNegative();
    assertThat(load.latent().at(12)).isNegative();
    assertThat(line(load, "North").pencil(12)).isNegative();
  }

  /**
   * 73.4 L/s of outdoor air at 100 °F and 0.016 against 78 °F and 50 % (0.0103): per kg 22/1.8 K x
   * (1006 + 0.0103 x 1860) and 0.0057 x (2501 + 1.86 x 37.8) kJ.
   */
  @Test
  void airBringsHeatAndWater() {
    Leakage one = new Leakage.AirChanges(Span.known(1.8));
    HotDay humid = constant(celsius(100), 0, 0.016);
    RoomLoad load = PeakLoad.of(dark(shop(plain().withLeakage(one)), humid)).rooms().get(0);
    double mass = 146.8 * 1.8 / 3600 * 101_325 / (287.042 * 310.93 * (1 + 1.6078 * 0.016));
    assertThat(line(load, "Leakage").sensible().at(5))
        .isCloseTo(mass * 22 / 1.8 * (1006 + 19.2), withinPercentage(0.2));
    assertThat(line(load, "Leakage").latent().at(5))
        .isCloseTo(
            mass * (0.016 - TestShops.wished()) * (2501e3 + 1860 * 37.8), withinPercentage(0.2));
    assertThat(line(load, "Leakage").drive().at(5)).isCloseTo(22 / 1.8, within(1e-9));
    RoomLoad dry =
        PeakLoad.of(dark(shop(plain().withLeakage(one)), constant(celsius(100), 0, 0.006)))
            .rooms()
            .get(0);
    assertThat(line(dry, "Leakage").latent().at(5)).as("dry air takes water out").isNegative();
    assertThat(line(dry, "Leakage").sensible().at(5)).isPositive();
  }

  /** Twice the floor on the same walls: the floor's line doubles nearly, the walls' hardly move. */
  @Test
  void lineGoesWithItsArea() {
    Room small = plain();
    List<Face> faces = new ArrayList<>(small.faces());
    faces.set(3, turned(faces.get(3), "West", 270, 2 * faces.get(3).width()));
    RoomLoad one = load(small);
    RoomLoad two = load(small.withFaces(faces));
    assertThat(line(two, "West").sensible().at(16) / line(one, "West").sensible().at(16))
        .isBetween(1.9, 2.1);
    assertThat(line(two, "West").pencil(16) / line(one, "West").pencil(16))
        .isCloseTo(2, within(1e-9));
  }

  /** On the summer clock work lies an hour earlier by the sun; the walls do not care. */
  @Test
  void clocksMoveWorkButNotTheSun() {
    Room room = plain().withGains(List.of(gain("Air", 800, 0, 30, "work")));
    RoomLoad standard = load(room);
    RoomLoad daylight =
        load(shop(room).withWork(TestShops.work("Mon-Fri 8:00-17:00", Clock.DAYLIGHT)), swinging());
    for (int hour = 2; hour <= 24; hour++) {
      assertThat(line(daylight, "Air").sensible().at(hour - 1))
          .isCloseTo(line(standard, "Air").sensible().at(hour), within(0.01));
      assertThat(line(daylight, "Air").latent().at(hour - 1))
          .isEqualTo(line(standard, "Air").latent().at(hour));
      assertThat(line(daylight, "West").sensible().at(hour))
          .isCloseTo(line(standard, "West").sensible().at(hour), within(0.01));
    }
    assertThat(line(daylight, "Air").sensible().at(8)).isCloseTo(800, within(0.01));
    assertThat(line(standard, "Air").sensible().at(8)).isCloseTo(0, within(0.01));
  }

  @Test
  void totalsAndPeakHourOverAllRooms() {
    Room one = plain();
    Room other =
        room(
                "Office",
                RoomUse.COOLED,
                20,
                2.5,
                celsius(75),
                TestShops.wall("Office west", 270, 4, 2.5, WALL))
            .withGains(List.of(gain("Radio", 20, 0.3, 10, "always")));
    ShopLoad load = PeakLoad.of(sunny(shop(one, other), swinging()));
    assertThat(load.rooms()).extracting(RoomLoad::name).containsExactly("Shop", "Office");
    assertThat(load.rooms()).extracting(RoomLoad::room).containsExactly(0, 1);
    for (int hour = 1; hour <= 24; hour++) {
      double sum = 0;
      for (RoomLoad room : load.rooms()) {
        sum += room.sensible().at(hour) + room.latent().at(hour);
      }
      assertThat(load.total().at(hour)).isCloseTo(sum, within(1e-9));
      assertThat(load.total().at(hour)).isLessThanOrEqualTo(load.total().at(load.peakHour()));
    }
    assertThat(load.airTemperature().get(0).at(4)).isCloseTo(WISHED, within(1e-9));
    assertThat(load.airTemperature().get(1).at(4)).isCloseTo(celsius(75), within(1e-9));
    assertThat(load.rooms().get(1).lines())
        .extracting(Line::name)
        .containsExactly("Office west", "Leakage", "Radio", "from Shop");
    assertThat(load.rooms().get(1).lines())
        .extracting(Line::kind)
        .containsExactly(
            ComponentKind.WALL,
            ComponentKind.LEAKAGE,
            ComponentKind.OTHER,
            ComponentKind.FROM_ROOM);
    assertThat(line(load.rooms().get(1), "from Shop").latent().at(5)).isZero();
    assertThat(line(load.rooms().get(0), "from Office").drive().at(5))
        .isCloseTo(-3 / 1.8, within(1e-9));
  }
}
