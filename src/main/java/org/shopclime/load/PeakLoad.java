package org.shopclime.load;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.shopclime.balance.Component;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;

/**
 * Loads of cooled rooms by component, by superposition, against one separate run of everything.
 *
 * <p>Every driver belongs to one line; temperatures of a room's lines are told from its set point,
 * so that a line whose drivers are off brings nothing. Air that enters a held room is a heat flow
 * outside the network and is added to its line directly; so is the air from other rooms that stand
 * open to it, one line for each way, which is the air of that room as all drivers together make it.
 */
public final class PeakLoad {

  private final ShopModel model;
  private final HeldDay day;
  private final RoomAirLoads rooms;
  private final List<Profile> air = new ArrayList<>();

  private PeakLoad(ShopModel model) {
    this.model = model;
    this.day = new HeldDay(model);
    this.rooms = new RoomAirLoads(model, day);
    for (int room = 0; room < model.rooms(); room++) {
      air.add(day.air(room));
    }
  }

  /**
   * Loads of a shop on its day.
   *
   * @param model the shop on a day, with cooled rooms held
   * @return loads of all cooled rooms
   */
  public static ShopLoad of(ShopModel model) {
    PeakLoad load = new PeakLoad(model);
    List<RoomLoad> rooms = new ArrayList<>();
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        rooms.add(load.room(room));
      }
    }
    return new ShopLoad(rooms, load.air);
  }

  /**
   * Loads of a shop on its day without their lines, which take most of the time.
   *
   * @param model the shop on a day, with cooled rooms held
   * @return loads of all cooled rooms, the same totals as {@link #of}, each without lines
   */
  public static ShopLoad totals(ShopModel model) {
    PeakLoad load = new PeakLoad(model);
    List<RoomLoad> rooms = new ArrayList<>();
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        rooms.add(load.total(room, List.of(), new AirLoads(model, room, load.rooms)));
      }
    }
    return new ShopLoad(rooms, load.air);
  }

  private RoomLoad total(int room, List<Line> lines, AirLoads airLoads) {
    Profile plant = day.plant(room);
    Profile sensible = Profile.of(hour -> airLoads.sensibleTotal(hour) - plant.at(hour));
    Profile latent = airLoads.latentTotal();
    DrierLoad drier = DrierLoad.of(model, room, airLoads);
    return new RoomLoad(
        room,
        model.roomName(room),
        lines,
        sensible.plus(drier.sensible()),
        latent.plus(drier.latent()));
  }

  private RoomLoad room(int room) {
    int[] lineOf = model.linesOf(room);
    AirLoads airLoads = new AirLoads(model, room, rooms);
    NavigableSet<Integer> ids = new TreeSet<>();
    for (int line : lineOf) {
      ids.add(line);
    }
    List<Line> lines = new ArrayList<>();
    for (int id : ordered(ids)) {
      if (id < 0 || model.components().get(id).kind() != ComponentKind.CONTENTS) {
        lines.add(line(room, id, lineOf, airLoads));
      }
    }
    lines.addAll(rooms.lines(room));
    DrierLoad.of(model, room, airLoads).line().ifPresent(lines::add);
    return total(room, lines, airLoads);
  }

  /** Lines in the order of their components, those from other rooms last. */
  private static List<Integer> ordered(NavigableSet<Integer> ids) {
    List<Integer> ordered = new ArrayList<>(ids.tailSet(0));
    ordered.addAll(ids.headSet(0));
    return ordered;
  }

  private Line line(int room, int id, int[] lineOf, AirLoads airLoads) {
    Profile network = network(room, id, lineOf);
    if (id < 0) {
      int other = -1 - id;
      return new Line(
          "from " + model.roomName(other),
          ComponentKind.FROM_ROOM,
          0,
          0,
          Profile.of(hour -> model.setPoint(other) - model.setPoint(room)),
          network,
          Profile.of(hour -> 0));
    }
    Component component = model.components().get(id);
    return new Line(
        component.name(),
        component.kind(),
        component.area(),
        component.uFactor(),
        drive(room, component),
        network.plus(airLoads.sensible(id)),
        airLoads.latent(id));
  }

  /** What the drivers of a line bring by way of faces and things; air of the room itself: none. */
  private Profile network(int room, int id, int[] lineOf) {
    if (id >= 0 && model.components().get(id).kind().isAir()) {
      return Profile.of(hour -> 0);
    }
    Profile plant = day.plant(room, lineOf, id);
    return Profile.of(hour -> -plant.at(hour));
  }

  private Profile drive(int room, Component component) {
    int behind = component.room() == room ? component.behindRoom() : component.room();
    Profile there = behind >= 0 ? air.get(behind) : model.behindTemperature(component.index());
    double here = model.setPoint(room);
    return Profile.of(hour -> there.at(hour) - here);
  }
}
