package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Material;
import org.shopclime.envelope.Materials;
import org.shopclime.envelope.Nodes;
import org.shopclime.shop.Contents;

/**
 * What stands in the room, as slabs that take up heat on one side.
 *
 * <p>Common practice for the surfaces: machine castings and stock are reckoned as plates 12 mm
 * thick, warmed from both sides (6 mm to the middle); stacked wood as 2 in boards warmed from both
 * sides (25 mm to the middle).
 *
 * @param nodes one square metre, the insulated middle first
 * @param area surface, m²
 */
record ContentsPath(Nodes nodes, double area) {

  private static final Layer IRON = new Layer("iron", 0.006, 50, 7800, 490);
  private static final Layer WOOD = new Layer("wood", 0.025, 0.12, 500, 1600);

  /**
   * Slabs that stand for the contents.
   *
   * @param contents the owner's contents, spans at their likely value
   * @return none to three slabs
   */
  static List<ContentsPath> of(Contents contents) {
    List<ContentsPath> paths = new ArrayList<>();
    add(paths, IRON, surface(contents.iron().likely(), IRON));
    add(paths, WOOD, surface(contents.wood().likely(), WOOD));
    Material board =
        Materials.find("gypsum board")
            .orElseThrow(() -> new IllegalStateException("materials table lacks gypsum board"));
    add(paths, board.layer(0.0127), 2 * contents.drywall());
    return paths;
  }

  /**
   * Surface of the wood in a room.
   *
   * @param contents the owner's contents
   * @return m²
   */
  static double woodSurface(Contents contents) {
    return surface(contents.wood().likely(), WOOD);
  }

  private static double surface(double mass, Layer layer) {
    return mass / (layer.thickness() * layer.density());
  }

  private static void add(List<ContentsPath> paths, Layer layer, double area) {
    if (area > 0) {
      paths.add(new ContentsPath(Nodes.of(List.of(layer)), area));
    }
  }
}
