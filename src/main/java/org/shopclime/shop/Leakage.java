package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/** How leaky a room is to outdoors, in the way the owner can tell. */
public sealed interface Leakage
    permits Leakage.Tightness, Leakage.BlowerDoor, Leakage.AirChanges, Leakage.Area {

  /**
   * By looking at it.
   *
   * @param grade one of the grades, or unknown
   */
  record Tightness(@Say(label = "How tight", otherwise = "don't know") Grade grade)
      implements Leakage {}

  /** Grades of tightness, by leakage area for each square metre of outside face. */
  enum Grade {
    /** Sealed with care. */
    TIGHT,
    /** A good house. */
    GOOD,
    /** A usual house. */
    AVERAGE,
    /** Gaps felt on a windy day. */
    LEAKY,
    /** Daylight shows through. */
    VERY_LEAKY,
    /** Nobody knows: likely leaky, good to very leaky. */
    UNKNOWN
  }

  /**
   * By a blower door.
   *
   * @param airChanges50 air changes an hour at 50 Pa
   */
  record BlowerDoor(
      @Say(label = "Air changes at 50 Pa", kind = Kind.AIR_CHANGES, min = 0.1, max = 200)
          Span airChanges50)
      implements Leakage {}

  /**
   * By air changes at all hours, whatever the weather.
   *
   * @param airChanges air changes an hour
   */
  record AirChanges(
      @Say(
              label = "Air changes an hour",
              kind = Kind.AIR_CHANGES,
              max = 100,
              usualMax = 20,
              unknown = {"0.3 /h", "1 /h", "3 /h"})
          Span airChanges)
      implements Leakage {}

  /**
   * By leakage area at 4 Pa.
   *
   * @param area effective leakage area, m²
   */
  record Area(@Say(label = "Leakage area", kind = Kind.LEAKAGE_AREA, max = 5) Span area)
      implements Leakage {}
}
