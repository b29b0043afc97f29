package org.shopclime.envelope;

/** Which way heat passes through a face or an air space. */
public enum HeatFlow {
  /** Through an upright face. */
  HORIZONTAL,
  /** Upwards: warm below, cold above. */
  UP,
  /** Downwards: warm above, cold below. */
  DOWN
}
