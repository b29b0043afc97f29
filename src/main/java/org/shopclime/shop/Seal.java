package org.shopclime.shop;

/** State of a door's seals. */
public enum Seal {
  /** Weatherstrip all round, threshold tight. */
  TIGHT,
  /** Old or partial strips. */
  WORN,
  /** Daylight shows around the edge. */
  DAYLIGHT
}
