package org.shopclime.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;

/**
 * Which line of a cooled room each component belongs to. What drives another cooled room is the
 * line "from" it, and so is the wall between them; what drives a floating room belongs to the
 * largest face that parts it from the cooled room (a ceiling owns its attic).
 */
final class LineMap {

  private LineMap() {}

  /**
   * Lines of a cooled room.
   *
   * @param skeleton heat paths
   * @param room index of the cooled room
   * @return for each component the index of the component whose line it counts in, or {@code -1 -
   *     other} for the line from the cooled room {@code other}
   */
  static int[] of(Skeleton skeleton, int room) {
    List<Room> rooms = skeleton.rooms();
    int[] lineOfRoom = new int[rooms.size()];
    boolean[] known = new boolean[rooms.size()];
    Arrays.fill(lineOfRoom, contents(skeleton, room));
    for (int other = 0; other < rooms.size(); other++) {
      if (rooms.get(other).use() == RoomUse.COOLED) {
        lineOfRoom[other] = -1 - other;
        known[other] = true;
      }
    }
    for (int other = 0; other < rooms.size(); other++) {
      Optional<Component> parting = parting(skeleton, room, other);
      if (!known[other] && parting.isPresent()) {
        lineOfRoom[other] = parting.get().index();
        known[other] = true;
      }
    }
    spread(skeleton, lineOfRoom, known);
    int[] lines = new int[skeleton.components().size()];
    for (Component component : skeleton.components()) {
      int index = component.index();
      if (component.room() == room) {
        int behind = component.behindRoom();
        lines[index] = behind >= 0 ? lineOfRoom[behind] : index;
      } else {
        lines[index] = lineOfRoom[component.room()];
      }
    }
    return lines;
  }

  /** Floating rooms that do not touch the cooled room count with a neighbour that does. */
  private static void spread(Skeleton skeleton, int[] lineOfRoom, boolean[] known) {
    for (int round = 0; round < lineOfRoom.length; round++) {
      for (Component component : skeleton.components()) {
        int here = component.room();
        int there = component.behindRoom();
        if (there >= 0 && known[here] != known[there]) {
          int source = known[here] ? here : there;
          int target = known[here] ? there : here;
          lineOfRoom[target] = lineOfRoom[source];
          known[target] = true;
        }
      }
    }
  }

  /** The line of no drivers, which rooms that do not hang together with this one count in. */
  private static int contents(Skeleton skeleton, int room) {
    return skeleton.components().stream()
        .filter(c -> c.room() == room && c.kind() == ComponentKind.CONTENTS)
        .mapToInt(Component::index)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Component> parting(Skeleton skeleton, int room, int other) {
    return skeleton.components().stream()
        .filter(
            c ->
                (c.room() == room && c.behindRoom() == other)
                    || (c.room() == other && c.behindRoom() == room))
        .max(java.util.Comparator.comparingDouble(Component::area));
  }
}
