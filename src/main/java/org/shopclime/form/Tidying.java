package org.shopclime.form;

import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.GlassTable;
import org.shopclime.shop.Face;
import org.shopclime.shop.Glass;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

/**
 * What follows of itself from a change: a room's new name, the figures of a glass picked by name.
 */
final class Tidying {

  /** What a glass is called whose figures are no longer those of the tables. */
  static final String OWN_GLASS = "own figures";

  private Tidying() {}

  static Shop after(Shop before, ShopPath path, Shop after) {
    if (path.steps().isEmpty()) {
      return after;
    }
    if (path.parent().record(after).orElse(null) instanceof Glass glass) {
      return path.parent().with(after, glass(glass, path.last().name()));
    }
    boolean roomName = path.steps().size() == 2 && path.toString().endsWith("].name");
    if (roomName && path.parent().record(after).orElse(null) instanceof Room room) {
      String old = (String) path.value(before).orElseThrow();
      return renamed(after, old, room.name());
    }
    return after;
  }

  private static Glass glass(Glass glass, String changed) {
    Optional<Glass> listed =
        GlassTable.find(glass.name()).map(g -> new Glass(g.name(), g.uFactor(), g.shgc()));
    if (listed.isEmpty() || listed.get().equals(glass)) {
      return glass;
    }
    return changed.equals("name")
        ? listed.get()
        : new Glass(
            OWN_GLASS,
            glass.uFactor(),
            glass.shgc(),
            glass.panes(),
            glass.angles(),
            glass.resistance());
  }

  private static Shop renamed(Shop shop, String old, String name) {
    List<Room> rooms =
        shop.rooms().stream()
            .map(
                room ->
                    room.withFaces(
                        room.faces().stream().map(face -> behind(face, old, name)).toList()))
            .toList();
    return shop.withRooms(rooms)
        .withUnit(shop.unit().map(unit -> unit.room().equals(old) ? unit.withRoom(name) : unit));
  }

  private static Face behind(Face face, String old, String name) {
    return face.behind().equals(old)
        ? (Face) org.shopclime.shop.ShopParts.with(face, "behind", name)
        : face;
  }
}
