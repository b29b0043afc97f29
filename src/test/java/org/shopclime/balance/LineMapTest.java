package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.wall;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** Which line each driver counts in. */
class LineMapTest {

  private static final Build BUILD = insulation(5);

  private static Room simple(String name, RoomUse use, Face... faces) {
    return room(name, use, 20, 2.5, WISHED, faces);
  }

  private static Face ceiling(String name, String behind, double width) {
    return face(name, Part.CEILING, behind, 0, 0, width, 4, BUILD);
  }

  private static Skeleton skeleton(Shop shop) {
    return SkeletonMaker.of(shop, Season.COOLING);
  }

  /** Name of the line a component counts in, seen from a room. */
  private static String lineOf(Skeleton skeleton, int room, String component) {
    int[] lines = LineMap.of(skeleton, room);
    Component found =
        skeleton.components().stream()
            .filter(c -> c.name().equals(component))
            .findFirst()
            .orElseThrow();
    int line = lines[found.index()];
    return line < 0
        ? "from " + skeleton.rooms().get(-1 - line).name()
        : skeleton.components().get(line).name();
  }

  /** Two rooms below one attic, a loft above it, a closet inside the first, a shed apart. */
  private static Skeleton house() {
    return skeleton(
        shop(
            simple(
                "Shop",
                RoomUse.COOLED,
                wall("Shop west", 270, 4, 2.5, BUILD),
                ceiling("Shop ceiling", "Attic", 5),
                ceiling("Hatch", "Attic", 0.5),
                face("Partition", Part.WALL, "Office", 90, 90, 4, 2.5, BUILD)),
            simple(
                "Office",
                RoomUse.COOLED,
                wall("Office east", 90, 4, 2.5, BUILD),
                ceiling("Office ceiling", "Attic", 3)),
            simple(
                "Attic",
                RoomUse.FLOATING,
                face("Attic roof", Part.ROOF, "outdoors", 90, 20, 5, 4, BUILD)),
            simple(
                "Loft",
                RoomUse.FLOATING,
                face("Loft floor", Part.FLOOR, "Attic", 0, 180, 3, 3, BUILD),
                face("Loft roof", Part.ROOF, "outdoors", 90, 20, 3, 3, BUILD)),
            simple(
                "Closet",
                RoomUse.FLOATING,
                face("Closet wall", Part.WALL, "Shop", 90, 90, 1, 2, BUILD),
                wall("Closet outside", 90, 1, 2, BUILD)),
            simple("Shed", RoomUse.FLOATING, wall("Shed wall", 0, 3, 2, BUILD))));
  }

  @Test
  void fromTheShop() {
    Skeleton house = house();
    assertThat(lineOf(house, 0, "Shop west")).isEqualTo("Shop west");
    assertThat(lineOf(house, 0, "Shop ceiling")).isEqualTo("Shop ceiling");
    assertThat(lineOf(house, 0, "Hatch")).as("the larger face").isEqualTo("Shop ceiling");
    assertThat(lineOf(house, 0, "Attic roof")).isEqualTo("Shop ceiling");
    assertThat(lineOf(house, 0, "Loft floor")).isEqualTo("Shop ceiling");
    assertThat(lineOf(house, 0, "Loft roof")).isEqualTo("Shop ceiling");
    assertThat(lineOf(house, 0, "Partition")).isEqualTo("from Office");
    assertThat(lineOf(house, 0, "Office east")).isEqualTo("from Office");
    assertThat(lineOf(house, 0, "Office ceiling")).isEqualTo("from Office");
    assertThat(lineOf(house, 0, "Closet wall")).isEqualTo("Closet wall");
    assertThat(lineOf(house, 0, "Closet outside")).isEqualTo("Closet wall");
    assertThat(lineOf(house, 0, "Shed wall")).as("brings nothing").isEqualTo("Contents");
  }

  @Test
  void fromTheOffice() {
    Skeleton house = house();
    assertThat(lineOf(house, 1, "Attic roof")).isEqualTo("Office ceiling");
    assertThat(lineOf(house, 1, "Loft roof")).isEqualTo("Office ceiling");
    assertThat(lineOf(house, 1, "Shop west")).isEqualTo("from Shop");
    assertThat(lineOf(house, 1, "Shop ceiling")).isEqualTo("from Shop");
    assertThat(lineOf(house, 1, "Closet wall"))
        .as("only the shop touches it")
        .isEqualTo("from Shop");
    int[] lines = LineMap.of(house, 1);
    assertThat(lines[house.components().size() - 1]).as("shed").isGreaterThan(0);
  }

  @Test
  void roomBehindAnotherCooledRoomCountsWithIt() {
    Skeleton row =
        skeleton(
            shop(
                simple("A", RoomUse.COOLED, face("AB", Part.WALL, "B", 90, 90, 4, 2.5, BUILD)),
                simple("B", RoomUse.COOLED, face("BC", Part.WALL, "C", 90, 90, 4, 2.5, BUILD)),
                simple("C", RoomUse.FLOATING, wall("C east", 90, 4, 2.5, BUILD))));
    assertThat(lineOf(row, 0, "C east")).isEqualTo("from B");
    assertThat(lineOf(row, 1, "C east")).isEqualTo("BC");
  }

  /**
   * Every component counts in one line that exists: a component of the room that is its own line,
   * or another cooled room.
   */
  @Property(tries = 50)
  void everyComponentCountsInOneLine(@ForAll @LongRange(min = 0, max = 100_000) long lot) {
    Skeleton skeleton = skeleton(new RandomCase(lot).shop());
    for (int room = 0; room < skeleton.rooms().size(); room++) {
      if (skeleton.rooms().get(room).use() == RoomUse.COOLED) {
        int[] lines = LineMap.of(skeleton, room);
        assertThat(lines).hasSize(skeleton.components().size());
        for (int line : lines) {
          if (line < 0) {
            assertThat(-1 - line).isNotEqualTo(room);
            assertThat(skeleton.rooms().get(-1 - line).use()).isEqualTo(RoomUse.COOLED);
          } else {
            assertThat(lines[line]).as("a line counts in itself").isEqualTo(line);
            Component own = skeleton.components().get(line);
            assertThat(own.room() == room || own.behindRoom() == room).isTrue();
          }
        }
        for (Component component : skeleton.components()) {
          if (component.room() == room && component.behindRoom() < 0) {
            assertThat(lines[component.index()]).isEqualTo(component.index());
          }
        }
      }
    }
  }
}
