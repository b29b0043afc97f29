package org.shopclime.run;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.unit.Limit;

/**
 * The day as it will be lived: idle days until they repeat, then the first working day, then
 * working days until they repeat; the worse of first and repeating is told.
 *
 * <p>With a unit, the hours that count are those that must be held. Without one nothing is
 * promised, and a shop left to itself is hottest after work as often as before its end; so all
 * hours of the day count, and the peak is that of the whole day.
 *
 * @param trace the room through the day that is told
 * @param firstDay true if the first working day after idle days is the worse one
 * @param judged hours that count, hour ending 1 to 24: with a unit the hours that work fills and
 *     that begin after the time allowed to cool down; if there is none, the last hour with work in
 *     it; empty if nobody ever works. Without a unit all hours
 * @param setPoint wished temperature, °C
 * @param beyond what the unit was asked beyond the tested range of its curves on that day, in words
 */
public record LivedDay(
    Trace trace, boolean firstDay, Set<Integer> judged, double setPoint, Set<String> beyond) {

  /** How far the hourly mean may lie above the set point and still count as held, K (1 °F). */
  public static final double TOLERANCE = 1 / 1.8;

  private static final Set<Integer> ALL_DAY =
      IntStream.rangeClosed(1, 24).boxed().collect(Collectors.toUnmodifiableSet());

  /** Copies the sets. */
  public LivedDay {
    judged = Collections.unmodifiableSet(new TreeSet<>(judged));
    beyond = Set.copyOf(beyond);
  }

  /**
   * Runs the day of a shop.
   *
   * @param model the shop on a day
   * @param cooling the unit, if any
   * @param room index of the room that is told
   * @return the day
   * @throws RoomTooHot if a room gets hotter than 80 °C; the message names it
   */
  public static LivedDay of(ShopModel model, Optional<Cooling> cooling, int room) {
    ShopDays days = new ShopDays(model);
    return after(days, idle(days, room), cooling, room);
  }

  /** The state that idle days end in. */
  static DayRunner.State idle(ShopDays days, int room) {
    DayRunner runner = new DayRunner(days, Optional.empty(), room);
    runner.startSteady();
    RepeatingDay.find(runner, DayKind.IDLE);
    return runner.state();
  }

  /** Working days from the state that idle days end in. */
  static LivedDay after(ShopDays days, DayRunner.State idle, Optional<Cooling> cooling, int room) {
    return after(days, idle, new DayRunner(days, cooling, room), cooling, room);
  }

  /** The same with a runner of one's own. */
  static LivedDay after(
      ShopDays days, DayRunner.State idle, DayRunner runner, Optional<Cooling> cooling, int room) {
    return told(days, idle, runner, cooling.isPresent(), room).day();
  }

  /** The day with all rooms of it, these only where a machine is placed. */
  record Told(LivedDay day, List<RoomHours> rooms) {}

  static Told told(
      ShopDays days, DayRunner.State idle, DayRunner runner, boolean hasUnit, int room) {
    Set<Integer> judged = hasUnit ? days.judged() : ALL_DAY;
    Set<Integer> compared = judged.isEmpty() ? ALL_DAY : judged;
    runner.restore(idle);
    runner.run(DayKind.WORKING);
    Trace first = runner.trace();
    List<RoomHours> firstRooms = runner.rooms();
    double firstPeak = runner.peak(compared);
    Set<Limit> firstLimits = runner.limits();
    RepeatingDay.find(
        runner,
        DayKind.WORKING,
        moved -> firstPeak - runner.peak(compared) > RepeatingDay.SAFELY * moved);
    boolean firstWorse = firstPeak > runner.peak(compared);
    Set<String> beyond = new TreeSet<>();
    (firstWorse ? firstLimits : runner.limits()).forEach(limit -> beyond.add(limit.name()));
    return new Told(
        new LivedDay(
            firstWorse ? first : runner.trace(),
            firstWorse,
            judged,
            days.model().setPoint(room),
            beyond),
        firstWorse ? firstRooms : runner.rooms());
  }

  /**
   * Whether the set point holds in every judged hour.
   *
   * @return true if the hourly mean is at most 1 °F above it; true also where no hour is judged, as
   *     nothing is asked then
   */
  public boolean holds() {
    return judged.isEmpty() || peakTemperature() <= setPoint + TOLERANCE;
  }

  /**
   * Whether no judged hour is held.
   *
   * @return true if the unit never catches up; false where no hour is judged
   */
  public boolean neverCatchesUp() {
    return !judged.isEmpty()
        && judged.stream().allMatch(hour -> trace.air().at(hour) > setPoint + TOLERANCE);
  }

  /**
   * Highest hourly mean of the room air in judged hours.
   *
   * @return °C; of the whole day where no hour is judged
   */
  public double peakTemperature() {
    return trace.air().at(peakHour());
  }

  /**
   * The hour of that mean, the first of equals.
   *
   * @return hour ending 1 to 24; the hottest hour of the day where no hour is judged
   */
  public int peakHour() {
    int best = -1;
    for (int hour : judged) {
      if (best < 0 || trace.air().at(hour) > trace.air().at(best)) {
        best = hour;
      }
    }
    return best < 0 ? trace.air().peakHour() : best;
  }

  /**
   * Highest hourly mean of the operative temperature in judged hours.
   *
   * @return °C
   */
  public double operativePeak() {
    return judged.stream()
        .mapToDouble(trace.operative()::at)
        .max()
        .orElse(trace.operative().peak());
  }

  /** More starts than this in an hour wear a compressor: common practice. */
  private static final double MANY_STARTS = 6;

  /**
   * How often the unit starts in the judged hour in which it does so most.
   *
   * @param hour hour ending 1 to 24
   * @param starts starts in that hour, above 0
   * @param minutes length of a run, min
   */
  public record Starts(int hour, double starts, double minutes) {

    /**
     * Whether the runs are short.
     *
     * @return true for more than six starts in an hour
     */
    public boolean tooMany() {
      return starts > MANY_STARTS;
    }
  }

  /**
   * The judged hour in which the unit starts most.
   *
   * @return that hour; nothing if it starts in none, or only once to run on
   */
  public Optional<Starts> mostStarts() {
    Optional<Starts> most = Optional.empty();
    for (int hour : judged) {
      double starts = trace.starts().at(hour);
      if (starts >= 1 && starts > most.map(Starts::starts).orElse(0.0)) {
        most = Optional.of(new Starts(hour, starts, 60 * trace.running().at(hour) / starts));
      }
    }
    return most;
  }

  /**
   * Hours of the day in which the unit never stops.
   *
   * @return number of hours
   */
  public int flatOutHours() {
    int hours = 0;
    for (int hour = 1; hour <= 24; hour++) {
      if (trace.running().at(hour) > 0.999) {
        hours++;
      }
    }
    return hours;
  }
}
