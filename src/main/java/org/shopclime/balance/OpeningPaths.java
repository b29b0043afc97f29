package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Spandrel;
import org.shopclime.shop.Window;
import org.shopclime.sun.GlassOptics;

/** Heat paths through a window or a door. */
final class OpeningPaths {

  private static final double DOOR_EMITTANCE = 0.9;

  private OpeningPaths() {}

  /**
   * The line of a window and its heat path.
   *
   * @param window the owner's window
   * @param site the face it is in
   * @param films films of the season
   * @param lines where its line is put
   * @return the glass, or the opaque panel in its place
   */
  static Piece window(Window window, FaceSite site, SeasonFilms films, LineList lines) {
    GlassOptics optics = Glazing.of(window.glass());
    boolean opaque = window.spandrel().isPresent();
    Component line =
        lines.add(
            opaque ? ComponentKind.WALL : ComponentKind.WINDOW,
            window.name(),
            site.room(),
            site.behind(),
            window.area(),
            site.isNothing() ? 0 : window.glass().uFactor());
    double letThrough = window.innerShade() * window.outerShade();
    return new Piece(
        line,
        site.room(),
        Nodes.of(List.of(Layer.massless("glass", optics.glassResistance()))),
        window.area(),
        site.opening(window),
        outside(window, site, films),
        opaque
            ? Optional.empty()
            : Optional.of(new Piece.Pane(optics, letThrough, place(window, site.face()))),
        Glazing.gaps(window.glass()));
  }

  private static Optional<Piece.Place> place(Window window, Face wall) {
    return Math.abs(wall.tilt() - 90) < 10
        ? Optional.of(
            new Piece.Place(
                wall.azimuth(),
                wall.width(),
                wall.height(),
                window.offset(),
                window.sill(),
                window.width(),
                window.height()))
        : Optional.empty();
  }

  private static Piece.OuterSide outside(Window window, FaceSite site, SeasonFilms films) {
    if (site.isNothing()) {
      return new Piece.Nothing();
    }
    return site.behind() >= 0
        ? new Piece.OtherRoom(site.behind(), site.farSide(window))
        : new Piece.Outdoors(
            site.outerTilt(),
            site.face().azimuth(),
            window.spandrel().map(Spandrel::absorptance).orElse(0.0),
            window.emittanceOutside(),
            window.filmOutside().orElse(site.outdoorFilm(films)),
            Shades.of(site.face(), window));
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
    return FacePaths.through(
        line, assembly, door.area(), site.opening(DOOR_EMITTANCE), outside(door, site, films));
  }

  /** What lies behind a door; in a wall against ground it looks into a light well. */
  private static Piece.OuterSide outside(Door door, FaceSite site, SeasonFilms films) {
    if (site.isNothing()) {
      return new Piece.Nothing();
    }
    return site.behind() >= 0
        ? new Piece.OtherRoom(site.behind(), site.farSide(DOOR_EMITTANCE))
        : new Piece.Outdoors(
            site.outerTilt(),
            site.face().azimuth(),
            door.absorptance().likely(),
            DOOR_EMITTANCE,
            site.outdoorFilm(films),
            Shades.ofDoor(site.face(), door.width(), door.height()));
  }
}
