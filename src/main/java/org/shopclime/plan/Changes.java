package org.shopclime.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.shopclime.shop.Board;
import org.shopclime.shop.Face;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.ShopParts;

/**
 * What could be changed, one thing at a time. A change that leaves the shop as it is, or that no
 * part of it could take, is left out.
 */
final class Changes {

  /** m²·K/W of R-1. */
  private static final double R_ONE = 0.3048 * 0.3048 * 3600 / (2326 * 0.45359237 * 1.8);

  private static final double INCH = 0.0254;
  private static final String FOAM = "XPS foam";

  private Changes() {}

  /**
   * The changes that make a difference to a shop.
   *
   * @param shop the shop
   * @return name and changed shop, in the order they are told
   */
  static Map<String, Shop> of(Shop shop) {
    Map<String, UnaryOperator<Shop>> all = new LinkedHashMap<>();
    if (hasDoors(shop)) {
      all.put("no boards in the doors", s -> ShopEdit.doorBoards(s, List.of()));
      all.put("1/2 in foam in the doors", s -> ShopEdit.doorBoards(s, boards(0.5)));
      all.put("1 in foam in the doors", s -> ShopEdit.doorBoards(s, boards(1)));
      all.put("1 1/2 in foam in the doors", s -> ShopEdit.doorBoards(s, boards(0.5, 1)));
      all.put("door seals tight", ShopEdit::sealsTight);
      all.put("strips in the open door", ShopEdit::stripsInOpenDoors);
    }
    all.put("walls filled", ShopEdit::wallsFilled);
    all.put("ceiling filled to R-30", s -> ShopEdit.ceilingsFilled(s, 30 * R_ONE));
    all.put("windows shaded", ShopEdit::windowsShaded);
    all.put("compressor out of the room", ShopEdit::compressorOut);
    all.put("leaks halved", ShopEdit::leakageHalved);
    Map<String, Shop> changed = new LinkedHashMap<>();
    all.forEach(
        (name, change) -> {
          Shop after = change.apply(shop);
          if (!ShopParts.alike(after, shop)) {
            changed.put(name, after);
          }
        });
    return changed;
  }

  private static boolean hasDoors(Shop shop) {
    return shop.rooms().stream()
        .flatMap(room -> room.faces().stream())
        .map(Face::doors)
        .anyMatch(doors -> !doors.isEmpty());
  }

  private static List<Board> boards(double... inches) {
    return java.util.Arrays.stream(inches).mapToObj(inch -> new Board(FOAM, inch * INCH)).toList();
  }
}
