package org.shopclime.sun;

/**
 * A window of which only the figures at normal incidence are known: over the angle what passes and
 * what is not thrown back fall as with clear panes, a mix of one and two; the rest is absorbed,
 * evenly through the glass.
 */
final class LabelOptics implements PassByAngle {

  private final PassByAngle one;
  private final PassByAngle two;
  private final double oneShare;
  private final double transmittanceScale;
  private final double keptScale;

  /**
   * Optics of a label.
   *
   * @param normal at normal incidence
   * @param one one clear pane
   * @param two two clear panes
   * @param oneShare share of the one, 0 to 1
   */
  LabelOptics(Pass normal, PassByAngle one, PassByAngle two, double oneShare) {
    this.one = one;
    this.two = two;
    this.oneShare = oneShare;
    Pass shape = mixed(one.at(0), two.at(0));
    transmittanceScale = normal.transmitted() / shape.transmitted();
    keptScale =
        (normal.transmitted() + normal.absorbed()) / (shape.transmitted() + shape.absorbed());
  }

  @Override
  public Pass at(double incidenceDeg) {
    return scaled(mixed(one.at(incidenceDeg), two.at(incidenceDeg)));
  }

  @Override
  public Pass diffuse() {
    return scaled(mixed(one.diffuse(), two.diffuse()));
  }

  private Pass mixed(Pass first, Pass second) {
    return first.times(oneShare).plus(second.times(1 - oneShare));
  }

  /** What is thrown back follows bare glass too; what neither passes nor returns is absorbed. */
  private Pass scaled(Pass pass) {
    double transmitted = transmittanceScale * pass.transmitted();
    double absorbed = keptScale * (pass.transmitted() + pass.absorbed()) - transmitted;
    return new Pass(transmitted, absorbed, absorbed / 2);
  }
}
