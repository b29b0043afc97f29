package org.shopclime.sun;

/**
 * Light through equal panes of bare glass at any angle: Fresnel's reflection at each surface and
 * Bouguer's absorption along the slanted way for both polarisations, their mean for each pane, and
 * all reflections between the panes.
 *
 * <p>Source: index and absorption of a pane from its two normal figures as in W. A. Furler, Angular
 * dependence of optical properties of homogeneous glasses, ASHRAE Transactions 97(2), 1991; panes
 * put together layer by layer. Each pane is given unpolarised light, as the rating of windows does
 * (ISO 15099, and the tables in {@code published/sun}); to follow either polarisation through all
 * panes would pass 0.024 more at 60 degrees through two panes.
 */
final class PaneOptics implements PassByAngle {

  private final Panes panes;
  private final double index;
  private final double opticalDepth;
  private final Pass diffuse;

  PaneOptics(Panes panes) {
    this.panes = panes;
    double t = panes.transmittance();
    double r = panes.reflectance();
    // Reflectance of one surface, so that the pane has both its normal figures.
    double beta = t * t - r * r + 2 * r + 1;
    double surface = (beta - Math.sqrt(beta * beta - 4 * (2 - r) * r)) / (2 * (2 - r));
    double root = Math.sqrt(surface);
    this.index = (1 + root) / (1 - root);
    this.opticalDepth = -Math.log((r - surface) / (surface * t));
    if (!(opticalDepth >= -1e-9)) {
      throw new IllegalArgumentException(
          "a pane with transmittance " + t + " and reflectance " + r + " is no bare glass");
    }
    this.diffuse = PassByAngle.super.diffuse();
  }

  @Override
  public Pass diffuse() {
    return diffuse;
  }

  @Override
  public Pass at(double incidenceDeg) {
    if (incidenceDeg >= 90) {
      return new Pass(0, 0, 0);
    }
    double sine = Math.sin(Math.toRadians(incidenceDeg));
    double inside = Math.sqrt(1 - sine * sine / (index * index));
    double outside = Math.cos(Math.toRadians(incidenceDeg));
    double through = Math.exp(-opticalDepth / inside);
    double across = (outside - index * inside) / (outside + index * inside);
    double along = (inside - index * outside) / (inside + index * outside);
    return pass(across * across, along * along, through);
  }

  private Pass pass(double across, double along, double through) {
    double acrossT = paneTransmittance(across, through);
    double alongT = paneTransmittance(along, through);
    double t = (acrossT + alongT) / 2;
    double r = (across * (1 + through * acrossT) + along * (1 + through * alongT)) / 2;
    int count = panes.count();
    double[] behind = new double[count + 1]; // reflectance of pane i and all behind it
    for (int i = count - 1; i >= 0; i--) {
      behind[i] = r + t * t * behind[i + 1] / (1 - r * behind[i + 1]);
    }
    double arriving = 1;
    double absorbed = 0;
    double weighted = 0;
    for (int i = 0; i < count; i++) {
      double leaving = arriving * t / (1 - r * behind[i + 1]);
      double kept = arriving * (1 - behind[i]) - leaving * (1 - behind[i + 1]);
      absorbed += kept;
      weighted += kept * panes.depth(i);
      arriving = leaving;
    }
    return new Pass(arriving, absorbed, weighted);
  }

  private static double paneTransmittance(double surface, double through) {
    double bounce = surface * through;
    return (1 - surface) * (1 - surface) * through / (1 - bounce * bounce);
  }
}
