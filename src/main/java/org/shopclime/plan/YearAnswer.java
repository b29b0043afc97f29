package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Station;
import org.shopclime.run.Cooling;
import org.shopclime.run.YearResult;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/**
 * A shop through a typical year, as it is described and left alone.
 *
 * @param shop the shop
 * @param home the station its owner named
 * @param weatherFile name of the hourly file that was run; empty where day types were laid out
 * @param room index of the room that is told first: the unit's, or the first cooled one
 * @param unit the shop's unit, where it has one and that room is to be cooled by it
 * @param described the year with the plants and the unit of the description
 * @param alone the same year without any cooling and heating
 * @param bill the year in money
 * @param warnings what to look at, in the order found
 * @param notes what the reader of the hourly file filled or found odd
 * @param habits the unit run by one habit or another; nothing without a unit or without work
 */
public record YearAnswer(
    Shop shop,
    Station home,
    Optional<String> weatherFile,
    int room,
    Optional<Cooling> unit,
    YearResult described,
    YearResult alone,
    YearBill bill,
    List<Warning> warnings,
    List<String> notes,
    Optional<HabitAnswer> habits) {

  /** Copies the lists. */
  public YearAnswer {
    warnings = List.copyOf(warnings);
    notes = List.copyOf(notes);
  }

  /**
   * An answer that leaves habits out.
   *
   * @param shop the shop
   * @param home the station its owner named
   * @param weatherFile name of the hourly file that was run; empty where day types were laid out
   * @param room index of the room that is told first: the unit's, or the first cooled one
   * @param unit the shop's unit, where it has one and that room is to be cooled by it
   * @param described the year with the plants and the unit of the description
   * @param alone the same year without any cooling and heating
   * @param bill the year in money
   * @param warnings what to look at, in the order found
   * @param notes what the reader of the hourly file filled or found odd
   */
  public YearAnswer(
      Shop shop,
      Station home,
      Optional<String> weatherFile,
      int room,
      Optional<Cooling> unit,
      YearResult described,
      YearResult alone,
      YearBill bill,
      List<Warning> warnings,
      List<String> notes) {
    this(
        shop,
        home,
        weatherFile,
        room,
        unit,
        described,
        alone,
        bill,
        warnings,
        notes,
        Optional.empty());
  }

  /**
   * Whether recorded hours were run. Only then is there a hottest and a coldest hour to tell: day
   * types are means, and means flatten peaks.
   *
   * @return false where day types were laid out
   */
  public boolean isHourly() {
    return weatherFile.isPresent();
  }

  /**
   * Where the weather was observed; the sun is reckoned for it.
   *
   * @return station of the year that was run
   */
  public Station station() {
    return described.year().weather().station();
  }

  /**
   * What cools a room, in fact and not only by the description.
   *
   * @param of index of the room
   * @return plant that acts in it
   */
  public Plant cooling(int of) {
    if (described.year().plants().isCooledIdeally(of)) {
      return Plant.IDEAL;
    }
    return unit.filter(owned -> owned.room() == of).isPresent() ? Plant.UNIT : Plant.NONE;
  }

  /**
   * What heats a room.
   *
   * @param of index of the room
   * @return plant that acts in it; the unit where it is a heat pump, whatever helps it
   */
  public Plant heating(int of) {
    if (!described.year().plants().isHeated(of)) {
      return Plant.NONE;
    }
    return unit.filter(owned -> owned.room() == of && owned.heats()).isPresent()
        ? Plant.UNIT
        : Plant.IDEAL;
  }

  /** What acts in a room. */
  public enum Plant {
    /** The shop's unit. */
    UNIT,
    /** A plant that always gives what the set point takes. */
    IDEAL,
    /** Nothing. */
    NONE
  }
}
