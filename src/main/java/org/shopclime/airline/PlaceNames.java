package org.shopclime.airline;

/** What places are called. */
public final class PlaceNames {

  private PlaceNames() {}

  /**
   * The name of a kind of place.
   *
   * @param kind which
   * @return such as "closet with grilles to the room"
   */
  public static String of(Placement.Kind kind) {
    return switch (kind) {
      case IN_ROOM -> "in the room";
      case CLOSED_CLOSET -> "closed closet";
      case CLOSED_INSULATED_CLOSET -> "closed insulated closet";
      case UNDER_STAIR -> "closed space under a stair";
      case GRILLES_TO_ROOM -> "closet with grilles to the room";
      case FAN_TO_ROOM -> "closet with a fan from and to the room";
      case STACK_OUTDOORS -> "closet with a stack from the room to outdoors";
      case FAN_OUTDOORS -> "closet with a fan from the room to outdoors";
      case OUTDOOR_LOOP -> "insulated closet with vents from and to outdoors";
      case OUTDOOR_LOOP_FAN -> "insulated closet with a fan from and to outdoors";
      case LEAN_TO -> "lean-to outside";
      case LOFT -> "loft";
      case OPEN_ROOF -> "under an open roof outdoors";
    };
  }
}
