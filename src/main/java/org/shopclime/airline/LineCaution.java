package org.shopclime.airline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure that is out of what a machine is made for, as data; sentences are made elsewhere.
 *
 * @param kind what is out of line
 * @param found the figure
 * @param limit the limit it passes, in the same unit
 */
public record LineCaution(Kind kind, double found, double limit) {

  /** What can be out of line. */
  public enum Kind {
    /** Runs longer than such machines are made for; part of the time. */
    LONG_DUTY,
    /** Cannot keep up at all: the tools starve; part of the time. */
    CANNOT_KEEP_UP,
    /** Hotter around the machine than motors and compressors are made for; °C. */
    HOT_PLACE,
    /** Hotter around a refrigerated dryer than such dryers are made for; °C. */
    HOT_DRYER,
    /** Hotter air into a refrigerated dryer than such dryers are made for; °C. */
    HOT_DRYER_INLET,
    /** A refrigerated dryer does not reach its dew point; °C. */
    SMALL_DRYER,
    /** A tool wants more pressure than the tank holds; Pa above the air around. */
    LOW_PRESSURE,
    /** Water drops out in the coldest stretch; pressure dew point against its temperature, °C. */
    WET_LINE,
    /** Pressure dew point below freezing of the coldest stretch is missed, so ice can form; °C. */
    ICE_IN_LINE,
    /** Colder than freezing around the machine on the winter's design night; °C. */
    FROST;

    /**
     * Whether it tells of water in the line.
     *
     * @return true for what is worst in the wettest hour, not in the hottest
     */
    public boolean isOfWater() {
      return this == WET_LINE || this == ICE_IN_LINE;
    }
  }

  private static final double DEW_POINT_SLACK = 0.5;

  /**
   * All that is out of line in an hour.
   *
   * @param line the line
   * @param demand what the tools took
   * @param around temperatures around the line
   * @param result that hour of it
   * @return what is out of line, none where all is well
   */
  public static List<LineCaution> of(
      AirLine line, AirDemand demand, LineSurroundings around, LineResult result) {
    List<LineCaution> all = new ArrayList<>();
    AirCompressor machine = line.machine();
    double duty = result.running().duty();
    if (duty > 1) {
      all.add(new LineCaution(Kind.CANNOT_KEEP_UP, duty, 1));
    } else {
      above(all, Kind.LONG_DUTY, duty, machine.stages().mostDuty());
    }
    above(all, Kind.HOT_PLACE, around.place(), AirCompressor.MOST_AMBIENT);
    above(all, Kind.LOW_PRESSURE, demand.pressure(), machine.tankPressure());
    LineAir in = result.drawn();
    for (int i = 0; i < line.parts().size(); i++) {
      LineStep step = result.steps().get(i);
      if (line.parts().get(i) instanceof RefrigeratedDryer dryer) {
        above(all, Kind.HOT_DRYER, around.at(dryer.site()), RefrigeratedDryer.MOST_AMBIENT);
        above(all, Kind.HOT_DRYER_INLET, in.celsius(), RefrigeratedDryer.MOST_INLET);
        if (step.out().pressureDewPoint() > dryer.dewPoint() + DEW_POINT_SLACK) {
          all.add(
              new LineCaution(Kind.SMALL_DRYER, step.out().pressureDewPoint(), dryer.dewPoint()));
        }
      }
      in = step.out();
    }
    if (result.drawn().humidityRatio() > 0 && demand.mean() > 0) {
      double dewPoint = result.pressureDewPoint();
      Kind kind = around.coldest() < 0 ? Kind.ICE_IN_LINE : Kind.WET_LINE;
      above(all, kind, dewPoint, around.coldest());
    }
    return List.copyOf(all);
  }

  /**
   * Frost in a place that is about as cold as outdoors.
   *
   * @param kind the place
   * @param winterDesign winter's design temperature outdoors, °C
   * @return the caution; none in a place that the shop keeps warmer, or without frost
   */
  public static Optional<LineCaution> frost(Placement.Kind kind, double winterDesign) {
    return kind.isApart() && winterDesign < 0
        ? Optional.of(new LineCaution(Kind.FROST, winterDesign, 0))
        : Optional.empty();
  }

  private static void above(List<LineCaution> all, Kind kind, double found, double limit) {
    if (found > limit) {
      all.add(new LineCaution(kind, found, limit));
    }
  }
}
