package org.shopclime.sun;

/**
 * What becomes of one unit of light.
 *
 * @param transmitted passes all panes
 * @param absorbed stays in the panes
 * @param absorbedInside stays in the panes, each pane weighted by its depth: the part that acts as
 *     if absorbed at the inner surface
 */
record Pass(double transmitted, double absorbed, double absorbedInside) {

  Pass plus(Pass other) {
    return new Pass(
        transmitted + other.transmitted,
        absorbed + other.absorbed,
        absorbedInside + other.absorbedInside);
  }

  Pass times(double factor) {
    return new Pass(transmitted * factor, absorbed * factor, absorbedInside * factor);
  }
}
