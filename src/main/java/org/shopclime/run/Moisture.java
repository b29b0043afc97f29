package org.shopclime.run;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.RoomWater;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;

/**
 * Water in the air of each room: outdoor air, people and work, the coil, and one lumped store of
 * walls and wood (effective penetration depth; after Kerestecioglu and others, ASHRAE Transactions
 * 96(1), 1990).
 *
 * <p>Steps are those of {@link org.shopclime.heat.March}: implicit, of second order, stable however
 * fast the store is, with means that close the books. None is longer than {@value #LONGEST} s, or
 * than {@value #SHORT} s where water falls out of the air and the step is plainly implicit.
 */
final class Moisture {

  private static final double GAMMA = 1 - Math.sqrt(0.5);
  private static final double ONWARD = (1 - GAMMA) / GAMMA;

  /** Longest step, s; longer ones are made of several. */
  private static final double LONGEST = 1800;

  /** The same where water falls out of the air: there they are of first order, s. */
  private static final double SHORT = 300;

  private final double[] airMass;
  private final double[] storeMass;
  private final double[] exchange;
  private final double[] air;
  private final double[] store;
  private final Stage[][] stages;

  private Moisture(List<RoomWater> rooms, double start) {
    airMass = rooms.stream().mapToDouble(RoomWater::dryAir).toArray();
    storeMass = rooms.stream().mapToDouble(RoomWater::store).toArray();
    exchange = rooms.stream().mapToDouble(RoomWater::exchange).toArray();
    air = new double[rooms.size()];
    store = new double[rooms.size()];
    stages = new Stage[rooms.size()][0];
    Arrays.fill(air, start);
    Arrays.fill(store, start);
  }

  /**
   * A start with the air of every room as outdoors on average.
   *
   * @param model the shop on a day
   * @return water of its rooms
   */
  static Moisture of(ShopModel model) {
    double outdoor = 0;
    for (int hour = 1; hour <= 24; hour++) {
      outdoor += model.outdoorHumidityRatio(hour) / 24;
    }
    return new Moisture(
        IntStream.range(0, model.rooms()).mapToObj(model::roomWater).toList(), outdoor);
  }

  /**
   * A start with the air of every room as outdoors in an hour.
   *
   * @param year the shop through a year
   * @param hour the hour
   * @return water of its rooms
   */
  static Moisture of(ShopYear year, int hour) {
    return new Moisture(
        IntStream.range(0, year.rooms()).mapToObj(year::roomWater).toList(),
        year.outdoorHumidityRatio(hour));
  }

  double humidityRatio(int room) {
    return air[room];
  }

  /** Water in the air and the store of all rooms, kg. */
  double held() {
    double held = 0;
    for (int room = 0; room < air.length; room++) {
      held += airMass[room] * air[room] + (exchange[room] == 0 ? 0 : storeMass[room] * store[room]);
    }
    return held;
  }

  double[] state() {
    double[] state = new double[2 * air.length];
    System.arraycopy(air, 0, state, 0, air.length);
    System.arraycopy(store, 0, state, air.length, air.length);
    return state;
  }

  void restore(double[] state) {
    System.arraycopy(state, 0, air, 0, air.length);
    System.arraycopy(state, air.length, store, 0, air.length);
  }

  /** Brings air that a guess made too moist or drier than dry back into what can be. */
  void within(int room, double saturated) {
    air[room] = Math.max(0, Math.min(air[room], saturated));
    store[room] = Math.max(0, store[room]);
  }

  /**
   * What acts on the water of a room in a step.
   *
   * @param outdoor outdoor humidity ratio, kg/kg
   * @param inflow outdoor air, kg of dry air a second
   * @param gain water given off, kg/s
   * @param pressure Pa
   * @param seconds length of the step, s
   */
  record Around(double outdoor, double inflow, double gain, double pressure, double seconds) {}

  /** Most water a coil can take from a room's air in a step, kg/s. */
  double coilLimit(int room, double seconds) {
    return air[room] * airMass[room] / seconds;
  }

  /**
   * Where one step of one room leads, without making it.
   *
   * @param room index
   * @param around what else acts on it
   * @param saturated humidity ratio beyond which water falls out of its air, kg/kg
   * @param coil water taken out, kg/s
   * @return the step
   */
  Step look(int room, Around around, double saturated, double coil) {
    Step smooth = twoStages(room, around, coil);
    // A corner is no place for two stages: the second would overshoot it.
    return smooth.highest() > saturated || smooth.lowest() < 0
        ? oneStage(room, around, saturated, coil)
        : smooth;
  }

  private Step twoStages(int room, Around around, double coil) {
    int parts = (int) Math.ceil(around.seconds() / LONGEST);
    Stage of = stage(room, GAMMA * around.seconds() / parts);
    double steady = around.inflow() * around.outdoor() + around.gain() - coil;
    double answer = of.answer(around.inflow());
    double w = air[room];
    double s = store[room];
    double mean = 0;
    double highest = w;
    double lowest = w;
    for (int i = 0; i < parts; i++) {
      double first = of.air(w, s, steady, answer);
      double firstStore = of.store(s, first);
      double fromStore = s + ONWARD * (firstStore - s);
      double next = of.air(w + ONWARD * (first - w), fromStore, steady, answer);
      mean += (1 - GAMMA) * first + GAMMA * next;
      highest = Math.max(highest, Math.max(first, next));
      lowest = Math.min(lowest, Math.min(first, next));
      w = next;
      s = of.store(fromStore, next);
    }
    return new Step(w, s, mean / parts, 0, highest, lowest);
  }

  private Step oneStage(int room, Around around, double saturated, double coil) {
    int parts = (int) Math.ceil(around.seconds() / SHORT);
    Stage of = stage(room, around.seconds() / parts);
    double steady = around.inflow() * around.outdoor() + around.gain() - coil;
    double answer = of.answer(around.inflow());
    double w = air[room];
    double s = store[room];
    double mean = 0;
    double fallen = 0;
    for (int i = 0; i < parts; i++) {
      double next = of.air(w, s, steady, answer);
      if (next > saturated) {
        fallen += (next - saturated) / answer;
        next = saturated;
      }
      s = of.store(s, next);
      w = next;
      mean += w;
    }
    return new Step(w, s, mean / parts, fallen / parts, w, w);
  }

  /** The stage of this length; made once, as lengths are few. */
  private Stage stage(int room, double seconds) {
    for (Stage stage : stages[room]) {
      if (stage.seconds == seconds) {
        return stage;
      }
    }
    Stage made = new Stage(seconds, airMass[room], storeMass[room], exchange[room]);
    Stage[] more = Arrays.copyOf(stages[room], stages[room].length + 1);
    more[more.length - 1] = made;
    stages[room] = more;
    return made;
  }

  /** Air and store of a room over one stage of a step. */
  private static final class Stage {
    private final double seconds;
    private final double mass;

    /** What the store takes from the air is (next - store) times this, its own change counted. */
    private final double into;

    /** Parts of what the store was and of the air that make what it is next. */
    private final double keeps;

    private final double takes;

    Stage(double seconds, double airMass, double storeMass, double exchange) {
      this.seconds = seconds;
      mass = airMass / seconds;
      double held = storeMass / seconds;
      keeps = exchange == 0 ? 1 : held / (held + exchange);
      takes = exchange == 0 ? 0 : exchange / (held + exchange);
      into = exchange == 0 ? 0 : exchange * keeps;
    }

    double answer(double inflow) {
      return 1 / (mass + inflow + into);
    }

    double air(double fromAir, double fromStore, double steady, double answer) {
      return (mass * fromAir + steady + into * fromStore) * answer;
    }

    double store(double fromStore, double air) {
      return keeps * fromStore + takes * air;
    }
  }

  /**
   * Where a step leads.
   *
   * @param air humidity ratio of the air at its end, kg/kg
   * @param store that the store is at rest with
   * @param mean mean of the air over the step
   * @param fallen water that fell out of it, kg/s
   * @param highest highest humidity ratio on the way
   * @param lowest lowest on the way
   */
  record Step(
      double air, double store, double mean, double fallen, double highest, double lowest) {}

  /**
   * Makes a step of one room.
   *
   * @param room index
   * @param step where it leads
   * @param around what acts on it
   * @param coil water taken out, kg/s
   * @param ledger account of the water, if one is kept
   */
  void go(int room, Step step, Around around, double coil, Optional<DayLedger> ledger) {
    air[room] = step.air();
    store[room] = step.store();
    if (ledger.isPresent()) {
      double seconds = around.seconds();
      ledger.get().waterIn += around.inflow() * (around.outdoor() - step.mean()) * seconds;
      ledger.get().waterGiven += around.gain() * seconds;
      ledger.get().waterCoil += coil * seconds;
      ledger.get().waterFallen += step.fallen() * seconds;
    }
  }

  /**
   * One step of one room.
   *
   * @param room index
   * @param around what else acts on it
   * @param celsius air temperature at the step's end, °C; water beyond saturation falls out
   * @param coil water taken out, kg/s
   * @param ledger account of the water, if one is kept
   */
  void step(int room, Around around, double celsius, double coil, Optional<DayLedger> ledger) {
    double saturated = MoistAir.saturationHumidityRatio(celsius, around.pressure());
    go(room, look(room, around, saturated, coil), around, coil, ledger);
  }
}
