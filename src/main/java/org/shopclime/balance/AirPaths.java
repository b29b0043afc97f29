package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.leakage.BlowerDoor;
import org.shopclime.leakage.DoorCrack;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.leakage.Tightness;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorScreen;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

/** What lets outdoor air into a room, from the owner's words. */
final class AirPaths {

  private static final double SECONDS_PER_HOUR = 3600;

  private AirPaths() {}

  static RoomAir of(Shop shop, int index, LineList lines) {
    Room room = shop.rooms().get(index);
    Leakage leakage = room.leakage();
    double area = 0;
    double constant = 0;
    if (leakage instanceof Leakage.AirChanges changes) {
      constant = changes.airChanges().likely() * room.airVolume() / SECONDS_PER_HOUR;
    } else {
      area = leakageArea(leakage, room) + cracks(room);
    }
    Component leaks = lines.add(ComponentKind.LEAKAGE, "Leakage", index);
    List<RoomAir.FanPlace> fans = new ArrayList<>();
    for (Fan fan : room.fans()) {
      Component line = lines.add(ComponentKind.FAN, fan.name(), index);
      fans.add(new RoomAir.FanPlace(line, fan, Optional.empty()));
    }
    for (Gain gain : room.gains()) {
      if (gain instanceof Gain.Oven oven && oven.batches().map(OvenBatches::vent).orElse(0.0) > 0) {
        Fan vent = vent(oven);
        Component line = lines.add(ComponentKind.FAN, vent.name(), index);
        fans.add(new RoomAir.FanPlace(line, vent, Optional.of(oven)));
      }
    }
    ToolAir.of(shop)
        .flatMap(air -> air.fan(index))
        .ifPresent(
            fan -> {
              Component line = lines.add(ComponentKind.FAN, fan.name(), index);
              fans.add(new RoomAir.FanPlace(line, fan, Optional.empty()));
            });
    List<RoomAir.DoorPlace> doors = new ArrayList<>();
    for (Face face : room.faces()) {
      for (Door door : face.doors()) {
        if (door.openMinutes() > 0 && isOutdoors(face)) {
          doors.add(
              new RoomAir.DoorPlace(
                  lines.add(ComponentKind.DOOR_AIR, door.name() + " open", index),
                  door.width(),
                  door.height(),
                  door.openMinutes(),
                  door.openWhen(),
                  protection(door.screen())));
        }
      }
    }
    return new RoomAir(leaks, area, constant, List.copyOf(fans), List.copyOf(doors));
  }

  private static DoorExchange.Protection protection(DoorScreen screen) {
    return switch (screen) {
      case NOTHING -> DoorExchange.Protection.NONE;
      case STRIPS -> DoorExchange.Protection.STRIP_CURTAIN;
      case AIR_DOOR -> DoorExchange.Protection.AIR_CURTAIN;
    };
  }

  /** The fan that draws air through an oven. */
  private static Fan vent(Gain.Oven oven) {
    return new Fan(
        oven.name() + " vent",
        FanWay.OUT,
        oven.batches().orElseThrow().vent(),
        oven.when(),
        FanUse.OVEN_HOOD,
        SECONDS_PER_HOUR,
        0);
  }

  /** Outside doors count by their cracks, not by their area. */
  private static double leakageArea(Leakage leakage, Room room) {
    if (leakage instanceof Leakage.Area known) {
      return known.area().likely();
    }
    if (leakage instanceof Leakage.BlowerDoor test) {
      return BlowerDoor.leakageArea(test.airChanges50().likely(), room.airVolume());
    }
    Leakage.Grade grade = ((Leakage.Tightness) leakage).grade();
    Tightness tightness =
        grade == Leakage.Grade.UNKNOWN ? Tightness.LEAKY : Tightness.valueOf(grade.name());
    double exposed = 0;
    for (Face face : room.faces()) {
      if (!face.behind().equalsIgnoreCase("ground") && !face.behind().equalsIgnoreCase("nothing")) {
        exposed += face.grossArea();
        for (Door door : face.doors()) {
          exposed -= isOutdoors(face) ? door.area() : 0;
        }
      }
    }
    return tightness.leakageArea(exposed);
  }

  /** Cracks round outside doors; a blower door or an area measured includes them. */
  private static double cracks(Room room) {
    if (!(room.leakage() instanceof Leakage.Tightness)) {
      return 0;
    }
    double area = 0;
    for (Face face : room.faces()) {
      if (isOutdoors(face)) {
        for (Door door : face.doors()) {
          area +=
              DoorCrack.leakageArea(DoorCrack.Seal.valueOf(door.seal().name()), door.perimeter());
        }
      }
    }
    return area;
  }

  private static boolean isOutdoors(Face face) {
    return face.behind().toLowerCase(Locale.ROOT).equals("outdoors");
  }
}
