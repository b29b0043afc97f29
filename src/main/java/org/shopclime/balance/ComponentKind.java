package org.shopclime.balance;

import java.util.Locale;

/** What a line of the load stands for. */
public enum ComponentKind {
  /** Wall to outdoors, ground or nothing. */
  WALL,
  /** Roof above the room. */
  ROOF,
  /** Ceiling below another room. */
  CEILING,
  /** Floor. */
  FLOOR,
  /** Door leaf with its boards. */
  DOOR,
  /** Window: conduction, transmitted and absorbed sun. */
  WINDOW,
  /** Iron, wood and inner walls: they store heat and drive nothing. */
  CONTENTS,
  /** Air through the leaks, fans off. */
  LEAKAGE,
  /** Air moved by a fan, beyond the leakage. */
  FAN,
  /** Air through an open door. */
  DOOR_AIR,
  /** People. */
  PEOPLE,
  /** Lights. */
  LIGHTS,
  /** Machines with motors. */
  MOTOR,
  /** Air compressor. */
  COMPRESSOR,
  /** Curing oven. */
  OVEN,
  /** Anything else that gives off heat. */
  OTHER,
  /** Dehumidifier. */
  DEHUMIDIFIER,
  /** Air from another room through what stands open between them. */
  ROOM_AIR,
  /** Heat from a room that is held elsewhere. */
  FROM_ROOM;

  /**
   * Whether the line is an opening or face with area and U-factor.
   *
   * @return true for walls, roofs, ceilings, floors, doors and windows
   */
  public boolean isFace() {
    return switch (this) {
      case WALL, ROOF, CEILING, FLOOR, DOOR, WINDOW -> true;
      default -> false;
    };
  }

  /**
   * Whether the line is outdoor air that enters the room.
   *
   * @return true for leakage, fans and open doors
   */
  public boolean isAir() {
    return this == LEAKAGE || this == FAN || this == DOOR_AIR;
  }

  /**
   * The word used in files and tables.
   *
   * @return lower-case words
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
