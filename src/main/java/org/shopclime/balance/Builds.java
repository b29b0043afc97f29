package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.DoorLeaves;
import org.shopclime.envelope.FramedPart;
import org.shopclime.envelope.Framing;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Material;
import org.shopclime.envelope.Materials;
import org.shopclime.envelope.Path;
import org.shopclime.envelope.Vapour;
import org.shopclime.shop.Board;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Door;
import org.shopclime.shop.Part;

/** The owner's words for what a face is built of, as layers with figures. */
final class Builds {

  private Builds() {}

  /**
   * Paths through a face.
   *
   * @param build what the owner says
   * @param part wall, roof, ceiling or floor
   * @return paths, outside to inside
   */
  static Assembly assembly(Build build, Part part) {
    if (build instanceof Build.Framed framed) {
      return Framing.framed(
          framedPart(part),
          framed.member().width(),
          framed.member().depth(),
          framed.spacing(),
          layers(framed.cladding()),
          framed.cavity(),
          framed.gaps().likely(),
          framed.continuous(),
          layers(framed.lining()));
    }
    List<BuildLayer> layers =
        build instanceof Build.Slab slab ? slab.layers() : ((Build.Layers) build).layers();
    return new Assembly(List.of(new Path(1, layers(layers))));
  }

  /**
   * Paths through a door with its boards.
   *
   * @param door the owner's door
   * @return paths, outside to inside
   */
  static Assembly door(Door door) {
    List<Layer> boards = new ArrayList<>();
    for (Board board : door.boards()) {
      boards.add(material(board.material()).layer(board.thickness()));
    }
    return DoorLeaves.door(door.leaf(), boards, door.coverage().likely());
  }

  static List<Layer> layers(List<BuildLayer> layers) {
    return layers.stream().map(Builds::layerWithVapour).toList();
  }

  /** The layer with its resistance to vapour: as typed, or as its material in the tables. */
  private static Layer layerWithVapour(BuildLayer told) {
    Layer layer = layer(told);
    if (told.sd().isPresent()) {
      return layer.withVapour(told.sd().get());
    }
    if (told.permeance().isPresent()) {
      return layer.withVapour(Vapour.airThickness(told.permeance().get()));
    }
    if (layer.vapour().isPresent()) {
      return layer;
    }
    return Materials.find(told.material())
        .map(material -> layer.withVapour(airThickness(told, material)))
        .orElse(layer);
  }

  /** Of a layer of which only the resistance is told: of as much of its material as makes it. */
  private static double airThickness(BuildLayer told, Material material) {
    double usual =
        told.resistance()
            .map(resistance -> resistance * material.conductivity())
            .orElse(material.usualThickness());
    return material.vapour().airThickness(told.thickness().orElse(usual));
  }

  private static Layer layer(BuildLayer layer) {
    if (layer.resistance().isPresent()) {
      return resisting(layer, layer.resistance().get());
    }
    if (layer.thickness().isPresent() && layer.conductivity().isPresent()) {
      return new Layer(
          layer.material(),
          layer.thickness().get(),
          layer.conductivity().get(),
          layer.density().orElse(0.0),
          layer.specificHeat().orElse(0.0));
    }
    Material material = material(layer.material());
    Layer plain = material.layer(layer.thickness().orElse(material.usualThickness()));
    return new Layer(
        plain.name(),
        plain.thickness(),
        layer.conductivity().orElse(plain.conductivity()),
        layer.density().orElse(plain.density()),
        layer.specificHeat().orElse(plain.specificHeat()),
        plain.vapour());
  }

  /** A layer told by its resistance; it has mass if thickness, density and heat are told too. */
  private static Layer resisting(BuildLayer layer, double resistance) {
    if (layer.thickness().isPresent()
        && layer.density().isPresent()
        && layer.specificHeat().isPresent()) {
      double thickness = layer.thickness().get();
      return new Layer(
          layer.material(),
          thickness,
          thickness / resistance,
          layer.density().get(),
          layer.specificHeat().get());
    }
    if (layer.thickness().isPresent()) {
      double thickness = layer.thickness().get();
      return new Layer(layer.material(), thickness, thickness / resistance, 0, 0);
    }
    return Layer.massless(layer.material(), resistance);
  }

  private static Material material(String name) {
    return Materials.find(name)
        .orElseThrow(() -> new IllegalArgumentException("no material \"" + name + "\""));
  }

  private static FramedPart framedPart(Part part) {
    return switch (part) {
      case WALL -> FramedPart.WALL;
      case ROOF, CEILING -> FramedPart.CEILING_OR_ROOF;
      case FLOOR -> FramedPart.FLOOR;
    };
  }
}
