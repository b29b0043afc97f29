package org.shopclime.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Contents;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Part;
import org.shopclime.shop.Place;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Window;
import org.shopclime.shop.Work;

/** The parts of a shop as a tree, and what may be added to, taken from or doubled in it. */
final class Outline {

  private static final Set<Class<?>> PARTS =
      Set.of(
          Place.class,
          Work.class,
          CoolingUnit.class,
          Room.class,
          Face.class,
          Window.class,
          Door.class,
          Fan.class,
          Gain.class,
          Contents.class,
          Prices.class,
          CompressedAir.class);

  private Outline() {}

  /**
   * A part.
   *
   * @param path its place
   * @param name what the tree calls it
   * @param detail a few figures, so that it is found again; may be empty
   * @param parts parts of it
   */
  record Node(ShopPath path, String name, String detail, List<Node> parts) {

    Node {
      parts = List.copyOf(parts);
    }

    @Override
    public String toString() {
      return detail.isEmpty() ? name : name + "  (" + detail + ")";
    }
  }

  /**
   * Something that can be added.
   *
   * @param words what the menu says
   * @param list the list it goes into
   * @param element what it is at first
   */
  record Addition(String words, ShopPath list, Record element) {}

  /** Whether a component is a part of its own in the tree, not a field of the editor. */
  static boolean isPart(ShopParts.Entry entry) {
    return PARTS.contains(entry.held());
  }

  static Node of(Shop shop, UnitSystem units) {
    return node(ShopPath.SHOP, shop, "", units);
  }

  private static Node node(ShopPath path, Record record, String label, UnitSystem units) {
    List<Node> parts = new ArrayList<>();
    for (ShopParts.Entry entry : ShopParts.of(record.getClass())) {
      if (!isPart(entry)) {
        continue;
      }
      Object value = ShopParts.value(record, entry.name());
      if (value instanceof List<?> list) {
        for (int i = 0; i < list.size(); i++) {
          parts.add(node(path.child(entry.name(), i), (Record) list.get(i), "", units));
        }
      } else if (value instanceof Optional<?> optional) {
        ShopPath child = path.child(entry.name());
        String words = entry.say().label();
        parts.add(
            optional
                .map(held -> node(child, (Record) held, words, units))
                .orElseGet(() -> new Node(child, words, "none", List.of())));
      } else {
        parts.add(node(path.child(entry.name()), (Record) value, entry.say().label(), units));
      }
    }
    if (record instanceof Shop) {
      // the unit is asked for before the rooms are gone through
      parts.sort(java.util.Comparator.comparing(part -> part.path().isElement()));
    }
    String name = label.isEmpty() ? FormText.nameOf(record).orElse("(no name)") : label;
    return new Node(path, name, PartDetail.of(record, units), parts);
  }

  /** What may be added while a part is selected. */
  static List<Addition> additions(Shop shop, ShopPath selected) {
    List<Addition> all = new ArrayList<>();
    ShopPath room = ShopPath.SHOP.child("rooms", 0);
    for (int i = 0; i < shop.rooms().size(); i++) {
      ShopPath each = ShopPath.SHOP.child("rooms", i);
      if (selected.isWithin(each)) {
        room = each;
      }
    }
    if (selected.steps().size() >= 2
        && selected.steps().get(1).name().equals("faces")
        && selected.value(shop).isPresent()) {
      ShopPath face = new ShopPath(selected.steps().subList(0, 2));
      add(all, shop, "Window", face.child("windows"), (Record) Starts.of(Window.class));
      add(all, shop, "Door", face.child("doors"), (Record) Starts.of(Door.class));
    }
    if (!shop.rooms().isEmpty()) {
      ShopPath faces = room.child("faces");
      add(all, shop, "Wall", faces, Starts.face(Part.WALL, "outdoors"));
      add(all, shop, "Roof", faces, Starts.face(Part.ROOF, "outdoors"));
      add(all, shop, "Ceiling", faces, Starts.face(Part.CEILING, "outdoors"));
      add(all, shop, "Floor", faces, Starts.face(Part.FLOOR, "ground"));
      add(all, shop, "Fan", room.child("fans"), (Record) Starts.of(Fan.class));
      for (Class<?> kind : ShopParts.kinds(Gain.class)) {
        String words = "Heat from work: " + ShopParts.kind(kind);
        add(all, shop, words, room.child("gains"), (Record) Starts.of(kind));
      }
    }
    add(all, shop, "Room", ShopPath.SHOP.child("rooms"), (Record) Starts.of(Room.class));
    return all;
  }

  private static void add(
      List<Addition> all, Shop shop, String words, ShopPath list, Record element) {
    all.add(new Addition(words, list, Starts.named(element, taken(shop, list))));
  }

  /** Names that a new element of a list may not bear. */
  static Set<String> taken(Shop shop, ShopPath list) {
    Set<String> names = new HashSet<>();
    String kind = list.last().name();
    List<ShopPath> lists = new ArrayList<>(List.of(list));
    if (kind.equals("windows") || kind.equals("doors")) {
      // openings of all faces of a room have names of their own
      lists.clear();
      ShopPath room = new ShopPath(list.steps().subList(0, 1));
      Room held = (Room) room.record(shop).orElseThrow();
      for (int i = 0; i < held.faces().size(); i++) {
        lists.add(room.child("faces", i).child("windows"));
        lists.add(room.child("faces", i).child("doors"));
      }
    }
    for (ShopPath each : lists) {
      for (Object element : (List<?>) each.value(shop).orElseThrow()) {
        FormText.nameOf((Record) element).ifPresent(names::add);
      }
    }
    if (kind.equals("rooms")) {
      names.addAll(List.of("outdoors", "ground", "nothing"));
    }
    return names;
  }

  /** Whether a part can be taken away: the last room stays. */
  static boolean canRemove(Shop shop, ShopPath path) {
    return path.isElement() && (!path.last().name().equals("rooms") || shop.rooms().size() > 1);
  }
}
