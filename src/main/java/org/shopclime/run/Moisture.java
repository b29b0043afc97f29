package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;

/**
 * Water in the air of each room: outdoor air, people and work, the coil, and one lumped store of
 * walls and wood (effective penetration depth; after Kerestecioglu and others, ASHRAE Transactions
 * 96(1), 1990). Steps are implicit, so that they stay stable however fast the store is.
 */
final class Moisture {

  private final ShopDays days;
  private final ShopModel model;
  private final double[] airMass;
  private final double[] storeMass;
  private final double[] exchange;
  private final double[] air;
  private final double[] store;

  /**
   * A start with the air of every room as outdoors on average.
   *
   * @param days the shop on a day
   */
  Moisture(ShopDays days) {
    this.days = days;
    this.model = days.model();
    int rooms = model.rooms();
    airMass = new double[rooms];
    storeMass = new double[rooms];
    exchange = new double[rooms];
    air = new double[rooms];
    store = new double[rooms];
    double outdoor = 0;
    for (int hour = 1; hour <= 24; hour++) {
      outdoor += model.outdoorHumidityRatio(hour) / 24;
    }
    for (int room = 0; room < rooms; room++) {
      airMass[room] = model.dryAirMass(room);
      storeMass[room] = model.moistureStore(room);
      exchange[room] = model.moistureExchange(room);
      air[room] = outdoor;
      store[room] = outdoor;
    }
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
  void within(int room, double celsius) {
    double saturated = MoistAir.saturationHumidityRatio(celsius, model.pressure());
    air[room] = Math.max(0, Math.min(air[room], saturated));
    store[room] = Math.max(0, store[room]);
  }

  /**
   * One step of one room.
   *
   * @param room index
   * @param kind working or idle day
   * @param slot five-minute slot
   * @param seconds length of the step, s
   * @param celsius air temperature at its end, °C; water beyond saturation falls out
   * @param inflow outdoor air, kg of dry air a second
   * @param coil water taken out, kg/s
   * @param ledger account of the water, if one is kept
   */
  void step(
      int room,
      DayKind kind,
      int slot,
      double seconds,
      double celsius,
      double inflow,
      double coil,
      Optional<DayLedger> ledger) {
    double outdoor = model.outdoorHumidityRatio(slot / DaySlots.PER_HOUR + 1);
    double gain = days.latentGains(kind)[room * DaySlots.COUNT + slot];
    double held = storeMass[room] / seconds;
    double k = exchange[room];
    // what the store takes from the air is (next - store) times this, its own change counted in
    double into = k == 0 ? 0 : k * held / (held + k);
    double mass = airMass[room] / seconds;
    double brought = mass * air[room] + inflow * outdoor + gain - coil + into * store[room];
    double next = brought / (mass + inflow + into);
    double saturated = MoistAir.saturationHumidityRatio(celsius, model.pressure());
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
