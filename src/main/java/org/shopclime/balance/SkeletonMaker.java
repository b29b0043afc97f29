package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Window;

/** Takes a shop apart into heat paths, air paths and gains, each with the line it belongs to. */
final class SkeletonMaker {

  private final Shop shop;
  private final SeasonFilms films;
  private final LineList lines = new LineList();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Passages.Way> ways = new ArrayList<>();

  private SkeletonMaker(Shop shop, Season season) {
    this.shop = shop;
    this.films = new SeasonFilms(season);
  }

  /**
   * Heat paths of a shop; every span is taken at its likely value.
   *
   * @param shop a shop that passed its checks
   * @param season which films stand
   * @return the paths
   */
  static Skeleton of(Shop shop, Season season) {
    return new SkeletonMaker(shop, season).make();
  }

  private Skeleton make() {
    List<Room> rooms = shop.rooms();
    for (int room = 0; room < rooms.size(); room++) {
      for (Face face : rooms.get(room).faces()) {
        addFace(FaceSite.of(shop, films, room, face));
      }
      addContents(room, rooms.get(room));
    }
    List<RoomAir> air = new ArrayList<>();
    List<Skeleton.GainPlace> gains = new ArrayList<>();
    for (int room = 0; room < rooms.size(); room++) {
      air.add(AirPaths.of(shop, room, lines));
      for (Gain gain : rooms.get(room).gains()) {
        gains.add(new Skeleton.GainPlace(lines.add(GainHeat.kind(gain), gain.name(), room), gain));
      }
    }
    return new Skeleton(
        rooms,
        lines.all(),
        List.copyOf(pieces),
        air,
        gains,
        rooms.stream().map(MoistureStore::of).toList(),
        List.copyOf(ways));
  }

  private void addFace(FaceSite site) {
    pieces.addAll(FacePaths.of(site, films, lines));
    for (Window window : site.face().windows()) {
      pieces.add(OpeningPaths.window(window, site, films, lines));
    }
    for (Door door : site.face().doors()) {
      pieces.addAll(OpeningPaths.door(door, site, films, lines));
    }
    if (site.face().passage().isPresent() && site.behind() >= 0) {
      boolean looksDown = site.face().tilt() > 90;
      ways.add(
          new Passages.Way(site.face().passage().get(), site.room(), site.behind(), looksDown));
    }
  }

  private void addContents(int room, Room owner) {
    Component component = lines.add(ComponentKind.CONTENTS, "Contents", room);
    for (ContentsPath path : ContentsPath.of(owner.contents())) {
      pieces.add(
          new Piece(
              component,
              room,
              path.nodes(),
              path.area(),
              new Piece.RoomSide(
                  0.9,
                  films.inside(Part.WALL, false, 90),
                  "contents",
                  false,
                  Piece.INNER_ABSORPTANCE,
                  0),
              new Piece.Nothing(),
              Optional.empty()));
    }
  }
}
