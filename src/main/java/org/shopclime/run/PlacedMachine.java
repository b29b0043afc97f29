package org.shopclime.run;

import org.shopclime.air.AirState;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;

/**
 * A machine that stands in some place of a shop: what it gives off there and in the work room while
 * it is in use, and the air that passes its place.
 *
 * @param room index of the work room
 * @param place index of the room the machine stands in; that of the work room where it stands there
 * @param passage air that passes the place
 * @param leftOut index of the line of the shop whose heat is told here and not counted there; -1
 *     for none
 * @param working part of each slot in which the machine is in use, on a working day
 * @param idle the same on an idle day
 * @param placeHeat heat into the place while in use, by the hour, W, either sign
 * @param radiant radiant part of that heat, 0 to 1
 * @param roomHeat heat into the air of the work room while in use, W, either sign
 * @param roomWater water into the air of the work room while in use, kg/s, either sign
 * @param intake dry air that the machine draws from its place while in use and that is let out in
 *     the work room, kg/s, 0 or more
 * @param supply the same drawn straight from outdoors, kg/s, 0 or more; what it brings is told with
 *     heat and water of the room, and it keeps leaks back
 */
public record PlacedMachine(
    int room,
    int place,
    Passage passage,
    int leftOut,
    DaySlots working,
    DaySlots idle,
    Profile placeHeat,
    double radiant,
    Profile roomHeat,
    Profile roomWater,
    Profile intake,
    Profile supply) {

  /** Part of a stretch in which it is in use. */
  double use(DayKind kind, int slot, int slots) {
    return (kind == DayKind.WORKING ? working : idle).mean(slot, slots);
  }

  /** How air passes a place, by its warmth or by a fan. */
  public interface Passage {

    /**
     * Air that passes in a moment.
     *
     * @param celsius air of the place, °C
     * @param room air of the work room
     * @param outdoors air outdoors
     * @param use part of the time that the machine is in use, 0 to 1
     * @return dry air, kg/s; below 0 where it runs backwards
     */
    double dryAir(double celsius, AirState room, AirState outdoors, double use);

    /**
     * Where it comes from when it runs forwards.
     *
     * @return true for the work room, false for outdoors
     */
    boolean fromRoom();

    /**
     * Where it goes to when it runs forwards.
     *
     * @return true for the work room, false for outdoors
     */
    boolean toRoom();

    /**
     * Where air that the machine draws comes from if no other air passes.
     *
     * @return true for the work room, false for outdoors
     */
    boolean stillFromRoom();
  }
}
