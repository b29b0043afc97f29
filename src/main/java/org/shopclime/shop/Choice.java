package org.shopclime.shop;

/** Which end of an unknown figure to reckon with. */
public enum Choice {
  /** The end with less to cool. */
  KIND,
  /** The most likely value. */
  LIKELY,
  /** The end with more to cool. */
  UNKIND
}
