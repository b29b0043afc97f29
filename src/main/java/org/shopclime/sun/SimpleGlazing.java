package org.shopclime.sun;

/**
 * What lies behind the two figures of a window's label: sun passed and absorbed at normal
 * incidence, and the films at which the label was rated.
 *
 * <p>Source: D. Arasteh, C. Kohler and B. Griffith, report LBNL-2804E (2009) on windows by simple
 * performance indices; coefficients from memory. The report ends at U 7 W/(m²·K); its relations
 * stay smooth to 9, and we use them to there (frames of bare metal).
 *
 * @param transmittance sun passed at normal incidence
 * @param glassResistance surface to surface, m²·K/W
 * @param summerInside resistance of the inside film at the SHGC rating, m²·K/W
 * @param summerOutside resistance of the outside film at the SHGC rating, m²·K/W
 */
record SimpleGlazing(
    double transmittance, double glassResistance, double summerInside, double summerOutside) {

  /** At and below this U the report reckons with two panes or more, W/(m²·K). */
  private static final double DOUBLE_TO = 3.4;

  /** At and above this U the report reckons with one pane, W/(m²·K). */
  private static final double SINGLE_FROM = 4.5;

  static SimpleGlazing of(double uFactor, double shgc) {
    double resistance = 1 / uFactor - winterInside(uFactor) - winterOutside(uFactor);
    double single = singleShare(uFactor);
    double t = single * singleTransmittance(shgc) + (1 - single) * doubleTransmittance(shgc);
    double x = shgc - t;
    double oneInside = 1 / (29.436546 * x * x * x - 21.943415 * x * x + 9.945872 * x + 7.426151);
    double twoInside = 1 / (199.8208128 * x * x * x - 90.639733 * x * x + 19.737055 * x + 6.766575);
    double oneOutside = 1 / (2.225824 * x + 20.57708);
    double twoOutside = 1 / (5.763355 * x + 20.541528);
    return new SimpleGlazing(
        t,
        resistance,
        single * oneInside + (1 - single) * twoInside,
        single * oneOutside + (1 - single) * twoOutside);
  }

  /** 1 for a single pane, 0 for a double; between them in proportion, as in the report. */
  static double singleShare(double uFactor) {
    return Math.max(0, Math.min(1, (uFactor - DOUBLE_TO) / (SINGLE_FROM - DOUBLE_TO)));
  }

  static double winterInside(double uFactor) {
    return uFactor < 5.85
        ? 1 / (0.359073 * Math.log(uFactor) + 6.949915)
        : 1 / (1.788041 * uFactor - 2.886625);
  }

  static double winterOutside(double uFactor) {
    return 1 / (0.025342 * uFactor + 29.163853);
  }

  private static double singleTransmittance(double shgc) {
    return shgc < 0.7206 ? 0.939998 * shgc * shgc + 0.20332 * shgc : 1.30415 * shgc - 0.30515;
  }

  private static double doubleTransmittance(double shgc) {
    return shgc > 0.15 ? 0.085775 * shgc * shgc + 0.963954 * shgc - 0.084958 : 0.41040 * shgc;
  }
}
