package org.shopclime.run;

import java.util.Optional;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * One step of a year: what radiates, flows and is switched follows the means of that same step,
 * found in a few rounds.
 *
 * <p>A room that has come to its set point is held at it; in the step in which it gets there it is
 * brought there by constant heat ({@link YearPlants}). The unit takes out what holds the set point,
 * or all it can in the mean air of the step ({@link YearUnit}). Radiation by the fourth power
 * ({@link RadiatedHeat}) and air flows ({@link YearAir}) are those of the mean temperatures of the
 * round before; rounds end when that moves no face by more than {@value RadiatedHeat#CLOSE} K, no
 * air by {@value YearAir#CLOSE} K, and the humidity the unit sees by no more than {@value
 * SeenHumidity#CLOSE}.
 */
final class YearStep {

  /** How much further off the rounds of short steps may be, as the next step follows at once. */
  private static final double FINE_FACTOR = 3;

  /**
   * A round this many times too far off is the last but one: the next one, made from it, is off by
   * less than a tenth as much.
   */
  private static final double NEARLY = 10;

  /** How far the air may jump at the start of an hour that is one step, K. */
  private static final double MOST_JUMP = 0.7;

  private static final int MOST_ROUNDS = 12;

  private final ShopYear year;
  private final ModeMarch march;
  private final Drivers drivers;
  private final int rooms;
  private final RadiatedHeat radiated;
  private final Driers driers;
  private final YearAir air;
  private final StepWater water;
  private final YearUnit unit;
  private final YearPlants plants;

  /** Whether air passes between rooms. */
  private final boolean sharesAir;

  private final double[] humidity;
  private final int[][] iron;
  private final int[][] slabs;

  /** Whether the last round was known to be near enough before it was looked at. */
  private boolean nearly;

  private int hour;
  private double seconds;

  YearStep(
      ShopYear year, Optional<Cooling> owned, ModeMarch march, Drivers drivers, Moisture moisture) {
    this.year = year;
    this.march = march;
    this.drivers = drivers;
    rooms = year.rooms();
    int cooledByUnit = owned.map(Cooling::room).filter(year.plants()::isCooledByUnit).orElse(-1);
    driers = new Driers(rooms, year::drier);
    radiated = new RadiatedHeat(year, march);
    StepInflow outdoors = new StepInflow(drivers, rooms, cooledByUnit);
    air = new YearAir(year, march, drivers, outdoors);
    sharesAir = air.ways().isPresent();
    water =
        new StepWater(
            moisture,
            march,
            outdoors,
            driers,
            cooledByUnit,
            year.pressure(),
            Optional.empty(),
            air.ways());
    unit = new YearUnit(owned, cooledByUnit, march, drivers, outdoors, water, year.pressure());
    plants = new YearPlants(year, march, drivers, unit, sharesAir);
    march.choose(YearRun.WHOLE);
    humidity = new double[rooms];
    iron = new int[rooms][];
    slabs = new int[rooms][];
    for (int room = 0; room < rooms; room++) {
      iron[room] = year.iron(room);
      slabs[room] = year.slabs(room);
    }
  }

  /** Starts as if the means of the hours before had lasted, and forgets what went before. */
  void start(int until, int count) {
    air.forget();
    unit.forget();
    year.fillMean(drivers, until, count);
    for (int room = 0; room < rooms; room++) {
      drivers.release(room);
    }
    air.startSteady(until);
    double[] held = new double[rooms];
    for (int room = 0; room < rooms; room++) {
      held[room] = meanHeld(room, until, count);
    }
    for (int room = 0; room < rooms; room++) {
      if (!Double.isNaN(held[room])) {
        drivers.hold(room, held[room]);
      }
    }
    air.startSteady(until);
    radiated.startFrom(march, Math.floorMod(until - count, YearWeather.HOURS));
  }

  /**
   * Mean air of a room that would float where the march stands, but for its plants; NaN for that.
   */
  private double meanHeld(int room, int until, int count) {
    double free = march.air(room);
    boolean moved = false;
    double mean = 0;
    for (int ago = 1; ago <= count; ago++) {
      double held = plants.within(room, Math.floorMod(until - ago, YearWeather.HOURS), free);
      moved |= held != free;
      mean += held / count;
    }
    return moved ? mean : Double.NaN;
  }

  /** Goes on from the network of another season, into the hour that was begun. */
  void takeOver(YearStep other, Optional<DayLedger> ledger) {
    year.radiate(drivers, hour, radiated.startFrom(other.march, hour));
    march.takeOver(other.march);
    air.forget();
    ledger.ifPresent(books -> books.handedOver += heatHeld() - other.heatHeld());
    unit.takeOver(other.unit);
  }

  double heatHeld() {
    return march.heatHeld();
  }

  /** Sets what drives an hour. */
  void begin(int of) {
    hour = of;
    radiated.nextHour();
    air.nextHour(of);
    unit.nextHour(of);
    year.fill(drivers, of);
    for (int room = 0; room < rooms; room++) {
      plants.gain(room, year.airGain(room, of));
      water.gain(room, year.latentGain(room, of));
    }
  }

  /** Whether the set point of a heated room rises within the hour. */
  boolean rises() {
    return plants.rises(hour);
  }

  /**
   * Finds a step.
   *
   * @param length which length of the march
   * @param lasts that length, s
   * @param ends where in the hour it ends, above 0 to 1
   * @param fine whether plants that start or stop within it are taken as doing so all through it
   * @return false if a plant starts or stops in a long step, or the air jumps at the start of an
   *     hour that is one step
   */
  boolean look(int length, double lasts, double ends, boolean fine) {
    boolean whole = length == YearRun.WHOLE;
    march.choose(length);
    seconds = lasts;
    water.lasts(lasts);
    unit.begin(whole);
    air.begin(whole);
    plants.begin(hour, ends, fine);
    if (sharesAir) {
      air.beginWays();
      water.startMeans();
    }
    radiated.guess(seconds);
    nearly = false;
    for (int round = 1; ; round++) {
      year.radiate(drivers, hour, radiated.taken());
      if (driers.any()) {
        dry(round == 1);
      }
      plants.release();
      plants.holdAsBefore();
      march.look(drivers);
      if (!plants.controlInThisHumidity() || (whole && jumps())) {
        return false;
      }
      march.lookAtFaces();
      if (nearly) {
        return true;
      }
      radiated.find(hour);
      double airOff = air.off();
      double allowed = fine ? FINE_FACTOR : 1;
      if (round == MOST_ROUNDS || (airOff <= allowed && radiated.isWithin(allowed))) {
        return true;
      }
      nearly = airOff < NEARLY * allowed && radiated.isWithin(NEARLY * allowed);
      radiated.takeFound();
      air.takeFound();
    }
  }

  /** Lets the dehumidifiers run as it needs the air of the round before. */
  private void dry(boolean isFirst) {
    for (int room = 0; room < rooms; room++) {
      if (driers.in(room)) {
        water.dry(room, isFirst ? march.air(room) : march.meanAir(room), unit.coil());
        plants.gain(room, year.airGain(room, hour) + driers.heat(room));
      }
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

  /** Makes the step that was found; a step of the length with this number is likely to follow. */
  void go(Optional<DayLedger> ledger, int next) {
    unit.settle(plants);
    radiated.make(nearly);
    double removed = 0;
    march.go(drivers, next);
    if (sharesAir) {
      water.share(unit.coil());
    }
    for (int room = 0; room < rooms; room++) {
      if (!(march.air(room) <= DayRunner.HOTTEST)) {
        throw new RoomTooHot(year.roomName(room), DayRunner.HOTTEST);
      }
      Moisture.Step wet = room == unit.room() ? unit.lookAtWater() : water.look(room, 0);
      humidity[room] = wet.mean();
      if (room == unit.room()) {
        unit.made(wet.mean());
      }
      water.make(room, wet, unit.coil(), ledger);
      removed -= plants.constant(room);
      air.made(room);
    }
    if (ledger.isPresent()) {
      ledger.get().heat(year.network(year.networkOf(hour)), march, drivers, removed, seconds);
      unit.audit(ledger.get(), seconds);
    }
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
      double plant = plants.made(room);
      if (room == unit.room() && unit.blows()) {
        plant -= unit.blownHeat();
      }
      if (plant != 0) {
        result.addPlant(room, of, share, plant);
      }
      if (driers.in(room)) {
        result.addDrier(room, of, share, driers.power(room), driers.water(room));
      }
      if (room == unit.room()) {
        unit.tell(result, of, share);
      }
    }
  }
}
