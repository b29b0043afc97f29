package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.shopclime.balance.GainWarnings;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.Climates;
import org.shopclime.climate.LaidOutYear;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.climate.WeatherReading;
import org.shopclime.climate.WeatherYear;
import org.shopclime.run.Cooling;
import org.shopclime.run.RoomTooHot;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearRun;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** Answers what a typical year in a shop takes and how warm it gets. */
public final class Yearly {

  /** Above it work is called hot, °C; 85 °F (common practice). */
  private static final double HOT = (85 - 32) / 1.8;

  private final Shop shop;
  private final StationClimate home;
  private final Climates climates;

  /**
   * A question about a shop.
   *
   * @param shop a shop that passed its checks
   * @param climates climate tables
   */
  public Yearly(Shop shop, Climates climates) {
    this.shop = shop;
    this.climates = climates;
    home = HotDays.climate(shop.place(), climates);
  }

  /**
   * The typical year of the shop's station, laid out from its day types.
   *
   * @param found warnings found when the shop was read
   * @param progress told how far it is
   * @return answer, or nothing where the tables have no day types of the station
   * @throws RoomTooHot if a room gets too hot to be reckoned
   * @throws CancellationException if {@code progress} is cancelled
   */
  public Optional<YearAnswer> ofDayTypes(List<Warning> found, Progress progress) {
    Steps steps = new Steps(progress);
    steps.at("weather", 0);
    Optional<TypicalYear> types = climates.typicalYear(home.station());
    return types.map(
        known -> answer(LaidOutYear.of(known, home), Optional.empty(), List.of(), found, steps));
  }

  /**
   * A year of recorded hours.
   *
   * @param file name of the file they were read from
   * @param hours the year, with what its reader noted
   * @param found warnings found when the shop was read
   * @param progress told how far it is
   * @return answer; sun, position and ground are those of the file's station
   * @throws RoomTooHot if a room gets too hot to be reckoned
   * @throws CancellationException if {@code progress} is cancelled
   */
  public YearAnswer ofHours(
      String file, WeatherReading.Good hours, List<Warning> found, Progress progress) {
    return answer(hours.year(), Optional.of(file), hours.notes(), found, new Steps(progress));
  }

  private YearAnswer answer(
      WeatherYear hours,
      Optional<String> file,
      List<String> notes,
      List<Warning> found,
      Steps steps) {
    steps.at("weather", 0.1);
    YearWeather weather = YearWeather.of(hours);
    int room = Sizing.room(shop);
    Optional<Cooling> unit = unitOf(shop);
    steps.at("the year as described", 0.1);
    YearResult described = YearRun.of(ShopYear.of(shop, weather), unit);
    steps.at("the year left alone", 0.4);
    YearResult alone = YearRun.of(ShopYear.of(leftAlone(), weather), Optional.empty());
    List<Warning> warnings = new ArrayList<>(found);
    warnings.addAll(ofUnit(room, unit));
    warnings.addAll(GainWarnings.of(shop));
    warnings.addAll(ofPrices());
    YearBill bill = bill(described, weather, steps);
    Optional<HabitAnswer> habits = habits(described.year(), bill.prices(), steps, 0.8);
    steps.at("done", 1);
    return new YearAnswer(
        shop, home.station(), file, room, unit, described, alone, bill, warnings, notes, habits);
  }

  /**
   * The unit left on, set back and on demand in the typical year of the shop's station, alone.
   *
   * @param progress told how far it is
   * @return answer; nothing without a unit that cools its room, without work, or without day types
   * @throws RoomTooHot if a room gets too hot to be reckoned
   * @throws CancellationException if {@code progress} is cancelled
   */
  public Optional<HabitAnswer> habits(Progress progress) {
    if (unitOf(shop).isEmpty()) {
      return Optional.empty();
    }
    Steps steps = new Steps(progress);
    return climates
        .typicalYear(home.station())
        .map(types -> YearWeather.of(LaidOutYear.of(types, home)))
        .flatMap(
            weather ->
                habits(ShopYear.of(shop, weather), PriceBook.of(shop, home.station()), steps, 0.2));
  }

  private Optional<HabitAnswer> habits(ShopYear year, PriceBook prices, Steps steps, double from) {
    return unitOf(shop)
        .flatMap(
            owned ->
                new Habits(shop, HotDays.of(shop.place(), climates), year.weather(), owned, prices)
                    .answer(year, steps, from, 1));
  }

  private YearBill bill(YearResult described, YearWeather weather, Steps steps) {
    YearBill plain = YearBill.of(shop, home.station(), described);
    if (shop.prices().changes().isEmpty()) {
      return plain;
    }
    int room = Sizing.room(shop);
    return new Paying(
            shop,
            plain.prices(),
            described,
            after -> YearRun.of(ShopYear.of(after, weather), unitOf(after)),
            year -> year.workHoursAbove(YearResult.Figure.AIR, room, HOT),
            steps)
        .bill(plain);
  }

  /** The unit, where its room is to be cooled by it. */
  private static Optional<Cooling> unitOf(Shop shop) {
    Room told = shop.rooms().get(Sizing.room(shop));
    boolean cools = told.use() == RoomUse.COOLED && told.cooling() == RoomCooling.UNIT;
    return Sizing.cooling(shop).filter(owned -> cools);
  }

  /** Changes that have a price and leave the shop as it is. */
  private List<Warning> ofPrices() {
    return shop.prices().changes().isEmpty()
        ? List.of()
        : Paying.idle(shop).stream()
            .map(
                index ->
                    new Warning(
                        "prices.changes[" + index + "]",
                        "No saving is reckoned: the shop is like that already, or has no part that"
                            + " could take it."))
            .toList();
  }

  private Shop leftAlone() {
    return shop.withRooms(
        shop.rooms().stream()
            .map(room -> room.withPlants(RoomCooling.NONE, RoomHeating.NONE))
            .map(room -> room.withDehumidifier(Optional.empty()))
            .toList());
  }

  /** Rooms that wait for a unit in vain, and a unit that waits for a room. */
  private List<Warning> ofUnit(int told, Optional<Cooling> unit) {
    List<Warning> warnings = new ArrayList<>();
    for (int room = 0; room < shop.rooms().size(); room++) {
      Room each = shop.rooms().get(room);
      boolean waits = each.use() == RoomUse.COOLED && each.cooling() == RoomCooling.UNIT;
      if (waits && shop.unit().isPresent() && room != told) {
        warnings.add(
            new Warning(
                "rooms[" + room + "]",
                "The unit stands in \""
                    + shop.rooms().get(told).name()
                    + "\"; nothing cools this room through the year."));
      }
    }
    if (shop.unit().isPresent() && unit.isEmpty()) {
      warnings.add(
          new Warning(
              "unit",
              "The unit is not run: its room, \""
                  + shop.rooms().get(told).name()
                  + "\", is not to be cooled by it through the year."));
    }
    unit.flatMap(Yearly::oddLabel).ifPresent(warnings::add);
    return warnings;
  }

  private static Optional<Warning> oddLabel(Cooling unit) {
    OptionalDouble held = unit.heldAt47();
    return held.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                "unit.heating.hspf2",
                "No usual heat pump of that heat at 47 °F makes this label; "
                    + held.getAsDouble()
                    + " W of heat for each watt there are taken, the nearest."));
  }
}
