package org.shopclime.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Vapour;
import org.shopclime.envelope.WaterYear;

/**
 * What was found of vapour in one path through a face or door.
 *
 * @param path the path
 * @param kind what was found
 * @param times the hot day, humid day and months in which it was found
 * @param worst the time at which it is worst; empty where nothing is found or the path is not
 *     judged
 * @param plane plane of the layers at which it was found; -1 where nothing is
 */
public record DampFinding(
    DampPath path, Kind kind, List<DampTime> times, Optional<DampSpell> worst, int plane) {

  /** Water that is nothing, kg/(m²·s): 0.01 g a day. */
  private static final double NOTHING = 1e-5 / 86_400;

  /** By how much a plane must be damper than the air on both sides. */
  private static final double DAMPER = 0.005;

  /** What may be found. */
  public enum Kind {
    /** Water falls out between layers. */
    CONDENSES,
    /** Dew falls on the face towards the held room. */
    DEW,
    /** No water, but damper than the air on both sides, and above 80 % in the mean of a month. */
    NEAR,
    /** Nothing of these by this method, which does not make the wall safe. */
    NONE,
    /** Nothing tells how one of its layers resists vapour. */
    NOT_JUDGED
  }

  /** Copies the list. */
  public DampFinding {
    times = List.copyOf(times);
  }

  /**
   * What is found of a path.
   *
   * @param path the path
   * @return what there is to tell of it
   */
  public static DampFinding of(DampPath path) {
    if (path.unknown().isPresent()) {
      return new DampFinding(path, Kind.NOT_JUDGED, List.of(), Optional.empty(), -1);
    }
    List<DampSpell> wet = path.spells().stream().filter(each -> each.rate() > NOTHING).toList();
    if (!wet.isEmpty()) {
      DampSpell worst = worst(wet, Comparator.comparingDouble(DampSpell::rate));
      int plane =
          path.year()
              .filter(year -> year.isWet() && worst.time().isMonth())
              .map(WaterYear::wettestPlane)
              .orElse(worst.wettest());
      return found(path, Kind.CONDENSES, wet, worst, plane);
    }
    int held = path.heldInside() ? path.planes() - 1 : 0;
    List<DampSpell> dew = path.spells().stream().filter(each -> isDewy(path, each)).toList();
    if (!dew.isEmpty()) {
      DampSpell worst =
          worst(dew, Comparator.comparingDouble(each -> -each.diffusion().temperature(held)));
      return found(path, Kind.DEW, dew, worst, held);
    }
    List<DampSpell> near = new ArrayList<>();
    for (DampSpell each : path.spells()) {
      int plane = dampest(path, each);
      double humidity = each.diffusion().humidity(plane);
      if (each.time().isMonth()
          && humidity > Vapour.MOULD
          && humidity > each.airHumidity() + DAMPER) {
        near.add(each);
      }
    }
    if (!near.isEmpty()) {
      DampSpell worst =
          worst(
              near,
              Comparator.comparingDouble(each -> each.diffusion().humidity(dampest(path, each))));
      return found(path, Kind.NEAR, near, worst, dampest(path, worst));
    }
    return new DampFinding(path, Kind.NONE, List.of(), Optional.empty(), -1);
  }

  private static DampSpell worst(List<DampSpell> spells, Comparator<DampSpell> order) {
    return spells.stream().max(order).orElseThrow();
  }

  private static DampFinding found(
      DampPath path, Kind kind, List<DampSpell> spells, DampSpell worst, int plane) {
    List<DampTime> times = spells.stream().map(DampSpell::time).toList();
    return new DampFinding(path, kind, times, Optional.of(worst), plane);
  }

  private static boolean isDewy(DampPath path, DampSpell spell) {
    return path.heldInside() ? spell.diffusion().dewInside() : spell.diffusion().dewOutside();
  }

  /** The dampest plane but for the face away from the held room, which is as damp as its air. */
  private static int dampest(DampPath path, DampSpell spell) {
    int first = path.heldInside() ? 1 : 0;
    int best = first;
    for (int plane = first; plane < first + path.planes() - 1; plane++) {
      if (spell.diffusion().humidity(plane) > spell.diffusion().humidity(best)) {
        best = plane;
      }
    }
    return best;
  }

  /**
   * Months in which it was found.
   *
   * @return 1 to 12, in order
   */
  public List<Integer> months() {
    return times.stream().filter(DampTime::isMonth).map(DampTime::month).toList();
  }

  /**
   * Whether vapour comes from the held room at the worst time.
   *
   * @return false where it comes from outdoors, or nothing is found
   */
  public boolean fromRoom() {
    return worst.map(this::isFromRoom).orElse(false);
  }

  /**
   * Whether vapour comes from the other side at another time.
   *
   * @return true if what helps at the worst time may harm then
   */
  public boolean turns() {
    return path.spells().stream().anyMatch(each -> isFromRoom(each) != fromRoom());
  }

  private boolean isFromRoom(DampSpell spell) {
    return (spell.innerPressure() > spell.outerPressure()) == path.heldInside();
  }

  /**
   * Whether it was found on the face towards the held room.
   *
   * @return false inside the wall, or where nothing is found
   */
  public boolean isOnFace() {
    return plane >= 0 && plane == (path.heldInside() ? path.planes() - 1 : 0);
  }

  /**
   * Whether it is worth a warning.
   *
   * @return false where nothing is found
   */
  public boolean isWarning() {
    return kind != Kind.NONE;
  }

  /**
   * Relative humidity where it was found, at the worst time.
   *
   * @return 0 to 1; 0 where nothing is found
   */
  public double humidity() {
    return worst.map(each -> each.diffusion().humidity(plane)).orElse(0.0);
  }

  /**
   * Most water through the year.
   *
   * @return kg/m² at the end of the wettest month; 0 where none gathers
   */
  public double mostWater() {
    return path.year().map(WaterYear::most).orElse(0.0);
  }

  /**
   * The month at the end of which most water is held.
   *
   * @return 1 to 12
   */
  public int wettestMonth() {
    return path.year().map(WaterYear::wettestMonth).orElse(1);
  }

  /**
   * Water left after twelve months.
   *
   * @return kg/m²; 0 if it dries, or none gathers
   */
  public double waterLeft() {
    return path.year().map(WaterYear::left).orElse(0.0);
  }

  /**
   * The month by whose end all water has dried.
   *
   * @return 1 to 12; 0 where none gathers or some is left
   */
  public int dryMonth() {
    if (mostWater() == 0 || waterLeft() > 0) {
      return 0;
    }
    WaterYear year = path.year().orElseThrow();
    int month = year.wettestMonth();
    while (year.held(month) > 0) {
      month = month % 12 + 1;
    }
    return month;
  }

  /**
   * The layer of which nothing tells how it resists vapour.
   *
   * @return its name; empty if there is none
   */
  public String unknown() {
    return path.unknown().map(Layer::name).orElse("");
  }

  /**
   * How bad it is beside others of its kind.
   *
   * @return a figure to sort by
   */
  public double severity() {
    return switch (kind) {
      case CONDENSES -> mostWater() > 0 ? mostWater() : worst.orElseThrow().rate();
      case NEAR, DEW -> humidity();
      case NONE, NOT_JUDGED -> 0;
    };
  }
}
