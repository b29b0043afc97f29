package org.shopclime.balance;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Layer;
import org.shopclime.shop.Contents;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;

/**
 * What takes up and gives back water in a room, lumped: the depth of each inner surface that a
 * daily swing reaches (effective penetration depth).
 *
 * <p>From memory, after the effective-penetration-depth literature: gypsum board through its whole
 * half inch holds 0.09 kg/m² for each unit of relative humidity, softwood and panels about 3.5 mm
 * deep 0.25 kg/m², masonry 0.10 kg/m², metal and plastic none. The film passes h/cp of water (Lewis
 * relation).
 *
 * @param perRelativeHumidity water taken up for each unit of relative humidity, kg
 * @param exchange water passed for each kg/kg of difference, kg/s
 */
record MoistureStore(double perRelativeHumidity, double exchange) {

  private static final double FILM = 3.16 / 1006;
  private static final double GYPSUM = 0.09;
  private static final double WOODEN = 0.25;
  private static final double MASONRY = 0.10;

  /** What a layer holds by a word of its name; the first word found counts. */
  private static final List<Map.Entry<String, Double>> HOLDS =
      List.of(
          Map.entry("fiberglass", 0.0),
          Map.entry("foam", 0.0),
          Map.entry("vinyl", 0.0),
          Map.entry("cement", MASONRY),
          Map.entry("concrete", MASONRY),
          Map.entry("plaster", MASONRY),
          Map.entry("stucco", MASONRY),
          Map.entry("brick", MASONRY),
          Map.entry("block", MASONRY),
          Map.entry("stone", MASONRY),
          Map.entry("adobe", MASONRY),
          Map.entry("gypsum", GYPSUM),
          Map.entry("drywall", GYPSUM),
          Map.entry("wood", WOODEN),
          Map.entry("osb", WOODEN),
          Map.entry("mdf", WOODEN),
          Map.entry("board", WOODEN));

  /**
   * Store of a room.
   *
   * @param room the owner's room, spans at their likely value
   * @return its store
   */
  static MoistureStore of(Room room) {
    double holds = 0;
    double area = 0;
    for (Face face : room.faces()) {
      if (face.part() != Part.FLOOR) {
        double each = each(Builds.assembly(face.build(), face.part()));
        holds += each * face.netArea();
        area += each > 0 ? face.netArea() : 0;
      }
    }
    Contents contents = room.contents();
    double wood = ContentsPath.woodSurface(contents);
    holds += wood * WOODEN + 2 * contents.drywall() * GYPSUM;
    area += wood + 2 * contents.drywall();
    return new MoistureStore(holds, area * FILM);
  }

  private static double each(Assembly assembly) {
    List<Layer> layers = assembly.paths().get(0).layers();
    String inner = layers.get(layers.size() - 1).name().toLowerCase(Locale.ROOT);
    return HOLDS.stream()
        .filter(entry -> inner.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(0.0);
  }
}
