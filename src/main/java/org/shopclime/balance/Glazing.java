package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.envelope.GlassGap;
import org.shopclime.shop.Glass;
import org.shopclime.shop.GlassPanes;
import org.shopclime.sun.AngleTable;
import org.shopclime.sun.GlassOptics;
import org.shopclime.sun.Panes;

/** Optics and resistance of the owner's glass: by panes, by a table of angles, or by its label. */
final class Glazing {

  private Glazing() {}

  /**
   * Optics of a glass. Angles go before panes and panes before the label; for the resistance its
   * own figure goes before panes and panes before the label.
   *
   * @param glass a glass that passed its checks
   * @return optics
   */
  static GlassOptics of(Glass glass) {
    GlassOptics optics =
        glass
            .panes()
            .map(panes -> GlassOptics.ofPanes(panes(panes)))
            .orElseGet(() -> GlassOptics.ofWindow(glass.uFactor(), glass.shgc()));
    if (!glass.angles().isEmpty()) {
      AngleTable table =
          new AngleTable(
              glass.angles().stream()
                  .map(
                      row ->
                          new AngleTable.Row(
                              row.angle(),
                              row.transmittance(),
                              row.absorbedOutside(),
                              row.absorbedInside()))
                  .toList());
      optics = GlassOptics.ofTable(table, optics.glassResistance());
    }
    return glass.resistance().map(optics::withResistance).orElse(optics);
  }

  /** Gaps whose conductance follows temperature; none where a resistance is told. */
  static Optional<Piece.Gaps> gaps(Glass glass) {
    return glass
        .panes()
        .filter(panes -> panes.gap().isPresent() && panes.count() > 1)
        .filter(panes -> glass.resistance().isEmpty())
        .map(
            panes ->
                new Piece.Gaps(
                    new GlassGap(panes.gap().get(), panes.emittance()),
                    (int) panes.count() - 1,
                    panes.count() * panes.thickness() / panes.conductivity()));
  }

  private static Panes panes(GlassPanes told) {
    int count = (int) told.count();
    double pane = told.thickness() / told.conductivity();
    double gap =
        told.gapConductance()
            .or(
                () ->
                    told.gap()
                        .map(width -> new GlassGap(width, told.emittance()).ratedConductance()))
            .map(conductance -> 1 / conductance)
            .orElse(0.0);
    if (told.index().isPresent()) {
      double depth = told.extinction().orElse(0.0) * told.thickness();
      return Panes.ofIndex(count, told.index().get(), depth, pane, gap);
    }
    return new Panes(
        count, told.transmittance().orElseThrow(), told.reflectance().orElseThrow(), pane, gap);
  }
}
