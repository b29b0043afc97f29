package org.shopclime.run;

import java.util.EnumMap;
import java.util.Map;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;

/**
 * Water in the air of each room: outdoor air, people and work, the coil, and one lumped store of
 * walls and wood (effective penetration depth; after Kerestecioglu and others, ASHRAE Transactions
 * 96(1), 1990). Steps are implicit, so that they stay stable however fast the store is.
 */
final class Moisture {

  private final ShopModel model;
  private final double[] airMass;
  private final double[] storeMass;
  private final double[] exchange;
  private final double[] air;
  private final double[] store;
  private final Map<DayKind, double[]> gains = new EnumMap<>(DayKind.class);

  /**
   * A start with the air of every room as outdoors on average.
   *
   * @param model the shop on a day
   */
  Moisture(ShopModel model) {
    this.model = model;
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
    for (DayKind kind : DayKind.values()) {
      gains.put(kind, model.latentGains(kind));
    }
  }

  double humidityRatio(int room) {
    return air[room];
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
   * @return water that fell out, kg
   */
  double step(
      int room,
      DayKind kind,
      int slot,
      double seconds,
      double celsius,
      double inflow,
      double coil) {
    int hour = slot / (DaySlots.COUNT / Profile.HOURS) + 1;
    double held = storeMass[room] / seconds;
    double k = exchange[room];
    double through = k == 0 ? 0 : k / (held + k);
    double gain = gains.get(kind)[room * DaySlots.COUNT + slot];
    double next =
        (airMass[room] / seconds * air[room]
                + inflow * model.outdoorHumidityRatio(hour)
                + gain
                - coil
                + through * held * store[room])
            / (airMass[room] / seconds + inflow + k * (1 - through));
    next = Math.max(next, 0);
    double fallen = 0;
    double saturated = MoistAir.saturationHumidityRatio(celsius, model.pressure());
    if (next > saturated) {
      fallen = (next - saturated) * airMass[room];
      next = saturated;
    }
    store[room] = k == 0 ? store[room] : (held * store[room] + k * next) / (held + k);
    air[room] = next;
    return fallen;
  }
}
