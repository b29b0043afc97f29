package org.shopclime.run;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.unit.Delivered;
import org.shopclime.unit.Limit;
import org.shopclime.unit.PartLoad;

/**
 * Runs days of a shop in steps of five minutes: temperatures, humidity, and the unit in the loop.
 * The unit is on from the start of work to its end, breaks included; it takes out what holds the
 * set point, or all it can.
 */
final class DayRunner {

  private static final int SLOTS = DaySlots.COUNT;
  private static final int PER_HOUR = SLOTS / 24;

  private final ShopModel model;
  private final Optional<Cooling> cooling;
  private final int room;
  private final March march;
  private final Drivers drivers;
  private final Moisture moisture;
  private final Map<DayKind, DayDrivers> days = new EnumMap<>(DayKind.class);
  private final double[] inflow;
  private final DaySlots attended;
  private final Set<Limit> limits = EnumSet.noneOf(Limit.class);

  DayRunner(ShopModel model, Optional<Cooling> cooling, int room) {
    this.model = model;
    this.cooling = cooling;
    this.room = room;
    march = new March(model.network(), DaySlots.SECONDS);
    drivers = new Drivers(model.network());
    moisture = new Moisture(model);
    for (DayKind kind : DayKind.values()) {
      days.put(kind, model.drivers(kind, component -> true, 0));
    }
    inflow = new double[model.rooms()];
    attended = model.working().withoutBreaks();
  }

  /** Where a run stands between two days. */
  static final class State {
    private final double[] heat;
    private final double[] water;

    private State(double[] heat, double[] water) {
      this.heat = heat;
      this.water = water;
    }
  }

  State state() {
    return new State(march.state(), moisture.state());
  }

  void restore(State state) {
    march.restore(state.heat);
    moisture.restore(state.water);
  }

  /** Begins with the steady state under the mean of an idle day. */
  void startSteady() {
    days.get(DayKind.IDLE).fillMeans(drivers);
    for (int r = 0; r < model.rooms(); r++) {
      drivers.release(r);
      double flow = 0;
      double heat = 0;
      for (int hour = 1; hour <= 24; hour++) {
        double each =
            model
                    .streams()
                    .total(
                        r, model.meanOutdoor() + 5, DayKind.IDLE, (hour - 1) * PER_HOUR, PER_HOUR)
                * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
        flow += each / 24;
        heat += each * model.outdoor(hour) / 24;
      }
      drivers.inflow(r, flow, flow > 0 ? heat / flow : 0);
    }
    march.startSteady(drivers);
  }

  /** What the unit was asked beyond the tested range of its curves, so far. */
  Set<Limit> limits() {
    return limits;
  }

  /** Runs one day. */
  Trace run(DayKind kind) {
    double[][] sums = new double[9][24];
    for (int slot = 0; slot < SLOTS; slot++) {
      int hour = slot / PER_HOUR;
      boolean on = cooling.isPresent() && kind == DayKind.WORKING && attended.at(slot) > 0;
      prepare(kind, slot);
      double fraction = 0;
      Delivered able = null;
      if (on) {
        able =
            cooling
                .get()
                .unit()
                .at(
                    model.outdoor(hour + 1),
                    new AirState(march.air(room), moisture.humidityRatio(room), model.pressure()));
        fraction = fraction(able);
        drivers.airSource(room, days.get(kind).airGain(room, slot) - fraction * able.sensible());
        limits.addAll(able.limits());
      }
      march.step(drivers);
      for (int r = 0; r < model.rooms(); r++) {
        double coil =
            able != null && r == room
                ? Math.min(
                    fraction * able.condensate(),
                    moisture.humidityRatio(r) * model.dryAirMass(r) / DaySlots.SECONDS)
                : 0;
        moisture.step(r, kind, slot, DaySlots.SECONDS, march.air(r), inflow[r], coil);
      }
      note(sums, hour, able, fraction);
    }
    return trace(sums);
  }

  private void prepare(DayKind kind, int slot) {
    days.get(kind).fill(drivers, slot, 1);
    int hour = slot / PER_HOUR + 1;
    double heat = MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
    for (int r = 0; r < model.rooms(); r++) {
      inflow[r] = model.streams().total(r, march.air(r), kind, slot, 1);
      drivers.inflow(r, inflow[r] * heat, model.outdoor(hour));
    }
  }

  /** Part of the step the unit must run to bring the room to its set point at the end of it. */
  private double fraction(Delivered able) {
    double free = march.lookAhead(drivers, room);
    double over = free - model.setPoint(room);
    if (over <= 0 || able.sensible() <= 0) {
      return 0;
    }
    double need = over / march.response(drivers, room, room);
    return Math.min(1, need / able.sensible());
  }

  private void note(double[][] sums, int hour, Delivered able, double fraction) {
    double w = moisture.humidityRatio(room);
    double air = march.meanAir(room);
    sums[0][hour] += air;
    sums[1][hour] += (air + march.meanStar(room)) / 2;
    sums[2][hour] += w;
    if (able != null) {
      sums[3][hour] += fraction * able.sensible();
      sums[4][hour] += fraction * able.latent();
      sums[5][hour] += able.sensible();
      sums[6][hour] += able.latent();
      sums[7][hour] += fraction;
      sums[8][hour] += able.power() * PartLoad.powerFraction(fraction);
    }
  }

  private Trace trace(double[][] sums) {
    Profile air = mean(sums[0]);
    Profile water = mean(sums[2]);
    double pressure = model.pressure();
    return new Trace(
        air,
        mean(sums[1]),
        Profile.of(hour -> MoistAir.dewPoint(water.at(hour), pressure)),
        Profile.of(
            hour -> Math.min(1, MoistAir.relativeHumidity(air.at(hour), water.at(hour), pressure))),
        mean(sums[3]),
        mean(sums[4]),
        mean(sums[5]),
        mean(sums[6]),
        mean(sums[7]),
        mean(sums[8]));
  }

  private static Profile mean(double[] sums) {
    return Profile.of(hour -> sums[hour - 1] / PER_HOUR);
  }
}
