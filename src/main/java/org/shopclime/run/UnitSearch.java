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
   * The lived day with the outdoor temperature moved bodily.
   *
   * @param cooling the unit
   * @param kelvin how far, K
   * @return the day
   */
  public LivedDay shifted(Cooling cooling, double kelvin) {
    ShopDays moved = new ShopDays(days.model().shifted(kelvin));
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
    return !days.judged().isEmpty();
  }

  /**
   * How far the worse of first and repeating day lies above what still counts as held, K; of the
   * first day alone if that is not held, as it settles the matter.
   */
  private double above(ShopDays on, DayRunner.State from, Cooling cooling) {
    Set<Integer> judged = on.judged();
    double limit = on.model().setPoint(room) + LivedDay.TOLERANCE;
    DayRunner runner = new DayRunner(on, Optional.of(cooling), room);
    runner.restore(from);
    runner.run(DayKind.WORKING);
    double first = runner.peak(judged) - limit;
    if (first > 0) {
      return first;
    }
    RepeatingDay.find(
        runner,
        DayKind.WORKING,
        moved -> Math.abs(runner.peak(judged) - limit) > RepeatingDay.SAFELY * moved);
    return Math.max(first, runner.peak(judged) - limit);
  }

  private double aboveWhenMoved(Cooling cooling, double kelvin) {
    ShopDays moved = new ShopDays(days.model().shifted(kelvin));
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
    if (!asked()) {
      return OptionalDouble.empty();
    }
    double peak = days.model().outdoorPeak();
    double holds = Double.NaN;
    double fails = Double.NaN;
    double failedBy = 0;
    double next = Math.max(COLDEST - peak, Math.min(HOTTEST - peak, 0));
    double slope = USUAL_SLOPE;
    boolean guessed = false;
    while (!(fails - holds <= FINENESS)) {
      double above = next == 0 ? above(days, idle, cooling) : aboveWhenMoved(cooling, next);
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
    List<Double> sizes = Cooling.sizes();
    int low = -1;
    int high = sizes.size();
    while (asked() && high - low > 1) {
      int middle = (low + high) / 2;
      if (above(days, idle, ofCapacity.apply(sizes.get(middle))) <= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high == sizes.size() ? OptionalDouble.empty() : OptionalDouble.of(sizes.get(high));
  }
}
