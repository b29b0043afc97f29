package org.shopclime.balance;

import java.util.List;
import java.util.Locale;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Spandrel;
import org.shopclime.shop.Window;

/**
 * A face in its room: what lies behind it and which films stand before it.
 *
 * @param room index of its room
 * @param face the owner's face
 * @param behind index of the room behind it; -1: none
 * @param inside its side towards its room
 * @param insideFilm combined film resistance inside, m²·K/W, as printed
 * @param outsideFilm combined film resistance on the other side, m²·K/W, as printed
 */
record FaceSite(
    int room, Face face, int behind, Piece.RoomSide inside, double insideFilm, double outsideFilm) {

  /** Where a face of a shop lies. */
  static FaceSite of(Shop shop, SeasonFilms films, int room, Face face) {
    int behind = roomNamed(shop.rooms(), face.behind());
    Part part = filmPart(shop.rooms(), room, face.part(), behind);
    boolean ground = isGround(face);
    Piece.RoomSide inside =
        new Piece.RoomSide(
            face.emittanceInside(),
            face.filmInside().orElse(films.inside(part, ground, face.tilt())),
            plane(face.part(), face.tilt(), face.azimuth()),
            face.part() == Part.FLOOR,
            face.absorptanceInside(),
            face.netArea() > 0 ? face.sunShare() / face.netArea() : 0);
    double insideFilm = films.insideResistance(part, ground, face.tilt());
    double outsideFilm = behind >= 0 ? insideFilm : films.outsideResistance();
    return new FaceSite(room, face, behind, inside, insideFilm, outsideFilm);
  }

  private static int roomNamed(List<Room> rooms, String name) {
    for (int room = 0; room < rooms.size(); room++) {
      if (rooms.get(room).name().equals(name)) {
        return room;
      }
    }
    return -1;
  }

  /**
   * Heat passes a level partition towards the cooled room in summer, in whichever room it is
   * listed: the floor of a loft above a cooled room has the films of a ceiling.
   */
  private static Part filmPart(List<Room> rooms, int room, Part part, int behind) {
    boolean coolBehind =
        behind >= 0
            && rooms.get(behind).use() == RoomUse.COOLED
            && rooms.get(room).use() == RoomUse.FLOATING;
    if (coolBehind && part == Part.FLOOR) {
      return Part.CEILING;
    }
    return coolBehind && part == Part.CEILING ? Part.FLOOR : part;
  }

  private static String plane(Part part, double tilt, double azimuth) {
    if (part == Part.FLOOR || tilt > 175) {
      return "down";
    }
    if (part == Part.CEILING || tilt < 5) {
      return "up";
    }
    return Math.round(tilt) + "/" + Math.floorMod(Math.round(azimuth), 360L);
  }

  private static boolean isGround(Face face) {
    return face.behind().toLowerCase(Locale.ROOT).equals("ground");
  }

  boolean isGround() {
    return isGround(face);
  }

  /** Whether no heat passes. */
  boolean isNothing() {
    return face.behind().toLowerCase(Locale.ROOT).equals("nothing");
  }

  /** The inner side of a door in this face. */
  Piece.RoomSide opening(double emittance) {
    return new Piece.RoomSide(
        emittance, inside.convective(), inside.plane(), false, Piece.INNER_ABSORPTANCE, 0);
  }

  /** The inner side of a window in this face. */
  Piece.RoomSide opening(Window window) {
    double absorptance =
        window.spandrel().map(Spandrel::absorptanceInside).orElse(Piece.INNER_ABSORPTANCE);
    return new Piece.RoomSide(
        window.emittanceInside(),
        window.filmInside().orElse(inside.convective()),
        inside.plane(),
        false,
        absorptance,
        0);
  }

  /** Convective film of the face outdoors, W/(m²·K). */
  double outdoorFilm(SeasonFilms films) {
    return face.filmOutside().orElse(films.outside());
  }

  /** The side of this partition that looks into the room behind it. */
  Piece.RoomSide farSide() {
    return farSide(
        face.emittanceOutside(),
        face.filmOutside().orElse(inside.convective()),
        face.absorptance().likely());
  }

  /** The far side of a door in this partition. */
  Piece.RoomSide farSide(double emittance) {
    return farSide(
        emittance, face.filmOutside().orElse(inside.convective()), Piece.INNER_ABSORPTANCE);
  }

  /** The far side of a window in this partition. */
  Piece.RoomSide farSide(Window window) {
    double film = window.filmOutside().orElse(face.filmOutside().orElse(inside.convective()));
    double absorptance =
        window.spandrel().map(Spandrel::absorptance).orElse(Piece.INNER_ABSORPTANCE);
    return farSide(window.emittanceOutside(), film, absorptance);
  }

  /** A floor is the ceiling of the room below. */
  private Piece.RoomSide farSide(double emittance, double film, double absorptance) {
    Part part =
        switch (face.part()) {
          case FLOOR -> Part.CEILING;
          case CEILING -> Part.FLOOR;
          case WALL, ROOF -> face.part();
        };
    return new Piece.RoomSide(
        emittance,
        film,
        plane(part, 180 - face.tilt(), face.azimuth() + 180),
        part == Part.FLOOR,
        absorptance,
        0);
  }

  /** Slope of the outer side; a floor or ceiling left at the slope of a wall is level. */
  double outerTilt() {
    return switch (face.part()) {
      case FLOOR -> face.tilt() > 90 ? face.tilt() : 180;
      case CEILING -> face.tilt() < 90 ? face.tilt() : 0;
      case WALL, ROOF -> face.tilt();
    };
  }
}
