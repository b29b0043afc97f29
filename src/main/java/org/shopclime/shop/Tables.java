package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.DoorLeaves;
import org.shopclime.envelope.GlassTable;
import org.shopclime.envelope.Material;
import org.shopclime.envelope.Materials;

/** The shop's only look into the tables of materials, doors and glass: names, and no physics. */
final class Tables {

  private Tables() {}

  /** Whether a material of that name is in the tables. */
  static boolean hasMaterial(String name) {
    return Materials.find(name).isPresent();
  }

  /** The name a material bears in the tables; its own if it is not there. */
  static String material(String name) {
    return Materials.find(name).map(Material::name).orElse(name);
  }

  /** Names of materials most like one that was not found. */
  static List<String> nearestMaterials(String name) {
    return Materials.nearest(name);
  }

  /** Whether a bare door of that name is in the tables. */
  static boolean hasLeaf(String name) {
    return DoorLeaves.find(name).isPresent();
  }

  /** Names of bare doors most like one that was not found. */
  static List<String> nearestLeaves(String name) {
    return DoorLeaves.nearest(name);
  }

  /** A glass by its name in the tables. */
  static Optional<Glass> glass(String name) {
    return GlassTable.find(name).map(g -> new Glass(g.name(), g.uFactor(), g.shgc()));
  }

  /** Names of glass most like one that was not found. */
  static List<String> nearestGlasses(String name) {
    return GlassTable.nearest(name);
  }
}
