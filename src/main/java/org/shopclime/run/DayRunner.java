package org.shopclime.run;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Passages;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.Limit;

/**
 * Runs days of a shop in steps of five minutes, and of half an hour where nothing happens in it
 * ({@link ShopDays#isQuiet}): temperatures, humidity, and the unit in the loop. The unit is on from
 * the start of work to its end, breaks included; it takes out what holds the set point, or all it
 * can. What it can is taken for the mean air of each step, in a few rounds; air flows are those of
 * its start; {@code LivedDayTest} halves the step. Cooled rooms that no unit cools float.
 */
final class DayRunner {

  /**
   * Air hotter than this is no room's, °C: no unit takes it in, and no figure here is meant for it.
   */
  static final double HOTTEST = 80;

  /** The same of the place of a machine, in which nobody stays. */
  static final double HOTTEST_PLACE = 150;

  /** Farthest above outdoors at which leaks of such a place are taken, K. */
  private static final double FARTHEST = 100;

  /** Most rounds in which the unit finds the mean air of the step it makes. */
  private static final int MOST_ROUNDS = 12;

  /** Rounds in which a cooler that blows finds the leaks of the air it leaves. */
  private static final int BLOWING_ROUNDS = 2;

  /** How near its air must be found, K and kg/kg. */
  private static final double NEAR = 0.02;

  private static final double NEAR_HUMIDITY = 2e-5;

  private final ShopDays days;
  private final ShopModel model;
  private final Optional<Cooling> cooling;
  private final int room;
  private final int parts;
  private final boolean strides;
  private final ModeMarch march;
  private final Control control;
  private final Drivers drivers;
  private final Moisture moisture;
  private final double[] inflow;
  private final Driers driers;

  /** Water the unit took out in the last step, kg/s. */
  private double lastCoil;

  private final Optional<PlacedMachine> machine;

  /** Air of the place of a machine, where it stands in a room of its own. */
  private final Optional<PlaceAir> place;

  /** Air between rooms, where something stands open between them. */
  private final Optional<OpenWays> ways;

  /** Mean water in the air of each room in the step, where rooms share air. */
  private final double[] means;

  /** Temperature at which the told room is held all day, °C, whatever that takes. */
  private OptionalDouble held = OptionalDouble.empty();

  private int slots = 1;

  /** What the drivers of chains were last filled with. */
  private int filledHour = -1;

  private DayKind filledKind = DayKind.IDLE;
  private double seconds;

  /** Mean air that the unit is taken to see, carried from step to step while it is on. */
  private final SeenHumidity humidity = new SeenHumidity();

  private double entering;
  private double meanWater;

  /** What a cooler with wet pads blows, and the part of the step that it does. */
  private Blown supply = Blown.NOTHING;

  private double blowing;
  private boolean isOn;
  private Sums sums;
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
    this.control = control;
    this.days = days;
    this.model = days.model();
    this.cooling = cooling;
    this.room = room;
    this.parts = parts;
    this.strides = strides;
    this.march = march;
    drivers = new Drivers(model.network());
    moisture = Moisture.of(model);
    inflow = new double[model.rooms()];
    driers = new Driers(model.rooms(), model::drier);
    means = new double[model.rooms()];
    ways = OpenWays.of(model.passages(), model.rooms());
    sums = new Sums();
    machine = days.machine();
    place =
        machine
            .filter(placed -> placed.place() != placed.room())
            .map(placed -> new PlaceAir(model, placed));
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
      double saturated = saturated(march.air(r));
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
    if (ways.isPresent()) {
      startWays(ways.get());
    }
  }

  /** Finds the steady state anew with the mean air that passes between rooms. */
  private void startWays(OpenWays open) {
    int idle = Passages.plan(DayKind.IDLE);
    open.begin(
        (way, one, other) -> model.passages().dryAir(way, idle, 0, DaySlots.COUNT, one, other),
        MoistAir.humidHeat(model.outdoorHumidityRatio(1)),
        model::setPoint);
    open.startSteady(march, drivers);
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
    sums = new Sums();
    isOn = false;
    notTooHot();
    for (int r = 0; r < model.rooms() && ways.isPresent(); r++) {
      means[r] = moisture.humidityRatio(r);
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
          && meanAir(hour) > limit) {
        return false;
      }
    }
    return true;
  }

  private double meanAir(int hour) {
    return sums.of[0][hour] / (DaySlots.PER_HOUR * parts);
  }

  /** Chooses the length of the steps to come. */
  private void stride(DayKind kind, int slot) {
    boolean far = strides && slot % ShopDays.STRIDE == 0 && days.isQuiet(kind, slot);
    slots = far ? ShopDays.STRIDE : 1;
    seconds = slots * DaySlots.SECONDS / parts;
    march.choose(far ? 1 : 0);
  }

  private void step(DayKind kind, int slot) {
    blowing = 0;
    prepare(kind, slot);
    dry(kind, slot);
    march.look(drivers);
    boolean on = cooling.isPresent() && days.isOn(kind, slot);
    boolean blows = on && cooling.get().blows();
    if (blows) {
      control.off();
      blow(kind, slot);
    } else if (on) {
      control.begin(march.air(room) - model.setPoint(room));
      guessAir();
      flowAgain(kind, slot, entering);
    } else {
      control.off();
      flowAgain(kind, slot, march.meanAir(room));
      settle(kind, slot);
    }
    double fraction = 0;
    double coil = 0;
    Able able = null;
    if (on && !blows) {
      boolean found = false;
      for (int round = 0; round < MOST_ROUNDS && !found; round++) {
        able = ask(slot, entering, humidity.seenAt(entering, model.pressure()));
        fraction = cool(able, kind, slot);
        coil =
            Math.min(
                control.water(able, fraction),
                moisture.coilLimit(room, seconds) - driers.water(room));
        double missed = march.meanAir(room) - entering;
        entering += missed;
        flowAgain(kind, slot, entering);
        meanWater = lookAtRoom(kind, slot, coil + driers.water(room));
        found =
            humidity.isFound(meanWater, NEAR_HUMIDITY)
                && Math.abs(missed) < NEAR
                && roomsAirIsFound();
      }
    }
    isOn = on;
    lastCoil = coil;
    march.go(drivers);
    notTooHot();
    double water = 0;
    shareWater(kind, slot, coil);
    for (int r = 0; r < model.rooms(); r++) {
      double taken = (r == room ? coil : 0) + driers.water(r);
      Moisture.Around around = around(r, kind, slot);
      Moisture.Step wet = look(r, around, taken);
      if (r == room) {
        water = told(wet);
        if (blows) {
          fraction = blowing;
          able = ask(slot, march.meanAir(room), wet.mean());
        }
      }
      if (days.machine().isPresent()) {
        sums.addRoom(r, slot / DaySlots.PER_HOUR, wet.mean());
      }
      moisture.go(r, wet, around, taken, ledger);
    }
    if (ledger.isPresent()) {
      double removed = able == null ? 0 : fraction * able.sensible();
      ledger.get().heat(model.network(), march, drivers, blows ? 0 : removed, seconds);
      if (blows) {
        ledger.get().blown(removed, able.condensate(fraction), seconds);
      }
      for (int r = 0; r < model.rooms(); r++) {
        for (int i = 0; i < slots; i++) {
          ledger.get().inflow[r][slot + i] = inflow[r];
          ledger.get().air[r][slot + i] = march.meanAir(r);
        }
      }
    }
    sums.add(slot / DaySlots.PER_HOUR, able, fraction, water);
    if (on && !blows) {
      control.end(able);
    }
  }

  /** Lets the dehumidifiers run as the air is now; a unit is taken to dry it as it did before. */
  private void dry(DayKind kind, int slot) {
    if (!driers.any()) {
      return;
    }
    for (int r = 0; r < model.rooms(); r++) {
      if (driers.in(r)) {
        double coil = r == room && isOn ? lastCoil : 0;
        driers.find(r, march.air(r), moisture, around(r, kind, slot), coil);
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

  private Able ask(int slot, double celsius, double humidityRatio) {
    int hour = slot / DaySlots.PER_HOUR + 1;
    return cooling
        .get()
        .at(
            model.outdoor(hour),
            model.outdoorHumidityRatio(hour),
            new AirState(celsius, humidityRatio, model.pressure()));
  }

  /** Lets a cooler with wet pads blow as long as the set point needs. */
  private void blow(DayKind kind, int slot) {
    int hour = slot / DaySlots.PER_HOUR + 1;
    supply =
        cooling
            .get()
            .blown(model.outdoor(hour), model.outdoorHumidityRatio(hour), model.pressure());
    for (int round = 0; round < BLOWING_ROUNDS; round++) {
      flowAgain(kind, slot, march.meanAir(room));
      BlownShare.of(
          share -> {
            blowing = share;
            stream(room, hour);
            march.lookAgain(drivers);
            return march.ahead(room) - model.setPoint(room);
          });
    }
  }

  /** A guess at the mean air of a step: on as it went, or as it is where the unit was off. */
  private void guessAir() {
    double air = march.air(room);
    double water = moisture.humidityRatio(room);
    if (isOn) {
      entering = 2 * air - entering;
      humidity.goOnFrom(Math.max(0, 2 * water - meanWater));
    } else {
      entering = air;
      humidity.startFrom(water);
    }
  }

  /** Lets the unit run as long as the set point needs; tells what part of the step that is. */
  private double cool(Able able, DayKind kind, int slot) {
    double gain = airGain(room, kind, slot);
    drivers.airSource(room, gain);
    march.lookAgain(drivers);
    double fraction = control.share(able, needed(able));
    drivers.airSource(room, gain - fraction * able.sensible());
    march.lookAgain(drivers);
    return fraction;
  }

  private Moisture.Around around(int r, DayKind kind, int slot) {
    double gain = 0;
    for (int i = 0; i < slots; i++) {
      gain += days.latentGains(kind)[r * DaySlots.COUNT + slot + i] / slots;
    }
    double share = r == room ? blowing : 0;
    double fresh = inflow[r] + share * supply.dryAir();
    double outdoor =
        supply.mixedHumidity(
            share, inflow[r], model.outdoorHumidityRatio(slot / DaySlots.PER_HOUR + 1));
    double shared = place.isPresent() ? place.get().exchange(r) : 0;
    double all = fresh + shared;
    double comes =
        shared == 0 ? outdoor : (fresh * outdoor + shared * means[place.get().other(r)]) / all;
    double passing = ways.isPresent() ? ways.get().into(r) : 0;
    if (passing > 0) {
      comes = (all * comes + ways.get().water(r, means)) / (all + passing);
      all += passing;
    }
    return new Moisture.Around(comes, all, gain, model.pressure(), seconds);
  }

  /** Mean water of the told room in the step looked at; once round where rooms share air. */
  private double lookAtRoom(DayKind kind, int slot, double coil) {
    if (ways.isPresent()) {
      for (int r = 0; r < means.length; r++) {
        if (r != room) {
          means[r] = look(r, around(r, kind, slot), driers.water(r)).mean();
        }
      }
    } else if (place.isPresent()) {
      int r = place.get().place();
      means[r] = look(r, around(r, kind, slot), driers.water(r)).mean();
    }
    means[room] = look(room, around(room, kind, slot), coil).mean();
    return means[room];
  }

  /** Finds the water of rooms that share air: each takes in the mean of the other's. */
  private void shareWater(DayKind kind, int slot, double coil) {
    if (ways.isPresent()) {
      SharedWater.find(
          means,
          r -> look(r, around(r, kind, slot), (r == room ? coil : 0) + driers.water(r)).mean());
      return;
    }
    if (place.isEmpty()) {
      return;
    }
    int[] both = {place.get().place(), place.get().other(place.get().place())};
    double[] most = new double[means.length];
    for (int r : both) {
      most[r] = saturated(march.meanAir(r));
    }
    SharedWater.settle(
        both,
        means,
        r -> {
          double taken = (r == room ? coil : 0) + driers.water(r);
          return moisture.look(r, around(r, kind, slot), most[r], taken).mean();
        });
  }

  /** Air of a place hotter than any room holds more than it ever gets. */
  private double saturated(double celsius) {
    return MoistAir.saturationHumidityRatio(Math.min(celsius, HOTTEST), model.pressure());
  }

  /** Where the water of a room leads in the step looked at. */
  private Moisture.Step look(int r, Moisture.Around around, double coil) {
    double saturated = saturated(march.meanAir(r));
    return moisture.look(r, around, saturated, coil);
  }

  /** Mean over the ends of the five minutes in a step about to be made: what is told of it. */
  private double told(Moisture.Step wet) {
    return slots == 1
        ? wet.air()
        : wet.mean() + (wet.air() - moisture.humidityRatio(room)) / (2 * slots);
  }

  private void notTooHot() {
    for (int r = 0; r < model.rooms(); r++) {
      double hottest = place.isPresent() && r == place.get().place() ? HOTTEST_PLACE : HOTTEST;
      if (!(march.air(r) <= hottest)) {
        throw new RoomTooHot(model.roomName(r), hottest);
      }
    }
  }

  /** Air hotter than this is told of no room, °C. */
  double hottest() {
    return place.isPresent() ? HOTTEST_PLACE : HOTTEST;
  }

  private void prepare(DayKind kind, int slot) {
    int hour = slot / DaySlots.PER_HOUR;
    if (hour != filledHour || kind != filledKind) {
      days.drivers(kind).fillHour(drivers, hour);
      filledHour = hour;
      filledKind = kind;
    }
    days.drivers(kind).fillGains(drivers, slot, slots);
    if (held.isPresent()) {
      drivers.hold(room, held.getAsDouble());
    }
    if (place.isPresent()) {
      place.get().begin(march.air(place.get().place()));
      pass(kind, slot, march.air(room));
    }
    if (ways.isPresent()) {
      int plan = Passages.plan(kind);
      ways.get()
          .begin(
              (way, one, other) -> model.passages().dryAir(way, plan, slot, slots, one, other),
              MoistAir.humidHeat(model.outdoorHumidityRatio(hour + 1)),
              march::air);
      ways.get().flow(drivers, place);
    }
    for (int r = 0; r < model.rooms(); r++) {
      flow(r, march.air(r), kind, slot);
    }
  }

  private void flow(int r, double celsius, DayKind kind, int slot) {
    int hour = slot / DaySlots.PER_HOUR + 1;
    double farthest = place.isPresent() ? model.outdoor(hour) + FARTHEST : celsius;
    double straight = place.isPresent() ? place.get().outdoorAir(r) : 0;
    inflow[r] =
        model
                .streams()
                .total(r, Math.min(celsius, farthest), kind, slot, slots, through(r, kind, slot))
            + straight;
    stream(r, hour);
  }

  /** Air that leaves a room by other ways than leaks, fans and doors; below 0 what so comes in. */
  private double through(int r, DayKind kind, int slot) {
    double through = place.isPresent() ? place.get().through(r) : 0;
    if (machine.isPresent() && machine.get().room() == r) {
      double supply = machine.get().supply().at(slot / DaySlots.PER_HOUR + 1);
      through -= machine.get().use(kind, slot, slots) * supply;
    }
    return through;
  }

  private void stream(int r, int hour) {
    double share = r == room ? blowing : 0;
    double flow = inflow[r] * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
    drivers.inflow(
        r, flow + supply.conductance(share), supply.mixed(share, flow, model.outdoor(hour)));
  }

  /**
   * Lets the air flow as it does in the mean air of the step looked at, or a better guess at it.
   */
  private void flowAgain(DayKind kind, int slot, double ofRoom) {
    if (place.isPresent()) {
      place.get().move(march.meanAir(place.get().place()));
      pass(kind, slot, ofRoom);
    }
    if (ways.isPresent()) {
      ways.get().move(r -> r == room ? ofRoom : march.meanAir(r));
      ways.get().flow(drivers, place);
    }
    for (int r = 0; r < model.rooms(); r++) {
      flow(r, r == room ? ofRoom : march.meanAir(r), kind, slot);
    }
    march.lookAgain(drivers);
  }

  private void pass(DayKind kind, int slot, double ofRoom) {
    place.get().flow(kind, slot, slots, ofRoom, moisture.humidityRatio(room), drivers);
  }

  private boolean roomsAirIsFound() {
    return (place.isEmpty() || place.get().isFound(march.meanAir(place.get().place())))
        && (ways.isEmpty() || ways.get().isFound(march::meanAir));
  }

  /** Brings the air at which air passes between rooms near to that of the step. */
  private void settle(DayKind kind, int slot) {
    for (int round = 0; round < MOST_ROUNDS && !roomsAirIsFound(); round++) {
      flowAgain(kind, slot, march.meanAir(room));
    }
  }

  /**
   * Part of its capacity that brings the room to its set point at the end of the step; below 0
   * where the room would not come so far.
   */
  private double needed(Able able) {
    double over = march.ahead(room) - model.setPoint(room);
    if (able.sensible() <= 0 || (over <= 0 && able.idle() == 0)) {
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
        .mapToDouble(hour -> meanAir(hour - 1))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** What the unit was asked beyond the tested range of its curves while it ran on the last day. */
  Set<Limit> limits() {
    return sums.limits;
  }

  /** Rooms of the last day; only where a machine is placed. */
  List<RoomHours> rooms() {
    return IntStream.range(0, model.rooms())
        .mapToObj(r -> new RoomHours(sums.ofRoom(r, 0), sums.ofRoom(r, 1), sums.ofRoom(r, 2)))
        .toList();
  }

  /** The last day. */
  Trace trace() {
    return sums.trace();
  }

  /** Sums over the steps of each hour. */
  private final class Sums {
    private final double[][] of = new double[12][24];
    private final Set<Limit> limits = EnumSet.noneOf(Limit.class);

    /** Air, water and heat that holds each room, by hour, where a machine is placed. */
    private final double[][][] rooms = new double[model.rooms()][3][24];

    private void addRoom(int r, int hour, double water) {
      rooms[r][0][hour] += slots * march.meanAir(r);
      rooms[r][1][hour] += slots * water;
      rooms[r][2][hour] += slots * march.plant(r);
    }

    private Profile ofRoom(int r, int which) {
      return Profile.of(hour -> rooms[r][which][hour - 1] / (DaySlots.PER_HOUR * parts));
    }

    private void add(int hour, Able able, double fraction, double water) {
      double air = march.meanAir(room);
      of[0][hour] += slots * air;
      of[1][hour] += slots * ((air + march.meanStar(room)) / 2);
      of[2][hour] += slots * water;
      of[10][hour] += slots * driers.power(room);
      of[11][hour] += slots * driers.water(room);
      if (able != null) {
        of[3][hour] += slots * (fraction * able.sensible());
        of[5][hour] += slots * able.sensible();
        of[6][hour] += slots * able.latent();
        Control.Given given = control.given(able, fraction);
        of[4][hour] += slots * given.latent();
        of[7][hour] += slots * given.running();
        of[8][hour] += slots * given.power();
        of[9][hour] += slots * given.starts();
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
          mean(8),
          mean(9),
          mean(10),
          mean(11));
    }

    private Profile mean(int which) {
      return Profile.of(hour -> of[which][hour - 1] / (DaySlots.PER_HOUR * parts));
    }
  }
}
