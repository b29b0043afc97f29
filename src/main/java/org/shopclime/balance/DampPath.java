package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.RetarderClass;
import org.shopclime.envelope.SlicedWall;
import org.shopclime.envelope.Vapour;
import org.shopclime.envelope.WaterYear;

/**
 * A path through a face or door of a held room, and what vapour does in it.
 *
 * @param component the line of the face or door
 * @param place its place in the file, such as {@code rooms[0].faces[2]}
 * @param way which path it is
 * @param area area of the path, m²
 * @param heldInside whether the held room lies on the inner side of the layers; false for a
 *     partition listed in the room behind it
 * @param layers layers, outside to inside as listed
 * @param unknown a layer of which nothing tells how it resists vapour; the path is then not judged
 * @param spells its state at each time, in the order of the times; empty if it is not judged
 * @param year water through the year; empty if it is not judged or there are no monthly means
 */
public record DampPath(
    Component component,
    String place,
    Way way,
    double area,
    boolean heldInside,
    List<Layer> layers,
    Optional<Layer> unknown,
    List<DampSpell> spells,
    Optional<WaterYear> year) {

  /** Which path through a face or door. */
  public enum Way {
    /** The only one. */
    WHOLE,
    /** Between studs, joists or rafters. */
    SPACE,
    /** At a stud, joist or rafter. */
    MEMBER,
    /** Where boards cover a door. */
    BOARDS,
    /** Where boards leave a door bare. */
    LEAF
  }

  /**
   * Number of planes at which it is looked at.
   *
   * @return 2 or more; 0 if it is not judged
   */
  public int planes() {
    return spells.isEmpty() ? 0 : wall().planes().size();
  }

  /**
   * The layer on the outer side of a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return its name; empty at the outer face
   */
  public String outerLayer(int plane) {
    int layer = wall().planes().get(plane).outer();
    return layer < 0 ? "" : layers.get(layer).name();
  }

  /**
   * The layer on the inner side of a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return its name; empty at the inner face
   */
  public String innerLayer(int plane) {
    int layer = wall().planes().get(plane).inner();
    return layer >= layers.size() ? "" : layers.get(layer).name();
  }

  /** Resistance from which a layer is insulation and no lining, m²·K/W. */
  private static final double INSULATION = 0.2;

  /**
   * What lines the room side.
   *
   * @param layer name of the layer that holds vapour back most
   * @param perms its permeance, perm (grains an hour through 1 ft² for 1 inHg)
   * @param retarderClass "I", "II" or "III" by {@link RetarderClass}; empty above 10 perms
   */
  public record Lining(String layer, double perms, String retarderClass) {

    private static Lining of(Layer layer) {
      double permeance = Vapour.permeance(layer.vapour().getAsDouble());
      RetarderClass of = RetarderClass.of(permeance);
      return new Lining(
          layer.name(), permeance / Vapour.PERM, of == RetarderClass.OPEN ? "" : of.name());
    }
  }

  /**
   * Of the layers before the insulation, seen from the held room, the one that holds vapour back
   * most; the insulation itself where nothing lines it.
   *
   * @return nothing where no layer tells how it resists vapour
   */
  public Optional<Lining> lining() {
    Optional<Layer> most = Optional.empty();
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(heldInside ? layers.size() - 1 - i : i);
      boolean insulates = layer.resistance() > INSULATION;
      if (insulates && most.isPresent()) {
        break;
      }
      double air = layer.vapour().orElse(0);
      if (air > most.map(each -> each.vapour().getAsDouble()).orElse(0.0)) {
        most = Optional.of(layer);
      }
      if (insulates) {
        break;
      }
    }
    return most.map(Lining::of);
  }

  private SlicedWall wall() {
    return spells.get(0).diffusion().wall();
  }

  /** Copies the lists. */
  public DampPath {
    layers = List.copyOf(layers);
    spells = List.copyOf(spells);
  }
}
