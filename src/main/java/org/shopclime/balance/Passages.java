package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.shopclime.air.MoistAir;
import org.shopclime.leakage.RoomExchange;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.Schedule;

/**
 * Ways that stand open between rooms, and the air that changes places through them: as much one way
 * as the other, so that no room's leaks feel it.
 *
 * <p>Flows are those of {@link RoomExchange}. Days are numbered by plans: {@link #plan(DayKind)} on
 * a design day, those of the year's week in a year.
 */
public final class Passages {

  /** Humidity ratio for the density of the air, which 0.01 kg/kg moves by a hundredth. */
  private static final double USUAL_HUMIDITY_RATIO = 0.01;

  /** Air at which flows are taken while they are found, °C. */
  private static final double COLDEST = -90;

  private static final double HOTTEST = 150;

  private final List<Way> ways;
  private final double pressure;
  private final Optional<Double> typedDensity;

  /** When each stands open, by plan. */
  private final List<List<DaySlots>> open = new ArrayList<>();

  /**
   * Ways of a shop.
   *
   * @param ways the ways
   * @param plans number of different days
   * @param slots a schedule on one of them
   * @param pressure Pa
   * @param typedDensity density of dry air that the owner typed, kg/m³
   */
  Passages(
      List<Way> ways,
      int plans,
      BiFunction<Schedule, Integer, DaySlots> slots,
      double pressure,
      Optional<Double> typedDensity) {
    this.ways = ways;
    this.pressure = pressure;
    this.typedDensity = typedDensity;
    for (int plan = 0; plan < plans && !ways.isEmpty(); plan++) {
      int of = plan;
      open.add(ways.stream().map(way -> slots.apply(way.passage().openWhen(), of)).toList());
    }
  }

  /**
   * A way between two rooms.
   *
   * @param passage the owner's way
   * @param first index of the room it is listed in
   * @param second index of the room behind
   * @param firstAbove whether the first lies over the second
   */
  record Way(Passage passage, int first, int second, boolean firstAbove) {

    /** Air that goes each way while it is open, m³/s. */
    double volume(double ofFirst, double ofSecond) {
      if (passage.kind() == PassageKind.DOORWAY) {
        return RoomExchange.doorway(passage.width(), passage.length(), ofFirst, ofSecond);
      }
      return RoomExchange.floorOpening(
          passage.area(),
          passage.depth(),
          firstAbove ? ofFirst : ofSecond,
          firstAbove ? ofSecond : ofFirst);
    }
  }

  /**
   * The plan of a design day.
   *
   * @param kind working or idle day
   * @return its number
   */
  public static int plan(DayKind kind) {
    return kind == DayKind.WORKING ? 0 : 1;
  }

  /**
   * How many there are.
   *
   * @return 0 or more
   */
  public int count() {
    return ways.size();
  }

  /**
   * One of the two rooms.
   *
   * @param way number of the way
   * @return index of the room it is listed in
   */
  public int first(int way) {
    return ways.get(way).first();
  }

  /**
   * The other room.
   *
   * @param way number of the way
   * @return index of the room behind it
   */
  public int second(int way) {
    return ways.get(way).second();
  }

  /**
   * What the owner calls it.
   *
   * @param way number of the way
   * @return name
   */
  public String name(int way) {
    return ways.get(way).passage().name();
  }

  /**
   * Part of the time that a way stands open.
   *
   * @param way number of the way
   * @param plan which day
   * @param slot first five-minute slot
   * @param slots number of slots
   * @return 0 to 1
   */
  public double open(int way, int plan, int slot, int slots) {
    return open.get(plan).get(way).mean(slot, slots);
  }

  /**
   * Air that goes each way, mean over some slots.
   *
   * @param way number of the way
   * @param plan which day
   * @param slot first five-minute slot
   * @param slots number of slots
   * @param first air of the first room, °C
   * @param second air of the second room, °C
   * @return kg of dry air a second
   */
  public double dryAir(int way, int plan, int slot, int slots, double first, double second) {
    double share = open(way, plan, slot, slots);
    return share == 0 ? 0 : share * dryAir(way, first, second);
  }

  /**
   * Air that goes each way while it stands open.
   *
   * @param way number of the way
   * @param first air of the first room, °C
   * @param second air of the second room, °C
   * @return kg of dry air a second
   */
  public double dryAir(int way, double first, double second) {
    double one = Math.max(COLDEST, Math.min(HOTTEST, first));
    double other = Math.max(COLDEST, Math.min(HOTTEST, second));
    double mean = (one + other) / 2;
    double density =
        typedDensity.isPresent()
            ? typedDensity.get()
            : MoistAir.dryAirDensity(mean, USUAL_HUMIDITY_RATIO, pressure);
    return density * ways.get(way).volume(one, other);
  }
}
