package org.shopclime.sun;

/**
 * Sun through a window by angle: part passed, part absorbed in the glass, and where the absorbed
 * part acts.
 *
 * <p>Absorbed sun in a resistance acts on steady flow exactly as if a share of it were absorbed at
 * the inner surface and the rest at the outer one; {@link #innerShare} tells that share.
 *
 * <p>A window known by its label keeps its label: at normal incidence and rating films the two
 * parts make the SHGC, and glass with rating films makes the U-factor. What passes and what is not
 * thrown back fall over the angle as with clear panes, one or two by the U-factor; the rest is
 * absorbed.
 *
 * <p>Error: within 0.02 of handbook tables for clear glass ({@code GlassOpticsPublishedTest}); for
 * tinted or coated panes up to about 0.03 of the SHGC at 60 degrees (from memory of such tables). A
 * frame is treated as part of the glass.
 */
public final class GlassOptics {

  /** Clear float glass, 3 mm: the panes whose shape over the angle a label's window takes. */
  private static final double CLEAR_TRANSMITTANCE = 0.836;

  private static final double CLEAR_REFLECTANCE = 0.075;

  private static final PaneOptics ONE_CLEAR = clear(1);
  private static final PaneOptics TWO_CLEAR = clear(2);

  /** Resistance of the film inside at which given panes are rated, m²·K/W: 8.29 W/(m²·K). */
  private static final double PANES_INSIDE = 1 / 8.29;

  /** Resistance of the film outside at which given panes are rated, m²·K/W: 21.0 W/(m²·K). */
  private static final double PANES_OUTSIDE = 1 / 21.0;

  private final PassByAngle panes;
  private final double glassResistance;
  private final double insideFilm;
  private final double outsideFilm;
  private final Pass diffuse;

  private GlassOptics(
      PassByAngle panes, double glassResistance, double insideFilm, double outsideFilm) {
    this.panes = panes;
    this.glassResistance = glassResistance;
    this.insideFilm = insideFilm;
    this.outsideFilm = outsideFilm;
    this.diffuse = panes.diffuse();
  }

  /**
   * A window by its label.
   *
   * <p>Source: LBNL-2804E (2009) for the normal figures and for the rating films (winter films for
   * U, near 7 to 8 inside and 29 W/(m²·K) outside; summer films for SHGC). Above a U of 5.85 the
   * report's inside film grows with U, so that the glass keeps a small resistance of its own; such
   * a window (a frame of bare metal) loses less than its label under a usual inside film.
   *
   * @param uFactor U of the whole window at winter rating films, W/(m²·K), 0.3 to 9
   * @param shgc solar heat gain coefficient of the whole window at normal incidence, 0.01 to 0.9
   * @return its optics
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static GlassOptics ofWindow(double uFactor, double shgc) {
    Range.check("U-factor, W/(m²·K)", uFactor, 0.3, 9);
    Range.check("SHGC", shgc, 0.01, 0.9);
    SimpleGlazing glazing = SimpleGlazing.of(uFactor, shgc);
    double inward =
        (glazing.summerOutside() + glazing.glassResistance() / 2)
            / (glazing.summerOutside() + glazing.glassResistance() + glazing.summerInside());
    double absorbed = (shgc - glazing.transmittance()) / inward;
    return new GlassOptics(
        new LabelOptics(
            new Pass(glazing.transmittance(), absorbed, absorbed / 2),
            ONE_CLEAR,
            TWO_CLEAR,
            SimpleGlazing.singleShare(uFactor)),
        glazing.glassResistance(),
        glazing.summerInside(),
        glazing.summerOutside());
  }

  /**
   * Panes by their own figures; coatings cannot be told this way. Rated at films of 8.29 inside and
   * 21.0 W/(m²·K) outside (ANSI/ASHRAE Standard 140, editions to 2017; from memory).
   *
   * @param panes the panes
   * @return their optics
   * @throws IllegalArgumentException if the two figures of a pane cannot be those of bare glass
   */
  public static GlassOptics ofPanes(Panes panes) {
    return new GlassOptics(new PaneOptics(panes), panes.resistance(), PANES_INSIDE, PANES_OUTSIDE);
  }

  /**
   * A window by a table over the angle; between its rows figures run straight. Rated at the films
   * of {@link #ofPanes}.
   *
   * @param table the table
   * @param glassResistance resistance of the glass from face to face, m²·K/W, 0 to 10
   * @return its optics
   * @throws IllegalArgumentException if the resistance is outside its range
   */
  public static GlassOptics ofTable(AngleTable table, double glassResistance) {
    Range.check("resistance of the glass, m²·K/W", glassResistance, 0, 10);
    return new GlassOptics(new TableOptics(table), glassResistance, PANES_INSIDE, PANES_OUTSIDE);
  }

  /**
   * The same glass with another resistance from face to face.
   *
   * @param resistance m²·K/W, 0 to 10
   * @return the optics unchanged
   * @throws IllegalArgumentException if the resistance is outside its range
   */
  public GlassOptics withResistance(double resistance) {
    Range.check("resistance of the glass, m²·K/W", resistance, 0, 10);
    return new GlassOptics(panes, resistance, insideFilm, outsideFilm);
  }

  /**
   * Part of the beam that passes.
   *
   * @param incidenceDeg angle from the line square to the glass, degrees, 0 to 180
   * @return 0 to 1; 0 from 90 degrees on
   * @throws IllegalArgumentException if the angle is outside its range
   */
  public double transmittance(double incidenceDeg) {
    return at(incidenceDeg).transmitted();
  }

  /**
   * Part of evenly spread light that passes.
   *
   * @return 0 to 1
   */
  public double diffuseTransmittance() {
    return diffuse.transmitted();
  }

  /**
   * Part of the beam that stays in the glass, all panes.
   *
   * @param incidenceDeg angle from the line square to the glass, degrees, 0 to 180
   * @return 0 to 1; 0 from 90 degrees on
   * @throws IllegalArgumentException if the angle is outside its range
   */
  public double absorptance(double incidenceDeg) {
    return at(incidenceDeg).absorbed();
  }

  /**
   * Part of evenly spread light that stays in the glass, all panes.
   *
   * @return 0 to 1
   */
  public double diffuseAbsorptance() {
    return diffuse.absorbed();
  }

  /**
   * Share of the absorbed beam that acts at the inner surface of the glass; the rest acts at the
   * outer surface.
   *
   * @param incidenceDeg angle from the line square to the glass, degrees, 0 to less than 90
   * @return 0 to 1; one half for a window known by its label or where nothing is absorbed
   * @throws IllegalArgumentException if the angle is outside its range
   */
  public double innerShare(double incidenceDeg) {
    return share(at(Range.check("incidence, degrees", incidenceDeg, 0, Math.nextDown(90.0))));
  }

  /**
   * Share of absorbed evenly spread light that acts at the inner surface of the glass.
   *
   * @return 0 to 1; one half for a window known by its label
   */
  public double diffuseInnerShare() {
    return share(diffuse);
  }

  /**
   * Part of the sun absorbed at normal incidence that flows in, at rating films.
   *
   * @return 0 to 1
   */
  public double inwardFraction() {
    return inward(at(0));
  }

  /**
   * Thermal resistance of the glass, surface to surface, rating films stripped.
   *
   * @return m²·K/W
   */
  public double glassResistance() {
    return glassResistance;
  }

  /**
   * Solar heat gain coefficient for the beam, at rating films.
   *
   * @param incidenceDeg angle from the line square to the glass, degrees, 0 to 180
   * @return 0 to 1; 0 from 90 degrees on
   * @throws IllegalArgumentException if the angle is outside its range
   */
  public double shgc(double incidenceDeg) {
    return gain(at(incidenceDeg));
  }

  /**
   * Solar heat gain coefficient for evenly spread light, at rating films.
   *
   * @return 0 to 1
   */
  public double diffuseShgc() {
    return gain(diffuse);
  }

  /**
   * Film inside at which a window with this label is rated in winter.
   *
   * <p>Source: LBNL-2804E (2009), step 1; from memory.
   *
   * @param uFactor U of the whole window, W/(m²·K), 0.3 to 9
   * @return resistance, m²·K/W
   * @throws IllegalArgumentException if U is outside its range
   */
  public static double ratingInsideFilm(double uFactor) {
    return SimpleGlazing.winterInside(Range.check("U-factor, W/(m²·K)", uFactor, 0.3, 9));
  }

  /**
   * Film outside at which a window with this label is rated in winter.
   *
   * <p>Source: LBNL-2804E (2009), step 1; from memory.
   *
   * @param uFactor U of the whole window, W/(m²·K), 0.3 to 9
   * @return resistance, m²·K/W
   * @throws IllegalArgumentException if U is outside its range
   */
  public static double ratingOutsideFilm(double uFactor) {
    return SimpleGlazing.winterOutside(Range.check("U-factor, W/(m²·K)", uFactor, 0.3, 9));
  }

  private static PaneOptics clear(int count) {
    return new PaneOptics(new Panes(count, CLEAR_TRANSMITTANCE, CLEAR_REFLECTANCE, 0, 0));
  }

  private Pass at(double incidenceDeg) {
    return panes.at(Range.check("incidence, degrees", incidenceDeg, 0, 180));
  }

  private static double share(Pass pass) {
    return pass.absorbed() > 0 ? pass.absorbedInside() / pass.absorbed() : 0.5;
  }

  private double gain(Pass pass) {
    return pass.transmitted() + absorbedInward(pass);
  }

  private double inward(Pass pass) {
    return absorbedInward(pass) / pass.absorbed();
  }

  private double absorbedInward(Pass pass) {
    return (outsideFilm * pass.absorbed() + glassResistance * pass.absorbedInside())
        / (outsideFilm + glassResistance + insideFilm);
  }
}
