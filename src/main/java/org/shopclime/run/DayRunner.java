package org.shopclime.run;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.Delivered;
import org.shopclime.unit.Limit;
import org.shopclime.unit.PartLoad;

/**
 * Runs days of a shop in steps of five minutes: temperatures, humidity, and the unit in the loop.
 * The unit is on from the start of work to its end, breaks included; it takes out what holds the
 * set point, or all it can. What it can is taken for the mean air of each step, in a few rounds;
 * air flows are those of its start; {@code LivedDayTest} halves the step. Cooled rooms that no unit
 * cools float.
 */
final class DayRunner {

  /**
   * Air hotter than this is no room's, °C: no unit takes it in, and no figure here is meant for it.
   */
  static final double HOTTEST = 80;

  /** Most rounds in which the unit finds the mean air of the step it makes. */
  private static final int MOST_ROUNDS = 12;

  private final ShopDays days;
  private final ShopModel model;
  private final Optional<Cooling> cooling;
  private final int room;
  private final int parts;
  private final double seconds;
  private final ModeMarch march;
  private final Drivers drivers;
  private final Moisture moisture;
  private final double[] inflow;
  private Sums sums = new Sums();
  private Optional<DayLedger> ledger = Optional.empty();

  DayRunner(ShopDays days, Optional<Cooling> cooling, int room) {
    this(days, cooling, room, 1);
  }

  /**
   * A runner with shorter steps.
   *
   * @param days the shop on a day
   * @param cooling the unit, if any
   * @param room index of the room that is told
   * @param parts number of steps in five minutes
   */
  DayRunner(ShopDays days, Optional<Cooling> cooling, int room, int parts) {
    this.days = days;
    this.model = days.model();
    this.cooling = cooling;
    this.room = room;
    this.parts = parts;
    seconds = DaySlots.SECONDS / parts;
    march = new ModeMarch(model.network(), seconds);
    drivers = new Drivers(model.network());
    moisture = Moisture.of(model);
    inflow = new double[model.rooms()];
  }

  /** Where a run stands between two days. */
  static final class State {
    private final double[] heat;
    private final double[] water;

    State(double[] heat, double[] water) {
      this.heat = heat;
      this.water = water;
    }

    double[] heat() {
      return heat;
    }

    double[] water() {
      return water;
    }
  }

  State state() {
    return new State(march.state(), moisture.state());
  }

  /** A state that is warmer everywhere. */
  State warmer(State state, double kelvin) {
    double[] warmth = march.warmth();
    double[] heat = state.heat.clone();
    for (int i = 0; i < heat.length; i++) {
      heat[i] += kelvin * warmth[i];
    }
    return new State(heat, state.water);
  }

  /** Kelvin by which each entry of a state of heat moves some face or air. */
  double[] weights() {
    return march.weights();
  }

  /** Goes to a state, or to a guess of one. */
  void restore(State state) {
    march.restore(state.heat);
    moisture.restore(state.water);
    for (int r = 0; r < model.rooms(); r++) {
      moisture.within(r, march.air(r), model.pressure());
    }
  }

  /** Begins with the steady state under the mean of an idle day. */
  void startSteady() {
    days.drivers(DayKind.IDLE).fillMeans(drivers);
    for (int r = 0; r < model.rooms(); r++) {
      drivers.release(r);
      double flow = 0;
      double heat = 0;
      for (int hour = 1; hour <= 24; hour++) {
        double each =
            model
                    .streams()
                    .total(
                        r,
                        model.meanOutdoor() + 5,
                        DayKind.IDLE,
                        (hour - 1) * DaySlots.PER_HOUR,
                        DaySlots.PER_HOUR)
                * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
        flow += each / 24;
        heat += each * model.outdoor(hour) / 24;
      }
      drivers.inflow(r, flow, flow > 0 ? heat / flow : 0);
    }
    march.startSteady(drivers);
  }

  /** Keeps the account of heat and water of the days to come. */
  void audit(DayLedger kept) {
    ledger = Optional.of(kept);
  }

  /** Water in the air and the stores of all rooms, kg. */
  double waterHeld() {
    return moisture.held();
  }

  /**
   * Runs one day.
   *
   * @param kind working or idle day
   * @throws RoomTooHot if a room gets hotter than {@link #HOTTEST}
   */
  void run(DayKind kind) {
    sums = new Sums();
    notTooHot();
    for (int since = 0; since < DaySlots.COUNT; since++) {
      int slot = (days.start() + since) % DaySlots.COUNT;
      for (int part = 0; part < parts; part++) {
        step(kind, slot);
      }
    }
  }

  private void step(DayKind kind, int slot) {
    prepare(kind, slot);
    march.look(drivers);
    flowAgain(kind, slot);
    double fraction = 0;
    double coil = 0;
    Delivered able = null;
    if (cooling.isPresent() && kind == DayKind.WORKING && days.attended(slot)) {
      double entering = march.air(room);
      SeenHumidity humidity = new SeenHumidity();
      humidity.startFrom(moisture.humidityRatio(room));
      boolean found = false;
      for (int round = 0; round < MOST_ROUNDS && !found; round++) {
        able =
            cooling
                .get()
                .unit()
                .at(
                    model.outdoor(slot / DaySlots.PER_HOUR + 1),
                    new AirState(
                        entering, humidity.seenAt(entering, model.pressure()), model.pressure()));
        fraction = cool(able, kind, slot);
        coil = Math.min(fraction * able.condensate(), moisture.coilLimit(room, seconds));
        entering = march.meanAir(room);
        flowAgain(kind, slot);
        found = humidity.isFound(look(room, kind, slot, coil).mean()) && round > 0;
      }
    }
    march.go(drivers);
    notTooHot();
    for (int r = 0; r < model.rooms(); r++) {
      double taken = r == room ? coil : 0;
      moisture.go(r, look(r, kind, slot, taken), around(r, kind, slot), taken, ledger);
    }
    if (ledger.isPresent()) {
      double removed = able == null ? 0 : fraction * able.sensible();
      ledger.get().heat(model.network(), march, drivers, removed, seconds);
      for (int r = 0; r < model.rooms(); r++) {
        ledger.get().inflow[r][slot] = inflow[r];
        ledger.get().air[r][slot] = march.meanAir(r);
      }
    }
    sums.add(slot / DaySlots.PER_HOUR, able, fraction);
  }

  /** Lets the unit run as long as the set point needs; tells what part of the step that is. */
  private double cool(Delivered able, DayKind kind, int slot) {
    double gain = days.drivers(kind).airGain(room, slot);
    drivers.airSource(room, gain);
    march.lookAgain(drivers);
    double fraction = fraction(able);
    drivers.airSource(room, gain - fraction * able.sensible());
    march.lookAgain(drivers);
    return fraction;
  }

  private Moisture.Around around(int r, DayKind kind, int slot) {
    return new Moisture.Around(
        model.outdoorHumidityRatio(slot / DaySlots.PER_HOUR + 1),
        inflow[r],
        days.latentGains(kind)[r * DaySlots.COUNT + slot],
        model.pressure(),
        seconds);
  }

  /** Where the water of a room leads in the step looked at. */
  private Moisture.Step look(int r, DayKind kind, int slot, double coil) {
    double saturated = MoistAir.saturationHumidityRatio(march.meanAir(r), model.pressure());
    return moisture.look(r, around(r, kind, slot), saturated, coil);
  }

  private void notTooHot() {
    for (int r = 0; r < model.rooms(); r++) {
      if (!(march.air(r) <= HOTTEST)) {
        throw new RoomTooHot(model.roomName(r), HOTTEST);
      }
    }
  }

  private void prepare(DayKind kind, int slot) {
    days.drivers(kind).fill(drivers, slot, 1);
    for (int r = 0; r < model.rooms(); r++) {
      flow(r, march.air(r), kind, slot);
    }
  }

  private void flow(int r, double celsius, DayKind kind, int slot) {
    int hour = slot / DaySlots.PER_HOUR + 1;
    inflow[r] = model.streams().total(r, celsius, kind, slot, 1);
    double heat = MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
    drivers.inflow(r, inflow[r] * heat, model.outdoor(hour));
  }

  /** Lets the air flow as it does in the mean air of the step looked at. */
  private void flowAgain(DayKind kind, int slot) {
    for (int r = 0; r < model.rooms(); r++) {
      flow(r, march.meanAir(r), kind, slot);
    }
    march.lookAgain(drivers);
  }

  /** Part of the step the unit must run to bring the room to its set point at the end of it. */
  private double fraction(Delivered able) {
    double free = march.ahead(room);
    double over = free - model.setPoint(room);
    if (over <= 0 || able.sensible() <= 0) {
      return 0;
    }
    double need = over / march.response(drivers, room);
    return Math.min(1, need / able.sensible());
  }

  /**
   * Highest hourly mean of the room air in some hours of the last day.
   *
   * @param hours hours ending 1 to 24
   * @return °C; minus infinity for no hours
   */
  double peak(Set<Integer> hours) {
    return hours.stream()
        .mapToDouble(hour -> sums.of[0][hour - 1] / (DaySlots.PER_HOUR * parts))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** What the unit was asked beyond the tested range of its curves while it ran on the last day. */
  Set<Limit> limits() {
    return sums.limits;
  }

  /** The last day. */
  Trace trace() {
    return sums.trace();
  }

  /** Sums over the steps of each hour. */
  private final class Sums {
    private final double[][] of = new double[9][24];
    private final Set<Limit> limits = EnumSet.noneOf(Limit.class);

    private void add(int hour, Delivered able, double fraction) {
      double air = march.meanAir(room);
      of[0][hour] += air;
      of[1][hour] += (air + march.meanStar(room)) / 2;
      of[2][hour] += moisture.humidityRatio(room);
      if (able != null) {
        of[3][hour] += fraction * able.sensible();
        of[4][hour] += fraction * able.latent();
        of[5][hour] += able.sensible();
        of[6][hour] += able.latent();
        of[7][hour] += fraction;
        of[8][hour] += able.power() * PartLoad.powerFraction(fraction);
        if (fraction > 0) {
          limits.addAll(able.limits());
        }
      }
    }

    private Trace trace() {
      Profile air = mean(0);
      Profile water = mean(2);
      double pressure = model.pressure();
      return new Trace(
          air,
          mean(1),
          Profile.of(hour -> MoistAir.dewPoint(water.at(hour), pressure)),
          Profile.of(
              hour ->
                  Math.min(1, MoistAir.relativeHumidity(air.at(hour), water.at(hour), pressure))),
          mean(3),
          mean(4),
          mean(5),
          mean(6),
          mean(7),
          mean(8));
    }

    private Profile mean(int which) {
      return Profile.of(hour -> of[which][hour - 1] / (DaySlots.PER_HOUR * parts));
    }
  }
}
