package org.shopclime.run;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;

/**
 * The day as it will be lived: idle days until they repeat, then the first working day, then
 * working days until they repeat; the worse of first and repeating is told.
 *
 * @param trace the room through the day that is told
 * @param firstDay true if the first working day after idle days is the worse one
 * @param judged hours that count: working hours after the time allowed to cool down, 1 to 24
 * @param setPoint wished temperature, °C
 * @param beyond what the unit was asked beyond the tested range of its curves, in words
 */
public record LivedDay(
    Trace trace, boolean firstDay, Set<Integer> judged, double setPoint, Set<String> beyond) {

  /** How far the hourly mean may lie above the set point and still count as held, K (1 °F). */
  public static final double TOLERANCE = 1 / 1.8;

  private static final int MOST_DAYS = 60;
  private static final double REPEATS = 0.01;

  /** Copies the sets. */
  public LivedDay {
    judged = java.util.Collections.unmodifiableSet(new TreeSet<>(judged));
    beyond = Set.copyOf(beyond);
  }

  /**
   * Runs the day of a shop.
   *
   * @param model the shop on a day
   * @param cooling the unit, if any
   * @param room index of the room that is told
   * @return the day
   */
  public static LivedDay of(ShopModel model, Optional<Cooling> cooling, int room) {
    DayRunner runner = new DayRunner(model, cooling, room);
    runner.startSteady();
    repeat(runner, DayKind.IDLE);
    return afterIdle(model, runner, room);
  }

  /** Working days from the state an idle cycle left. */
  static LivedDay afterIdle(ShopModel model, DayRunner runner, int room) {
    Trace first = runner.run(DayKind.WORKING);
    Trace repeating = repeat(runner, DayKind.WORKING);
    Set<Integer> judged = judged(model);
    double setPoint = model.setPoint(room);
    boolean firstWorse = peak(first, judged) > peak(repeating, judged);
    Set<String> beyond = new TreeSet<>();
    runner.limits().forEach(limit -> beyond.add(limit.name()));
    return new LivedDay(firstWorse ? first : repeating, firstWorse, judged, setPoint, beyond);
  }

  static Trace repeat(DayRunner runner, DayKind kind) {
    Trace before = runner.run(kind);
    for (int day = 1; day < MOST_DAYS; day++) {
      Trace trace = runner.run(kind);
      double change = 0;
      for (int hour = 1; hour <= 24; hour++) {
        change = Math.max(change, Math.abs(trace.air().at(hour) - before.air().at(hour)));
      }
      if (change < REPEATS) {
        return trace;
      }
      before = trace;
    }
    return before;
  }

  /** Hours in which work goes on, after the time allowed to cool down. */
  private static Set<Integer> judged(ShopModel model) {
    DaySlots working = model.working();
    int start = working.firstActiveSlot();
    Set<Integer> hours = new TreeSet<>();
    Set<Integer> all = new TreeSet<>();
    int perHour = DaySlots.COUNT / 24;
    for (int hour = 1; hour <= 24; hour++) {
      if (working.mean((hour - 1) * perHour, perHour) > 0) {
        all.add(hour);
        int since = Math.floorMod((hour - 1) * perHour - start, DaySlots.COUNT);
        boolean startsInside = working.at((hour - 1) * perHour) > 0;
        if (startsInside && since * DaySlots.SECONDS >= model.pullDown()) {
          hours.add(hour);
        }
      }
    }
    return hours.isEmpty() ? all : hours;
  }

  private static double peak(Trace trace, Set<Integer> hours) {
    return hours.stream().mapToDouble(trace.air()::at).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * Whether the set point holds in every judged hour.
   *
   * @return true if the hourly mean is at most 1 °F above it
   */
  public boolean holds() {
    return peakTemperature() <= setPoint + TOLERANCE;
  }

  /**
   * Whether no judged hour is held.
   *
   * @return true if the unit never catches up
   */
  public boolean neverCatchesUp() {
    return judged.stream().allMatch(hour -> trace.air().at(hour) > setPoint + TOLERANCE);
  }

  /**
   * Highest hourly mean of the room air in judged hours.
   *
   * @return °C
   */
  public double peakTemperature() {
    return peak(trace, judged);
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
