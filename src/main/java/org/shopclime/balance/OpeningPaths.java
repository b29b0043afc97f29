package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.shop.Door;
import org.shopclime.shop.Window;
import org.shopclime.sun.GlassOptics;

/** Heat paths through a window or a door. */
final class OpeningPaths {

  private static final double GLASS_EMITTANCE = 0.84;
  private static final double DOOR_EMITTANCE = 0.9;

  private OpeningPaths() {}

  /**
   * The line of a window and its heat path.
   *
   * @param window the owner's window
   * @param site the face it is in
   * @param films films of the season
   * @param lines where its line is put
   * @return the glass
   */
  static Piece window(Window window, FaceSite site, SeasonFilms films, LineList lines) {
    GlassOptics optics = GlassOptics.ofWindow(window.glass().uFactor(), window.glass().shgc());
    Component line =
        lines.add(
            ComponentKind.WINDOW,
            window.name(),
            site.room(),
            site.behind(),
            window.area(),
            site.isNothing() ? 0 : window.glass().uFactor());
    Piece.Shade shade =
        Shades.of(site.face(), window.overhang(), window.width(), window.height(), window.sill());
    return new Piece(
        line,
        site.room(),
        Nodes.of(List.of(Layer.massless("glass", optics.glassResistance()))),
        window.area(),
        site.opening(GLASS_EMITTANCE),
        outside(site, 0, GLASS_EMITTANCE, films, shade),
        Optional.of(
            new Piece.Pane(
                optics, window.innerShade() * window.outerShade(), optics.diffuseInnerShare())));
  }

  /**
   * The line of a door and its heat paths.
   *
   * @param door the owner's door
   * @param site the face it is in
   * @param films films of the season
   * @param lines where its line is put
   * @return paths
   */
  static List<Piece> door(Door door, FaceSite site, SeasonFilms films, LineList lines) {
    Assembly assembly = Builds.door(door);
    double uFactor = site.isNothing() ? 0 : assembly.uFactor(site.outsideFilm(), site.insideFilm());
    Component line =
        lines.add(
            ComponentKind.DOOR, door.name(), site.room(), site.behind(), door.area(), uFactor);
    Piece.Shade shade = Shades.of(site.face(), door.width(), door.height());
    Piece.OuterSide outside =
        outside(site, door.absorptance().likely(), DOOR_EMITTANCE, films, shade);
    return FacePaths.through(line, assembly, door.area(), site.opening(DOOR_EMITTANCE), outside);
  }

  /** What lies behind a window or door; in a wall against ground it looks into a light well. */
  private static Piece.OuterSide outside(
      FaceSite site, double absorptance, double emittance, SeasonFilms films, Piece.Shade shade) {
    if (site.isNothing()) {
      return new Piece.Nothing();
    }
    return site.behind() >= 0
        ? new Piece.OtherRoom(site.behind(), site.farSide(emittance))
        : new Piece.Outdoors(
            site.outerTilt(),
            site.face().azimuth(),
            absorptance,
            emittance,
            films.outside(),
            shade);
  }
}
