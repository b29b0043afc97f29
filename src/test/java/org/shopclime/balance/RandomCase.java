package org.shopclime.balance;

import static org.shopclime.balance.TestShops.FOOT;
import static org.shopclime.balance.TestShops.WISHED;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Member;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/**
 * Small shops drawn by lot: a work room with windows, doors, fans, gains and an oven, often a
 * second cooled room, an attic above one or both, a loft above the attic, a closet inside.
 */
public final class RandomCase {

  private static final List<String> WHEN =
      List.of("work", "always", "daily 7:30-9:10", "Mon-Fri 0:00-2:15, 9:00-10:30 40 %", "never");

  private final Random random;

  /**
   * A lot.
   *
   * @param seed which one
   */
  public RandomCase(long seed) {
    random = new Random(seed);
  }

  /** A shop. */
  public Shop shop() {
    List<Room> rooms = new ArrayList<>();
    boolean second = random.nextInt(3) > 0;
    boolean attic = random.nextInt(3) > 0;
    boolean loft = attic && random.nextBoolean();
    boolean closet = random.nextBoolean();
    rooms.add(work(second, attic, closet));
    if (second) {
      rooms.add(office(attic && random.nextBoolean()));
    }
    if (attic) {
      rooms.add(attic(loft));
    }
    if (loft) {
      rooms.add(lofty());
    }
    if (closet) {
      rooms.add(closet());
    }
    return TestShops.shop(rooms.toArray(new Room[0]))
        .withWork(
            TestShops.work("Mon-Fri 8:00-12:00, 12:30-17:15", org.shopclime.shop.Clock.DAYLIGHT));
  }

  /** A day: swinging, with wind. */
  public HotDay day() {
    return TestShops.swinging();
  }

  private Room work(boolean second, boolean attic, boolean closet) {
    double side = meters(10, 30);
    List<Face> faces = new ArrayList<>();
    faces.add(
        TestShops.wall("North", 0, side, 2.7, build())
            .withDoors(List.of(TestShops.door("Big door", 2.5, 2.2, 900 * random.nextDouble()))));
    faces.add(
        TestShops.wall("South", 180, side, 2.7, build())
            .withWindows(List.of(TestShops.window("Window", 1 + random.nextDouble(), 1, 4, 0.5))));
    faces.add(TestShops.wall("West", 270, side, 2.7, build()));
    faces.add(
        second
            ? TestShops.face("To office", Part.WALL, "Office", 90, 90, side, 2.7, build())
            : TestShops.wall("East", 90, side, 2.7, build()));
    faces.add(
        attic
            ? TestShops.face("Ceiling", Part.CEILING, "Attic", 0, 0, side, side, build())
            : TestShops.face("Roof", Part.ROOF, "outdoors", 200, 20, side, side, build()));
    faces.add(
        TestShops.face("Slab", Part.FLOOR, "ground", 0, 180, side, side, TestShops.slab(2 * side)));
    if (closet) {
      faces.add(TestShops.face("Closet wall", Part.WALL, "Closet", 90, 90, 2, 2, build()));
    }
    Room room =
        TestShops.room(
            "Shop", RoomUse.COOLED, side * side, 2.7, WISHED, faces.toArray(new Face[0]));
    return TestShops.withContents(room, 200, 100, 5)
        .withLeakage(new Leakage.Tightness(Leakage.Grade.LEAKY))
        .withFans(fans())
        .withGains(
            List.of(
                new Gain.People(
                    "People", 1, Gain.Activity.MODERATE_WORK, TestShops.when(any(WHEN))),
                TestShops.gain("Steam", 400, 0.3, 200, any(WHEN)),
                oven()));
  }

  private Gain oven() {
    Gain.Oven held =
        new Gain.Oven(
            "Oven", 1, 1, 1.2, Span.known(1.4), 200, 6000, 20, 0.3, TestShops.when(any(WHEN)));
    return random.nextBoolean()
        ? held
        : held.withBatches(
            Optional.of(
                new OvenBatches(
                    Optional.of(1.0 + random.nextInt(4)), 20, 0.003, 1200, 60, 0.005, 0.7)));
  }

  private List<Fan> fans() {
    List<Fan> fans = new ArrayList<>();
    for (FanWay way : FanWay.values()) {
      if (random.nextInt(3) > 0) {
        fans.add(TestShops.fan("Fan " + way, way, 0.2 * random.nextDouble(), any(WHEN)));
      }
    }
    return fans;
  }

  private Room office(boolean attic) {
    Face top =
        attic
            ? TestShops.face("Office ceiling", Part.CEILING, "Attic", 0, 0, 3, 4, build())
            : TestShops.face("Office roof", Part.ROOF, "outdoors", 90, 5, 3, 4, build());
    return TestShops.room(
            "Office",
            RoomUse.COOLED,
            12,
            2.4,
            WISHED - 4 * random.nextDouble(),
            TestShops.wall("Office east", 90, 4, 2.4, build())
                .withWindows(List.of(TestShops.window("Office window", 1, 1, 6, 0.7))),
            TestShops.face("Office floor", Part.FLOOR, "ground", 0, 180, 3, 4, TestShops.slab(0)),
            top)
        .withLeakage(new Leakage.BlowerDoor(Span.known(8)))
        .withGains(List.of(TestShops.gain("Screen", 150, 0.4, 0, any(WHEN))));
  }

  private Room attic(boolean loft) {
    List<Face> faces = new ArrayList<>();
    faces.add(TestShops.face("East slope", Part.ROOF, "outdoors", 90, 18, 7, 4, build()));
    faces.add(TestShops.face("West slope", Part.ROOF, "outdoors", 270, 18, 7, 4, build()));
    if (loft) {
      faces.add(TestShops.face("Attic lid", Part.CEILING, "Loft", 0, 0, 3, 3, build()));
    }
    return TestShops.room("Attic", RoomUse.FLOATING, 50, 1.2, WISHED, faces.toArray(new Face[0]))
        .withLeakage(new Leakage.Area(Span.known(0.02 + 0.3 * random.nextDouble())))
        .withFans(List.of(TestShops.fan("Attic fan", FanWay.OUT, 0.2, any(WHEN))));
  }

  private Room lofty() {
    return TestShops.room(
            "Loft",
            RoomUse.FLOATING,
            9,
            1.5,
            WISHED,
            TestShops.wall("Loft gable", 180, 3, 1.5, build()),
            TestShops.face("Loft roof", Part.ROOF, "outdoors", 180, 30, 3, 3, build()))
        .withLeakage(new Leakage.AirChanges(Span.known(2)))
        .withGains(List.of(TestShops.gain("Loft lamp", 60, 0.5, 0, any(WHEN))));
  }

  private Room closet() {
    return TestShops.room(
            "Closet",
            RoomUse.FLOATING,
            3,
            2.4,
            WISHED,
            TestShops.wall("Closet outside", 90, 1.5, 2.4, build())
                .withDoors(List.of(TestShops.door("Closet door", 0.8, 2, 300))),
            TestShops.face("Closet floor", Part.FLOOR, "nothing", 0, 180, 1.5, 2, build()))
        .withLeakage(new Leakage.Tightness(Leakage.Grade.AVERAGE))
        .withGains(
            List.of(
                new Gain.Compressor(
                    "Compressor", 3000, Span.known(0.4), TestShops.when(any(WHEN)))));
  }

  private Build build() {
    return switch (random.nextInt(4)) {
      case 0 -> TestShops.insulation(0.5 + 20 * random.nextDouble());
      case 1 -> TestShops.layers(TestShops.layer("sheet steel"), TestShops.resisting(2));
      case 2 -> TestShops.concrete();
      default ->
          new Build.Framed(
              Member.TWO_BY_FOUR,
              0.4064,
              List.of(TestShops.layer("OSB")),
              random.nextBoolean() ? 0 : 2.3,
              Span.known(0.03),
              0,
              random.nextBoolean() ? List.of() : List.of(TestShops.layer("gypsum board")));
    };
  }

  private double meters(double low, double high) {
    return FOOT * (low + (high - low) * random.nextDouble());
  }

  private String any(List<String> texts) {
    return texts.get(random.nextInt(texts.size()));
  }
}
