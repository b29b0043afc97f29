package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** Whether a face's openings fit in it, and whether its build and doors can be looked up. */
final class FaceCheck {

  /** A tape measure's slack, m: a 7 ft door fits a 7 ft wall. */
  private static final double SLACK = 1e-6;

  /** Slope up to which a face may be gone through as a floor is, degrees. */
  private static final double LEVEL = 45;

  /** Cavity of a usual sectional door, 1 1/2 in (common practice), m. */
  private static final double DOOR_CAVITY = 0.0381;

  /** Resistance of the densest usual batt per depth, R-15 in 3 1/2 in (common practice), m·K/W. */
  private static final double BATT_PER_METRE = 15 * 0.176110 / 0.0889;

  private final String path;
  private final Face face;
  private final UnitSystem units;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Warning> warnings = new ArrayList<>();

  /**
   * Checks a face.
   *
   * @param path where it stands
   * @param face face
   * @param units system in which figures are named
   */
  FaceCheck(String path, Face face, UnitSystem units) {
    this.path = path;
    this.face = face;
    this.units = units;
    slope();
    openings();
    build();
    doors();
    glass();
    face.passage().ifPresent(this::passage);
    if (face.groundTemperature().isPresent() && !face.behind().equals("ground")) {
      warn(".groundTemperature", "has no effect: there is no ground behind this face");
    }
  }

  private void glass() {
    for (int i = 0; i < face.windows().size(); i++) {
      problems.addAll(GlassCheck.of(path + ".windows[" + i + "].glass", face.windows().get(i)));
    }
  }

  /**
   * What must be mended.
   *
   * @return problems
   */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /**
   * What is unusual.
   *
   * @return warnings
   */
  List<Warning> warnings() {
    return List.copyOf(warnings);
  }

  private void slope() {
    boolean upright = face.tilt() > 60 && face.tilt() < 120;
    if (face.part() == Part.WALL && !upright && !Double.isNaN(face.tilt())) {
      warn(".tilt", "a wall that is far from upright (90 deg)");
    } else if (face.part() == Part.ROOF && face.tilt() > 80) {
      warn(".tilt", "a roof that is upright; a flat roof has 0 deg, one of 4 in 12 has 18.4 deg");
    } else if ((face.part() == Part.CEILING || face.part() == Part.FLOOR) && upright) {
      warn(".tilt", "a ceiling or floor that is upright; a ceiling has 0 deg, a floor 180 deg");
    }
  }

  private void openings() {
    double top = face.height() + face.gableRise();
    for (int i = 0; i < face.windows().size(); i++) {
      Window window = face.windows().get(i);
      String at = path + ".windows[" + i + "]";
      fits(at, "offset and width together", window.offset() + window.width(), face.width());
      fits(at, "sill and height together", window.sill() + window.height(), top);
    }
    for (int i = 0; i < face.doors().size(); i++) {
      Door door = face.doors().get(i);
      String at = path + ".doors[" + i + "]";
      fits(at, "a width of", door.width(), face.width());
      fits(at, "a height of", door.height(), top);
      if (door.screen() != DoorScreen.NOTHING && door.openMinutes() == 0) {
        String text = "has no effect: the door is told to be opened 0 min an hour";
        warnings.add(new Warning(at + ".screen", text));
      }
    }
    double openings = face.grossArea() - face.netArea();
    if (openings > face.grossArea() + SLACK) {
      String found = "openings of " + show(Kind.AREA, openings);
      String takes = "openings no larger than their wall, " + show(Kind.AREA, face.grossArea());
      problems.add(new Problem(path, found, takes));
    }
  }

  private void passage(Passage passage) {
    String at = path + ".passage";
    if (List.of("outdoors", "ground", "nothing").contains(face.behind())) {
      String takes = "a face with another room behind it; to outdoors goes a door or a window";
      problems.add(new Problem(at, "a way through to \"" + face.behind() + "\"", takes));
    }
    boolean level = face.tilt() <= LEVEL || face.tilt() >= 180 - LEVEL;
    if (passage.kind() == PassageKind.FLOOR_OPENING && !level && !Double.isNaN(face.tilt())) {
      String takes = "\"doorway\" in a face that is not level";
      problems.add(new Problem(at + ".kind", "\"floor opening\"", takes));
    }
    if (passage.kind() == PassageKind.FLOOR_OPENING || !level) {
      fits(at, "a width of", passage.width(), Math.max(face.width(), level ? face.height() : 0));
      double most = face.height() + face.gableRise();
      fits(at, "a length of", passage.length(), Math.max(most, level ? face.width() : 0));
      if (passage.area() > face.netArea() + SLACK) {
        String found = "a way through of " + show(Kind.AREA, passage.area());
        String takes = "one no larger than its face, " + show(Kind.AREA, face.netArea());
        problems.add(new Problem(at, found, takes));
      }
    }
  }

  private void fits(String at, String what, double size, double room) {
    if (size > room + SLACK) {
      String takes = "what fits in its wall, at most " + ShopCheck.length(room, units);
      problems.add(new Problem(at, what + " " + ShopCheck.length(size, units), takes));
    }
  }

  private void build() {
    String at = path + ".build";
    if (face.build() instanceof Build.Layers build) {
      layers(at + ".layers", build.layers());
      if (build.layers().isEmpty()) {
        problems.add(new Problem(at + ".layers", "no layer", "at least one layer"));
      }
    } else if (face.build() instanceof Build.Framed build) {
      layers(at + ".cladding", build.cladding());
      layers(at + ".lining", build.lining());
      if (build.cladding().isEmpty() && build.lining().isEmpty()) {
        String takes = "at least one layer in \"cladding\" or \"lining\"";
        problems.add(new Problem(at, "framing with nothing on it", takes));
      }
      double batt = BATT_PER_METRE * build.member().depth();
      if (build.cavity() > 1.02 * batt) {
        String word = Words.of(build.member());
        String rValue = show(Kind.R_VALUE, build.cavity());
        String most = show(Kind.R_VALUE, batt);
        String text = " is more than batts give in a " + word + ", about " + most;
        warnings.add(new Warning(at + ".cavity", rValue + text + "; right only for foam"));
      }
    } else if (face.build() instanceof Build.Slab build) {
      layers(at + ".layers", build.layers());
      if (build.layers().isEmpty()) {
        problems.add(new Problem(at + ".layers", "no layer", "at least one layer"));
      }
      if (!face.behind().equals("ground")) {
        String takes = "\"ground\" behind a slab";
        problems.add(new Problem(path + ".behind", "\"" + face.behind() + "\"", takes));
      }
    }
  }

  private void layers(String at, List<BuildLayer> layers) {
    for (int i = 0; i < layers.size(); i++) {
      BuildLayer layer = layers.get(i);
      boolean massless = layer.density().filter(density -> density == 0).isPresent();
      boolean figures =
          layer.thickness().isPresent()
              && layer.conductivity().isPresent()
              && layer.density().isPresent()
              && (massless || layer.specificHeat().isPresent());
      if (!figures && layer.resistance().isEmpty()) {
        material(at + "[" + i + "].material", layer.material());
      }
      if (layer.permeance().isPresent() && layer.sd().isPresent()) {
        String takes = "either permeance or sd, which tell the same";
        problems.add(new Problem(at + "[" + i + "].sd", "an sd beside a permeance", takes));
      }
    }
  }

  private void material(String at, String name) {
    if (!Tables.hasMaterial(name)) {
      String nearest = BriefText.quoted(Tables.nearestMaterials(name));
      String takes = "a material of the tables, or all its figures; nearest: " + nearest;
      problems.add(new Problem(at, "\"" + name + "\"", takes));
    }
  }

  private void doors() {
    for (int i = 0; i < face.doors().size(); i++) {
      Door door = face.doors().get(i);
      String at = path + ".doors[" + i + "]";
      if (!Tables.hasLeaf(door.leaf())) {
        String known = BriefText.quoted(Tables.nearestLeaves(door.leaf()));
        String takes = "a bare door of the tables; nearest: " + known;
        problems.add(new Problem(at + ".leaf", "\"" + door.leaf() + "\"", takes));
      }
      double stack = 0;
      for (int j = 0; j < door.boards().size(); j++) {
        stack += door.boards().get(j).thickness();
        material(at + ".boards[" + j + "].material", door.boards().get(j).material());
      }
      if (stack > DOOR_CAVITY + SLACK) {
        String cavity = ShopCheck.length(DOOR_CAVITY, units);
        String found = ShopCheck.length(stack, units);
        String text = " together; a usual door cavity takes " + cavity + ": measure yours";
        warnings.add(new Warning(at + ".boards", "boards of " + found + text));
      }
    }
  }

  private void warn(String at, String text) {
    warnings.add(new Warning(path + at, text));
  }

  private String show(Kind kind, double si) {
    return Quantities.show(kind, si, units);
  }
}
