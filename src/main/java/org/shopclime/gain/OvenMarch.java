package org.shopclime.gain;

/** The march of one batch, or of several in a row, through its phases, with its books. */
final class OvenMarch {

  /** Told of every step. */
  interface OvenLog {

    /**
     * A step.
     *
     * @param since its start, s after the march began
     * @param length s
     * @param power of the heater, W
     * @param given to the room by shell and door, W
     * @param vented outdoors by the fan, W
     */
    void step(double since, double length, double power, double given, double vented);
  }

  private final OvenBatch batch;
  private final double room;
  private double boxCelsius;
  private double partsCelsius;
  private double partsCapacity;
  private double toParts;
  private double seconds;
  private double heater;
  private double shell;
  private double exhaust;
  private double door;
  private final OvenLog log;

  OvenMarch(OvenBatch batch, double startCelsius, double room) {
    this(batch, startCelsius, room, (since, length, power, given, vented) -> {});
  }

  OvenMarch(OvenBatch batch, double startCelsius, double room, OvenLog log) {
    this.log = log;
    this.batch = batch;
    this.room = room;
    this.boxCelsius = startCelsius;
    this.partsCelsius = room;
    this.partsCapacity = batch.partsCapacity();
    this.toParts = batch.toParts();
  }

  double seconds() {
    return seconds;
  }

  /** Whether parts, or the box where there are none, are this warm. */
  boolean cured(double celsius) {
    return (partsCapacity > 0 ? partsCelsius : boxCelsius) >= celsius;
  }

  /** A phase of a length; loss and its part by the door, W/K; most heater power, W. */
  void pass(double length, double loss, double openDoor, double most, double step) {
    int steps = (int) Math.ceil(length / step);
    for (int i = 0; i < steps; i++) {
      step(length / steps, loss, openDoor, most);
    }
  }

  private void step(double length, double loss, double openDoor, double most) {
    double boxRate = 2 * batch.boxCapacity() / length;
    double partsRate = 2 * partsCapacity / length;
    // What reaches the parts at the middle of the step: share · (box - parts at its start).
    double share = toParts > 0 ? toParts * partsRate / (toParts + partsRate) : 0;
    double power = most;
    double middle = middle(boxRate, share, loss, power);
    double set = batch.box().setTemperature();
    if (most > 0 && 2 * middle - boxCelsius > set) {
      middle = (boxCelsius + set) / 2;
      power =
          boxRate * (middle - boxCelsius)
              + loss * (middle - room)
              + share * (middle - partsCelsius);
      if (power < 0) {
        power = 0;
        middle = middle(boxRate, share, loss, 0);
      }
    }
    double flow = share * (middle - partsCelsius);
    partsCelsius += partsCapacity > 0 ? flow * length / partsCapacity : 0;
    boxCelsius = 2 * middle - boxCelsius;
    double byDoor = openDoor * (middle - room);
    double byShell = batch.shell() * (middle - room);
    double byFan = loss * (middle - room) - byDoor - byShell;
    log.step(seconds, length, power, byDoor + byShell, byFan);
    seconds += length;
    heater += power * length;
    shell += byShell * length;
    door += byDoor * length;
    exhaust += byFan * length;
  }

  /** Temperature of the box at the middle of a step. */
  private double middle(double boxRate, double share, double loss, double power) {
    return (boxRate * boxCelsius + share * partsCelsius + loss * room + power)
        / (boxRate + share + loss);
  }

  /** Puts the parts of the next batch in, as warm as the room. */
  void load() {
    partsCelsius = room;
    partsCapacity = batch.partsCapacity();
    toParts = batch.toParts();
  }

  /** Heat of the box above the room, J. */
  double kept() {
    return batch.boxCapacity() * (boxCelsius - room);
  }

  /** Takes the parts out: their heat above the room, J. */
  double unload() {
    double heat = partsCapacity * (partsCelsius - room);
    partsCapacity = 0;
    toParts = 0;
    return heat;
  }

  OvenAccount account(boolean reached, double heatUp, double parts, double startCelsius) {
    return new OvenAccount(
        reached,
        heatUp,
        seconds,
        startCelsius,
        boxCelsius,
        heater,
        shell,
        door,
        exhaust,
        parts,
        batch.boxCapacity() * (boxCelsius - startCelsius));
  }
}
