package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;

/**
 * Answers that take many lived days: up to what heat a unit keeps up, and which size would hold.
 */
public final class UnitSearch {

  /** Range of outdoor peaks searched, °C: 60 to 130 °F. */
  private static final double COLDEST = (60 - 32) / 1.8;

  private static final double HOTTEST = (130 - 32) / 1.8;
  private static final double FINENESS = 0.05 / 1.8;

  /** How far a room's peak moves at least with the outdoor peak, K/K: guesses the first steps. */
  private static final double USUAL_SLOPE = 0.7;

  private final ShopDays days;
  private final int room;
  private final DayRunner.State idle;
  private final Set<Integer> judged;
  private final double limit;

  /**
   * A search on one shop and day.
   *
   * @param model the shop on its day
   * @param room index of the room that is cooled
   */
  public UnitSearch(ShopModel model, int room) {
    this.days = new ShopDays(model);
    this.room = room;
    this.idle = LivedDay.idle(days, room);
    this.judged = days.judged();
    this.limit = model.setPoint(room) + LivedDay.TOLERANCE;
  }

  /**
   * The lived day of a unit on the day as it is.
   *
   * @param cooling the unit, if any
   * @return the day
   */
  public LivedDay day(Optional<Cooling> cooling) {
    return LivedDay.after(days, idle, cooling, room);
  }

  /**
   * The morning of the first working day.
   *
   * @param cooling the unit
   * @return how the room is brought down; nothing if nobody ever works
   */
  public Optional<PullDown> pullDown(Cooling cooling) {
    return PullDown.of(days, idle, cooling, room);
  }

  /**
   * The lived day with the outdoor temperature moved bodily.
   *
   * @param cooling the unit
   * @param kelvin how far, K
   * @return the day
   */
  public LivedDay shifted(Cooling cooling, double kelvin) {
    ShopDays moved = days.shifted(kelvin);
    return LivedDay.after(moved, idle(moved, kelvin), Optional.of(cooling), room);
  }

  /** Idle days of the moved day; they begin near their end, all temperatures moved alike. */
  private DayRunner.State idle(ShopDays moved, double kelvin) {
    DayRunner runner = new DayRunner(moved, Optional.empty(), room);
    runner.restore(runner.warmer(idle, kelvin));
    RepeatingDay.find(runner, DayKind.IDLE);
    return runner.state();
  }

  /** Whether an hour is asked of a unit at all. */
  private boolean asked() {
    return !judged.isEmpty();
  }

  /**
   * How far the worse of first and repeating day lies above what still counts as held, K; of the
   * first day alone if that is not held, as it settles the matter.
   */
  private double above(ShopDays on, DayRunner.State from, Cooling cooling) {
    DayRunner runner = new DayRunner(on, Optional.of(cooling), room);
    runner.restore(from);
    runner.run(DayKind.WORKING);
    double first = runner.peak(judged) - limit;
    if (first > 0) {
      return first;
    }
    repeat(runner);
    return Math.max(first, runner.peak(judged) - limit);
  }

  /** Working days until it is clear whether the one that repeats is held. */
  private void repeat(DayRunner runner) {
    RepeatingDay.find(
        runner,
        DayKind.WORKING,
        moved -> Math.abs(runner.peak(judged) - limit) > RepeatingDay.SAFELY * moved);
  }

  /** Whether a unit holds on the day as it is. */
  private boolean holds(Cooling cooling) {
    DayRunner runner = new DayRunner(days, Optional.of(cooling), room);
    runner.restore(idle);
    if (!runner.runWhile(DayKind.WORKING, judged, limit)) {
      return false;
    }
    repeat(runner);
    return runner.peak(judged) <= limit;
  }

  private double aboveWhenMoved(Cooling cooling, double kelvin) {
    ShopDays moved = days.shifted(kelvin);
    return above(moved, idle(moved, kelvin), cooling);
  }

  /**
   * Highest outdoor peak at which a unit still holds, the hot day moved bodily.
   *
   * <p>Between a peak that holds and one that fails, halved each time; but where a failing day is
   * known, the next is guessed from how far it failed.
   *
   * @param cooling the unit
   * @return °C, to 0.1 °F; empty if it fails at 60 °F or still holds at 130 °F, or if no hour of
   *     work asks it to hold
   */
  public OptionalDouble keepsUpTo(Cooling cooling) {
    return asked() ? keepsUpTo(cooling, above(days, idle, cooling)) : OptionalDouble.empty();
  }

  /**
   * The same where its day is known.
   *
   * @param cooling the unit
   * @param day its {@link #day}
   * @return as there
   */
  public OptionalDouble keepsUpTo(Cooling cooling, LivedDay day) {
    return asked() ? keepsUpTo(cooling, day.peakTemperature() - limit) : OptionalDouble.empty();
  }

  private OptionalDouble keepsUpTo(Cooling cooling, double asItIs) {
    double peak = days.model().outdoorPeak();
    double holds = Double.NaN;
    double fails = Double.NaN;
    double failedBy = 0;
    double next = Math.max(COLDEST - peak, Math.min(HOTTEST - peak, 0));
    double slope = USUAL_SLOPE;
    boolean guessed = false;
    while (!(fails - holds <= FINENESS)) {
      double above = next == 0 ? asItIs : aboveWhenMoved(cooling, next);
      if (above > 0) {
        if (next <= COLDEST - peak) {
          return OptionalDouble.empty();
        }
        if (fails > next && failedBy > above) {
          slope = (failedBy - above) / (fails - next);
        }
        fails = next;
        failedBy = above;
        guessed = !guessed || Double.isNaN(holds);
      } else {
        if (next >= HOTTEST - peak) {
          return OptionalDouble.empty();
        }
        holds = next;
        guessed = false;
      }
      next = next(holds, fails, failedBy, slope, guessed);
      next = Math.max(COLDEST - peak, Math.min(HOTTEST - peak, next));
    }
    return OptionalDouble.of(peak + holds);
  }

  private static double next(
      double holds, double fails, double failedBy, double slope, boolean guess) {
    double below = fails - failedBy / slope - FINENESS / 2;
    if (Double.isNaN(holds)) {
      return below;
    }
    if (Double.isNaN(fails)) {
      return holds + 4 * LivedDay.TOLERANCE;
    }
    return guess && below > holds ? below : (holds + fails) / 2;
  }

  /**
   * Smallest standard size that holds.
   *
   * @param ofCapacity makes the unit of a rated capacity, W
   * @return rated capacity, W; empty if the largest does not hold, or if no hour of work asks it to
   */
  public OptionalDouble smallestThatHolds(DoubleFunction<Cooling> ofCapacity) {
    return smallestThatHolds(ofCapacity, 0, Double.POSITIVE_INFINITY, Cooling.sizes().get(0));
  }

  /**
   * The same where something is known of it: from a guess, size by size.
   *
   * @param ofCapacity makes the unit of a rated capacity, W
   * @param fails a capacity that is known not to hold, W; 0 if none is
   * @param holds a capacity that is known to hold, W; infinite if none is
   * @param guess capacity that may just hold, W; only how long the search takes depends on it
   * @return as there
   */
  public OptionalDouble smallestThatHolds(
      DoubleFunction<Cooling> ofCapacity, double fails, double holds, double guess) {
    List<Double> sizes = Cooling.sizes();
    int low = -1;
    int high = sizes.size();
    int next = 0;
    for (int i = 0; i < sizes.size(); i++) {
      low = sizes.get(i) <= fails ? i : low;
      high = sizes.get(i) >= holds ? Math.min(high, i) : high;
      next = sizes.get(i) < guess ? i + 1 : next;
    }
    while (asked() && high - low > 1) {
      next = Math.max(low + 1, Math.min(high - 1, next));
      if (holds(ofCapacity.apply(sizes.get(next)))) {
        high = next--;
      } else {
        low = next++;
      }
    }
    return !asked() || high == sizes.size()
        ? OptionalDouble.empty()
        : OptionalDouble.of(sizes.get(high));
  }
}
