package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A fan between a room and outdoors, or through a filter back into the room.
 *
 * @param name what the owner calls it
 * @param way out, in, both at once, or back through a filter
 * @param flow air flow, m³/s; 0 where only the duct is known
 * @param duct the round duct it blows through, in place of the flow
 * @param when when it runs
 * @param use what it is for
 * @param minutes time it runs in each hour that {@code when} marks, s, 0 to 3600
 * @param ledToHood part of what it blows out that comes from outdoors by a duct straight to its
 *     hood and does not mix with the room, 0 to 0.8
 */
public record Fan(
    @Say(label = "Name") String name,
    @Say(
            label = "Blows",
            help = "Filtered return: through a filter back into the room; never for fumes.")
        FanWay way,
    @Say(
            label = "Air flow",
            help =
                "As it is built in; with long or bent ducts well below the label. Leave empty where"
                    + " only its duct is known.",
            kind = Kind.AIR_FLOW,
            max = 20,
            usualMax = 3,
            zeroIsUnsaid = true,
            otherwise = "0 cfm")
        double flow,
    @Say(
            label = "Its duct",
            help = "In place of the air flow, where that is not known.",
            otherwise = "none")
        Optional<Duct> duct,
    @Say(label = "Runs when", otherwise = "work") Schedule when,
    @Say(label = "For", otherwise = "other") FanUse use,
    @Say(label = "Minutes an hour", kind = Kind.DURATION, max = 3600, otherwise = "60 min")
        double minutes,
    @Say(
            label = "Make-up air led to its hood",
            help =
                "Part of its air that a duct brings from outdoors right to the hood; at most 80 %, so"
                    + " that the hood still draws from the room.",
            kind = Kind.FRACTION,
            max = 0.8,
            otherwise = "0 %")
        double ledToHood) {

  private static final double HOUR = 3600;

  /**
   * A fan of which nothing more is said.
   *
   * @param name what the owner calls it
   * @param way out, in, both at once, or back through a filter
   * @param flow air flow, m³/s
   * @param when when it runs
   */
  public Fan(String name, FanWay way, double flow, Schedule when) {
    this(name, way, flow, when, FanUse.OTHER, HOUR, 0);
  }

  /**
   * A fan whose air flow is known.
   *
   * @param name what the owner calls it
   * @param way out, in, both at once, or back through a filter
   * @param flow air flow, m³/s
   * @param when when it runs
   * @param use what it is for
   * @param minutes time it runs in each hour that {@code when} marks, s, 0 to 3600
   * @param ledToHood part of what it blows out that does not mix with the room, 0 to 0.8
   */
  public Fan(
      String name,
      FanWay way,
      double flow,
      Schedule when,
      FanUse use,
      double minutes,
      double ledToHood) {
    this(name, way, flow, Optional.empty(), when, use, minutes, ledToHood);
  }

  /**
   * Air it moves.
   *
   * @return m³/s: as told, or by its duct
   */
  public double moved() {
    return duct.map(told -> told.flow(use)).orElse(flow);
  }

  /**
   * Whether it runs through only a part of its hours.
   *
   * @return true if so
   */
  public boolean pauses() {
    return minutes < HOUR;
  }

  /**
   * Air that room and outdoors exchange or lose by it.
   *
   * @return m³/s while it runs: without what is led to the hood; none where all is returned
   */
  public double exchanged() {
    return switch (way) {
      case OUT -> moved() * (1 - ledToHood);
      case IN, BALANCED -> moved();
      case FILTERED_RETURN -> 0;
    };
  }

  /**
   * The same at other times.
   *
   * @param other when it runs
   * @return the changed record
   */
  public Fan withWhen(Schedule other) {
    return new Fan(name, way, flow, duct, other, use, minutes, ledToHood);
  }

  /**
   * The same blowing another way.
   *
   * @param other way
   * @return the changed record
   */
  public Fan withWay(FanWay other) {
    return new Fan(name, other, flow, duct, when, use, minutes, ledToHood);
  }

  /**
   * The same with other make-up air.
   *
   * @param part led to the hood, 0 to 0.8
   * @return the changed record
   */
  public Fan withLedToHood(double part) {
    return new Fan(name, way, flow, duct, when, use, minutes, part);
  }
}
