package org.shopclime.airline;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.Component;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.gain.CompressorGain;
import org.shopclime.run.Cooling;
import org.shopclime.run.PlacedMachine;
import org.shopclime.run.PlacedRun;
import org.shopclime.run.RoomHours;
import org.shopclime.run.RoomTooHot;

/**
 * One compressor in one place of a shop on one day. Place and room come from a run of the shop's
 * network with the machine's heat in it; how long the machine runs and what heat it gives where
 * comes hour by hour from its line in that air. Both are repeated until neither moves.
 *
 * <p>Limits: ends when no hour of place and room moves by {@value #CLOSE} K, about what a repeating
 * day is found to. A place beyond 150 °C is told as nearly that: the machine has long switched off.
 */
final class PlaceRun {

  /** Largest change of an hour of the place between the last two rounds, K. */
  static final double CLOSE = 0.01;

  private static final int MOST_ROUNDS = 50;
  private static final double LEAST_SHARE = 1e-3;

  /** Bounds of what an hour of the place may answer to a guess of it. */
  private static final double MOST_SLOPE = 0.6;

  private static final double LEAST_SLOPE = 0.3;

  /** Power of a fan for each m³/s it moves: 0.35 W/cfm, common practice of small fans. */
  private static final double FAN_POWER = 0.35 / Trade.CFM;

  /** What the cold air of a unit is below the room, K: 15 °F, common practice (15 to 20). */
  private static final double COLD_STREAM = 15 / 1.8;

  private static final double HOTTEST_SOURCE = 120;
  private static final double HOTTEST_PLACE = 150;
  private static final double COLDEST = -45;

  private final ShopModel model;
  private final int room;
  private final int place;
  private final Placement placement;
  private final OwnedLine owned;
  private final Optional<Cooling> cooling;
  private final PlacedRun run;
  private final DaySlots working;
  private final DaySlots idle;

  PlaceRun(
      ShopModel model,
      int room,
      int place,
      Placement placement,
      OwnedLine owned,
      Optional<Cooling> cooling) {
    this.model = model;
    this.room = room;
    this.place = place;
    this.placement = placement;
    this.owned = owned;
    this.cooling = cooling;
    run = new PlacedRun(model, room);
    working = model.slots(owned.gain().when(), DayKind.WORKING);
    idle = model.slots(owned.gain().when(), DayKind.IDLE);
  }

  /**
   * What came of it.
   *
   * @param machine heat and air of the machine, as last taken
   * @param place air of the place
   * @param room air of the work room
   * @param lived the day of the work room as lived; none where it was held
   */
  record Found(
      PlacedMachine machine, RoomHours place, RoomHours room, Optional<PlacedRun.Day> lived) {}

  /** Hours ending 1 to 24 in which the machine is in use; hours of work where it never is. */
  Set<Integer> hours() {
    Set<Integer> hours = active(working);
    if (hours.isEmpty()) {
      hours = active(model.working());
    }
    for (int hour = 1; hour <= 24 && hours.size() < 24 && active(working).isEmpty(); hour++) {
      if (active(model.working()).isEmpty()) {
        hours.add(hour);
      }
    }
    return hours;
  }

  private static Set<Integer> active(DaySlots slots) {
    Set<Integer> hours = new TreeSet<>();
    for (int hour = 1; hour <= 24; hour++) {
      if (slots.mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR) > 0) {
        hours.add(hour);
      }
    }
    return hours;
  }

  /** Part of an hour in which the machine is in use on a working day. */
  double use(int hour) {
    return working.mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR);
  }

  /** The day as it is lived. */
  Found lived() {
    return lived(Optional.empty());
  }

  /** The same, found sooner from something near. */
  Found lived(Optional<Found> near) {
    return settle(
        machine -> {
          PlacedRun.Day day = run.lived(machine, cooling);
          return new Found(machine, at(day.rooms()), day.rooms().get(room), Optional.of(day));
        },
        near);
  }

  /** The day with the work room held at a temperature. */
  Found held(double celsius) {
    return settle(machine -> held(machine, celsius), Optional.empty());
  }

  /** The same with a machine as it is. */
  Found held(PlacedMachine machine, double celsius) {
    List<RoomHours> rooms = run.held(machine, celsius);
    return new Found(machine, at(rooms), rooms.get(room), Optional.empty());
  }

  private boolean isOpen() {
    return placement.kind() == Placement.Kind.OPEN_ROOF;
  }

  /** The place: one of the rooms, or the air outdoors and a little warmer. */
  private RoomHours at(List<RoomHours> rooms) {
    return isOpen()
        ? new RoomHours(
            Profile.of(hour -> model.outdoor(hour) + placement.openRise()),
            Profile.of(model::outdoorHumidityRatio),
            Profile.of(hour -> 0))
        : rooms.get(place);
  }

  /** The shop with no compressor running. */
  PlacedMachine nothing() {
    Profile none = Profile.of(hour -> 0);
    return new PlacedMachine(
        room, place, passage(), component(), working, idle, none, 0, none, none, none, none);
  }

  private interface Runner {
    Found run(PlacedMachine machine);
  }

  private Found settle(Runner runner, Optional<Found> near) {
    Profile none = Profile.of(hour -> 0);
    RoomHours work =
        near.map(Found::room)
            .orElseGet(
                () ->
                    new RoomHours(
                        Profile.of(hour -> model.setPoint(room)),
                        Profile.of(hour -> model.wishedHumidityRatio(room)),
                        none));
    RoomHours at =
        near.map(Found::place)
            .orElseGet(
                () ->
                    place == room && !isOpen()
                        ? work
                        : new RoomHours(
                            Profile.of(model::outdoor),
                            Profile.of(model::outdoorHumidityRatio),
                            none));
    return settle(runner, at, work);
  }

  private Found settle(Runner runner, RoomHours at, RoomHours work) {
    Optional<Found> found = Optional.empty();
    Optional<RoomHours> before = Optional.empty();
    RoomHours guess = at;
    RoomHours around = work;
    Heat heat = new Heat();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Found next;
      try {
        next = runner.run(machine(guess, around, heat.share()));
      } catch (RoomTooHot tooHot) {
        if (place == room || heat.share() < LEAST_SHARE) {
          throw tooHot;
        }
        heat.tooMuch();
        before = Optional.empty();
        continue;
      }
      if (heat.couldBeMore()) {
        heat.notTooMuch();
        guess = next.place();
        around = next.room();
        found = Optional.of(next);
        continue;
      }
      if (isClose(guess, next.place()) && isClose(around, next.room())) {
        return next;
      }
      RoomHours better =
          before.isPresent()
              ? secant(before.get(), found.orElseThrow().place(), guess, next.place())
              : next.place();
      found = Optional.of(next);
      before = Optional.of(guess);
      guess = better;
      around = next.room();
    }
    return found.orElseThrow();
  }

  /**
   * Part of the machine's heat that its place takes up: all of it, unless the place would get
   * hotter than anything is told of. No machine runs on in such heat, so as much is taken as leaves
   * the place all but that hot.
   */
  private static final class Heat {
    private static final double NEAR = 0.03;

    private double low;
    private double high = Double.POSITIVE_INFINITY;
    private double share = 1;

    double share() {
      return share;
    }

    boolean couldBeMore() {
      return high < Double.POSITIVE_INFINITY && high - low > NEAR * high && share > low;
    }

    void tooMuch() {
      high = share;
      // What once was taken may be too much after all, as the place moved.
      low = low < share ? low : share * (1 - 2 * NEAR);
      share = high - low > NEAR * high ? (low + high) / 2 : low;
    }

    void notTooMuch() {
      low = share;
      share = high - low > NEAR * high ? (low + high) / 2 : low;
    }
  }

  private static boolean isClose(RoomHours one, RoomHours other) {
    for (int hour = 1; hour <= 24; hour++) {
      if (!(Math.abs(one.air().at(hour) - other.air().at(hour)) < CLOSE)) {
        return false;
      }
    }
    return true;
  }

  /** Where two guesses and what they led to point, hour by hour. */
  private static RoomHours secant(RoomHours x0, RoomHours y0, RoomHours x1, RoomHours y1) {
    Profile air =
        Profile.of(
            hour -> {
              double run = x1.air().at(hour) - x0.air().at(hour);
              double rise = y1.air().at(hour) - y0.air().at(hour);
              double slope =
                  Math.abs(run) < CLOSE
                      ? 0
                      : Math.max(-LEAST_SLOPE, Math.min(MOST_SLOPE, rise / run));
              return x1.air().at(hour) + (y1.air().at(hour) - x1.air().at(hour)) / (1 - slope);
            });
    return new RoomHours(air, y1.water(), y1.plant());
  }

  /** The machine's heat and air with place and room as they are. */
  private PlacedMachine machine(RoomHours at, RoomHours work, double share) {
    LineResult[] hours = new LineResult[24];
    for (int hour = 1; hour <= 24; hour++) {
      hours[hour - 1] =
          line(owned.line(), owned.demand(), placement.intake(), at, work, hour, HOTTEST_SOURCE);
    }
    double fan = placement.venting().fan() * FAN_POWER;
    return new PlacedMachine(
        room,
        place,
        passage(),
        component(),
        working,
        idle,
        // What a machine gives off outdoors, and the air it draws there, is none of the shop's.
        Profile.of(hour -> isOpen() ? 0 : share * hours[hour - 1].heatAt(LineSite.PLACE) + fan),
        CompressorGain.RADIANT_SHARE,
        Profile.of(hour -> roomHeat(hours[hour - 1], work.air().at(hour))),
        Profile.of(
            hour ->
                hours[hour - 1].toolAir()
                    * (hours[hour - 1].tool().humidityRatio() - work.water().at(hour))),
        drawn(hours, placement.intake() == Intake.PLACE && !isOpen()),
        drawn(
            hours,
            placement.intake() == Intake.OUTDOORS
                || (placement.intake() == Intake.PLACE && isOpen())));
  }

  private static Profile drawn(LineResult[] hours, boolean there) {
    return Profile.of(hour -> there ? hours[hour - 1].running().dryAir() : 0);
  }

  private static double roomHeat(LineResult line, double room) {
    return line.heatAt(LineSite.ROOM)
        + line.heatAt(LineSite.COLDEST)
        + line.toolAir()
            * MoistAir.humidHeat(line.tool().humidityRatio())
            * (line.tool().celsius() - room);
  }

  /** An hour of a line with place and room as found. */
  LineResult line(AirLine line, AirDemand demand, Intake intake, Found found, int hour) {
    return line(line, demand, intake, found.place(), found.room(), hour, HOTTEST_PLACE);
  }

  private LineResult line(
      AirLine line,
      AirDemand demand,
      Intake intake,
      RoomHours at,
      RoomHours work,
      int hour,
      double hottest) {
    AirState placeAir = state(Math.min(at.air().at(hour), hottest), at.water().at(hour));
    AirState roomAir = state(work.air().at(hour), work.water().at(hour));
    AirState outdoors = state(model.outdoor(hour), model.outdoorHumidityRatio(hour));
    return line.run(
        intake.of(placeAir, new PlaceAround(roomAir, outdoors)),
        demand,
        sites(at, work, hour, hottest));
  }

  private LineSurroundings sites(RoomHours at, RoomHours work, int hour, double hottest) {
    double air = work.air().at(hour);
    double coldest = owned.coldest().orElse(cooling.isPresent() ? air - COLD_STREAM : air);
    return new LineSurroundings(
        Math.min(at.air().at(hour), hottest), air, Math.max(COLDEST, coldest));
  }

  /** Temperatures around the line in an hour. */
  LineSurroundings sites(Found found, int hour) {
    return sites(found.place(), found.room(), hour, HOTTEST_PLACE);
  }

  private AirState state(double celsius, double water) {
    double most = LineAir.capacity(celsius, model.pressure());
    return new AirState(celsius, Math.max(0, Math.min(water, most)), model.pressure());
  }

  /** Most air that leaves the work room for outdoors by way of the place, m³/s. */
  double mostThrough(Found found) {
    PlacedMachine.Passage passage = passage();
    double most = 0;
    if (place != room && passage.fromRoom() && !passage.toRoom()) {
      for (int hour = 1; hour <= 24; hour++) {
        AirState roomAir = state(found.room().air().at(hour), found.room().water().at(hour));
        AirState outdoors = state(model.outdoor(hour), model.outdoorHumidityRatio(hour));
        double dry =
            passage.dryAir(found.place().air().at(hour), roomAir, outdoors, use(hour) > 0 ? 1 : 0);
        most = Math.max(most, dry / outdoors.dryAirDensity());
      }
    }
    return most;
  }

  /** Electricity of machine, dryers and fan over the working day, kWh. */
  double kilowattHours(Found found) {
    double watts = 0;
    for (int hour = 1; hour <= 24; hour++) {
      LineResult line = line(owned.line(), owned.demand(), placement.intake(), found, hour);
      watts += use(hour) * (line.electricWatts() + placement.venting().fan() * FAN_POWER);
    }
    return watts / 1000;
  }

  private PlacedMachine.Passage passage() {
    return new DraughtThrough(
        placement.kind() == Placement.Kind.LOFT ? Venting.CLOSED : placement.venting(), still());
  }

  private Side still() {
    return placement.kind().isApart() ? Side.OUTDOORS : Side.ROOM;
  }

  private int component() {
    for (Component each : model.components()) {
      if (each.kind() == ComponentKind.COMPRESSOR && each.name().equals(owned.gain().name())) {
        return each.index();
      }
    }
    return -1;
  }

  /** Hottest hour of those in which the machine is in use. */
  int peakHour(Found found) {
    int best = -1;
    for (int hour : hours()) {
      if (best < 0 || found.place().air().at(hour) > found.place().air().at(best)) {
        best = hour;
      }
    }
    return best;
  }

  /** The hour of use in which the line is wettest, by dew point over its coldest stretch. */
  int wettestHour(Found found) {
    int best = -1;
    OptionalDouble most = OptionalDouble.empty();
    for (int hour : hours()) {
      double over =
          line(owned.line(), owned.demand(), placement.intake(), found, hour).pressureDewPoint()
              - sites(found, hour).coldest();
      if (most.isEmpty() || over > most.getAsDouble()) {
        most = OptionalDouble.of(over);
        best = hour;
      }
    }
    return best;
  }
}
