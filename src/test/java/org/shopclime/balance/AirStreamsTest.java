package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.fan;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.HotDay;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shelter;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/** Air flows by pencil; the room has 576 ft² by 9 ft, 146.8 m³. */
class AirStreamsTest {

  private static final double OUTDOORS = celsius(100);
  private static final double DENSITY =
      MoistAir.dryAirDensity(OUTDOORS, TestShops.wished(), TestShops.PRESSURE);
  private static final double VOLUME = 24 * 24 * 9 * Math.pow(TestShops.FOOT, 3);
  private static final int MORNING = 9 * 12;

  private static Room room(Leakage leakage, Fan... fans) {
    return box("Shop", RoomUse.COOLED, insulation(13), insulation(30))
        .withLeakage(leakage)
        .withFans(List.of(fans));
  }

  private static Leakage changes(double changes) {
    return new Leakage.AirChanges(Span.known(changes));
  }

  private static ShopModel model(Room room, double wind) {
    return dark(shop(room), constant(OUTDOORS, wind));
  }

  /** Volume flow, m³/s, of the streams at 9:00. */
  private static double total(ShopModel model) {
    return model.streams().total(0, WISHED, DayKind.WORKING, MORNING, 12) / DENSITY;
  }

  private static double line(ShopModel model, String name, int slot, int slots) {
    double[] flows = new double[model.components().size()];
    Arrays.fill(flows, 99);
    model.streams().split(0, WISHED, DayKind.WORKING, slot, slots, flows);
    return model.components().stream()
            .filter(c -> c.name().equals(name))
            .mapToDouble(c -> flows[c.index()])
            .findFirst()
            .orElseThrow()
        / DENSITY;
  }

  private static double line(ShopModel model, String name) {
    return line(model, name, MORNING, 12);
  }

  @Test
  void airChangesWhateverTheWeather() {
    assertThat(total(model(room(changes(0.5)), 0))).isCloseTo(0.5 * VOLUME / 3600, within(1e-12));
    assertThat(total(model(room(changes(0.5)), 9))).isCloseTo(0.5 * VOLUME / 3600, within(1e-12));
  }

  /**
   * 100 cm² at 4 Pa, height 9 ft (2.743 m, 1.0973 storeys), shelter class 4 wind coefficient
   * 0.000104 (typical shelter is class {@code Shelter.TYPICAL}): Cs = 0.000145 x 1.0973, dT = 12.22
   * K.
   */
  @Test
  void leakageAreaByStackAndWind() {
    Leakage area = new Leakage.Area(Span.known(0.01));
    double stack = 0.000145 * 1.0973 * 22 / 1.8;
    assertThat(total(model(room(area), 0)))
        .isCloseTo(100 / 1000.0 * Math.sqrt(stack), withinPercentage(0.1));
    double shelter =
        new double[] {0.000319, 0.000246, 0.000174, 0.000104, 0.000032}
            [Shelter.TYPICAL.shelterClass() - 1];
    double wind = shelter * Math.pow(1.0973, 0.4) * 16;
    assertThat(total(model(room(area), 4)))
        .isCloseTo(100 / 1000.0 * Math.sqrt(stack + wind), withinPercentage(0.1));
  }

  /** 10 air changes at 50 Pa are 0.4078 m³/s; at 4 Pa by the power 0.65, through √(2 x 4 / 1.2). */
  @Test
  void blowerDoorAsItsLeakageArea() {
    double at50 = 10 * VOLUME / 3600;
    double area = at50 * Math.pow(4 / 50.0, 0.65) / Math.sqrt(2 * 4 / 1.2);
    Leakage byDoor = new Leakage.BlowerDoor(Span.known(10));
    Leakage byArea = new Leakage.Area(Span.known(area));
    assertThat(total(model(room(byDoor), 3)))
        .isCloseTo(total(model(room(byArea), 3)), withinPercentage(1));
  }

  /** A leak of 0.03 and an exhaust fan of 0.04 make 0.05 m³/s: the fan's line is 0.02. */
  @Test
  void exhaustFanAndLeaksCombineAsRootOfSquares() {
    Leakage leak = changes(0.03 * 3600 / VOLUME);
    ShopModel out = model(room(leak, fan("Fan", FanWay.OUT, 0.04, "always")), 0);
    assertThat(total(out)).isCloseTo(0.05, within(1e-12));
    assertThat(line(out, "Leakage")).isCloseTo(0.03, within(1e-12));
    assertThat(line(out, "Fan")).isCloseTo(0.02, within(1e-12));
    ShopModel in = model(room(leak, fan("Fan", FanWay.IN, 0.04, "always")), 0);
    assertThat(total(in)).isCloseTo(0.05, within(1e-12));
  }

  /** In 0.04 and out 0.06: 0.04 is balanced, 0.02 unbalanced: 0.04 + √(0.015² + 0.02²) = 0.065. */
  @Test
  void fansBothWaysBalanceWhatTheyHaveInCommon() {
    Leakage leak = changes(0.015 * 3600 / VOLUME);
    ShopModel both =
        model(
            room(
                leak,
                fan("In", FanWay.IN, 0.04, "always"),
                fan("Out", FanWay.OUT, 0.06, "always"),
                fan("Exchanger", FanWay.BALANCED, 0.01, "always")),
            0);
    assertThat(total(both)).isCloseTo(0.065 + 0.01, within(1e-12));
    assertThat(line(both, "Exchanger")).isCloseTo(0.01, within(1e-12));
    assertThat(line(both, "In")).isCloseTo(0.4 * 0.05, within(1e-12));
    assertThat(line(both, "Out")).isCloseTo(0.6 * 0.05, within(1e-12));
    assertThat(line(both, "Leakage")).isCloseTo(0.015, within(1e-12));
  }

  /**
   * A fan of 0.04 that runs half the hour over a leak of 0.03: half of 0.02, not √(.03² + .02²).
   */
  @Test
  void fanThatRunsHalfTheHour() {
    Leakage leak = changes(0.03 * 3600 / VOLUME);
    ShopModel half = model(room(leak, fan("Fan", FanWay.OUT, 0.04, "daily 9:30-10:00")), 0);
    assertThat(line(half, "Fan")).isCloseTo(0.01, within(1e-12));
    assertThat(total(half)).isCloseTo(0.04, within(1e-12));
    assertThat(line(half, "Fan", MORNING, 6)).isZero();
    assertThat(line(half, "Fan", MORNING + 6, 1)).isCloseTo(0.02, within(1e-12));
    assertThat(half.streams().total(0, WISHED, DayKind.IDLE, MORNING + 6, 1) / DENSITY)
        .as("a daily fan runs on idle days")
        .isCloseTo(0.05, within(1e-12));
  }

  /**
   * A door of 9 x 7 ft open 2 minutes an hour: Gosney and Olama's flow by hand (see {@code
   * DoorExchange}); air of 10.3 g/kg by the gas law.
   */
  @Test
  void openDoorByPencil() {
    double width = 9 * TestShops.FOOT;
    double height = 7 * TestShops.FOOT;
    Room room = room(changes(0));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(3, faces.get(3).withDoors(List.of(TestShops.door("Door", width, height, 120))));
    ShopModel model = model(room.withFaces(faces), 0);
    double light = 1.0103 * 101_325 / (287.042 * 310.93 * 1.01656);
    double dense = 1.0103 * 101_325 / (287.042 * 298.71 * 1.01656);
    double factor = Math.pow(2 / (1 + Math.cbrt(dense / light)), 1.5);
    double each =
        0.68
            * 0.221
            * width
            * height
            * Math.sqrt(1 - light / dense)
            * Math.sqrt(9.80665 * height)
            * factor
            * dense
            / light;
    assertThat(line(model, "Door open")).isCloseTo(each * 2 / 60, withinPercentage(0.5));
    assertThat(line(model, "Door open", MORNING, 1))
        .as("for real in the first five minutes")
        .isCloseTo(each * 2 / 5, withinPercentage(0.5));
    assertThat(line(model, "Door open", MORNING + 1, 1)).isZero();
    assertThat(line(model, "Door open", 0, 12)).as("at night").isZero();
    assertThat(total(model)).isCloseTo(each * 2 / 60, withinPercentage(0.5));
  }

  /**
   * Warren's 0.025 A U through 9 x 7 ft, open 2 minutes an hour, in a wind of 40 m/s at the
   * station: room of 9 ft, 1.0973 storeys, so that the wind coefficient is that of one storey times
   * 1.0973 to the 0.4th; root of typical shelter's over none. In a breeze of 1 m/s temperature
   * moves more.
   */
  @Test
  void windMovesAirThroughAnOpenDoor() {
    double width = 9 * TestShops.FOOT;
    double height = 7 * TestShops.FOOT;
    Room room = room(changes(0));
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(3, faces.get(3).withDoors(List.of(TestShops.door("Door", width, height, 120))));
    Room open = room.withFaces(faces);
    double shelter =
        new double[] {0.000319, 0.000246, 0.000174, 0.000104, 0.000032}
                [Shelter.TYPICAL.shelterClass() - 1]
            / 0.000319
            * Math.pow(1.0973, 0.4);
    double byWind = 0.025 * width * height * 40 * Math.sqrt(shelter) * 2 / 60;
    assertThat(line(model(open, 40), "Door open")).isCloseTo(byWind, withinPercentage(0.1));
    assertThat(line(model(open, 1), "Door open"))
        .isEqualTo(line(model(open, 0), "Door open"))
        .isLessThan(byWind);
  }

  /** Cracks round doors count only where the owner judged by looking; both ways grow with doors. */
  @Test
  void cracksCountWithTheGradeOnly() {
    assertThat(cracks(new Leakage.Tightness(Leakage.Grade.AVERAGE))).isPositive();
    assertThat(cracks(new Leakage.Area(Span.known(0.01)))).isEqualTo(0);
    assertThat(cracks(changes(1))).isEqualTo(0);
    ShopModel unknown = model(room(new Leakage.Tightness(Leakage.Grade.UNKNOWN)), 3);
    ShopModel leaky = model(room(new Leakage.Tightness(Leakage.Grade.LEAKY)), 3);
    assertThat(total(unknown)).as("nobody knows: likely leaky").isEqualTo(total(leaky));
    ShopModel tight = model(room(new Leakage.Tightness(Leakage.Grade.TIGHT)), 3);
    assertThat(total(tight)).isLessThan(total(leaky) / 2);
  }

  private static double cracks(Leakage leakage) {
    Room room = room(leakage);
    List<Face> faces = new ArrayList<>(room.faces());
    faces.set(3, faces.get(3).withDoors(List.of(TestShops.door("Door", 0.5, 2, 0))));
    return total(model(room.withFaces(faces), 3)) - total(model(room, 3));
  }

  /** Parts add up to the whole in any shop, room, hour and slot. */
  @Property(tries = 30)
  void sharesSumToTheTotal(
      @ForAll @LongRange(min = 0, max = 100_000) long lot,
      @ForAll @IntRange(min = 0, max = 23) int hour,
      @ForAll @DoubleRange(min = 10, max = 60) double celsius) {
    Shop shop = new RandomCase(lot).shop();
    HotDay day = TestShops.swinging();
    Skeleton skeleton = SkeletonMaker.of(shop, Season.COOLING);
    AirStreams streams = new AirStreams(skeleton, day, shop.place(), new Week(shop, day.date()));
    for (DayKind kind : DayKind.values()) {
      for (int slots : new int[] {1, 3, 12}) {
        for (int room = 0; room < skeleton.rooms().size(); room++) {
          double[] flows = new double[skeleton.components().size()];
          streams.split(room, celsius, kind, hour * 12, slots, flows);
          double total = streams.total(room, celsius, kind, hour * 12, slots);
          assertThat(Arrays.stream(flows).sum()).isCloseTo(total, within(1e-12 * (1 + total)));
        }
      }
    }
  }
}
