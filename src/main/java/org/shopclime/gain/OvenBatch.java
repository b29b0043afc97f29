package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * One batch in a curing oven as an event: loading with the door open, heating up, curing,
 * unloading, standing shut until the next.
 *
 * <p>Box and parts have a temperature each. The heater runs flat out until the box is at its set
 * point, then holds it; the cure counts from when the parts are within 5 K of it; while the door is
 * open the heater is off. Parts are sheet, warmed from both faces.
 *
 * <p>Source: heat balance of two masses, marched with the implicit midpoint, whose books close to
 * rounding. Film in the oven 25 W/(m²·K), in the room 12: radiation 4 ε σ T³ with free convection.
 * Open door 40 W/(m²·K): radiation of the hot box 22 and air that changes places 18. Box 8
 * kJ/(m²·K) for each square metre of inside: 1 mm of skin, rack, and the inner part of the wool.
 * Common practice.
 *
 * <p>Limits: parts of one thickness; the wool's own slowness is left out; water and powder burnt
 * off are left out (a hundredth). {@link OvenBox#partsMassPerHour} of the box is not used.
 *
 * @param box size, walls, set point, heater
 * @param partsMass steel in the batch, kg, 0 to 5000
 * @param partsThickness of its sheet or tube wall, m, 0.0005 to 0.05
 * @param boxCapacity heat capacity of the box, J/K, 1000 to 1e7
 * @param cureSeconds time the parts are held, s, 0 to 36,000
 * @param openSeconds door open for loading and again for unloading, s each, 0 to 3600
 * @param exhaustFlow air a fan draws through the box while it is in use, kg/s, 0 to 10; the room
 *     gives it and must get as much from outdoors
 */
public record OvenBatch(
    OvenBox box,
    double partsMass,
    double partsThickness,
    double boxCapacity,
    double cureSeconds,
    double openSeconds,
    double exhaustFlow) {

  private static final double STEEL_DENSITY = 7850;
  private static final double FILM_IN_OVEN = 25;
  private static final double FILM_IN_ROOM = 12;
  private static final double OPEN_DOOR = 40;
  private static final double CAPACITY_PER_AREA = 8000;
  private static final double AIR = 1006;
  private static final double CLOSE_ENOUGH = 5;
  private static final double LONGEST = 4 * 3600;
  private static final double STEP = 5;
  private static final int MOST_CYCLES = 500;
  private static final double SAME = 1e-9;

  /** Refuses what is outside the ranges above. */
  public OvenBatch {
    Range.check("parts, kg,", partsMass, 0, 5000);
    Range.check("thickness of the parts, m,", partsThickness, 0.0005, 0.05);
    Range.check("heat capacity of the oven, J/K,", boxCapacity, 1000, 1e7);
    Range.check("cure time, s,", cureSeconds, 0, 36_000);
    Range.check("time with the door open, s,", openSeconds, 0, 3600);
    Range.check("oven exhaust, kg/s,", exhaustFlow, 0, 10);
  }

  /**
   * Usual heat capacity of a box.
   *
   * @param box the oven
   * @return J/K
   */
  public static double usualCapacity(OvenBox box) {
    return CAPACITY_PER_AREA * box.area();
  }

  /**
   * One batch.
   *
   * @param startCelsius box as loading begins, °C, -60 to 500
   * @param roomCelsius room, °C, -60 to 100
   * @param idleSeconds time it stands shut with heater and fan off before the next, s, 0 to 1e6
   * @return its account
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public OvenAccount run(double startCelsius, double roomCelsius, double idleSeconds) {
    Range.check("oven as loading begins, °C,", startCelsius, -60, 500);
    Range.check("room temperature, °C,", roomCelsius, -60, 100);
    Range.check("time until the next batch, s,", idleSeconds, 0, 1e6);
    OvenMarch march = new OvenMarch(this, startCelsius, roomCelsius);
    Phases done = pass(march);
    march.pass(idleSeconds, shell(), 0, 0, Math.max(STEP, idleSeconds / 2000));
    return march.account(done.reached(), done.heatUp(), done.parts(), startCelsius);
  }

  /**
   * What the phases of a batch came to.
   *
   * @param reached whether the parts came within 5 K of the set point in four hours
   * @param heatUp from shutting the door until they did, s
   * @param parts carried out by the parts, J
   */
  record Phases(boolean reached, double heatUp, double parts) {}

  /** Loading, heating up, curing, unloading of parts that lie in the march. */
  Phases pass(OvenMarch march) {
    march.pass(openSeconds, shell() + exhaust() + openDoor(), openDoor(), 0, STEP);
    double begun = march.seconds();
    while (!march.cured(box.setTemperature() - CLOSE_ENOUGH) && march.seconds() - begun < LONGEST) {
      march.pass(STEP, shell() + exhaust(), 0, box.heaterWatts(), STEP);
    }
    double heatUp = march.seconds() - begun;
    boolean reached = march.cured(box.setTemperature() - CLOSE_ENOUGH);
    march.pass(cureSeconds, shell() + exhaust(), 0, box.heaterWatts(), STEP);
    march.pass(openSeconds, shell() + exhaust() + openDoor(), openDoor(), 0, STEP);
    return new Phases(reached, heatUp, march.unload());
  }

  /** Stands shut with heater and fan off, s. */
  void rest(OvenMarch march, double seconds) {
    march.pass(seconds, shell(), 0, 0, STEP);
  }

  /**
   * A batch among many of the same: the box begins as warm as it ends.
   *
   * @param roomCelsius room, °C, -60 to 100
   * @param idleSeconds time between batches, s, 0 to 1e6
   * @return its account, with nothing stored
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public OvenAccount repeating(double roomCelsius, double idleSeconds) {
    OvenAccount account = run(roomCelsius, roomCelsius, idleSeconds);
    for (int i = 0;
        i < MOST_CYCLES && Math.abs(account.endCelsius() - account.startCelsius()) > SAME;
        i++) {
      account = run(account.endCelsius(), roomCelsius, idleSeconds);
    }
    return account;
  }

  /**
   * How quickly parts cool in the room, e-fold.
   *
   * @return s
   */
  public double coolingTime() {
    return STEEL_DENSITY * OvenBox.STEEL_SPECIFIC_HEAT * partsThickness / (2 * FILM_IN_ROOM);
  }

  /** Heat capacity of the parts, J/K. */
  double partsCapacity() {
    return partsMass * OvenBox.STEEL_SPECIFIC_HEAT;
  }

  /** Conductance from box to parts, W/K. */
  double toParts() {
    return FILM_IN_OVEN * 2 * partsMass / (STEEL_DENSITY * partsThickness);
  }

  /** Conductance of the shell, W/K. */
  double shell() {
    return box.shell();
  }

  /** Heat the exhaust takes for each kelvin, W/K. */
  double exhaust() {
    return exhaustFlow * AIR;
  }

  /** Conductance of the open door, W/K: the front of the box. */
  private double openDoor() {
    return OPEN_DOOR * box.width() * box.height();
  }
}
