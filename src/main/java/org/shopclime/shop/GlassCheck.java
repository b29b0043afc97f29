package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.quantity.Problem;

/** Whether panes and angles of a glass can be. */
final class GlassCheck {

  private static final double SLACK = 1e-9;

  private GlassCheck() {}

  /**
   * Checks the glass of a window.
   *
   * @param path where the glass stands
   * @param window its window
   * @return what must be mended
   */
  static List<Problem> of(String path, Window window) {
    List<Problem> problems = new ArrayList<>();
    window.glass().panes().ifPresent(panes -> panes(path + ".panes", panes, problems));
    angles(path + ".angles", window.glass().angles(), problems);
    return problems;
  }

  private static void panes(String path, GlassPanes panes, List<Problem> problems) {
    if (panes.count() != Math.rint(panes.count())) {
      problems.add(new Problem(path + ".count", panes.count() + " panes", "a whole number"));
    }
    if (panes.count() > 1 && panes.gapConductance().isPresent() == panes.gap().isPresent()) {
      String found = panes.gap().isPresent() ? "both" : "neither";
      String takes = "either \"gap\", its width, or \"gapConductance\", such as \"6 W/m2K\"";
      problems.add(new Problem(path + ".gap", found, takes));
    }
    boolean byShares = panes.transmittance().isPresent() && panes.reflectance().isPresent();
    boolean byIndex = panes.index().isPresent() && panes.extinction().isPresent();
    boolean half =
        panes.transmittance().isPresent() != panes.reflectance().isPresent()
            || panes.index().isPresent() != panes.extinction().isPresent();
    if (half || byShares == byIndex) {
      String found = byShares && byIndex ? "both ways" : "neither way in full";
      String takes =
          "\"transmittance\" and \"reflectance\" of one pane, or its \"index\" and \"extinction\"";
      problems.add(new Problem(path, found, takes));
    } else if (byShares && panes.transmittance().get() + panes.reflectance().get() > 1 + SLACK) {
      double sum = panes.transmittance().get() + panes.reflectance().get();
      String takes = "no more than 1";
      problems.add(
          new Problem(path, "transmittance and reflectance of " + sum + " together", takes));
    } else if (byIndex && panes.extinction().get() * panes.thickness() > 4) {
      String takes = "an extinction that lets through 2 % of the sun or more";
      problems.add(new Problem(path + ".extinction", "a pane that lets no sun through", takes));
    }
  }

  private static void angles(String path, List<GlassAngle> rows, List<Problem> problems) {
    if (rows.isEmpty()) {
      return;
    }
    boolean rises = rows.size() > 1 && rows.get(0).angle() == 0;
    for (int i = 0; i < rows.size(); i++) {
      GlassAngle row = rows.get(i);
      rises &= i == 0 || row.angle() > rows.get(i - 1).angle();
      double sum = row.transmittance() + row.absorbedOutside() + row.absorbedInside();
      if (sum > 1 + SLACK) {
        String found = sum + " of the sun passing and staying";
        problems.add(new Problem(path + "[" + i + "]", found, "no more than 1"));
      }
    }
    if (!rises || rows.get(rows.size() - 1).angle() != 90) {
      String takes = "two rows or more, their angles rising from 0 to 90 degrees";
      problems.add(new Problem(path, "other angles", takes));
    }
  }
}
