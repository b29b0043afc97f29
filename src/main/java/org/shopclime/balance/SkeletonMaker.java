package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Nodes;
import org.shopclime.envelope.Path;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Build;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Window;
import org.shopclime.sun.GlassOptics;

/** Takes a shop apart into heat paths, air paths and gains, each with the line it belongs to. */
final class SkeletonMaker {

  private static final double GLASS_EMITTANCE = 0.84;
  private static final double DOOR_EMITTANCE = 0.9;

  private final Shop shop;
  private final SeasonFilms films;
  private final List<Component> components = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();

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
        addFace(room, face);
      }
      addContents(room, rooms.get(room));
    }
    List<RoomAir> air = new ArrayList<>();
    List<Skeleton.GainPlace> gains = new ArrayList<>();
    for (int room = 0; room < rooms.size(); room++) {
      air.add(AirPaths.of(shop, room, this::line));
      for (Gain gain : rooms.get(room).gains()) {
        gains.add(new Skeleton.GainPlace(line(GainHeat.kind(gain), gain.name(), room), gain));
      }
    }
    return new Skeleton(
        rooms,
        List.copyOf(components),
        List.copyOf(pieces),
        air,
        gains,
        rooms.stream().map(MoistureStore::of).toList());
  }

  private Component line(ComponentKind kind, String name, int room) {
    return line(kind, name, room, -1, 0, 0);
  }

  private Component line(
      ComponentKind kind, String name, int room, int behind, double area, double uFactor) {
    Component component = new Component(components.size(), kind, name, room, behind, area, uFactor);
    components.add(component);
    return component;
  }

  private void addFace(int room, Face face) {
    int behind = roomNamed(face.behind());
    Part filmPart = filmPart(room, face.part(), behind);
    boolean ground = face.behind().toLowerCase(Locale.ROOT).equals("ground");
    boolean nothing = isNothing(face);
    Piece.RoomSide inside =
        new Piece.RoomSide(
            face.emittanceInside(),
            films.inside(filmPart, ground, face.tilt()),
            plane(face.part(), face.tilt(), face.azimuth()),
            face.part() == Part.FLOOR);
    Assembly assembly = Builds.assembly(face.build(), face.part());
    double insideFilm = films.insideResistance(filmPart, ground, face.tilt());
    double outsideFilm = behind >= 0 ? insideFilm : films.outsideResistance();
    double net = face.netArea();
    ComponentKind kind = kind(face.part());
    if (ground && face.build() instanceof Build.Slab slab) {
      SlabPath path = SlabPath.of(slab, net, insideFilm);
      Component component = line(kind, face.name(), room, -1, net, path.uFactor());
      pieces.add(
          new Piece(
              component,
              room,
              path.nodes(),
              net,
              inside,
              path.outerConductance() > 0
                  ? new Piece.Ground(
                      path.outerConductance(),
                      path.depth(),
                      path.soilConductivity(),
                      path.edgeLoss())
                  : new Piece.Nothing(),
              Optional.empty()));
    } else {
      double uFactor = nothing ? 0 : assembly.uFactor(ground ? 0 : outsideFilm, insideFilm);
      Component component = line(kind, face.name(), room, behind, net, uFactor);
      Piece.OuterSide outside = outside(face, inside, behind, ground, nothing);
      addPaths(component, room, assembly, net, inside, outside);
    }
    addWindows(room, face, inside, behind);
    addDoors(room, face, inside, behind, insideFilm, outsideFilm);
  }

  /**
   * Heat passes a level partition towards the cooled room in summer, in whichever room it is
   * listed: the floor of a loft above a cooled room has the films of a ceiling.
   */
  private Part filmPart(int room, Part part, int behind) {
    boolean coolBehind =
        behind >= 0
            && shop.rooms().get(behind).use() == RoomUse.COOLED
            && shop.rooms().get(room).use() == RoomUse.FLOATING;
    if (coolBehind && part == Part.FLOOR) {
      return Part.CEILING;
    }
    return coolBehind && part == Part.CEILING ? Part.FLOOR : part;
  }

  /** Slope of the outer side; a floor or ceiling left at the slope of a wall is level. */
  private static double tilt(Face face) {
    return switch (face.part()) {
      case FLOOR -> face.tilt() > 90 ? face.tilt() : 180;
      case CEILING -> face.tilt() < 90 ? face.tilt() : 0;
      case WALL, ROOF -> face.tilt();
    };
  }

  private Piece.OuterSide outside(
      Face face, Piece.RoomSide inside, int behind, boolean ground, boolean nothing) {
    if (nothing) {
      return new Piece.Nothing();
    }
    if (ground) {
      return new Piece.Ground(Piece.DIRECT_CONTACT, 0.5, 2, 0);
    }
    if (behind >= 0) {
      return new Piece.OtherRoom(behind, farSide(face, inside, face.emittanceOutside()));
    }
    return new Piece.Outdoors(
        tilt(face),
        face.azimuth(),
        face.absorptance().likely(),
        face.emittanceOutside(),
        films.outside(),
        shade(face, Optional.empty(), face.width(), face.height(), 0));
  }

  /** What lies behind a window or door; in a wall against ground it looks into a light well. */
  private Piece.OuterSide opening(
      Face face,
      Piece.RoomSide wall,
      int behind,
      double absorptance,
      double emittance,
      Piece.Shade shade) {
    if (isNothing(face)) {
      return new Piece.Nothing();
    }
    return behind >= 0
        ? new Piece.OtherRoom(behind, farSide(face, wall, emittance))
        : new Piece.Outdoors(
            tilt(face), face.azimuth(), absorptance, emittance, films.outside(), shade);
  }

  private static boolean isNothing(Face face) {
    return face.behind().toLowerCase(Locale.ROOT).equals("nothing");
  }

  /** The side of a partition that looks into the room behind it: a floor is the ceiling below. */
  private static Piece.RoomSide farSide(Face face, Piece.RoomSide near, double emittance) {
    Part part =
        switch (face.part()) {
          case FLOOR -> Part.CEILING;
          case CEILING -> Part.FLOOR;
          case WALL, ROOF -> face.part();
        };
    return new Piece.RoomSide(
        emittance,
        near.convective(),
        plane(part, 180 - face.tilt(), face.azimuth() + 180),
        part == Part.FLOOR);
  }

  private void addPaths(
      Component component,
      int room,
      Assembly assembly,
      double area,
      Piece.RoomSide inside,
      Piece.OuterSide outside) {
    for (Path path : assembly.paths()) {
      if (path.fraction() > 0 && area > 0) {
        pieces.add(
            new Piece(
                component,
                room,
                Nodes.of(path.layers()),
                area * path.fraction(),
                inside,
                outside,
                Optional.empty()));
      }
    }
  }

  private void addWindows(int room, Face face, Piece.RoomSide wall, int behind) {
    for (Window window : face.windows()) {
      GlassOptics optics = GlassOptics.ofWindow(window.glass().uFactor(), window.glass().shgc());
      Component component =
          line(
              ComponentKind.WINDOW,
              window.name(),
              room,
              behind,
              window.area(),
              isNothing(face) ? 0 : window.glass().uFactor());
      Piece.RoomSide inside =
          new Piece.RoomSide(GLASS_EMITTANCE, wall.convective(), wall.plane(), false);
      Piece.Shade shade =
          shade(face, window.overhang(), window.width(), window.height(), window.sill());
      Piece.OuterSide outside = opening(face, wall, behind, 0, GLASS_EMITTANCE, shade);
      pieces.add(
          new Piece(
              component,
              room,
              Nodes.of(List.of(Layer.massless("glass", optics.glassResistance()))),
              window.area(),
              inside,
              outside,
              Optional.of(
                  new Piece.Pane(
                      optics,
                      window.innerShade() * window.outerShade(),
                      optics.diffuseInnerShare()))));
    }
  }

  private void addDoors(
      int room, Face face, Piece.RoomSide wall, int behind, double insideFilm, double outsideFilm) {
    for (Door door : face.doors()) {
      Assembly assembly = Builds.door(door);
      Component component =
          line(
              ComponentKind.DOOR,
              door.name(),
              room,
              behind,
              door.area(),
              isNothing(face) ? 0 : assembly.uFactor(outsideFilm, insideFilm));
      Piece.RoomSide inside =
          new Piece.RoomSide(DOOR_EMITTANCE, wall.convective(), wall.plane(), false);
      Piece.Shade shade = shade(face, Optional.empty(), door.width(), door.height(), 0);
      Piece.OuterSide outside =
          opening(face, wall, behind, door.absorptance().likely(), DOOR_EMITTANCE, shade);
      addPaths(component, room, assembly, door.area(), inside, outside);
    }
  }

  private static Piece.Shade shade(
      Face face, Optional<Overhang> own, double width, double height, double sill) {
    if (own.isPresent()) {
      return new Piece.Shade(face.treeShade(), own.get().depth(), own.get().gap(), width, height);
    }
    if (face.overhang().isPresent()) {
      Overhang eave = face.overhang().get();
      double below = Math.max(0, face.height() - sill - height);
      return new Piece.Shade(face.treeShade(), eave.depth(), eave.gap() + below, width, height);
    }
    return new Piece.Shade(face.treeShade(), 0, 0, width, height);
  }

  private void addContents(int room, Room owner) {
    Component component = line(ComponentKind.CONTENTS, "Contents", room);
    for (ContentsPath path : ContentsPath.of(owner.contents())) {
      pieces.add(
          new Piece(
              component,
              room,
              path.nodes(),
              path.area(),
              new Piece.RoomSide(0.9, films.inside(Part.WALL, false, 90), "contents", false),
              new Piece.Nothing(),
              Optional.empty()));
    }
  }

  private int roomNamed(String name) {
    for (int room = 0; room < shop.rooms().size(); room++) {
      if (shop.rooms().get(room).name().equals(name)) {
        return room;
      }
    }
    return -1;
  }

  private static ComponentKind kind(Part part) {
    return ComponentKind.valueOf(part.name());
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
}
