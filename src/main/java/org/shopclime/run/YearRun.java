package org.shopclime.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * Runs a shop through a year, with ideal plants, its unit, or neither.
 *
 * <p>Weather and schedules are means of each hour, and most hours are one step. An hour in which
 * the air of a room jumps begins with a step of five minutes. One in which a plant starts, stops or
 * comes to its set point is made of such steps and of quarters in which it does not; one in which
 * the season turns or a set point rises, of twelve. What happens in a step is {@link YearStep}'s.
 * The last days of the year are run before it, so that walls and ground do not begin from a guess.
 *
 * <p>Error: {@code YearAgainstFullTest} holds it against the full network in steps of five minutes.
 */
public final class YearRun {

  private static final double HOUR = 3600;

  /** Lengths of step, s: an hour, five minutes, what these leave of an hour, and a quarter. */
  private static final double[] LENGTHS = {HOUR, 300, HOUR - 300, HOUR / 4};

  /** Number of the length that is a whole hour. */
  static final int WHOLE = 0;

  static final int FINE = 1;
  private static final int REST = 2;
  static final int QUARTER = 3;
  private static final int FINE_STEPS = 12;
  private static final int QUARTER_STEPS = 3;

  /** Days run before the year: what a guess leaves of itself is below 0.01 K then. */
  private static final int BEFORE = 20;

  /** Days before these whose means are taken to have lasted: about what walls remember. */
  private static final int MEAN = 8;

  private final ShopYear year;
  private final Optional<Cooling> unit;
  private final int before;
  private final List<YearStep> networks = new ArrayList<>();
  private final Moisture moisture;
  private final YearResult result;
  private YearStep now;
  private Optional<DayLedger> ledger = Optional.empty();
  private boolean telling;

  YearRun(ShopYear year, Optional<Cooling> unit) {
    this(year, unit, BEFORE);
  }

  YearRun(ShopYear year, Optional<Cooling> unit, int before) {
    this.year = year;
    this.unit = unit;
    this.before = before;
    moisture = Moisture.of(year, YearWeather.HOURS - before * 24);
    for (int number = 0; number < year.networks(); number++) {
      ModeMarch march =
          year.networks() > 1
              ? ModeMarch.handingOver(year.network(number), LENGTHS)
              : new ModeMarch(year.network(number), LENGTHS);
      Drivers drivers = new Drivers(year.network(number));
      networks.add(new YearStep(year, unit, march, drivers, moisture));
    }
    result = new YearResult(year);
  }

  /**
   * Runs a year.
   *
   * @param year the shop through the year
   * @param unit its unit, if it has one; it works in its room where that is to be cooled by it
   * @return what came of it
   * @throws RoomTooHot if a room gets hotter than 80 °C; the message names it
   */
  public static YearResult of(ShopYear year, Optional<Cooling> unit) {
    return new YearRun(year, unit).run();
  }

  /** Keeps the account of heat and water from here on. */
  void audit(DayLedger kept) {
    ledger = Optional.of(kept);
  }

  /** Heat in the air and the walls of all rooms, J above 0 °C. */
  double heatHeld() {
    return now.heatHeld();
  }

  /** Water in the air and the stores of all rooms, kg. */
  double waterHeld() {
    return moisture.held();
  }

  YearResult run() {
    warmUp();
    return runYear();
  }

  /** The days before the year. */
  void warmUp() {
    warmUp(YearWeather.HOURS);
  }

  /** The days before an hour that is told first, December before January. */
  void warmUp(int until) {
    int first = until - before * 24;
    now = networks.get(year.networkOf(inYear(first)));
    now.start(inYear(first), MEAN * 24);
    for (int hour = first; hour < until; hour++) {
      hour(inYear(hour));
    }
  }

  private static int inYear(int hour) {
    return Math.floorMod(hour, YearWeather.HOURS);
  }

  /** The year itself, from what the days before left. */
  YearResult runYear() {
    return run(0, YearWeather.HOURS);
  }

  /** Hours that follow what was run before; the other hours of the result are not told. */
  YearResult run(int from, int to) {
    telling = true;
    for (int hour = from; hour < to; hour++) {
      hour(hour);
    }
    unit.ifPresent(
        pump ->
            pump.heater()
                .ifPresent(heater -> PumpHours.tell(result, pump.room(), heater, from, to)));
    return result;
  }

  private void hour(int hour) {
    YearStep next = networks.get(year.networkOf(hour));
    boolean turns = next != now;
    next.begin(hour);
    if (turns) {
      next.takeOver(now, ledger);
      now = next;
    }
    if (turns || now.rises()) {
      fine(hour, 0, FINE_STEPS);
    } else if (!tryStep(hour, WHOLE, FINE_STEPS)) {
      step(hour, 1);
      if (!tryStep(hour, REST, FINE_STEPS)) {
        fine(hour, 1, QUARTER_STEPS);
        for (int part = QUARTER_STEPS; part < FINE_STEPS; part += QUARTER_STEPS) {
          if (!tryStep(hour, QUARTER, part + QUARTER_STEPS)) {
            fine(hour, part, part + QUARTER_STEPS);
          }
        }
      }
    }
  }

  private void fine(int hour, int from, int to) {
    for (int part = from + 1; part <= to; part++) {
      step(hour, part);
    }
  }

  /** A long step that ends with a twelfth of the hour, unless a plant starts or stops in it. */
  private boolean tryStep(int hour, int length, int part) {
    if (!now.look(length, LENGTHS[length], (double) part / FINE_STEPS, false)) {
      return false;
    }
    go(hour, length, part);
    return true;
  }

  private void step(int hour, int part) {
    now.look(FINE, LENGTHS[FINE], (double) part / FINE_STEPS, true);
    go(hour, FINE, part);
  }

  private void go(int hour, int length, int part) {
    now.go(ledger, likelyAfter(part));
    if (telling) {
      now.tell(result, hour, LENGTHS[length] / HOUR);
    }
  }

  /** Which length most often follows a step that ends with this twelfth of the hour. */
  private static int likelyAfter(int part) {
    if (part == FINE_STEPS) {
      return WHOLE;
    }
    if (part == 1) {
      return REST;
    }
    return part % QUARTER_STEPS == 0 ? QUARTER : FINE;
  }
}
