package org.shopclime.envelope;

import java.util.List;
import java.util.Optional;

/**
 * Windows by name.
 *
 * <p>Source: U-factors of whole windows from the IECC default table (within 0.05 BTU/(h·ft²·°F) of
 * the ASHRAE fenestration table); glass alone from the ASHRAE fenestration table; solar heat gain
 * from a public glazing page after ASHRAE. Rows marked "from memory" are usual labels. Error: a
 * real label beats this table.
 */
public final class GlassTable {

  /** Solar heat gain of the 3 mm clear pane that shading coefficients refer to. */
  private static final double REFERENCE_SHGC = 0.87;

  private static final String DEFAULTS = "U: IECC default table; SHGC: after ASHRAE";
  private static final String GLASS = "U: ASHRAE fenestration table; SHGC: after ASHRAE";
  private static final String LABELS = "usual labels, from memory";

  private static final List<NamedGlass> ALL =
      List.of(
          glass("single clear, aluminium", 1.20, 0.79, DEFAULTS),
          glass("single clear, aluminium with thermal break", 1.10, 0.79, DEFAULTS),
          glass("single clear, wood or vinyl", 0.95, 0.79, DEFAULTS),
          glass("double clear, aluminium", 0.80, 0.58, DEFAULTS),
          glass("double clear, aluminium with thermal break", 0.65, 0.58, DEFAULTS),
          glass("double clear, wood or vinyl", 0.55, 0.58, DEFAULTS),
          glass("double bronze, aluminium", 0.80, 0.48, DEFAULTS),
          glass("double bronze, wood or vinyl", 0.55, 0.48, DEFAULTS),
          glass("double low-e, aluminium with thermal break", 0.48, 0.31, LABELS),
          glass("double low-e, wood or vinyl", 0.33, 0.31, LABELS),
          glass("clear plastic panel", 1.15, 0.77, LABELS),
          glass("single clear, glass alone", 1.04, 0.86, GLASS),
          glass("double clear, glass alone", 0.48, 0.76, GLASS),
          glass("double bronze, glass alone", 0.48, 0.62, GLASS),
          glass("double low-e argon, glass alone", 0.25, 0.41, GLASS));

  private GlassTable() {}

  /**
   * Names of all windows.
   *
   * @return an unmodifiable list
   */
  public static List<String> names() {
    return ALL.stream().map(NamedGlass::name).toList();
  }

  /**
   * A window by name; case, spaces and the two spellings of aluminium do not matter.
   *
   * @param name its name
   * @return the window, or empty if there is none of that name
   */
  public static Optional<NamedGlass> find(String name) {
    String key = Names.key(name);
    return ALL.stream().filter(glass -> Names.key(glass.name()).equals(key)).findFirst();
  }

  /**
   * Names most like one that was not found.
   *
   * @param name what was typed
   * @return three names, most alike first
   */
  public static List<String> nearest(String name) {
    return Names.nearest(name, names());
  }

  /**
   * Shading coefficient, as older catalogues print it: solar heat gain against that of one clear
   * pane of 3 mm, 0.87.
   *
   * <p>Source: ASHRAE Handbook - Fundamentals; some editions divide by 0.86.
   *
   * @param shgc solar heat gain coefficient, 0 to 1
   * @return shading coefficient, 0 to 1.15
   * @throws IllegalArgumentException if outside that range
   */
  public static double shadingCoefficient(double shgc) {
    return Range.require("solar heat gain coefficient", shgc, 0, 1) / REFERENCE_SHGC;
  }

  private static NamedGlass glass(String name, double uInchPound, double shgc, String source) {
    return new NamedGlass(name, uInchPound * InchPound.U, shgc, source);
  }
}
