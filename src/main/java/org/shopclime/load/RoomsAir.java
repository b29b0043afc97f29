package org.shopclime.load;

import java.util.function.IntUnaryOperator;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Passages;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Waves;

/**
 * Air that changes places between rooms through what stands open, by the half hour, frozen as the
 * day with everything on finds it. Between two held rooms it stands from the start.
 */
final class RoomsAir {

  /**
   * Part of a miss by which the next guess of a temperature is moved: a flow that goes by the root
   * of a difference answers a guess that is too high by half as much too low.
   */
  static final double ONWARD = 2.0 / 3;

  private static final int STEPS = Waves.STEPS;
  private static final int SLOTS = DaySlots.COUNT / STEPS;
  private static final int WORKING = Passages.plan(DayKind.WORKING);

  private final ShopModel model;
  private final Passages passages;

  /** Dry air each way, kg/s, by way and half hour. */
  private final double[][] flow;

  RoomsAir(ShopModel model) {
    this.model = model;
    passages = model.passages();
    flow = new double[passages.count()][STEPS];
    for (int way = 0; way < flow.length; way++) {
      int first = passages.first(way);
      int second = passages.second(way);
      if (model.isCooled(first) && model.isCooled(second)) {
        for (int step = 0; step < STEPS; step++) {
          flow[way][step] = flow(way, step, model.setPoint(first), model.setPoint(second));
        }
      }
    }
  }

  /** Number of ways. */
  int count() {
    return flow.length;
  }

  /** Name of a way. */
  String name(int way) {
    return passages.name(way);
  }

  /** The room on the other side of a way; -1 if it does not touch the room. */
  int other(int way, int room) {
    return passages.first(way) == room
        ? passages.second(way)
        : passages.second(way) == room ? passages.first(way) : -1;
  }

  /**
   * Takes the flows of all ways that touch a floating room.
   *
   * @param indexOf which of the floating rooms a room is; -1 for held ones
   * @param air air of the floating rooms by half hour, °C
   */
  void take(IntUnaryOperator indexOf, double[][] air) {
    for (int way = 0; way < flow.length; way++) {
      int i = indexOf.applyAsInt(passages.first(way));
      int j = indexOf.applyAsInt(passages.second(way));
      for (int step = 0; (i >= 0 || j >= 0) && step < STEPS; step++) {
        double first = i >= 0 ? air[i][step] : model.setPoint(passages.first(way));
        double second = j >= 0 ? air[j][step] : model.setPoint(passages.second(way));
        flow[way][step] = flow(way, step, first, second);
      }
    }
  }

  private double flow(int way, int step, double first, double second) {
    return passages.dryAir(way, WORKING, step * SLOTS, SLOTS, first, second);
  }

  /** Dry air each way, kg/s. */
  double flow(int way, int step) {
    return flow[way][step];
  }

  /** Heat it carries in the network for each kelvin, W/K; of air as moist as a held room's. */
  double conductance(int way, int step) {
    int first = passages.first(way);
    int second = passages.second(way);
    double humidity =
        model.isCooled(first)
            ? model.wishedHumidityRatio(first)
            : model.isCooled(second)
                ? model.wishedHumidityRatio(second)
                : model.outdoorHumidityRatio(step * Profile.HOURS / STEPS + 1);
    return flow[way][step] * MoistAir.humidHeat(humidity);
  }

  /** Adds what air from held rooms brings to a floating one that stands at the reference. */
  void fromHeld(int room, IntUnaryOperator indexOf, double[] there, double[] heat) {
    for (int way = 0; way < flow.length; way++) {
      int other = other(way, room);
      for (int step = 0; other >= 0 && indexOf.applyAsInt(other) < 0 && step < STEPS; step++) {
        heat[step] += conductance(way, step) * there[other];
      }
    }
  }
}
