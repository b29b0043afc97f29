package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.balance.AirBook;
import org.shopclime.balance.AirSuction;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/**
 * The air of the work room: what enters and leaves, what it costs, what else could be done.
 *
 * @param book the balance in the hour in which it costs most
 * @param rated what the shop's unit gives by its label, W, if there is one
 * @param options other ways to move the same air; none moves less, none brings a flame
 */
public record AirAnswer(AirBook book, OptionalDouble rated, List<Option> options) {

  private static final double NEWTONS_PER_POUND = 0.45359237 * 9.80665;
  private static final double LED = 0.8;
  private static final double HAIR = 1;

  /** Copies the list. */
  public AirAnswer {
    options = List.copyOf(options);
  }

  /** What is done with the air. */
  public enum Way {
    /** Filtered and given back to the room. */
    FILTERED_RETURN,
    /** Four fifths of it led from outdoors to the hood. */
    LED_TO_HOOD
  }

  /**
   * Another way.
   *
   * @param fan name of the fan
   * @param place where it stands in the shop file
   * @param way what is done
   * @param saved heat and moisture that no longer come in in that hour, W
   * @param suction of the room then, Pa; NaN where no pressure is known
   */
  public record Option(String fan, String place, Way way, double saved, double suction) {}

  /** The air of a room on a day. */
  static AirAnswer of(Shop shop, HotDay day, int room) {
    AirBook book = book(shop, day, room);
    List<Option> options = new ArrayList<>();
    List<Fan> fans = shop.rooms().get(room).fans();
    for (int i = 0; i < fans.size(); i++) {
      for (Way way : Way.values()) {
        Optional<Fan> other = other(fans.get(i), way);
        if (other.isPresent()) {
          AirBook then = book(with(shop, room, i, other.get()), day, room);
          double saved = book.total() - then.total();
          if (saved > HAIR) {
            options.add(
                new Option(
                    fans.get(i).name(),
                    "rooms[" + room + "].fans[" + i + "]",
                    way,
                    saved,
                    then.suction().pascals()));
          }
        }
      }
    }
    OptionalDouble rated =
        shop.unit()
            .map(owned -> PortableAnswer.asMachine(owned).capacity())
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    return new AirAnswer(book, rated, options);
  }

  private static AirBook book(Shop shop, HotDay day, int room) {
    return ShopModel.cooling(shop, day, ShopModel.Holding.HELD).airBook(room);
  }

  private static Shop with(Shop shop, int room, int fan, Fan other) {
    List<Room> rooms = new ArrayList<>(shop.rooms());
    List<Fan> fans = new ArrayList<>(rooms.get(room).fans());
    fans.set(fan, other);
    rooms.set(room, rooms.get(room).withFans(fans));
    return shop.withRooms(rooms);
  }

  /** Dust may return through a filter; fumes never, nor what may be fumes by its name. */
  private static Optional<Fan> other(Fan fan, Way way) {
    boolean dust = fan.use() == FanUse.DUST_COLLECTOR || fan.use() == FanUse.BLAST_CABINET;
    if (fan.way() != FanWay.OUT || (way == Way.FILTERED_RETURN && mayBeFumes(fan.name()))) {
      return Optional.empty();
    }
    if (way == Way.FILTERED_RETURN) {
      return dust ? Optional.of(fan.withWay(FanWay.FILTERED_RETURN).withLedToHood(0)) : none();
    }
    boolean hood = dust || fan.use() == FanUse.OVEN_HOOD;
    return hood && fan.ledToHood() < LED ? Optional.of(fan.withLedToHood(LED)) : none();
  }

  private static Optional<Fan> none() {
    return Optional.empty();
  }

  private static boolean mayBeFumes(String name) {
    String plain = name.toLowerCase(Locale.ROOT);
    return List.of("paint", "spray", "solvent", "fume", "weld", "oven", "powder", "smoke").stream()
        .anyMatch(plain::contains);
  }

  /**
   * Part of the unit that outdoor air takes.
   *
   * @return 1 is all it gives by its label; nothing without a unit
   */
  public OptionalDouble partOfUnit() {
    return rated.isPresent()
        ? OptionalDouble.of(book.total() / rated.getAsDouble())
        : OptionalDouble.empty();
  }

  /** What the owner should know beside the figures. */
  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    AirSuction suction = book.suction();
    if (!suction.fans().isEmpty()) {
      String path = suction.place().contains("fans") ? suction.place() + ".flow" : suction.place();
      String pulled =
          "With "
              + String.join(", ", suction.fans())
              + " running the shop lies about "
              + Math.round(suction.pascals())
              + " Pa below outdoors";
      if (suction.endangersFlue()) {
        warnings.add(
            new Warning(
                path,
                pulled
                    + "; the flue in the shop stands "
                    + Math.round(suction.flueLimit())
                    + " Pa before its gases, carbon monoxide among them, may come back. Let air in"
                    + " (model fuel-gas code, CPSC, EPA; a licensed person must test it)."));
      }
      suction
          .door()
          .filter(AirSuction.HardDoor::isTooHard)
          .ifPresent(
              door ->
                  warnings.add(
                      new Warning(
                          path,
                          pulled
                              + ": "
                              + door.name()
                              + " then takes about "
                              + Math.round(door.newtons())
                              + " N ("
                              + Math.round(door.newtons() / NEWTONS_PER_POUND)
                              + " lbf) to open, more than the 30 lbf a door on a way out may take"
                              + " (NFPA 101). Let make-up air in; local code decides.")));
      if (rated.isPresent() && book.byFans() > rated.getAsDouble()) {
        warnings.add(
            new Warning(
                path,
                "The outdoor air that fans draw in brings more heat and moisture than the unit can"
                    + " take out by its label: no unit of this size holds while they run. Lead"
                    + " make-up air to the hood or work in cool hours; never move less air than the"
                    + " work needs (OSHA 1910.94, NIOSH)."));
      }
    }
    return warnings;
  }
}
