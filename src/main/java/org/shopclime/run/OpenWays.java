package org.shopclime.run;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.Passages;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * Air that changes places between rooms in one step through what stands open. What flows follows
 * the air of the rooms, and that the flow; the air at which it is taken is brought near in rounds.
 * As much heat and water leaves a room as comes into the other.
 */
final class OpenWays {

  /** How near the difference at which a flow is taken must be to that of the step, K. */
  private static final double NEAR = 0.02;

  /**
   * Part of a miss by which the next guess is moved: a flow that goes by the root of a difference
   * answers a guess that is too high by half as much too low.
   */
  private static final double ONWARD = 2.0 / 3;

  private static final int STEADY_ROUNDS = 12;

  private final Passages passages;
  private final int rooms;
  private final double[] first;
  private final double[] second;
  private final double[] flows;

  /** Dry air from one room into another, kg/s, at rooms * one + other; the same both ways. */
  private final double[] between;

  private double humidHeat;
  private Flow flow = (way, one, other) -> 0;

  private OpenWays(Passages passages, int rooms) {
    this.passages = passages;
    this.rooms = rooms;
    first = new double[passages.count()];
    second = new double[passages.count()];
    flows = new double[passages.count()];
    between = new double[rooms * rooms];
  }

  /** The ways of a shop; nothing where none stands open. */
  static Optional<OpenWays> of(Passages passages, int rooms) {
    return passages.count() == 0 ? Optional.empty() : Optional.of(new OpenWays(passages, rooms));
  }

  /** Air that goes each way through an opening in the step. */
  interface Flow {

    /**
     * The flow.
     *
     * @param way number of the way
     * @param first air of its first room, °C
     * @param second air of its second room, °C
     * @return kg of dry air a second
     */
    double dryAir(int way, double first, double second);
  }

  /** Begins a step with the rooms as they stand or are likely to be. */
  void begin(Flow through, double heatOfAir, IntToDoubleFunction air) {
    flow = through;
    humidHeat = heatOfAir;
    for (int way = 0; way < flows.length; way++) {
      first[way] = air.applyAsDouble(passages.first(way));
      second[way] = air.applyAsDouble(passages.second(way));
    }
  }

  /** Finds the steady state with what flows in it, from the guess that was begun with. */
  void startSteady(ModeMarch march, Drivers drivers) {
    for (int round = 0; round < STEADY_ROUNDS; round++) {
      flow(drivers, Optional.empty());
      march.startSteady(drivers);
      move(march::air);
    }
  }

  /** Moves the guess towards what it led to. */
  void move(IntToDoubleFunction air) {
    for (int way = 0; way < flows.length; way++) {
      first[way] += ONWARD * (air.applyAsDouble(passages.first(way)) - first[way]);
      second[way] += ONWARD * (air.applyAsDouble(passages.second(way)) - second[way]);
    }
  }

  /** Whether the guess is near what it led to, or nothing flows in either. */
  boolean isFound(IntToDoubleFunction air) {
    for (int way = 0; way < flows.length; way++) {
      double one = air.applyAsDouble(passages.first(way));
      double other = air.applyAsDouble(passages.second(way));
      if (Math.abs(one - other - (first[way] - second[way])) >= NEAR
          && (flows[way] > 0 || flow.dryAir(way, one, other) > 0)) {
        return false;
      }
    }
    return true;
  }

  /**
   * How far off the flows are, in units of what may be.
   *
   * @param air air found, °C, by room
   * @param allowed heat that flows may be off by, W, by room
   */
  double off(IntToDoubleFunction air, IntToDoubleFunction allowed) {
    double most = 0;
    for (int way = 0; way < flows.length; way++) {
      double one = air.applyAsDouble(passages.first(way));
      double other = air.applyAsDouble(passages.second(way));
      double moved =
          (flow.dryAir(way, one, other) - flows[way]) * humidHeat * Math.abs(one - other);
      double least =
          Math.min(
              allowed.applyAsDouble(passages.first(way)),
              allowed.applyAsDouble(passages.second(way)));
      most = Math.max(most, Math.abs(moved) / least);
    }
    return most;
  }

  /**
   * Lets air flow as it does at the guess.
   *
   * @param drivers takes it
   * @param place air that passes the place of a machine, told already, which comes on top
   */
  void flow(Drivers drivers, Optional<PlaceAir> place) {
    java.util.Arrays.fill(between, 0);
    for (int way = 0; way < flows.length; way++) {
      int one = passages.first(way);
      int other = passages.second(way);
      flows[way] = flow.dryAir(way, first[way], second[way]);
      between[one * rooms + other] += flows[way];
      between[other * rooms + one] = between[one * rooms + other];
    }
    for (int way = 0; way < flows.length; way++) {
      int one = passages.first(way);
      int other = passages.second(way);
      double heat = between[one * rooms + other] * humidHeat;
      drivers.exchange(one, other, heat + (place.isPresent() ? place.get().heat(one, other) : 0));
      drivers.exchange(other, one, heat + (place.isPresent() ? place.get().heat(other, one) : 0));
    }
  }

  /** Air that comes into a room from all others, kg/s. */
  double into(int room) {
    double into = 0;
    for (int other = 0; other < rooms; other++) {
      into += between[room * rooms + other];
    }
    return into;
  }

  /** Water that comes into a room with it, kg/s. */
  double water(int room, double[] humidity) {
    double water = 0;
    for (int other = 0; other < rooms; other++) {
      water += between[room * rooms + other] * humidity[other];
    }
    return water;
  }
}
