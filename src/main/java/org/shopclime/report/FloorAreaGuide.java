package org.shopclime.report;

import java.util.Optional;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.unit.RoomSizeGuide;

/**
 * What the guide by floor area, which owners read elsewhere, says of the room the unit cools.
 *
 * @param area floor area, m²
 * @param usual size for a room as usual, W
 * @param sunny size for a very sunny one, W
 * @param workShare part of the room's load that machines, fans and open doors make, 0 to 1
 */
record FloorAreaGuide(double area, double usual, double sunny, double workShare) {

  /** Less than this is not worth a word. */
  private static final double LITTLE = 0.05;

  /** Nothing where no room is cooled, or the guide does not reach so far. */
  static Optional<FloorAreaGuide> of(SizeAnswer answer) {
    Room room = answer.shop().rooms().get(answer.core().room());
    if (room.use() != RoomUse.COOLED || !RoomSizeGuide.covers(room.floorArea())) {
      return Optional.empty();
    }
    double table = RoomSizeGuide.btuhForArea(room.floorArea());
    int people =
        (int)
            Math.round(
                room.gains().stream()
                    .filter(Gain.People.class::isInstance)
                    .mapToDouble(gain -> ((Gain.People) gain).count())
                    .sum());
    return Optional.of(
        new FloorAreaGuide(
            room.floorArea(),
            size(table, RoomSizeGuide.Sun.USUAL, people),
            size(table, RoomSizeGuide.Sun.VERY_SUNNY, people),
            workShare(answer, room.name())));
  }

  private static double size(double table, RoomSizeGuide.Sun sun, int people) {
    return RoomSizeGuide.corrected(table, sun, people) / Units.btuh(1);
  }

  private static double workShare(SizeAnswer answer, String room) {
    int hour = answer.core().load().peakHour();
    double work = 0;
    double all = 0;
    for (RoomLoad each : answer.core().load().rooms()) {
      if (each.name().equals(room)) {
        for (Line line : each.lines()) {
          double heat = line.sensible().at(hour) + line.latent().at(hour);
          all += heat;
          work += isWork(line) ? heat : 0;
        }
      }
    }
    return all > 0 ? Math.max(0, Math.min(1, work / all)) : 0;
  }

  private static boolean isWork(Line line) {
    return switch (line.kind()) {
      case MOTOR, COMPRESSOR, OVEN, OTHER, FAN, DOOR_AIR -> true;
      default -> false;
    };
  }

  /** One sentence: the guide beside the size that holds, and why they differ. */
  String fact(SizeAnswer answer, UnitSystem units) {
    return "The published guide by floor area says "
        + Shown.power(usual, units)
        + " for "
        + Quantities.show(Kind.AREA, area, units)
        + " ("
        + Shown.power(sunny, units)
        + " in much sun), where "
        + (answer.recommended().isPresent()
            ? Shown.power(answer.recommended().getAsDouble(), units)
                + " is the smallest usual size that holds here"
            : "no usual size holds here")
        + ": it is meant for rooms of a home and knows neither your walls and weather nor your work"
        + (workShare < LITTLE
            ? "."
            : "; machines, fans and open doors are "
                + Shown.percent(workShare)
                + " of what must be taken out.");
  }
}
