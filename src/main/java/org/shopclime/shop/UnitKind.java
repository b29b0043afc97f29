package org.shopclime.shop;

/** What kind of cooling unit it is. */
public enum UnitKind {
  /** In a window or through the wall. */
  WINDOW,
  /** On wheels, blowing room air out through one hose. */
  PORTABLE_ONE_HOSE,
  /** On wheels, with a hose for outdoor air in and one for it out. */
  PORTABLE_TWO_HOSES,
  /** Ductless, one speed. */
  HEAT_PUMP,
  /** Ductless, of variable speed. */
  VARIABLE_HEAT_PUMP,
  /** Outdoor air through wet pads, room air out by an open window: a swamp cooler. */
  EVAPORATIVE
}
