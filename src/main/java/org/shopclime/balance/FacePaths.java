package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Nodes;
import org.shopclime.envelope.Path;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;

/** Heat paths through what is left of a face beside its windows and doors. */
final class FacePaths {

  private FacePaths() {}

  /**
   * The line of a face and its heat paths.
   *
   * @param site face and room
   * @param films films of the season
   * @param lines where its line is put
   * @return paths; one for a slab, else one for each way through the framing
   */
  static List<Piece> of(FaceSite site, SeasonFilms films, LineList lines) {
    Face face = site.face();
    double net = face.netArea();
    ComponentKind kind = ComponentKind.valueOf(face.part().name());
    if (site.isGround() && face.build() instanceof Build.Slab slab) {
      SlabPath path = SlabPath.of(slab, net, site.insideFilm());
      Component line = lines.add(kind, face.name(), site.room(), -1, net, path.uFactor());
      Piece.OuterSide below =
          path.outerConductance() > 0
              ? new Piece.Ground(
                  path.outerConductance(),
                  path.depth(),
                  path.soilConductivity(),
                  path.edgeLoss(),
                  held(face))
              : new Piece.Nothing();
      return List.of(
          new Piece(line, site.room(), path.nodes(), net, site.inside(), below, Optional.empty()));
    }
    Assembly assembly = Builds.assembly(face.build(), face.part());
    double outsideFilm = site.isGround() ? 0 : site.outsideFilm();
    double uFactor = site.isNothing() ? 0 : assembly.uFactor(outsideFilm, site.insideFilm());
    Component line = lines.add(kind, face.name(), site.room(), site.behind(), net, uFactor);
    return through(line, assembly, net, site.inside(), outside(site, films));
  }

  /** Paths side by side through a face or door. */
  static List<Piece> through(
      Component line,
      Assembly assembly,
      double area,
      Piece.RoomSide inside,
      Piece.OuterSide outside) {
    List<Piece> pieces = new ArrayList<>();
    for (Path path : assembly.paths()) {
      if (path.fraction() > 0 && area > 0) {
        pieces.add(
            new Piece(
                line,
                line.room(),
                Nodes.of(path.layers()),
                area * path.fraction(),
                inside,
                outside,
                Optional.empty(),
                Optional.empty(),
                Optional.of(path)));
      }
    }
    return pieces;
  }

  private static Piece.OuterSide outside(FaceSite site, SeasonFilms films) {
    Face face = site.face();
    if (site.isNothing()) {
      return new Piece.Nothing();
    }
    if (site.isGround()) {
      return new Piece.Ground(Piece.DIRECT_CONTACT, 0.5, 2, 0, held(face));
    }
    if (site.behind() >= 0) {
      return new Piece.OtherRoom(site.behind(), site.farSide());
    }
    return new Piece.Outdoors(
        site.outerTilt(),
        face.azimuth(),
        face.absorptance().likely(),
        face.emittanceOutside(),
        site.outdoorFilm(films),
        Shades.of(face));
  }

  private static OptionalDouble held(Face face) {
    return face.groundTemperature().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
