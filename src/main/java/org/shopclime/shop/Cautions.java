package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Short cautions where a shop's content asks for one. Each names the public authority to turn to;
 * none is a design or an approval.
 */
final class Cautions {

  private static final String OVEN =
      "Curing gives off fumes: exhaust them outdoors and let make-up air in (NFPA 86, the oven"
          + " maker's and the powder maker's instructions, local fire code).";

  private static final String WET_PARTS =
      "Parts wet with solvent make an oven explode: ventilate by NFPA 86, and keep powder booth,"
          + " sparks and shop vacuum apart from it (NFPA 33, OSHA 1910.107, local fire code).";

  private static final String UNVENTED =
      "A flame without a flue gives carbon monoxide and water to the room, the more so where fans"
          + " draw on it: this shop should not have one (CPSC, EPA, model fuel-gas code, local"
          + " code). A carbon monoxide alarm is no substitute.";

  private static final String FLUE =
      "Have the flue tested by a licensed person with all fans on and doors shut; keep a carbon"
          + " monoxide alarm (CPSC, EPA, model fuel-gas code).";

  private static final String FOAM =
      "Foam on the inside needs a thermal barrier, usually 1/2 in gypsum board, unless it is listed"
          + " to stand bare (model building code, EPA).";

  private static final String SUCTION =
      "A fan that blows out draws flue gas of any flame back into the shop: keep burners vented, air"
          + " let in, and a carbon monoxide alarm (CPSC, EPA, model fuel-gas code).";

  private static final String SOLVENT =
      "Solvent vapor: exhaust during and after, rated fan, no ordinary switch, heater or window unit"
          + " in the vapor (OSHA 1910.94 and 1910.107, NFPA 33).";

  private static final String BLASTING =
      "Blasting: no silica sand, capture the dust first, comfort second (OSHA 1910.1053, NIOSH).";

  private static final String FLAME =
      "Heaters with a flame and engines give off carbon monoxide: vent them, keep an alarm (CPSC,"
          + " NFPA, US Fire Administration).";

  private static final String AIR_DOOR =
      "An air door is a fan, not insulation: shut the door when nothing passes. Its watts warm the"
          + " room (add them as a gain), and wind or a poor setting undo most of it.";

  private static final String CIRCUIT =
      "A circuit above 120 V needs a licensed electrician and a permit (NEC, local authority).";

  private static final String HEAT =
      "Heavy work in this warmth needs rests and water (NIOSH criteria 2016-106, OSHA heat pages).";

  /** Above this set point heavy work gets a caution: NIOSH exposure limit near 28 °C WBGT. */
  private static final double WARM = 27;

  /** Gypsum board of 1/2 in, less a hair, m. */
  private static final double BARRIER = 0.0126;

  private final List<Warning> warnings = new ArrayList<>();

  private Cautions() {}

  /**
   * The cautions for a shop.
   *
   * @param shop shop
   * @return in the order of the file; the same words once at most
   */
  static List<Warning> of(Shop shop) {
    Cautions cautions = new Cautions();
    Walk.through(
        shop,
        (path, value, say) -> {
          cautions.look(path, value);
          return value;
        });
    for (int i = 0; i < shop.rooms().size(); i++) {
      cautions.room("rooms[" + i + "]", shop.rooms().get(i));
    }
    return List.copyOf(cautions.warnings);
  }

  private void look(String path, Object value) {
    if (value instanceof Gain gain) {
      if (gain instanceof Gain.Oven) {
        add(path, OVEN);
        add(path, WET_PARTS);
      }
      words(path, gain.name());
    } else if (value instanceof Fan fan) {
      if (fan.way() == FanWay.OUT) {
        add(path, SUCTION);
      }
      words(path, fan.name());
      if (fan.use() == FanUse.SPRAY) {
        add(path, SOLVENT);
      } else if (fan.use() == FanUse.BLAST_CABINET) {
        add(path, BLASTING);
      }
    } else if (value == FlueKind.UNVENTED) {
      add(path, UNVENTED);
    } else if (value instanceof FlueKind kind && kind != FlueKind.NONE) {
      add(path, FLUE);
    } else if (value instanceof Face face && isBareFoam(face.build())) {
      add(path + ".build", FOAM);
    } else if (value == DoorScreen.AIR_DOOR) {
      add(path, AIR_DOOR);
    } else if (value instanceof Door door && !door.boards().isEmpty()) {
      add(path + ".boards", FOAM);
    } else if (value instanceof CoolingUnit unit && unit.volts() > 130) {
      add(path + ".volts", CIRCUIT);
    }
  }

  private void room(String path, Room room) {
    for (int i = 0; i < room.gains().size(); i++) {
      boolean heavy =
          room.gains().get(i) instanceof Gain.People people
              && people.activity() == Gain.Activity.HEAVY_WORK;
      if (heavy && room.setPoint() > WARM) {
        add(path + ".gains[" + i + "]", HEAT);
      }
    }
  }

  private void words(String path, String name) {
    String plain = name.toLowerCase(Locale.ROOT);
    if (plain.contains("paint") || plain.contains("spray") || plain.contains("solvent")) {
      add(path, SOLVENT);
    }
    if (plain.contains("blast")) {
      add(path, BLASTING);
    }
    if (plain.contains("propane") || plain.contains("kerosene") || plain.contains("engine")) {
      add(path, FLAME);
    }
  }

  private void add(String path, String text) {
    if (warnings.stream().noneMatch(warning -> warning.text().equals(text))) {
      warnings.add(new Warning(path, text));
    }
  }

  /** Whether the innermost foam has no gypsum board of 1/2 in on its room side. */
  private static boolean isBareFoam(Build build) {
    List<BuildLayer> layers = new ArrayList<>();
    if (build instanceof Build.Layers plain) {
      layers.addAll(plain.layers());
    } else if (build instanceof Build.Framed framed) {
      layers.addAll(framed.cladding());
      layers.addAll(framed.lining());
    }
    boolean bare = false;
    for (BuildLayer layer : layers) {
      String name = Tables.material(layer.material()).toLowerCase(Locale.ROOT);
      boolean barrier = name.contains("gypsum") && layer.thickness().orElse(BARRIER) >= BARRIER;
      bare = name.contains("foam") || (bare && !barrier);
    }
    return bare;
  }
}
