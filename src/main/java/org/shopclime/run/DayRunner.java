package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.Limit;

/**
 * Runs days of a shop in steps of five minutes, and of half an hour where nothing happens in it
 * ({@link ShopDays#isQuiet}): temperatures, humidity, and the unit in the loop. The unit is on from
 * the start of work to its end, breaks included; it takes out what holds the set point, or all it
 * can ({@link DayUnit}). What it can is taken for the mean air of each step, in a few rounds; air
 * flows are those of its start ({@link DayAir}); {@code LivedDayTest} halves the step. Cooled rooms
 * that no unit cools float.
 */
final class DayRunner {

  /**
   * Air hotter than this is no room's, °C: no unit takes it in, and no figure here is meant for it.
   */
  static final double HOTTEST = 80;

  /** The same of the place of a machine, in which nobody stays. */
  static final double HOTTEST_PLACE = 150;

  private final ShopDays days;
  private final ShopModel model;
  private final int room;
  private final int parts;
  private final boolean strides;
  private final ModeMarch march;
  private final Drivers drivers;
  private final Moisture moisture;
  private final StepInflow outdoors;
  private final DayAir air;
  private final StepWater water;
  private final Driers driers;
  private final DayUnit unit;

  /** Temperature at which the told room is held all day, °C, whatever that takes. */
  private OptionalDouble held = OptionalDouble.empty();

  private int slots = 1;

  /** What the drivers of chains were last filled with. */
  private int filledHour = -1;

  private DayKind filledKind = DayKind.IDLE;
  private double seconds;
  private HourSums sums;
  private Optional<DayLedger> ledger = Optional.empty();

  DayRunner(ShopDays days, Optional<Cooling> cooling, int room) {
    this(days, cooling, room, days.march(), true, 1, new Control.Average(days.cycling(room)));
  }

  /**
   * A runner whose unit is switched on and off minute by minute.
   *
   * @param days the shop on a day
   * @param cooling the unit
   * @param room index of the room that is told
   */
  static DayRunner byTheMinute(ShopDays days, Cooling cooling, int room) {
    int parts = (int) (DaySlots.SECONDS / Thermostat.LOOK);
    RoomCycling cycling = days.cycling(room).of();
    return new DayRunner(
        days,
        Optional.of(cooling),
        room,
        new ModeMarch(days.model().network(), Thermostat.LOOK),
        false,
        parts,
        new OnOff(cycling.thermostat(), cycling.start()));
  }

  /**
   * A runner whose steps are all alike.
   *
   * @param days the shop on a day
   * @param cooling the unit, if any
   * @param room index of the room that is told
   * @param parts number of steps in five minutes
   */
  DayRunner(ShopDays days, Optional<Cooling> cooling, int room, int parts) {
    this(
        days,
        cooling,
        room,
        new ModeMarch(days.model().network(), DaySlots.SECONDS / parts),
        false,
        parts,
        new Control.Average(days.cycling(room)));
  }

  private DayRunner(
      ShopDays days,
      Optional<Cooling> cooling,
      int room,
      ModeMarch march,
      boolean strides,
      int parts,
      Control control) {
    this.days = days;
    this.model = days.model();
    this.room = room;
    this.parts = parts;
    this.strides = strides;
    this.march = march;
    drivers = new Drivers(model.network());
    moisture = Moisture.of(model);
    driers = new Driers(model.rooms(), model::drier);
    outdoors = new StepInflow(drivers, model.rooms(), room);
    air = new DayAir(days, march, drivers, moisture, outdoors, room);
    water =
        new StepWater(
            moisture, march, outdoors, driers, room, model.pressure(), air.place(), air.ways());
    unit = new DayUnit(model, cooling, room, control, march, drivers, outdoors, air, water);
    sums = new HourSums(model, march, room, parts);
  }

  /** Holds the told room at a temperature all day; there is no unit then. */
  void hold(double celsius) {
    held = OptionalDouble.of(celsius);
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
    go(state, 0);
  }

  /**
   * Goes to a guess of the state in which a day like the last one begins. Air may be as moist as
   * that one left it: what counts as saturated then was the mean air of its last step, which may be
   * warmer than the air at its end.
   */
  void guess(State state) {
    go(state, 1);
  }

  private void go(State state, double share) {
    double[] left = moisture.state();
    march.choose(0);
    march.restore(state.heat);
    moisture.restore(state.water);
    for (int r = 0; r < model.rooms(); r++) {
      double saturated = water.saturated(march.air(r));
      moisture.within(r, Math.max(saturated, share * left[r]));
    }
  }

  /** Begins with the steady state under the mean of an idle day. */
  void startSteady() {
    days.drivers(DayKind.IDLE).fillMeans(drivers);
    filledHour = -1;
    for (int r = 0; r < model.rooms(); r++) {
      if (r == room && held.isPresent()) {
        drivers.hold(r, held.getAsDouble());
      } else {
        drivers.release(r);
      }
    }
    air.startSteady();
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
    runWhile(kind, Set.of(), Double.POSITIVE_INFINITY);
  }

  /**
   * Runs one day, given up after the first hour that fails.
   *
   * @param kind working or idle day
   * @param judged hours that must be held, hour ending 1 to 24
   * @param limit highest hourly mean of the room air that counts as held, °C
   * @return whether all of them were held; if not, the runner stands in the middle of the day
   * @throws RoomTooHot as {@link #run}
   */
  boolean runWhile(DayKind kind, Set<Integer> judged, double limit) {
    sums = new HourSums(model, march, room, parts);
    unit.startDay();
    notTooHot();
    if (air.ways().isPresent()) {
      water.startMeans();
    }
    for (int since = 0; since < DaySlots.COUNT; since += slots) {
      int slot = (days.start() + since) % DaySlots.COUNT;
      stride(kind, slot);
      for (int part = 0; part < parts; part++) {
        step(kind, slot);
      }
      int hour = slot / DaySlots.PER_HOUR;
      if ((slot + slots) % DaySlots.PER_HOUR == 0
          && judged.contains(hour + 1)
          && sums.meanAir(hour) > limit) {
        return false;
      }
    }
    return true;
  }

  /** Chooses the length of the steps to come. */
  private void stride(DayKind kind, int slot) {
    boolean far = strides && slot % ShopDays.STRIDE == 0 && days.isQuiet(kind, slot);
    slots = far ? ShopDays.STRIDE : 1;
    seconds = slots * DaySlots.SECONDS / parts;
    water.lasts(seconds);
    march.choose(far ? 1 : 0);
  }

  private void step(DayKind kind, int slot) {
    prepare(kind, slot);
    dry(kind, slot);
    march.look(drivers);
    unit.find(days.isOn(kind, slot), airGain(room, kind, slot));
    march.go(drivers);
    notTooHot();
    water.share(unit.coil());
    double toldWater = 0;
    for (int r = 0; r < model.rooms(); r++) {
      double before = water.humidityRatio(r);
      Moisture.Step wet = water.make(r, unit.coil(), ledger);
      if (r == room) {
        toldWater = told(before, wet);
        unit.leaves(wet.mean());
      }
      if (days.machine().isPresent()) {
        sums.addRoom(r, slot / DaySlots.PER_HOUR, slots, wet.mean());
      }
    }
    if (ledger.isPresent()) {
      audit(ledger.get(), slot);
    }
    sums.add(slot / DaySlots.PER_HOUR, slots, toldWater, unit, driers);
    unit.end();
  }

  private void audit(DayLedger books, int slot) {
    unit.audit(books, seconds);
    for (int r = 0; r < model.rooms(); r++) {
      for (int i = 0; i < slots; i++) {
        books.inflow[r][slot + i] = outdoors.inflow(r);
        books.air[r][slot + i] = march.meanAir(r);
      }
    }
  }

  private void prepare(DayKind kind, int slot) {
    int hour = slot / DaySlots.PER_HOUR;
    if (hour != filledHour || kind != filledKind) {
      days.drivers(kind).fillHour(drivers, hour);
      filledHour = hour;
      filledKind = kind;
    }
    days.drivers(kind).fillGains(drivers, slot, slots);
    for (int r = 0; r < model.rooms(); r++) {
      water.gain(r, latentGain(r, kind, slot));
    }
    if (held.isPresent()) {
      drivers.hold(room, held.getAsDouble());
    }
    air.begin(kind, slot, slots);
    water.blown(0);
  }

  /** Lets the dehumidifiers run as the air is now; a unit is taken to dry it as it did before. */
  private void dry(DayKind kind, int slot) {
    if (!driers.any()) {
      return;
    }
    for (int r = 0; r < model.rooms(); r++) {
      if (driers.in(r)) {
        water.dry(r, march.air(r), unit.coil());
        drivers.airSource(r, airGain(r, kind, slot));
      }
    }
  }

  /** Heat into the air of a room besides the unit's, W. */
  private double airGain(int r, DayKind kind, int slot) {
    double gain = driers.heat(r);
    for (int i = 0; i < slots; i++) {
      gain += days.drivers(kind).airGain(r, slot + i) / slots;
    }
    return gain;
  }

  /** Water of gains in the air of a room, kg/s. */
  private double latentGain(int r, DayKind kind, int slot) {
    double gain = 0;
    for (int i = 0; i < slots; i++) {
      gain += days.latentGains(kind)[r * DaySlots.COUNT + slot + i] / slots;
    }
    return gain;
  }

  /** Mean over the ends of the five minutes in a step: what is told of its water. */
  private double told(double before, Moisture.Step wet) {
    return slots == 1 ? wet.air() : wet.mean() + (wet.air() - before) / (2 * slots);
  }

  private void notTooHot() {
    for (int r = 0; r < model.rooms(); r++) {
      boolean isPlace = air.place().isPresent() && r == air.place().get().place();
      double hottest = isPlace ? HOTTEST_PLACE : HOTTEST;
      if (!(march.air(r) <= hottest)) {
        throw new RoomTooHot(model.roomName(r), hottest);
      }
    }
  }

  /** Air hotter than this is told of no room, °C. */
  double hottest() {
    return air.place().isPresent() ? HOTTEST_PLACE : HOTTEST;
  }

  /**
   * Highest hourly mean of the room air in some hours of the last day.
   *
   * @param hours hours ending 1 to 24
   * @return °C; minus infinity for no hours
   */
  double peak(Set<Integer> hours) {
    return hours.stream()
        .mapToDouble(hour -> sums.meanAir(hour - 1))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** What the unit was asked beyond the tested range of its curves while it ran on the last day. */
  Set<Limit> limits() {
    return sums.limits();
  }

  /** Rooms of the last day; only where a machine is placed. */
  List<RoomHours> rooms() {
    return IntStream.range(0, model.rooms()).mapToObj(sums::room).toList();
  }

  /** The last day. */
  Trace trace() {
    return sums.trace();
  }
}
