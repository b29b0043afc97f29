package org.shopclime.report;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Window;
import org.shopclime.shop.Words;

/** Turns a place in the shop file into the owner's own names. */
final class PathWords {

  private static final Pattern STEP = Pattern.compile("(\\w+)(?:\\[(\\d+)])?");

  private PathWords() {}

  /** Such as "Shop, West wall, Roll-up door" for {@code rooms[0].faces[0].doors[0].boards}. */
  static String of(Shop shop, String path) {
    StringBuilder words = new StringBuilder();
    Room room = null;
    Face face = null;
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      if (step.group(1).equals("passage") && face != null && face.passage().isPresent()) {
        words.append(", ").append(Shown.line(face.passage().get().name()));
      }
      if (step.group(2) == null) {
        continue;
      }
      int index = Integer.parseInt(step.group(2));
      String name =
          switch (step.group(1)) {
            case "rooms" -> name(shop.rooms(), index, Room::name);
            case "faces" -> room == null ? "" : name(room.faces(), index, Face::name);
            case "gains" -> room == null ? "" : name(room.gains(), index, Gain::name);
            case "fans" -> room == null ? "" : name(room.fans(), index, Fan::name);
            case "windows" -> face == null ? "" : name(face.windows(), index, Window::name);
            case "doors" -> face == null ? "" : name(face.doors(), index, Door::name);
            case "changes" ->
                name(shop.prices().changes(), index, priced -> Words.of(priced.change()));
            default -> "";
          };
      if (step.group(1).equals("rooms") && index < shop.rooms().size()) {
        room = shop.rooms().get(index);
      } else if (step.group(1).equals("faces") && room != null && index < room.faces().size()) {
        face = room.faces().get(index);
      }
      if (!name.isEmpty()) {
        words.append(words.length() == 0 ? "" : ", ").append(name);
      }
    }
    return words.length() == 0 ? plain(path) : words.toString();
  }

  private static String plain(String path) {
    return switch (path.replaceFirst("\\..*", "")) {
      case "flue" -> "Flame with a flue";
      case "unit" -> "Cooling unit";
      case "place" -> "Place";
      case "work" -> "Working hours";
      case "prices" -> "Prices";
      case "air" -> "Compressed air";
      default -> path;
    };
  }

  private static <T> String name(List<T> list, int index, Function<T, String> name) {
    return index < list.size() ? Shown.line(name.apply(list.get(index))) : "";
  }
}
