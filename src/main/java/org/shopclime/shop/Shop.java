package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.UnitSystem;

/**
 * A shop as its owner describes it.
 *
 * @param name what the owner calls it
 * @param note anything worth keeping with it
 * @param units system the file is written in and the form opens in
 * @param place where it stands and which hot day counts
 * @param work when work goes on
 * @param rooms rooms, attic and loft included; the first is the work room
 * @param unit the cooling unit, if there is one
 * @param prices what energy and changes cost
 * @param air what is known of the compressor and its line
 * @param flue a burner in the shop, by how its gases leave
 */
public record Shop(
    @Say(label = "Name", help = "What you call this shop.") String name,
    @Say(label = "Note", help = "Anything worth keeping with it.", otherwise = "-") String note,
    @Say(label = "Units", help = "Inch-pound or SI.", otherwise = "inch-pound") UnitSystem units,
    @Say(label = "Place and hot day") Place place,
    @Say(label = "Working time") Work work,
    @Say(label = "Rooms") List<Room> rooms,
    @Say(
            label = "Cooling unit",
            help = "The one you have, or the one you think of buying.",
            otherwise = "none")
        Optional<CoolingUnit> unit,
    @Say(
            label = "Prices",
            help =
                "For what it costs to run and what a change pays back; all may be left as it is.",
            otherwise = "{}")
        Prices prices,
    @Say(
            label = "Compressed air",
            help =
                "For the comparison of places for the compressor; all may be left as it is. The machine itself is under the room, at its heat from work.",
            otherwise = "{}")
        CompressedAir air,
    @Say(
            label = "Flame with a flue",
            help = "A burner in the shop and how its gases leave; for warnings about suction.",
            otherwise = "none")
        FlueKind flue) {

  /** Copies the list. */
  public Shop {
    rooms = List.copyOf(rooms);
  }

  /**
   * A shop of whose prices nothing is said.
   *
   * @param name what the owner calls it
   * @param note anything worth keeping with it
   * @param units system the file is written in and the form opens in
   * @param place where it stands and which hot day counts
   * @param work when work goes on
   * @param rooms rooms, attic and loft included; the first is the work room
   * @param unit the cooling unit, if there is one
   */
  public Shop(
      String name,
      String note,
      UnitSystem units,
      Place place,
      Work work,
      List<Room> rooms,
      Optional<CoolingUnit> unit) {
    this(
        name,
        note,
        units,
        place,
        work,
        rooms,
        unit,
        Prices.unsaid(),
        CompressedAir.unsaid(),
        FlueKind.NONE);
  }

  /**
   * The room the unit cools, in which people work: the one the unit names, or the first cooled one,
   * or the first.
   *
   * @return index of the room
   */
  public int unitRoom() {
    int first = -1;
    for (int room = 0; room < rooms.size(); room++) {
      if (unit.isPresent() && rooms.get(room).name().equals(unit.get().room())) {
        return room;
      }
      if (first < 0 && rooms.get(room).use() == RoomUse.COOLED) {
        first = room;
      }
    }
    return Math.max(first, 0);
  }

  /**
   * The same with another name.
   *
   * @param name what the owner calls it
   * @return the changed record
   */
  public Shop withName(String name) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another system of units.
   *
   * @param units system the file is written in
   * @return the changed record
   */
  public Shop withUnits(UnitSystem units) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another place.
   *
   * @param place where it stands
   * @return the changed record
   */
  public Shop withPlace(Place place) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another working time.
   *
   * @param work when work goes on
   * @return the changed record
   */
  public Shop withWork(Work work) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another list of rooms.
   *
   * @param rooms rooms
   * @return the changed record
   */
  public Shop withRooms(List<Room> rooms) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another cooling unit.
   *
   * @param unit the cooling unit, if there is one
   * @return the changed record
   */
  public Shop withUnit(Optional<CoolingUnit> unit) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with other prices.
   *
   * @param prices what energy and changes cost
   * @return the changed record
   */
  public Shop withPrices(Prices prices) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with other compressed air.
   *
   * @param air what is known of the compressor and its line
   * @return the changed record
   */
  public Shop withAir(CompressedAir air) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }

  /**
   * The same with another burner.
   *
   * @param flue a burner in the shop, by how its gases leave
   * @return the changed record
   */
  public Shop withFlue(FlueKind flue) {
    return new Shop(name, note, units, place, work, rooms, unit, prices, air, flue);
  }
}
