package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air that something in the shop moves.
 *
 * @param use what moves it
 * @param way where it goes
 * @param flow all the air it moves, m³/s, 0 to 100
 * @param ledToHood part of it that comes from outdoors by a duct straight to the hood and does not
 *     mix with the room, 0 to 1; common practice is to lead no more than 0.8, so that the hood
 *     still draws from the room
 * @param minutesPerHour minutes it runs, 0 to 60
 */
public record AirStream(Use use, Way way, double flow, double ledToHood, double minutesPerHour) {

  /** What moves air in a shop. */
  public enum Use {
    /** Dust collector. */
    COLLECTOR,
    /** Vacuum of a blast cabinet. */
    BLAST_CABINET,
    /** Exhaust while spraying; it never returns. */
    SPRAY,
    /** Hood or vent of a curing oven; it never returns. */
    OVEN_HOOD,
    /** Fan of a compressor closet. */
    CLOSET_FAN,
    /** Any other fan. */
    OTHER
  }

  /** Where moved air goes. */
  public enum Way {
    /** Out of the room to outdoors. */
    OUT,
    /** From outdoors into the room. */
    IN,
    /** Through a filter back into the room. */
    FILTERED_RETURN
  }

  /** Refuses what is outside the ranges above, and fumes that return. */
  public AirStream {
    Range.check("air moved, m³/s,", flow, 0, 100);
    Range.check("part led to the hood", ledToHood, 0, 1);
    Range.check("minutes in an hour", minutesPerHour, 0, 60);
    if (way == Way.FILTERED_RETURN && (use == Use.SPRAY || use == Use.OVEN_HOOD)) {
      throw new IllegalArgumentException("fumes are not returned to a room");
    }
  }

  /**
   * Air out of the room, without make-up air at the hood.
   *
   * @param use what moves it
   * @param flow m³/s, 0 to 100
   * @param minutesPerHour minutes it runs, 0 to 60
   * @return the stream
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static AirStream out(Use use, double flow, double minutesPerHour) {
    return new AirStream(use, Way.OUT, flow, 0, minutesPerHour);
  }

  /**
   * Air taken from the room to outdoors.
   *
   * @return m³/s while it runs
   */
  public double fromRoom() {
    return way == Way.OUT ? flow * (1 - ledToHood) : 0;
  }

  /**
   * Air brought from outdoors into the room.
   *
   * @return m³/s while it runs
   */
  public double intoRoom() {
    return way == Way.IN ? flow : 0;
  }
}
