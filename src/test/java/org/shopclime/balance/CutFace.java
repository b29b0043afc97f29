package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Window;

/**
 * A shop with one of its faces listed in two parts, left and right; windows go with the part they
 * are in, doors with the left one, the edge of a slab along outdoors by area. A wall with an eave
 * is never cut: the eave ends with its wall, so that two have more ends.
 *
 * @param shop the shop with the two parts
 * @param name name of the face, and of its left part
 * @param otherName name of its right part
 */
public record CutFace(Shop shop, String name, String otherName) {

  /**
   * Cuts a face chosen by lot.
   *
   * @param drawn the lot
   * @param shop a shop
   * @return nothing if its openings leave no room to cut it there
   */
  public static Optional<CutFace> of(DrawnShop drawn, Shop shop) {
    List<Face> faces =
        shop.rooms().stream()
            .flatMap(room -> room.faces().stream())
            .filter(face -> face.overhang().isEmpty())
            .toList();
    Face face = drawn.any(faces);
    double share = drawn.between(0.1, 0.9);
    double left = face.width() * share;
    List<Window> first = new ArrayList<>();
    List<Window> second = new ArrayList<>();
    for (Window window : face.windows()) {
      if (window.offset() + window.width() <= left) {
        first.add(window);
      } else if (window.offset() >= left) {
        second.add(DrawnShop.with(window, "offset", window.offset() - left));
      } else {
        return Optional.empty();
      }
    }
    String otherName = face.name() + ", right part";
    Face one = DrawnShop.with(part(face, left, share), "windows", first);
    Face other =
        DrawnShop.with(
            part(face, face.width() - left, 1 - share),
            "name",
            otherName,
            "windows",
            second,
            "doors",
            List.of());
    if (one.netArea() < 0.05 || other.netArea() < 0.05) {
      return Optional.empty();
    }
    Shop cut =
        DrawnShop.eachRoom(
            shop,
            room -> {
              List<Face> parts = new ArrayList<>();
              room.faces()
                  .forEach(
                      each ->
                          parts.addAll(each.equals(face) ? List.of(one, other) : List.of(each)));
              Room changed = DrawnShop.with(room, "faces", parts);
              return changed;
            });
    return Optional.of(new CutFace(cut, face.name(), otherName));
  }

  private static Face part(Face face, double width, double share) {
    Face part = DrawnShop.with(face, "width", width);
    return face.build() instanceof Build.Slab slab
        ? part.withBuild(DrawnShop.with(slab, "exposedPerimeter", share * slab.exposedPerimeter()))
        : part;
  }
}
