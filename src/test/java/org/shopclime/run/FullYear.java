package org.shopclime.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.heat.ModeMarch;

/**
 * A year by the full network in small steps, to hold {@link YearRun} against: each hour in equal
 * steps; what radiates, flows and can be cooled follows the means of that step, found in a few
 * rounds.
 */
final class FullYear {

  private static final double HOUR = 3600;
  private static final int ROUNDS = 4;

  /** Days run before the year; the slowest part, slab and soil, forgets within two weeks. */
  private static final int BEFORE = 60;

  /** How near to its set point a room counts as being there, K. */
  private static final double THERE = 1e-6;

  private final ShopYear year;
  private final Optional<Cooling> unit;
  private final int steps;
  private final int before;
  private final double seconds;
  private final List<March> marches = new ArrayList<>();
  private final List<Drivers> drivers = new ArrayList<>();
  private final List<RoomCycling> cyclings = new ArrayList<>();
  private final Moisture moisture;
  private final double[] inflow;
  private final double[] base;
  private final double[] entering;
  private final double[] humidity;
  private final YearResult result;
  private March march;
  private Drivers driver;
  private double fraction;
  private Able able;
  private boolean telling;

  FullYear(ShopYear year, Optional<Cooling> unit, int steps) {
    this(year, unit, steps, BEFORE);
  }

  FullYear(ShopYear year, Optional<Cooling> unit, int steps, int before) {
    this.year = year;
    this.unit = unit;
    this.steps = steps;
    this.before = before;
    seconds = HOUR / steps;
    for (int number = 0; number < year.networks(); number++) {
      marches.add(new March(year.network(number), seconds));
      drivers.add(new Drivers(year.network(number)));
      cyclings.add(cycling(year, number, unit.map(Cooling::room).orElse(0)));
    }
    moisture = Moisture.of(year, YearWeather.HOURS - before * 24);
    inflow = new double[year.rooms()];
    base = new double[year.rooms()];
    entering = new double[year.rooms()];
    humidity = new double[year.rooms()];
    result = new YearResult(year);
  }

  YearResult run() {
    warmUp();
    return runYear();
  }

  /** The days before the year. */
  void warmUp() {
    int first = YearWeather.HOURS - before * 24;
    double start = 0;
    for (int hour = first; hour < YearWeather.HOURS; hour++) {
      start += year.weather().dryBulb(hour) / (before * 24);
    }
    enter(year.networkOf(first));
    march.start(start);
    for (int hour = first; hour < YearWeather.HOURS; hour++) {
      hour(hour);
    }
  }

  /** The year itself, from what the days before left. */
  YearResult runYear() {
    telling = true;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      hour(hour);
    }
    return result;
  }

  private void enter(int number) {
    March next = marches.get(number);
    if (march != null && next != march) {
      next.restore(march.state());
    }
    march = next;
    driver = drivers.get(number);
  }

  private void hour(int hour) {
    enter(year.networkOf(hour));
    year.fill(driver, hour);
    for (int room = 0; room < year.rooms(); room++) {
      base[room] = year.airGain(room, hour);
    }
    for (int part = 0; part < steps; part++) {
      step(hour, part);
    }
  }

  private void step(int hour, int part) {
    double humidHeat = MoistAir.humidHeat(year.outdoorHumidityRatio(hour));
    double[] ends = new double[2 * year.network(year.networkOf(hour)).chains()];
    double[] state = march.state();
    double[] constant = new double[year.rooms()];
    year.radiation(faces(march::leftFace, march::rightFace), hour, ends);
    for (int room = 0; room < year.rooms(); room++) {
      inflow[room] = year.inflow(room, march.air(room), hour);
      entering[room] = march.air(room);
      humidity[room] = moisture.humidityRatio(room);
    }
    for (int round = 1; round <= ROUNDS; round++) {
      march.restore(state);
      year.radiate(driver, hour, ends);
      for (int room = 0; room < year.rooms(); room++) {
        driver.inflow(room, inflow[room] * humidHeat, year.weather().dryBulb(hour));
        driver.release(room);
        driver.airSource(room, base[room]);
      }
      fraction = 0;
      able = null;
      for (int room = 0; room < year.rooms(); room++) {
        constant[room] = control(room, hour, part);
      }
      march.step(driver);
      for (int room = 0; room < year.rooms(); room++) {
        double plant = constant[room] + march.plant(room);
        if (cooledByUnit(room) && plant < 0) {
          fraction = Math.min(1, -plant / able.sensible());
        }
        humidity[room] = water(room, hour, round == ROUNDS);
      }
      if (round < ROUNDS) {
        year.radiation(faces(march::meanLeftFace, march::meanRightFace), hour, ends);
        for (int room = 0; room < year.rooms(); room++) {
          inflow[room] = year.inflow(room, march.meanAir(room), hour);
          entering[room] = march.meanAir(room);
        }
      }
    }
    for (int room = 0; room < year.rooms(); room++) {
      if (!(march.air(room) <= DayRunner.HOTTEST)) {
        throw new RoomTooHot(year.roomName(room), DayRunner.HOTTEST);
      }
      if (telling) {
        tell(room, hour, constant[room] + march.plant(room));
      }
    }
  }

  private boolean cooledByUnit(int room) {
    return able != null && unit.orElseThrow().room() == room;
  }

  private double[] faces(IntToDoubleFunction left, IntToDoubleFunction right) {
    double[] faces = new double[2 * year.network(0).chains()];
    for (int chain = 0; chain < faces.length / 2; chain++) {
      faces[2 * chain] = left.applyAsDouble(chain);
      faces[2 * chain + 1] = right.applyAsDouble(chain);
    }
    return faces;
  }

  /** Decides what the plants of a room do; tells the constant heat put into its air, W. */
  private double control(int room, int hour, int part) {
    boolean byUnit =
        year.plants().isCooledByUnit(room) && unit.isPresent() && unit.get().room() == room;
    boolean cools =
        (byUnit || year.plants().isCooledIdeally(room)) && year.plants().coolingOn(room, hour);
    boolean heats = year.plants().isHeated(room) && year.plants().heatingOn(room, hour);
    if (!cools && !heats) {
      return 0;
    }
    double free = march.lookAhead(driver, room);
    // A unit with nothing to do is not asked: a room left to the cold is beyond what it takes in.
    if (cools && byUnit && free > year.plants().cooledTo(room)) {
      able =
          unit.get()
              .at(
                  year.weather().dryBulb(hour),
                  year.outdoorHumidityRatio(hour),
                  new AirState(entering[room], humidity[room], year.pressure()));
    }
    if (cools && free > year.plants().cooledTo(room)) {
      double most = byUnit ? Math.max(0, able.sensible()) : Double.POSITIVE_INFINITY;
      return bring(room, year.plants().cooledTo(room), free, -1, most);
    }
    double heatedTo = year.plants().heatedTo(room, hour, (part + 1.0) / steps);
    if (heats && free < heatedTo) {
      return bring(room, heatedTo, free, 1, Double.POSITIVE_INFINITY);
    }
    return 0;
  }

  /**
   * Holds a room that is at its set point or beyond it, or brings it there.
   *
   * @param sign 1 for heating, -1 for cooling
   * @param most most heat the plant can move, W
   */
  private double bring(int room, double setPoint, double free, int sign, double most) {
    double missing = sign * (setPoint - march.air(room));
    if (missing >= -THERE) {
      driver.hold(room, setPoint);
      double plant = sign * march.lookAheadPlant(driver, room);
      if (plant >= 0 && plant <= most) {
        return 0;
      }
      driver.release(room);
      if (plant < 0) {
        return 0;
      }
    }
    double need = sign * (setPoint - free) / march.response(driver, room, room);
    double given = sign * Math.min(most, need);
    driver.airSource(room, base[room] + given);
    return given;
  }

  /** Mean humidity ratio of a room's air under its coil. */
  private double water(int room, int hour, boolean go) {
    double coil =
        cooledByUnit(room)
            ? Math.min(able.condensate(fraction), moisture.coilLimit(room, seconds))
            : 0;
    Moisture.Around around =
        new Moisture.Around(
            year.outdoorHumidityRatio(hour),
            inflow[room],
            year.latentGain(room, hour),
            year.pressure(),
            seconds);
    double saturated = MoistAir.saturationHumidityRatio(march.meanAir(room), year.pressure());
    Moisture.Step step = moisture.look(room, around, saturated, coil);
    if (go) {
      moisture.go(room, step, around, coil, Optional.empty());
    }
    return step.mean();
  }

  /** Part of a step in which full power is drawn: with what the starts of its cycles lose. */
  static double running(RoomCycling cycling, double fraction, Able able) {
    return fraction > 0 && fraction < 1
        ? fraction / cycling.start().share(0, cycling.cycle(fraction, able.sensible()).run())
        : fraction;
  }

  /** How a room's air answers to a unit that goes on and off. */
  static RoomCycling cycling(ShopYear year, int number, int room) {
    ModeMarch answers = new ModeMarch(year.network(number), RoomCycling.SHORT, RoomCycling.LONG);
    return CyclingTable.usual(answers, new Drivers(year.network(number)), room, 0, 1).of();
  }

  private void tell(int room, int hour, double plant) {
    double share = 1.0 / steps;
    result.add(room, hour, share, march.meanAir(room), march.meanStar(room), humidity[room]);
    result.addPlant(room, hour, share, plant);
    if (cooledByUnit(room)) {
      double power = able.power() * running(cyclings.get(year.networkOf(hour)), fraction, able);
      result.addUnit(room, hour, share, able.latent(fraction), power);
    }
  }
}
