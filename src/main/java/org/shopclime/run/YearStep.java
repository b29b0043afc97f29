package org.shopclime.run;

import java.util.Arrays;
import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * One step of a year: what radiates, flows and is switched follows the means of that same step,
 * found in a few rounds.
 *
 * <p>A room that has come to its set point is held at it; in the step in which it gets there it is
 * brought there by constant heat. The unit takes out what holds the set point, or all it can in the
 * mean air of the step. Radiation by the fourth power and air flows are those of the mean
 * temperatures of the round before; rounds end when that moves no face by more than {@value
 * RadiatedHeat#CLOSE} K, no air by {@value #AIR_CLOSE} K, and the humidity the unit sees by no more
 * than {@value SeenHumidity#CLOSE}.
 */
final class YearStep {

  /** How near to its set point a room counts as being there, K. */
  private static final double THERE = 1e-6;

  private static final double AIR_CLOSE = 0.01;

  /** How much further off the rounds of short steps may be, as the next step follows at once. */
  private static final double FINE_FACTOR = 3;

  /**
   * A round this many times too far off is the last but one: the next one, made from it, is off by
   * less than a tenth as much.
   */
  private static final double NEARLY = 10;

  /** How many times more it counts what air between rooms is off by. */
  private static final double WAYS_SLOWER = 3;

  /** How far the air may jump at the start of an hour that is one step, K. */
  private static final double MOST_JUMP = 0.7;

  private static final int MOST_ROUNDS = 12;

  /** Heat a plant may be asked for against its sense within a long step, W. */
  private static final double TRIFLE = 1;

  private final ShopYear year;
  private final Optional<Cooling> unit;
  private final int cooledByUnit;
  private final ModeMarch march;
  private final Drivers drivers;
  private final Moisture moisture;
  private final int rooms;

  private final RadiatedHeat radiated;

  /**
   * How the unit goes on and off; of no room where no unit is. A fan that runs on does so in the
   * hours in which the unit cools; in others it is taken to be switched off.
   */
  private final Control.Average control;

  /** Whether the last round was known to be near enough before it was looked at. */
  private boolean nearly;

  private final double[] roomConductance;

  private final double pressure;

  /** Heat and water of gains in the air of each room in this hour, W and kg/s. */
  private final double[] base;

  private final double[] vapour;
  private final double[] inflow;
  private final double[] foundFlow;

  /** Temperatures of the air for which the flows were found, °C. */
  private final double[] flowAt;

  /** Mean air of the rooms in the hours before, and what it is likely to be, °C. */
  private final LikeYesterday airs;

  private final double[] likely;

  private final double[] constant;
  private final double[] humidity;
  private final int[][] iron;
  private final int[][] slabs;

  /** Where plants are switched on, what they hold in this step, °C; else infinite. */
  private final double[] heatedTo;

  private final double[] cooledTo;

  /** What held each room last: 1 heating, -1 cooling, 0 nothing. */
  private final int[] heldBy;

  private int hour;
  private double seconds;
  private double end;
  private boolean fine;
  private boolean whole;
  private double dryBulb;
  private double outdoorHumidity;
  private double humidHeat;

  /** What the unit can do where it is asked for something, in air of this mean, °C. */
  private Able able;

  private double entering;

  /** What it was last asked for: hour, air and answer. */
  private int askedIn = -1;

  private double askedDryBulb;
  private double askedHumidity;
  private Able answer;

  private double entered;
  private double fraction;
  private double coil;

  /** Where the water in the room of the unit was last seen to lead, and what was taken out. */
  private Moisture.Step found;

  private double foundOut;
  private double foundAt;

  private final SeenHumidity humidityAtUnit = new SeenHumidity();

  /** Humidity of the room of the unit in the hours before, kg/kg. */
  private final LikeYesterday humidities = new LikeYesterday(1);

  private final double[] seen = new double[1];

  private final Driers driers;

  /** Air between rooms, where something stands open between them. */
  private final Optional<OpenWays> ways;

  /** Mean water in the air of each room in the step, where it does. */
  private final double[] means;

  /** Whether the unit blows outdoor air through wet pads. */
  private final boolean blows;

  /** What it blows then, running all the time. */
  private Blown supply = Blown.NOTHING;

  /** Part of the step it does so, where that flows through the network. */
  private double blowing;

  /** The same, or what it takes to hold the set point. */
  private double blown;

  YearStep(
      ShopYear year, Optional<Cooling> unit, ModeMarch march, Drivers drivers, Moisture moisture) {
    this.year = year;
    this.unit = unit;
    this.march = march;
    this.drivers = drivers;
    this.moisture = moisture;
    rooms = year.rooms();
    cooledByUnit = unit.map(Cooling::room).filter(year::isCooledByUnit).orElse(-1);
    blows = cooledByUnit >= 0 && unit.map(Cooling::blows).orElse(false);
    driers = new Driers(rooms, year::drier);
    ways = OpenWays.of(year.passages(), rooms);
    means = new double[rooms];
    radiated = new RadiatedHeat(year, march);
    control =
        new Control.Average(
            CyclingTable.usual(
                march, drivers, Math.max(0, cooledByUnit), YearRun.FINE, YearRun.QUARTER));
    march.choose(YearRun.WHOLE);
    roomConductance = march.roomConductances();
    pressure = year.pressure();
    base = new double[rooms];
    vapour = new double[rooms];
    inflow = new double[rooms];
    foundFlow = new double[rooms];
    flowAt = new double[rooms];
    airs = new LikeYesterday(rooms);
    likely = new double[rooms];
    constant = new double[rooms];
    humidity = new double[rooms];
    heatedTo = new double[rooms];
    cooledTo = new double[rooms];
    heldBy = new int[rooms];
    iron = new int[rooms][];
    slabs = new int[rooms][];
    for (int room = 0; room < rooms; room++) {
      iron[room] = year.iron(room);
      slabs[room] = year.slabs(room);
    }
  }

  /** Starts as if the means of the hours before had lasted, and forgets what went before. */
  void start(int until, int count) {
    airs.forget();
    humidities.forget();
    year.fillMean(drivers, until, count);
    for (int room = 0; room < rooms; room++) {
      drivers.release(room);
    }
    startSteady(until);
    double[] held = new double[rooms];
    for (int room = 0; room < rooms; room++) {
      held[room] = meanHeld(room, until, count);
    }
    for (int room = 0; room < rooms; room++) {
      if (!Double.isNaN(held[room])) {
        drivers.hold(room, held[room]);
      }
    }
    startSteady(until);
    radiated.startFrom(march, Math.floorMod(until - count, YearWeather.HOURS));
  }

  /** The steady state, with the air that passes between rooms on that day. */
  private void startSteady(int until) {
    march.startSteady(drivers);
    if (ways.isPresent()) {
      OpenWays open = ways.get();
      open.begin(
          (way, one, other) -> year.passingThatDay(way, one, other, until),
          MoistAir.humidHeat(year.outdoorHumidityRatio(until)),
          year::cooledTo);
      open.startSteady(march, drivers);
    }
  }

  /**
   * Mean air of a room that would float where the march stands, but for its plants; NaN for that.
   */
  private double meanHeld(int room, int until, int count) {
    double free = march.air(room);
    boolean moved = false;
    double mean = 0;
    for (int ago = 1; ago <= count; ago++) {
      hour = Math.floorMod(until - ago, YearWeather.HOURS);
      end = 1;
      setPoints(room);
      double held = Math.max(heatedTo[room], Math.min(cooledTo[room], free));
      moved |= held != free;
      mean += held / count;
    }
    return moved ? mean : Double.NaN;
  }

  /** Goes on from the network of another season, into the hour that was begun. */
  void takeOver(YearStep other, Optional<DayLedger> ledger) {
    year.radiate(drivers, hour, radiated.startFrom(other.march, hour));
    march.takeOver(other.march);
    airs.forget();
    humidities.forget();
    ledger.ifPresent(books -> books.handedOver += heatHeld() - other.heatHeld());
    able = other.able;
    humidityAtUnit.startFrom(other.humidityAtUnit);
  }

  double heatHeld() {
    return march.heatHeld();
  }

  /** Sets what drives an hour. */
  void begin(int of) {
    hour = of;
    radiated.nextHour();
    airs.nextHour();
    humidities.nextHour();
    year.fill(drivers, of);
    dryBulb = year.weather().dryBulb(of);
    outdoorHumidity = year.outdoorHumidityRatio(of);
    humidHeat = MoistAir.humidHeat(outdoorHumidity);
    if (blows) {
      supply = unit.orElseThrow().blown(dryBulb, outdoorHumidity, pressure);
    }
    for (int room = 0; room < rooms; room++) {
      base[room] = year.airGain(room, of);
      vapour[room] = year.latentGain(room, of);
    }
  }

  /** Whether the set point of a heated room rises within the hour. */
  boolean rises() {
    for (int room = 0; room < rooms; room++) {
      if (year.isHeated(room)
          && year.heatingOn(room, hour)
          && year.heatedTo(room, hour, 1) != year.heatedTo(room, hour, 1e-6)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Finds a step.
   *
   * @param length which length of the march
   * @param lasts that length, s
   * @param ends where in the hour it ends, above 0 to 1
   * @param isFine whether plants that start or stop within it are taken as doing so all through it
   * @return false if a plant starts or stops in a long step, or the air jumps at the start of an
   *     hour that is one step
   */
  boolean look(int length, double lasts, double ends, boolean isFine) {
    whole = length == YearRun.WHOLE;
    march.choose(length);
    seconds = lasts;
    end = ends;
    fine = isFine;
    if (cooledByUnit >= 0 && able == null) {
      humidityAtUnit.startFrom(moisture.humidityRatio(cooledByUnit));
    }
    guessHumidity();
    entering = Double.NaN;
    entered = 0;
    guessAir();
    for (int room = 0; room < rooms; room++) {
      flow(room, likely[room]);
      setPoints(room);
    }
    if (ways.isPresent()) {
      beginWays(ways.get());
    }
    radiated.guess(seconds);
    nearly = false;
    for (int round = 1; ; round++) {
      year.radiate(drivers, hour, radiated.taken());
      if (driers.any()) {
        dry(round == 1);
      }
      release();
      holdAsBefore();
      march.look(drivers);
      if (!controlInThisHumidity() || (whole && jumps())) {
        return false;
      }
      march.lookAtFaces();
      if (nearly) {
        return true;
      }
      radiated.find(hour);
      double airOff = airOff();
      double allowed = fine ? FINE_FACTOR : 1;
      if (round == MOST_ROUNDS || (airOff <= allowed && radiated.isWithin(allowed))) {
        return true;
      }
      nearly = airOff < NEARLY * allowed && radiated.isWithin(NEARLY * allowed);
      radiated.takeFound();
      takeFoundFlows();
    }
  }

  private void beginWays(OpenWays open) {
    int of = hour;
    open.begin(
        (way, one, other) -> year.passing(way, one, other, of), humidHeat, room -> likely[room]);
    open.flow(drivers, Optional.empty());
    for (int room = 0; room < rooms; room++) {
      means[room] = moisture.humidityRatio(room);
    }
  }

  /** Lets the dehumidifiers run as it needs the air of the round before. */
  private void dry(boolean isFirst) {
    for (int room = 0; room < rooms; room++) {
      if (driers.in(room)) {
        double air = isFirst ? march.air(room) : march.meanAir(room);
        double out = room == cooledByUnit && able != null ? coil : 0;
        driers.find(room, air, moisture, around(room), out);
        base[room] = year.airGain(room, hour) + driers.heat(room);
      }
    }
  }

  private void guessHumidity() {
    if (whole) {
      seen[0] = humidityAtUnit.next();
      humidities.guess(seen);
      humidityAtUnit.goOnFrom(Math.max(0, seen[0]));
    } else {
      humidityAtUnit.newStep();
    }
  }

  private boolean jumps() {
    for (int room = 0; room < rooms; room++) {
      if (Math.abs(march.jump(room)) > MOST_JUMP) {
        return true;
      }
    }
    return false;
  }

  /** Guesses the mean air of a step. */
  private void guessAir() {
    for (int room = 0; room < rooms; room++) {
      likely[room] = march.air(room);
    }
    if (whole) {
      airs.guess(likely);
    }
  }

  private void flow(int room, double celsius) {
    setFlow(room, year.inflow(room, celsius, hour), celsius);
  }

  private void setFlow(int room, double flow, double celsius) {
    inflow[room] = flow;
    flowAt[room] = celsius;
    drivers.inflow(room, flow * humidHeat, dryBulb);
  }

  private void release() {
    able = null;
    fraction = 0;
    if (blows) {
      blow(0);
    }
    for (int room = 0; room < rooms; room++) {
      drivers.release(room);
      drivers.airSource(room, base[room]);
      constant[room] = 0;
    }
  }

  /** Lets the cooler blow for a part of the step. */
  private void blow(double share) {
    blowing = share;
    double flow = inflow[cooledByUnit] * humidHeat;
    drivers.inflow(
        cooledByUnit, flow + supply.conductance(share), supply.mixed(share, flow, dryBulb));
  }

  /** What is held at its set point most often goes on being held. */
  private void holdAsBefore() {
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0) {
        double setPoint = setPoint(room, heldBy[room]);
        if (Math.abs(march.air(room) - setPoint) <= THERE) {
          drivers.hold(room, setPoint);
        } else {
          heldBy[room] = 0;
        }
      }
    }
  }

  /** Controls until the unit sees the humidity that it leads to. */
  private boolean controlInThisHumidity() {
    boolean goes = control();
    for (int round = 1; goes; round++) {
      if (able == null || round == MOST_ROUNDS || (humidityStill() && enteringStill())) {
        return true;
      }
      able = null;
      if (heldBy[cooledByUnit] == 0) {
        letGo();
      } else {
        letGoBrought();
      }
      goes = control();
    }
    return false;
  }

  private void letGo() {
    release();
    Arrays.fill(heldBy, 0);
    march.lookAgain(drivers);
  }

  /** Rooms that were brought to their set points are brought there anew. */
  private void letGoBrought() {
    boolean any = false;
    for (int room = 0; room < rooms; room++) {
      if (constant[room] != 0) {
        constant[room] = 0;
        drivers.airSource(room, base[room]);
        any = true;
      }
    }
    if (any) {
      march.lookAgain(drivers);
    }
  }

  /** Finds the air flows of the air found; tells how far off they were, in units of what may be. */
  private double airOff() {
    double most = 0;
    for (int room = 0; room < rooms; room++) {
      double mean = march.meanAir(room);
      double allowed = AIR_CLOSE * roomConductance[room];
      foundFlow[room] = inflow[room];
      // Flows grow with the root of the difference at most.
      if (inflow[room] * humidHeat * Math.abs(mean - flowAt[room]) > allowed) {
        foundFlow[room] = year.inflow(room, mean, hour);
        double moved = (foundFlow[room] - inflow[room]) * humidHeat * (dryBulb - mean);
        most = Math.max(most, Math.abs(moved) / allowed);
      }
    }
    // A round leaves a third of what they are off by, not the tenth that is counted on.
    return ways.isEmpty()
        ? most
        : Math.max(
            most,
            WAYS_SLOWER
                * ways.get().off(march::meanAir, room -> AIR_CLOSE * roomConductance[room]));
  }

  private void takeFoundFlows() {
    for (int room = 0; room < rooms; room++) {
      if (foundFlow[room] != inflow[room]) {
        setFlow(room, foundFlow[room], march.meanAir(room));
      }
    }
    if (ways.isPresent()) {
      ways.get().move(march::meanAir);
      ways.get().flow(drivers, Optional.empty());
    }
  }

  /** Whether the unit that cannot hold the room sees the air that it leaves it with. */
  private boolean enteringStill() {
    boolean still = !(Math.abs(entering - entered) > AIR_CLOSE);
    entered = entering;
    return still;
  }

  private boolean humidityStill() {
    findCoil();
    foundOut = coil + driers.water(cooledByUnit);
    foundAt = march.meanAir(cooledByUnit);
    if (ways.isPresent()) {
      for (int room = 0; room < rooms; room++) {
        means[room] =
            lookAtWater(room, room == cooledByUnit ? foundOut : driers.water(room)).mean();
      }
    }
    found = lookAtWater(cooledByUnit, foundOut);
    return humidityAtUnit.isFound(found.mean());
  }

  /** Whether the water of a room was last looked at in the air that the step ended with. */
  private boolean isFoundFor(int room, double out) {
    return able != null
        && room == cooledByUnit
        && blown == 0
        && ways.isEmpty()
        && foundOut == out
        && foundAt == march.meanAir(room);
  }

  /** Part of the step the unit runs, and the water it takes out. */
  private void findCoil() {
    double plant = plant(cooledByUnit);
    fraction = plant < 0 && able.sensible() > 0 ? Math.min(1, -plant / able.sensible()) : 0;
    double water = fraction > 0 ? control.water(able, fraction) : 0;
    coil = Math.min(water, mostWater(cooledByUnit));
  }

  /** Most water that can be taken out so that no air gets drier than dry, kg/s. */
  private double mostWater(int room) {
    return moisture.coilLimit(room, seconds)
        + inflow[room] * outdoorHumidity
        + (ways.isPresent() ? ways.get().water(room, means) : 0)
        + vapour[room]
        - driers.water(room);
  }

  private double plant(int room) {
    return constant[room] + march.plantAhead(drivers, room);
  }

  private Moisture.Around around(int room) {
    double share = room == cooledByUnit ? blown : 0;
    double comes = supply.mixedHumidity(share, inflow[room], outdoorHumidity);
    double all = inflow[room] + share * supply.dryAir();
    double passing = ways.isPresent() ? ways.get().into(room) : 0;
    if (passing > 0) {
      comes = (all * comes + ways.get().water(room, means)) / (all + passing);
      all += passing;
    }
    return new Moisture.Around(comes, all, vapour[room], pressure, seconds);
  }

  private Moisture.Step lookAtWater(int room, double out) {
    double saturated = MoistAir.saturationHumidityRatio(march.meanAir(room), pressure);
    return moisture.look(room, around(room), saturated, out);
  }

  private void setPoints(int room) {
    boolean cools =
        (room == cooledByUnit || year.isCooledIdeally(room)) && year.coolingOn(room, hour);
    boolean heats = year.isHeated(room) && year.heatingOn(room, hour);
    heatedTo[room] = heats ? year.heatedTo(room, hour, end) : Double.NEGATIVE_INFINITY;
    cooledTo[room] = cools ? year.cooledTo(room, hour) : Double.POSITIVE_INFINITY;
  }

  private double setPoint(int room, int way) {
    return way > 0 ? heatedTo[room] : cooledTo[room];
  }

  /** Decides what the plants of all rooms do; false if one starts or stops in a long step. */
  private boolean control() {
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0 && !goesOnHolding(room)) {
        letGo();
      }
    }
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0) {
        if (!fine && switches(room, heldBy[room])) {
          return false;
        }
      } else if (!control(room)) {
        return false;
      }
    }
    return ways.isEmpty() || agree();
  }

  /** Where air passes between rooms, the plant of one may let another's stop or start. */
  private boolean agree() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean changed = false;
      for (int room = 0; room < rooms; room++) {
        boolean wrong = heldBy[room] != 0 && !goesOnHolding(room);
        boolean left = heldBy[room] == 0 && constant[room] == 0;
        boolean beyond = left && !(blowing > 0 && room == cooledByUnit) && isBeyond(room);
        if ((wrong || beyond) && !fine) {
          return false;
        }
        if (wrong) {
          heldBy[room] = 0;
          drivers.release(room);
          march.lookAgain(drivers);
        }
        if ((wrong || beyond) && !control(room)) {
          return false;
        }
        changed |= wrong || beyond;
      }
      if (!changed) {
        return true;
      }
    }
    releaseWrong();
    return true;
  }

  private boolean isBeyond(int room) {
    return march.ahead(room) > cooledTo[room] + THERE || march.ahead(room) < heatedTo[room] - THERE;
  }

  /** What cannot be agreed on is left to itself for a step: no plant works against its sense. */
  private void releaseWrong() {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int room = 0; room < rooms; room++) {
        if (heldBy[room] != 0 && !goesOnHolding(room)) {
          heldBy[room] = 0;
          drivers.release(room);
          march.lookAgain(drivers);
          changed = true;
        }
      }
    }
  }

  /** Whether a room that is held is rightly held: the network is linear, and its plant tells. */
  private boolean goesOnHolding(int room) {
    double plant = heldBy[room] * march.plantAhead(drivers, room);
    return plant > 0 && plant <= most(room, heldBy[room], setPoint(room, heldBy[room]));
  }

  /** Whether the plant of a room that is held starts, stops or reaches its most in the step. */
  private boolean switches(int room, int way) {
    double plant = way * march.plantAhead(drivers, room);
    double tilt = Math.abs(march.plantTilt(drivers, room));
    return (plant < tilt && plant + tilt > TRIFLE)
        || straddles(plant, tilt, most(room, way, setPoint(room, way)));
  }

  private boolean control(int room) {
    double air = march.air(room);
    double free = march.ahead(room);
    if (free > cooledTo[room]) {
      return bring(room, free, -1);
    }
    if (free < heatedTo[room]) {
      return bring(room, free, 1);
    }
    // Left to itself it ends where it may be; but on the way there a plant may have been at work.
    if (!fine && (air > cooledTo[room] + THERE || air < heatedTo[room] - THERE)) {
      return false;
    }
    boolean mayCool = Math.abs(air - cooledTo[room]) <= THERE;
    if (!fine && (mayCool || Math.abs(air - heatedTo[room]) <= THERE)) {
      int way = mayCool ? -1 : 1;
      drivers.hold(room, setPoint(room, way));
      march.lookAgain(drivers);
      boolean asked =
          way * march.plantAhead(drivers, room) + Math.abs(march.plantTilt(drivers, room)) > TRIFLE;
      drivers.release(room);
      march.lookAgain(drivers);
      return !asked;
    }
    return true;
  }

  /** Most heat a plant can move, W. */
  private double most(int room, int way, double setPoint) {
    if (way > 0 || room != cooledByUnit) {
      return Double.POSITIVE_INFINITY;
    }
    if (blows) {
      return Math.max(0, supply.sensible(1, setPoint));
    }
    if (able == null) {
      able = ask(Math.max(setPoint, Double.isNaN(entering) ? march.air(room) : entering));
    }
    return Math.max(0, able.sensible());
  }

  private Able ask(double enteringDryBulb) {
    return ask(enteringDryBulb, humidityAtUnit.seenAt(enteringDryBulb, pressure));
  }

  private Able ask(double enteringDryBulb, double seen) {
    if (askedIn != hour || askedDryBulb != enteringDryBulb || askedHumidity != seen) {
      AirState air = new AirState(enteringDryBulb, seen, pressure);
      answer = unit.orElseThrow().at(dryBulb, outdoorHumidity, air);
      askedIn = hour;
      askedDryBulb = enteringDryBulb;
      askedHumidity = seen;
    }
    return answer;
  }

  /**
   * Holds a room that is at its set point or beyond it, or brings it there.
   *
   * @param way 1 for heating, -1 for cooling
   */
  private boolean bring(int room, double free, int way) {
    double setPoint = setPoint(room, way);
    double most = most(room, way, setPoint);
    double missing = way * (setPoint - march.air(room));
    if (missing >= -THERE) {
      drivers.hold(room, setPoint);
      march.lookAgain(drivers);
      double plant = way * march.plantAhead(drivers, room);
      boolean there = missing <= THERE;
      if (!fine && (there ? switches(room, way) : plant <= most)) {
        return false;
      }
      if (plant >= 0 && plant <= most) {
        heldBy[room] = way;
        return true;
      }
      drivers.release(room);
      march.lookAgain(drivers);
      if (plant < 0) {
        return true;
      }
    } else if (!fine) {
      return false;
    }
    if (blows && way < 0 && room == cooledByUnit) {
      return blowTo(setPoint);
    }
    double need = way * (setPoint - free) / march.response(drivers, room);
    if (!fine && need < most) {
      return false;
    }
    constant[room] = way * Math.min(most, need);
    drivers.airSource(room, base[room] + constant[room]);
    march.lookAgain(drivers);
    if (way < 0 && room == cooledByUnit) {
      entering = march.meanAir(room);
    }
    return true;
  }

  /** Blows all through a step, or in a short one as long as it takes. */
  private boolean blowTo(double setPoint) {
    double share =
        BlownShare.of(
            each -> {
              blow(each);
              march.lookAgain(drivers);
              return march.ahead(cooledByUnit) - setPoint;
            });
    return fine || share == 0 || share == 1;
  }

  /** Part of the step a cooler that holds the set point blows. */
  private void findBlown() {
    blown = blowing;
    double held = -march.plantAhead(drivers, cooledByUnit);
    double most = supply.sensible(1, march.meanAir(cooledByUnit));
    if (blowing == 0 && heldBy[cooledByUnit] < 0 && held > 0 && most > 0) {
      blown = Math.min(1, held / most);
    }
  }

  private static boolean straddles(double plant, double tilt, double most) {
    return plant - tilt < most && plant + tilt > most;
  }

  /** Makes the step that was found; a step of the length with this number is likely to follow. */
  void go(Optional<DayLedger> ledger, int next) {
    if (able != null) {
      findCoil();
    }
    if (blows) {
      findBlown();
    }
    radiated.make(nearly);
    double removed = 0;
    march.go(drivers, next);
    if (ways.isPresent()) {
      SharedWater.find(
          means,
          room ->
              lookAtWater(
                      room, (able != null && room == cooledByUnit ? coil : 0) + driers.water(room))
                  .mean());
    }
    for (int room = 0; room < rooms; room++) {
      if (!(march.air(room) <= DayRunner.HOTTEST)) {
        throw new RoomTooHot(year.roomName(room), DayRunner.HOTTEST);
      }
      double out = (able != null && room == cooledByUnit ? coil : 0) + driers.water(room);
      Moisture.Step water = isFoundFor(room, out) ? found : lookAtWater(room, out);
      humidity[room] = water.mean();
      if (room == cooledByUnit) {
        humidities.ofThisHour()[0] = water.mean();
      }
      if (blown > 0 && room == cooledByUnit) {
        able = ask(march.meanAir(room), humidity[room]);
        fraction = blown;
      }
      moisture.go(room, water, around(room), out, ledger);
      removed -= constant[room];
      airs.ofThisHour()[room] = march.meanAir(room);
    }
    if (ledger.isPresent()) {
      ledger.get().heat(year.network(year.networkOf(hour)), march, drivers, removed, seconds);
      if (blown > 0) {
        ledger.get().blown(blownHeat(), able.condensate(blown), seconds);
      }
    }
  }

  /** Heat taken out by what flows from the cooler through the network, W. */
  private double blownHeat() {
    return blowing == 0 ? 0 : supply.sensible(blowing, march.meanAir(cooledByUnit));
  }

  /** The coldest of some right faces, mean over the step, °C; infinite for none. */
  private double coldest(int[] chains) {
    double coldest = Double.POSITIVE_INFINITY;
    for (int chain : chains) {
      coldest = Math.min(coldest, march.rightFace(chain));
    }
    return coldest;
  }

  /** Tells the step that was made. */
  void tell(YearResult result, int of, double share) {
    for (int room = 0; room < rooms; room++) {
      result.add(room, of, share, march.meanAir(room), march.meanStar(room), humidity[room]);
      result.addFaces(room, of, share, coldest(iron[room]), coldest(slabs[room]));
      double plant = constant[room] + march.plant(room);
      if (blows && room == cooledByUnit) {
        plant -= blownHeat();
      }
      if (plant != 0) {
        result.addPlant(room, of, share, plant);
      }
      if (driers.in(room)) {
        result.addDrier(room, of, share, driers.power(room), driers.water(room));
      }
      if (able != null && room == cooledByUnit) {
        if (fraction > 0) {
          Control.Given given = control.given(able, fraction);
          result.addUnit(room, of, share, given.latent(), given.power());
        }
      }
    }
  }
}
