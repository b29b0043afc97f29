package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * The unit of a shop in the steps of a year: what it can take out in the air that it sees, found so
 * that the step leads to that air, and what it then takes out.
 */
final class YearUnit {

  private final Optional<Cooling> unit;

  /** Room that it cools; -1 for none. */
  private final int room;

  private final ModeMarch march;
  private final Drivers drivers;
  private final StepInflow outdoors;
  private final StepWater water;
  private final double pressure;

  /**
   * How the unit goes on and off; of no room where no unit is. A fan that runs on does so in the
   * hours in which the unit cools; in others it is taken to be switched off.
   */
  private final Control.Average control;

  /** Whether the unit blows outdoor air through wet pads. */
  private final boolean blows;

  private int hour;

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

  /** Part of the step that it blows, or that it would take to hold the set point. */
  private double blown;

  YearUnit(
      Optional<Cooling> unit,
      int room,
      ModeMarch march,
      Drivers drivers,
      StepInflow outdoors,
      StepWater water,
      double pressure) {
    this.unit = unit;
    this.room = room;
    this.march = march;
    this.drivers = drivers;
    this.outdoors = outdoors;
    this.water = water;
    this.pressure = pressure;
    blows = room >= 0 && unit.map(Cooling::blows).orElse(false);
    control =
        new Control.Average(
            CyclingTable.usual(march, drivers, Math.max(0, room), YearRun.FINE, YearRun.QUARTER));
  }

  /** Number of the room that it cools; -1 for none. */
  int room() {
    return room;
  }

  /** Whether it blows outdoor air through wet pads. */
  boolean blows() {
    return blows;
  }

  /** Whether it was asked what it can do. */
  boolean isAsked() {
    return able != null;
  }

  /** Nothing is known of the hours before. */
  void forget() {
    humidities.forget();
  }

  /** Goes on from where another one stands. */
  void takeOver(YearUnit other) {
    forget();
    able = other.able;
    humidityAtUnit.startFrom(other.humidityAtUnit);
  }

  /** An hour begins, outdoors as it is told. */
  void nextHour(int of) {
    hour = of;
    humidities.nextHour();
    if (blows) {
      outdoors.supply(
          unit.orElseThrow().blown(outdoors.dryBulb(), outdoors.humidityRatio(), pressure));
    }
  }

  /** Begins a step with a guess of the humidity: in a whole hour it is like that of yesterday's. */
  void begin(boolean whole) {
    if (room >= 0 && able == null) {
      humidityAtUnit.startFrom(water.humidityRatio(room));
    }
    if (whole) {
      seen[0] = humidityAtUnit.next();
      humidities.guess(seen);
      humidityAtUnit.goOnFrom(Math.max(0, seen[0]));
    } else {
      humidityAtUnit.newStep();
    }
    entering = Double.NaN;
    entered = 0;
  }

  /** Switches it off until it is asked. */
  void release() {
    able = null;
    fraction = 0;
    if (blows) {
      outdoors.blow(0);
    }
  }

  /** It must be asked anew. */
  void askAgain() {
    able = null;
  }

  /** Most heat it can take out of its room at a set point, W. */
  double most(double setPoint) {
    if (blows) {
      return Math.max(0, outdoors.supply().sensible(1, setPoint));
    }
    if (able == null) {
      able = ask(Math.max(setPoint, Double.isNaN(entering) ? march.air(room) : entering));
    }
    return Math.max(0, able.sensible());
  }

  private Able ask(double enteringDryBulb) {
    return ask(enteringDryBulb, humidityAtUnit.seenAt(enteringDryBulb, pressure));
  }

  private Able ask(double enteringDryBulb, double humidityRatio) {
    if (askedIn != hour || askedDryBulb != enteringDryBulb || askedHumidity != humidityRatio) {
      AirState air = new AirState(enteringDryBulb, humidityRatio, pressure);
      answer = unit.orElseThrow().at(outdoors.dryBulb(), outdoors.humidityRatio(), air);
      askedIn = hour;
      askedDryBulb = enteringDryBulb;
      askedHumidity = humidityRatio;
    }
    return answer;
  }

  /** It takes in the air of the step looked at, which it does not hold. */
  void entersMeanAir() {
    entering = march.meanAir(room);
  }

  /**
   * Blows until its room is at a set point.
   *
   * @return part of the step
   */
  double blowTo(double setPoint) {
    return BlownShare.of(
        each -> {
          outdoors.blow(each);
          march.lookAgain(drivers);
          return march.ahead(room) - setPoint;
        });
  }

  /** Whether it blows in the step looked at. */
  boolean isBlowing() {
    return outdoors.blowing() > 0;
  }

  /**
   * Whether it sees the air that it leaves its room with.
   *
   * @param plant heat of its room's plant in the step looked at, W, below 0 for cooling
   */
  boolean isStill(double plant) {
    return humidityStill(plant) && enteringStill();
  }

  /** Whether the unit that cannot hold the room sees the air that it leaves it with. */
  private boolean enteringStill() {
    boolean still = !(Math.abs(entering - entered) > YearAir.CLOSE);
    entered = entering;
    return still;
  }

  private boolean humidityStill(double plant) {
    findCoil(plant);
    foundOut = water.out(room, coil);
    foundAt = march.meanAir(room);
    if (water.passes()) {
      water.lookAtRooms(coil);
    }
    found = water.look(room, coil);
    return humidityAtUnit.isFound(found.mean());
  }

  /** Part of the step the unit runs, and the water it takes out. */
  private void findCoil(double plant) {
    fraction = plant < 0 && able.sensible() > 0 ? Math.min(1, -plant / able.sensible()) : 0;
    double wished = fraction > 0 ? control.water(able, fraction) : 0;
    coil = Math.min(wished, water.most(room));
  }

  /** Part of the step a cooler that holds the set point blows. */
  private void findBlown(boolean holds) {
    double blowing = outdoors.blowing();
    blown = blowing;
    double held = -march.plantAhead(drivers, room);
    double most = outdoors.supply().sensible(1, march.meanAir(room));
    if (blowing == 0 && holds && held > 0 && most > 0) {
      blown = Math.min(1, held / most);
    }
    water.blown(blown);
  }

  /** Settles what it does in the step that is about to be made. */
  void settle(YearPlants plants) {
    if (able != null) {
      findCoil(plants.plant(room));
    }
    if (blows) {
      findBlown(plants.unitHolds());
    }
  }

  /** Water that it takes out, kg/s. */
  double coil() {
    return able == null ? 0 : coil;
  }

  /** Where the water of its room leads in the step that is settled. */
  Moisture.Step lookAtWater() {
    boolean isFound =
        able != null
            && blown == 0
            && !water.passes()
            && foundOut == water.out(room, coil)
            && foundAt == march.meanAir(room);
    return isFound ? found : water.look(room, coil());
  }

  /** The step was made with this mean humidity in its room, kg/kg. */
  void made(double humidity) {
    humidities.ofThisHour()[0] = humidity;
    if (blown > 0) {
      able = ask(march.meanAir(room), humidity);
      fraction = blown;
    }
  }

  /** Heat taken out by what flows from the cooler through the network, W. */
  double blownHeat() {
    double blowing = outdoors.blowing();
    return blowing == 0 ? 0 : outdoors.supply().sensible(blowing, march.meanAir(room));
  }

  /** Writes what was blown into the books. */
  void audit(DayLedger ledger, double seconds) {
    if (blown > 0) {
      ledger.blown(blownHeat(), able.condensate(blown), seconds);
    }
  }

  /** Tells what it took out and drew in the step that was made. */
  void tell(YearResult result, int of, double share) {
    if (able != null && fraction > 0) {
      Control.Given given = control.given(able, fraction);
      result.addUnit(room, of, share, given.latent(), given.power());
    }
  }
}
