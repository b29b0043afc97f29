package org.shopclime.shop;

/** Which rating a capacity is. */
public enum CapacityLabel {
  /** What the machine takes out, before hose and air drawn in where it has them. */
  RATED,
  /** Of portable units: what is left after both, a mean of two outdoor states. */
  SACC
}
