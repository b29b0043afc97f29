package org.shopclime.run;

import java.util.Arrays;
import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;

/**
 * Water in the air of each room: outdoor air, people and work, the coil, and one lumped store of
 * walls and wood (effective penetration depth; after Kerestecioglu and others, ASHRAE Transactions
 * 96(1), 1990). Steps are implicit, so that they stay stable however fast the store is.
 */
final class Moisture {

  private final double[] airMass;
  private final double[] storeMass;
  private final double[] exchange;
  private final double[] air;
  private final double[] store;

  private Moisture(int rooms, double start) {
    airMass = new double[rooms];
    storeMass = new double[rooms];
    exchange = new double[rooms];
    air = new double[rooms];
    store = new double[rooms];
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
    Moisture moisture = new Moisture(model.rooms(), outdoor);
    for (int room = 0; room < model.rooms(); room++) {
      moisture.airMass[room] = model.dryAirMass(room);
      moisture.storeMass[room] = model.moistureStore(room);
      moisture.exchange[room] = model.moistureExchange(room);
    }
    return moisture;
  }

  /**
   * A start with the air of every room as outdoors in an hour.
   *
   * @param year the shop through a year
   * @param hour the hour
   * @return water of its rooms
   */
  static Moisture of(ShopYear year, int hour) {
    Moisture moisture = new Moisture(year.rooms(), year.outdoorHumidityRatio(hour));
    for (int room = 0; room < year.rooms(); room++) {
      moisture.airMass[room] = year.dryAirMass(room);
      moisture.storeMass[room] = year.moistureStore(room);
      moisture.exchange[room] = year.moistureExchange(room);
    }
    return moisture;
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
  void within(int room, double celsius, double pressure) {
    double saturated = MoistAir.saturationHumidityRatio(celsius, pressure);
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
   * One step of one room.
   *
   * @param room index
   * @param around what else acts on it
   * @param celsius air temperature at the step's end, °C; water beyond saturation falls out
   * @param coil water taken out, kg/s
   * @param ledger account of the water, if one is kept
   */
  void step(int room, Around around, double celsius, double coil, Optional<DayLedger> ledger) {
    double outdoor = around.outdoor();
    double gain = around.gain();
    double inflow = around.inflow();
    double seconds = around.seconds();
    double held = storeMass[room] / seconds;
    double k = exchange[room];
    // what the store takes from the air is (next - store) times this, its own change counted in
    double into = k == 0 ? 0 : k * held / (held + k);
    double mass = airMass[room] / seconds;
    double brought = mass * air[room] + inflow * outdoor + gain - coil + into * store[room];
    double next = brought / (mass + inflow + into);
    double saturated = MoistAir.saturationHumidityRatio(celsius, around.pressure());
    double fallen = 0;
    if (next > saturated) {
      fallen = brought - saturated * (mass + inflow + into);
      next = saturated;
    }
    if (k > 0) {
      store[room] = (held * store[room] + k * next) / (held + k);
    }
    air[room] = next;
    if (ledger.isPresent()) {
      ledger.get().waterIn += inflow * (outdoor - next) * seconds;
      ledger.get().waterGiven += gain * seconds;
      ledger.get().waterCoil += coil * seconds;
      ledger.get().waterFallen += fallen * seconds;
    }
  }
}
