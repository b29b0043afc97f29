package org.shopclime.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.HotDay;
import org.shopclime.load.PeakLoad;
import org.shopclime.load.ShopLoad;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/** Model and load against the number of rooms and surfaces, in µs. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LoadScaleBenchmark {

  private static final Build WALL =
      TestShops.layers(
          TestShops.layer("OSB"), TestShops.resisting(13), TestShops.layer("gypsum board"));

  /** Rooms and all their surfaces; half of the rooms float. */
  @Param({"1x9", "1x18", "1x36", "1x72", "2x18", "4x36"})
  public String roomsAndSurfaces;

  private Shop shop;
  private HotDay day;
  private ShopModel model;

  /** Builds the shop: rooms in a row, each with a wall to the one before. */
  @Setup
  public void build() {
    int cross = roomsAndSurfaces.indexOf('x');
    int rooms = Integer.parseInt(roomsAndSurfaces.substring(0, cross));
    int faces = Integer.parseInt(roomsAndSurfaces.substring(cross + 1)) / rooms;
    List<Room> all = new ArrayList<>();
    for (int room = 0; room < rooms; room++) {
      all.add(room(room, faces));
    }
    shop = TestShops.shop(all.toArray(Room[]::new));
    day = TestShops.swinging();
    model = TestShops.sunny(shop, day);
  }

  private static Room room(int number, int count) {
    List<Face> faces = new ArrayList<>();
    faces.add(
        TestShops.face(
            "Floor " + number, Part.FLOOR, "nothing", 0, 180, 7, 7, TestShops.concrete()));
    faces.add(TestShops.face("Roof " + number, Part.ROOF, "outdoors", 0, 0, 7, 7, WALL));
    while (faces.size() < count) {
      boolean between = number > 0 && faces.size() == 2;
      faces.add(
          TestShops.face(
              "Wall " + number + " " + faces.size(),
              Part.WALL,
              between ? "Room " + (number - 1) : "outdoors",
              90 * (faces.size() % 4),
              90,
              28.0 / (count - 2),
              2.7,
              WALL));
    }
    RoomUse use = number % 2 == 0 ? RoomUse.COOLED : RoomUse.FLOATING;
    return TestShops.room(
            "Room " + number, use, 49, 2.7, TestShops.WISHED, faces.toArray(Face[]::new))
        .withLeakage(new Leakage.Area(Span.known(0.03)));
  }

  /**
   * From the shop to its network.
   *
   * @return the model
   */
  @Benchmark
  public ShopModel model() {
    return TestShops.sunny(shop, day);
  }

  /**
   * From the network to the lines.
   *
   * @return the load
   */
  @Benchmark
  public ShopLoad load() {
    return PeakLoad.of(model);
  }
}
