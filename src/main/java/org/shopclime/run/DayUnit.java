package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.AirState;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * The unit of a shop in the steps of a day: it takes out what holds the set point, or all it can in
 * the mean air of the step, which is found in a few rounds. Of no room's air where no unit is.
 */
final class DayUnit {

  /** Most rounds in which the unit finds the mean air of the step it makes. */
  private static final int MOST_ROUNDS = 12;

  /** Rounds in which a cooler that blows finds the leaks of the air it leaves. */
  private static final int BLOWING_ROUNDS = 2;

  /** How near its air must be found, K and kg/kg. */
  private static final double NEAR = 0.02;

  private static final double NEAR_HUMIDITY = 2e-5;

  private final ShopModel model;
  private final Optional<Cooling> cooling;
  private final int room;
  private final Control control;
  private final ModeMarch march;
  private final Drivers drivers;
  private final StepInflow outdoors;
  private final DayAir air;
  private final StepWater water;

  /** Mean air that the unit is taken to see, carried from step to step while it is on. */
  private final SeenHumidity humidity = new SeenHumidity();

  private double entering;
  private double meanWater;

  /** Whether it is on in this step, and blows outdoor air through wet pads. */
  private boolean isOn;

  private boolean blows;

  /** What it can do in this step; null where it is off. */
  private Able able;

  /** Part of that which it does. */
  private double fraction;

  /** Water it takes out, kg/s. */
  private double coil;

  DayUnit(
      ShopModel model,
      Optional<Cooling> cooling,
      int room,
      Control control,
      ModeMarch march,
      Drivers drivers,
      StepInflow outdoors,
      DayAir air,
      StepWater water) {
    this.model = model;
    this.cooling = cooling;
    this.room = room;
    this.control = control;
    this.march = march;
    this.drivers = drivers;
    this.outdoors = outdoors;
    this.air = air;
    this.water = water;
  }

  /** A day begins; it was off before. */
  void startDay() {
    isOn = false;
    coil = 0;
  }

  /**
   * Finds what it does in the step looked at.
   *
   * @param asked whether it is switched on in it
   * @param gain heat into the air of its room besides its own, W
   */
  void find(boolean asked, double gain) {
    boolean on = cooling.isPresent() && asked;
    able = null;
    fraction = 0;
    coil = 0;
    blows = on && cooling.get().blows();
    if (blows) {
      control.off();
      blow();
    } else if (on) {
      control.begin(march.air(room) - model.setPoint(room));
      guessAir();
      air.flowAgain(entering);
      cool(gain);
    } else {
      control.off();
      air.settle();
    }
    isOn = on;
  }

  /** Lets a cooler with wet pads blow as long as the set point needs. */
  private void blow() {
    outdoors.supply(
        cooling.get().blown(outdoors.dryBulb(), outdoors.humidityRatio(), model.pressure()));
    for (int round = 0; round < BLOWING_ROUNDS; round++) {
      air.flowAgain(march.meanAir(room));
      BlownShare.of(
          share -> {
            outdoors.blow(share);
            march.lookAgain(drivers);
            return march.ahead(room) - model.setPoint(room);
          });
    }
    fraction = outdoors.blowing();
    water.blown(fraction);
  }

  /** A guess at the mean air of a step: on as it went, or as it is where the unit was off. */
  private void guessAir() {
    double now = march.air(room);
    double held = water.humidityRatio(room);
    if (isOn) {
      entering = 2 * now - entering;
      humidity.goOnFrom(Math.max(0, 2 * held - meanWater));
    } else {
      entering = now;
      humidity.startFrom(held);
    }
  }

  private void cool(double gain) {
    boolean found = false;
    for (int round = 0; round < MOST_ROUNDS && !found; round++) {
      able = ask(entering, humidity.seenAt(entering, model.pressure()));
      run(gain);
      coil = Math.min(control.water(able, fraction), water.mostOfHeld(room));
      double missed = march.meanAir(room) - entering;
      entering += missed;
      air.flowAgain(entering);
      meanWater = water.lookAtUnitRoom(coil);
      found =
          humidity.isFound(meanWater, NEAR_HUMIDITY) && Math.abs(missed) < NEAR && air.isFound();
    }
  }

  private Able ask(double celsius, double humidityRatio) {
    return cooling
        .get()
        .at(
            outdoors.dryBulb(),
            outdoors.humidityRatio(),
            new AirState(celsius, humidityRatio, model.pressure()));
  }

  /** Lets the unit run as long as the set point needs. */
  private void run(double gain) {
    drivers.airSource(room, gain);
    march.lookAgain(drivers);
    fraction = control.share(able, needed());
    drivers.airSource(room, gain - fraction * able.sensible());
    march.lookAgain(drivers);
  }

  /**
   * Part of its capacity that brings the room to its set point at the end of the step; below 0
   * where the room would not come so far.
   */
  private double needed() {
    double over = march.ahead(room) - model.setPoint(room);
    if (able.sensible() <= 0 || (over <= 0 && able.idle() == 0)) {
      return 0;
    }
    double need = over / march.response(drivers, room);
    return Math.min(1, need / able.sensible());
  }

  /** Water that it takes out in the step, or took out in the last one, kg/s; 0 where it was off. */
  double coil() {
    return coil;
  }

  /** What a cooler that blows could do in the step that was made, its room this humid, kg/kg. */
  void leaves(double humidityRatio) {
    if (blows) {
      able = ask(march.meanAir(room), humidityRatio);
    }
  }

  /** Writes the step into the books of the network. */
  void audit(DayLedger ledger, double seconds) {
    double removed = able == null ? 0 : fraction * able.sensible();
    ledger.heat(model.network(), march, drivers, blows ? 0 : removed, seconds);
    if (blows) {
      ledger.blown(removed, able.condensate(fraction), seconds);
    }
  }

  /** What it could do in the step; null where it was off. */
  Able able() {
    return able;
  }

  /** Part of that which it did. */
  double fraction() {
    return fraction;
  }

  /** All that is told of it in a step in which it was on. */
  Control.Given given() {
    return control.given(able, fraction);
  }

  /** The step was made and told. */
  void end() {
    if (isOn && !blows) {
      control.end(able);
    }
  }
}
