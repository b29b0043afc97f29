package org.shopclime.run;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Passages;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/** The working and the idle day of a shop, laid out once for all runs of one model. */
final class ShopDays {

  /** How much warmer than outdoors a room is taken to be where openings are compared, K. */
  private static final double WARMER = 5;

  /** Number of the march's step of {@link RoomCycling#LONG}. */
  private static final int LONGER = 2;

  /** Beyond the last slot of a day. */
  private static final int NEVER = DaySlots.COUNT;

  /** Slots in a long step: half an hour. */
  static final int STRIDE = 6;

  private final ShopModel model;
  private final Map<DayKind, DayDrivers> drivers = new EnumMap<>(DayKind.class);
  private final Map<DayKind, double[]> latentGains = new EnumMap<>(DayKind.class);
  private final DaySlots working;
  private final DaySlots attended;

  /** First slot of an idle day in which the unit is on; none where it never is. */
  private final int visited;

  private final int start;
  private final ModeMarch march;
  private final Map<Integer, CyclingTable> cycling;
  private final Map<DayKind, boolean[]> quiet = new EnumMap<>(DayKind.class);
  private final Optional<PlacedMachine> machine;

  ShopDays(ShopModel model) {
    this(
        model,
        new ModeMarch(
            model.network(), DaySlots.SECONDS, STRIDE * DaySlots.SECONDS, RoomCycling.LONG),
        new HashMap<>(),
        Optional.empty());
  }

  private ShopDays(
      ShopModel model,
      ModeMarch march,
      Map<Integer, CyclingTable> cycling,
      Optional<PlacedMachine> machine) {
    this.model = model;
    this.march = march;
    this.cycling = cycling;
    this.machine = machine;
    int leftOut = machine.map(PlacedMachine::leftOut).orElse(-1);
    for (DayKind kind : DayKind.values()) {
      drivers.put(kind, model.drivers(kind, component -> component != leftOut, 0));
      latentGains.put(kind, model.latentGains(kind));
      machine.ifPresent(placed -> add(placed, kind));
    }
    working = model.working();
    visited = NEVER;
    attended = working.withoutBreaks();
    boolean throughMidnight =
        attended.at(0) > 0 && attended.at(DaySlots.COUNT - 1) > 0 && attended.hours() < 24;
    start = throughMidnight ? working.firstActiveSlot() / DaySlots.PER_HOUR * DaySlots.PER_HOUR : 0;
    findQuiet();
  }

  private ShopDays(ShopDays of, int early, int visited) {
    this.visited = visited;
    model = of.model;
    march = of.march;
    cycling = of.cycling;
    drivers.putAll(of.drivers);
    latentGains.putAll(of.latentGains);
    working = of.working;
    attended = of.attended.earlier(early);
    start = of.start;
    machine = of.machine;
    findQuiet();
  }

  private void add(PlacedMachine placed, DayKind kind) {
    DaySlots use = kind == DayKind.WORKING ? placed.working() : placed.idle();
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      int hour = slot / DaySlots.PER_HOUR + 1;
      double heat = use.at(slot) * placed.placeHeat().at(hour);
      double radiant = placed.radiant() * heat;
      drivers.get(kind).addGain(placed.place(), slot, heat - radiant, radiant);
      drivers.get(kind).addGain(placed.room(), slot, use.at(slot) * placed.roomHeat().at(hour), 0);
      latentGains.get(kind)[placed.room() * DaySlots.COUNT + slot] +=
          use.at(slot) * placed.roomWater().at(hour);
    }
  }

  /** The same days with a machine in a place; the march is shared. */
  ShopDays with(PlacedMachine placed) {
    return new ShopDays(model, march, cycling, Optional.of(placed));
  }

  /** The machine in its place, if one is told apart from the shop's other gains. */
  Optional<PlacedMachine> machine() {
    return machine;
  }

  private void findQuiet() {
    for (DayKind kind : DayKind.values()) {
      boolean[] strides = new boolean[DaySlots.COUNT / STRIDE];
      for (int i = 0; i < strides.length; i++) {
        strides[i] = isCalm(kind, i * STRIDE);
      }
      quiet.put(kind, strides);
    }
  }

  /** The same days with the unit switched on so many slots before work; the march is shared. */
  ShopDays switchedOnEarlier(int slots) {
    return new ShopDays(this, slots, NEVER);
  }

  /** The same days with the unit switched on in a slot of an idle day, until that ends. */
  ShopDays visitedFrom(int slot) {
    return new ShopDays(this, 0, Math.floorMod(slot - start, DaySlots.COUNT));
  }

  /**
   * Whether the unit is on.
   *
   * @param kind working or idle day
   * @param slot five-minute slot
   */
  boolean isOn(DayKind kind, int slot) {
    return kind == DayKind.WORKING
        ? attended(slot)
        : Math.floorMod(slot - start, DaySlots.COUNT) >= visited;
  }

  /** Slot in which work begins; -1 if nobody ever works. */
  int firstSlot() {
    return working.firstActiveSlot();
  }

  /** The same shop on a day moved bodily; the march is shared. */
  ShopDays shifted(double kelvin) {
    return new ShopDays(model.shifted(kelvin), march, cycling, machine);
  }

  /**
   * The march of the network, shared by all runs of the shop: one after the other, each from a
   * state of its own. Its second length of step is a stride.
   */
  ModeMarch march() {
    return march;
  }

  /** How a unit goes on and off in a room; shared by all runs of the shop, as the march is. */
  CyclingTable cycling(int room) {
    return cycling.computeIfAbsent(room, this::findCycling);
  }

  private CyclingTable findCycling(int room) {
    CyclingTable found = CyclingTable.usual(march, new Drivers(model.network()), room, 0, LONGER);
    march.choose(0);
    return found;
  }

  ShopModel model() {
    return model;
  }

  DayDrivers drivers(DayKind kind) {
    return drivers.get(kind);
  }

  /** Water given off, kg/s, 288 slots for each room. */
  double[] latentGains(DayKind kind) {
    return latentGains.get(kind);
  }

  /** Whether somebody is there, breaks included, so that the unit is on. */
  boolean attended(int slot) {
    return attended.at(slot) > 0;
  }

  /**
   * Whether nothing happens in a stride that its means would not tell: gains and openings stay as
   * they are, and on a working day nobody is there, nor was in the hour before, after which the
   * room is far from rest.
   *
   * @param kind working or idle day
   * @param first slot it begins with, a multiple of {@link #STRIDE}
   */
  boolean isQuiet(DayKind kind, int first) {
    return quiet.get(kind)[first / STRIDE];
  }

  private double uses(DayKind kind, int slot) {
    return (kind == DayKind.WORKING ? machine.get().working() : machine.get().idle()).at(slot);
  }

  private boolean isCalm(DayKind kind, int first) {
    int before = first + DaySlots.COUNT - DaySlots.PER_HOUR;
    double warm = model.outdoor(first / DaySlots.PER_HOUR + 1) + WARMER;
    for (int i = 0; i < DaySlots.PER_HOUR + STRIDE; i++) {
      if (isOn(kind, (before + i) % DaySlots.COUNT)) {
        return false;
      }
    }
    for (int i = 1; i < STRIDE; i++) {
      for (int way = 0; way < model.passages().count(); way++) {
        int plan = Passages.plan(kind);
        if (model.passages().open(way, plan, first + i, 1)
            != model.passages().open(way, plan, first + i - 1, 1)) {
          return false;
        }
      }
      if (machine.isPresent() && uses(kind, first + i) != uses(kind, first + i - 1)) {
        return false;
      }
      for (int room = 0; room < model.rooms(); room++) {
        int slot = first + i;
        double[] latent = latentGains.get(kind);
        int at = room * DaySlots.COUNT + slot;
        if (drivers.get(kind).airGain(room, slot) != drivers.get(kind).airGain(room, slot - 1)
            || latent[at] != latent[at - 1]
            || model.streams().total(room, warm, kind, slot, 1)
                != model.streams().total(room, warm, kind, slot - 1, 1)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Slot a day is run from: midnight, or the hour in which work begins where work goes on through
   * midnight, so that no working day starts in the middle of a shift.
   */
  int start() {
    return start;
  }

  /**
   * Hours that must be held: work goes on in them, all of them lies between start and end of work,
   * and they begin no sooner than the time allowed to cool down after the start. Where that leaves
   * none, the last hour with work in it; none at all where nobody ever works.
   */
  Set<Integer> judged() {
    Set<Integer> hours = new TreeSet<>();
    int begin = working.firstActiveSlot();
    int last = -1;
    for (int since = 0; since < DaySlots.COUNT; since++) {
      int slot = (begin + since) % DaySlots.COUNT;
      if (begin >= 0 && working.at(slot) > 0) {
        last = slot;
      }
      boolean counts =
          begin >= 0
              && slot % DaySlots.PER_HOUR == 0
              && since * DaySlots.SECONDS >= model.pullDown()
              && working.mean(slot, DaySlots.PER_HOUR) > 0
              && attended.mean(slot, DaySlots.PER_HOUR) == 1;
      if (counts) {
        hours.add(slot / DaySlots.PER_HOUR + 1);
      }
    }
    if (hours.isEmpty() && last >= 0) {
      hours.add(last / DaySlots.PER_HOUR + 1);
    }
    return hours;
  }
}
