package org.shopclime.unit;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What a unit was asked beyond the range its curves were tested in; a result carries these. */
public enum Limit {
  /** Wet bulb at the coil below the tested range: the lowest tested is held. */
  WET_BULB_LOW(1),
  /** Wet bulb at the coil above the tested range: the highest tested is held. */
  WET_BULB_HIGH(2),
  /** Outdoor dry bulb below the tested range: the lowest tested is held. */
  OUTDOOR_LOW(4),
  /** Outdoor dry bulb above the tested range: the highest tested is held; true capacity is less. */
  OUTDOOR_HIGH(8),
  /** Airflow below the tested range: the lowest tested is held; true capacity is less. */
  AIRFLOW_LOW(16),
  /**
   * Apparatus dew point below 0 °C: the coil would ice over, and deliver less the longer it runs.
   */
  COIL_ICES(32),
  /**
   * Room colder than the tested range: the edge is held, or the curve followed as its page says.
   */
  ROOM_LOW(64),
  /** Room warmer than the tested range: the highest tested is held. */
  ROOM_HIGH(128),
  /** Room drier than the tested range. */
  HUMIDITY_LOW(256),
  /** Room damper than the tested range: the highest tested is held. */
  HUMIDITY_HIGH(512),
  /** Too cold for it to run at all: outdoors for a heat pump or a wet pad, indoors for a dryer. */
  TOO_COLD(1024);

  /**
   * Combinations below this, those of a cooling coil, are kept: they are asked for in every step.
   */
  private static final int KEPT = 64;

  /** Each kept combination once, found by its bits, so that a result need not build its set. */
  private static final List<Set<Limit>> COMBINATIONS =
      IntStream.range(0, KEPT).mapToObj(Limit::combination).toList();

  private final int bit;

  Limit(int bit) {
    this.bit = bit;
  }

  /**
   * The bit that stands for this limit in {@link #setOf}.
   *
   * @return a power of two
   */
  int bit() {
    return bit;
  }

  /**
   * The limits whose bits are set.
   *
   * @param bits bits of {@link #bit} or-ed together
   * @return the set, unmodifiable
   */
  static Set<Limit> setOf(int bits) {
    return bits < KEPT ? COMBINATIONS.get(bits) : combination(bits);
  }

  /**
   * The same limits in a set that cannot change; costs nothing for a set of {@link #setOf}.
   *
   * @param limits any set
   * @return an unmodifiable equal
   */
  static Set<Limit> frozen(Set<Limit> limits) {
    return setOf(bits(limits));
  }

  /**
   * The bits of a set.
   *
   * @param limits any set
   * @return bits of {@link #bit} or-ed together
   */
  static int bits(Set<Limit> limits) {
    int bits = 0;
    if (!limits.isEmpty()) {
      for (Limit limit : limits) {
        bits |= limit.bit;
      }
    }
    return bits;
  }

  private static Set<Limit> combination(int bits) {
    EnumSet<Limit> set = EnumSet.noneOf(Limit.class);
    for (Limit limit : values()) {
      if ((bits & limit.bit) != 0) {
        set.add(limit);
      }
    }
    return Collections.unmodifiableSet(set);
  }
}
