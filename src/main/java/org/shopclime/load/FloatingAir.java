package org.shopclime.load;

import java.util.Arrays;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Driven;
import org.shopclime.heat.RepeatingNetwork;
import org.shopclime.heat.Waves;

/**
 * Outdoor air that flows through floating rooms, by the half hour. The network has a constant flow;
 * the difference of each half hour's flow from it carries heat dG (To - T) besides, with the mean
 * temperature T of the room in it, for which a small system is solved exactly.
 *
 * <p>Flows are frozen as the day with everything on finds them: flow and temperature are found in
 * turn until they stand.
 */
final class FloatingAir {

  private static final int STEPS = Waves.STEPS;
  private static final int SLOTS = DaySlots.COUNT / STEPS;
  private static final Waves NOTHING = new Waves();
  private static final int MOST_ROUNDS = 80;
  private static final double EVEN = 1e-9;
  private static final double CONVERGED = 1e-8;

  /** Farthest from outdoors at which a flow is taken while flows and temperatures are found, K. */
  private static final double FARTHEST = 100;

  private final ShopModel model;

  /** Floating rooms. */
  private final int[] rooms;

  /** Constant flow of each in the network, W/K. */
  private final double[] constant;

  /** Whether the flow of each changes within a half hour. */
  private final boolean[] uneven;

  /** What the flow of each half hour is beyond it, W/K. */
  private final double[][] beyond;

  /**
   * Temperature in each half hour for 1 W into a room in the first half hour, by room and heated
   * room.
   */
  private double[][][] kernel = {};

  private Factors factors = new Factors(new double[0][]);

  /** Air between rooms, as frozen with the rest. */
  private final RoomsAir between;

  FloatingAir(ShopModel model) {
    this.model = model;
    between = new RoomsAir(model);
    int count = 0;
    int[] found = new int[model.rooms()];
    for (int room = 0; room < found.length; room++) {
      if (!model.isCooled(room)) {
        found[count++] = room;
      }
    }
    rooms = Arrays.copyOf(found, count);
    constant = new double[count];
    beyond = new double[count][STEPS];
    uneven = new boolean[count];
    for (int i = 0; i < count; i++) {
      double celsius = model.meanTemperature(rooms[i]);
      double mean = 0;
      for (int step = 0; step < STEPS; step++) {
        double flow = flow(i, celsius, step * SLOTS, SLOTS);
        mean += flow / STEPS;
        for (int slot = 0; slot < SLOTS; slot++) {
          double each = flow(i, celsius, step * SLOTS + slot, 1);
          uneven[i] |= Math.abs(each - flow) > EVEN * flow;
        }
      }
      constant[i] = mean;
    }
  }

  /** Number of floating rooms. */
  int count() {
    return rooms.length;
  }

  /** Index of a floating room among all. */
  int room(int i) {
    return rooms[i];
  }

  /** Constant flow into each room of the shop, W/K. */
  double[] constantFlows() {
    double[] flows = new double[model.rooms()];
    for (int i = 0; i < rooms.length; i++) {
      flows[rooms[i]] = constant[i];
    }
    return flows;
  }

  /** Drives something by the air that the constant flow of a room brings. */
  void drive(Driven to, int i, double reference) {
    to.air(
        rooms[i],
        Waves.ofHours(
            Profile.of(hour -> constant[i] * (model.outdoor(hour) - reference)).toArray()),
        NOTHING);
  }

  /**
   * Finds the flows.
   *
   * @param network the network with the constant flows
   * @param answers answers of the floating rooms
   * @param still air of the floating rooms under all drives and the constant flows alone, °C
   */
  void freeze(RepeatingNetwork network, RepeatingNetwork.Answer[] answers, double[][] still) {
    kernel = new double[rooms.length][rooms.length][];
    double[] first = new double[STEPS];
    first[0] = 1;
    Waves impulse = Waves.of(first);
    for (int i = 0; i < rooms.length; i++) {
      for (int j = 0; j < rooms.length; j++) {
        RepeatingNetwork.Sum sum = answers[i].sum();
        sum.air(rooms[j], impulse, NOTHING);
        kernel[i][j] = sum.result().steps();
      }
    }
    if (between.count() > 0) {
      freezeTogether(network, still);
      return;
    }
    double[][] air = new double[rooms.length][];
    Factors[] alone = new Factors[rooms.length];
    for (int i = 0; i < rooms.length; i++) {
      air[i] = still[i].clone();
      takeFlows(network, i, air[i]);
      alone[i] = new Factors(matrix(i, i + 1));
    }
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS && moved > CONVERGED; round++) {
      moved = 0;
      for (int i = 0; i < rooms.length; i++) {
        moved = Math.max(moved, settle(i, air, still[i], alone[i]));
        takeFlows(network, i, air[i]);
      }
    }
    factors = new Factors(matrix(0, rooms.length));
  }

  /** Where air passes between rooms too all are found at once, guesses moved part of the way. */
  private void freezeTogether(RepeatingNetwork network, double[][] still) {
    double[][] air = new double[rooms.length][];
    for (int i = 0; i < rooms.length; i++) {
      air[i] = still[i].clone();
    }
    boolean[] counts = new boolean[model.rooms()];
    double[] there = new double[model.rooms()];
    for (int room = 0; room < there.length; room++) {
      counts[room] = true;
      there[room] = model.setPoint(room);
    }
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS && moved > CONVERGED; round++) {
      for (int i = 0; i < rooms.length; i++) {
        takeFlows(network, i, air[i]);
      }
      between.take(this::indexOf, air);
      factors = new Factors(matrix(0, rooms.length));
      double[] found = air(still, outdoor(counts, 0), there);
      moved = 0;
      for (int i = 0; i < rooms.length; i++) {
        for (int step = 0; step < STEPS; step++) {
          double missed = found[i * STEPS + step] - air[i][step];
          moved = Math.max(moved, Math.abs(missed));
          air[i][step] += RoomsAir.ONWARD * missed;
        }
      }
    }
  }

  /** Which of the floating rooms a room is; -1 for a held one. */
  private int indexOf(int room) {
    for (int i = 0; i < rooms.length; i++) {
      if (rooms[i] == room) {
        return i;
      }
    }
    return -1;
  }

  private void takeFlows(RepeatingNetwork network, int i, double[] air) {
    if (uneven[i]) {
      double[] slots = new double[DaySlots.COUNT];
      for (int slot = 0; slot < slots.length; slot++) {
        slots[slot] = flow(i, air[slot / SLOTS], slot, 1);
      }
      SlotFlows.effective(
          slots, network.faceConductance(rooms[i]), network.airCapacity(rooms[i]), beyond[i]);
    } else {
      for (int step = 0; step < STEPS; step++) {
        beyond[i][step] = flow(i, air[step], step * SLOTS, SLOTS);
      }
    }
    for (int step = 0; step < STEPS; step++) {
      beyond[i][step] -= constant[i];
    }
  }

  /**
   * Brings the air of one room nearer to what the flows make of it, with that of the others as it
   * stands, by factors of earlier flows; how far it moved, K.
   */
  private double settle(int i, double[][] air, double[] still, Factors earlier) {
    double[] missing = still.clone();
    for (int j = 0; j < rooms.length; j++) {
      double[] heat = new double[STEPS];
      for (int step = 0; step < STEPS; step++) {
        heat[step] = beyond[j][step] * (outdoor(step) - air[j][step]);
      }
      answer(kernel[i][j], heat, missing);
    }
    for (int step = 0; step < STEPS; step++) {
      missing[step] -= air[i][step];
    }
    earlier.solve(missing);
    double moved = 0;
    for (int step = 0; step < STEPS; step++) {
      moved = Math.max(moved, Math.abs(missing[step]));
      air[i][step] += missing[step];
    }
    return moved;
  }

  /** T + kernel of dG T for some of the rooms. */
  private double[][] matrix(int first, int end) {
    int size = (end - first) * STEPS;
    double[][] matrix = new double[size][size];
    for (int i = first; i < end; i++) {
      for (int step = 0; step < STEPS; step++) {
        double[] row = matrix[(i - first) * STEPS + step];
        row[(i - first) * STEPS + step] = 1;
        for (int j = first; j < end; j++) {
          for (int then = 0; then < STEPS; then++) {
            int since = step - then;
            row[(j - first) * STEPS + then] +=
                kernel[i][j][since < 0 ? since + STEPS : since] * beyond[j][then];
          }
          for (int way = 0; way < between.count(); way++) {
            pass(way, j, kernel[i][j], step, row);
          }
        }
      }
    }
    return matrix;
  }

  /** Adds to a row of the matrix what passes between floating room j and the other of a way. */
  private void pass(int way, int j, double[] answer, int step, double[] row) {
    int other = between.other(way, rooms[j]);
    if (other < 0) {
      return;
    }
    int k = indexOf(other);
    for (int then = 0; then < STEPS; then++) {
      int since = step - then;
      double each = answer[since < 0 ? since + STEPS : since] * between.conductance(way, then);
      row[j * STEPS + then] += each;
      if (k >= 0) {
        row[k * STEPS + then] -= each;
      }
    }
  }

  private static void answer(double[] kernel, double[] heat, double[] into) {
    for (int then = 0; then < STEPS; then++) {
      if (heat[then] != 0) {
        for (int since = 0; since < STEPS; since++) {
          int step = then + since;
          into[step < STEPS ? step : step - STEPS] += kernel[since] * heat[then];
        }
      }
    }
  }

  /**
   * Heat that the flows carry beyond the constant ones.
   *
   * @param still air of the floating rooms under some drives and the constant flows alone, °C
   * @param counts whether the outdoor air of a floating room counts; where not it enters at the
   *     reference
   * @param reference temperature that all are told from, °C
   * @param there what held rooms are at, told from that, by room, K
   * @return W by floating room and half hour
   */
  double[][] heat(double[][] still, boolean[] counts, double reference, double[] there) {
    double[][] outdoor = outdoor(counts, reference);
    double[] air = air(still, outdoor, there);
    double[][] heat = new double[rooms.length][STEPS];
    for (int i = 0; i < rooms.length; i++) {
      for (int step = 0; step < STEPS; step++) {
        heat[i][step] = beyond[i][step] * (outdoor[i][step] - air[i * STEPS + step]);
      }
      for (int way = 0; way < between.count(); way++) {
        int other = between.other(way, rooms[i]);
        int k = other < 0 ? -1 : indexOf(other);
        for (int step = 0; other >= 0 && step < STEPS; step++) {
          double behind = k < 0 ? there[other] : air[k * STEPS + step];
          heat[i][step] += between.conductance(way, step) * (behind - air[i * STEPS + step]);
        }
      }
    }
    return heat;
  }

  private double[][] outdoor(boolean[] counts, double reference) {
    double[][] outdoor = new double[rooms.length][STEPS];
    for (int i = 0; i < rooms.length; i++) {
      for (int step = 0; step < STEPS; step++) {
        outdoor[i][step] = counts[rooms[i]] ? outdoor(step) - reference : 0;
      }
    }
    return outdoor;
  }

  /** Air of the floating rooms, one after the other. */
  private double[] air(double[][] still, double[][] outdoor, double[] there) {
    double[] air = new double[rooms.length * STEPS];
    for (int i = 0; i < rooms.length; i++) {
      double[] found = still[i].clone();
      for (int j = 0; j < rooms.length; j++) {
        double[] heat = new double[STEPS];
        for (int step = 0; step < STEPS; step++) {
          heat[step] = beyond[j][step] * outdoor[j][step];
        }
        between.fromHeld(rooms[j], this::indexOf, there, heat);
        answer(kernel[i][j], heat, found);
      }
      System.arraycopy(found, 0, air, i * STEPS, STEPS);
    }
    factors.solve(air);
    return air;
  }

  /** Air between rooms. */
  RoomsAir between() {
    return between;
  }

  /** Flow of outdoor air into a floating room in a half hour from 0, W/K, as frozen. */
  double flow(int i, int step) {
    return constant[i] + beyond[i][step];
  }

  private double flow(int i, double celsius, int slot, int slots) {
    int hour = slot / DaySlots.PER_HOUR + 1;
    double outdoor = model.outdoor(hour);
    double bounded = Math.max(outdoor - FARTHEST, Math.min(outdoor + FARTHEST, celsius));
    return model.streams().total(rooms[i], bounded, DayKind.WORKING, slot, slots)
        * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
  }

  private double outdoor(int step) {
    return model.outdoor(hour(step));
  }

  private static int hour(int step) {
    return step * Profile.HOURS / STEPS + 1;
  }
}
