package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * A day of batches in a curing oven, five minutes by five: what its heater takes, what the room
 * gets, what is carried outdoors. Over the day the books close.
 *
 * <p>The first batch finds the box as warm as the room; each further one as the last left it. A
 * batch begins when it is meant to, or when the one before it is out. Parts and, after the last
 * batch, the box cool by an exponential; what they still hold at the end of the day they give off
 * at its beginning, as the day repeats.
 *
 * <p>Source: {@link OvenBatch}; parts cool with the film of {@link OvenBatch#coolingTime}, the box
 * through its shell.
 */
public final class OvenDay {

  /** Five-minute slots in a day. */
  public static final int SLOTS = 288;

  private static final double SLOT = 300;
  private static final double DAY = SLOTS * SLOT;

  private final double first;
  private final double[] heater = new double[SLOTS];
  private final double[] given = new double[SLOTS];
  private final double[] vented = new double[SLOTS];
  private final double[] use = new double[SLOTS];
  private double carried;
  private int done;
  private boolean reached = true;
  private double heatUp;
  private double longest;

  private OvenDay(double first) {
    this.first = first;
  }

  /**
   * The day.
   *
   * @param batch each batch
   * @param starts when loading begins, s after midnight, 0 to 172,800, rising; none: an oven that
   *     stays cold. The last must begin within 24 h of the first
   * @param roomCelsius room, °C, -60 to 100
   * @param partsInRoom part of the parts' heat that they give off in the room, 0 to 1; the rest is
   *     carried out with them
   * @return the day
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static OvenDay of(
      OvenBatch batch, double[] starts, double roomCelsius, double partsInRoom) {
    Range.check("room temperature, °C,", roomCelsius, -60, 100);
    Range.check("part of the parts' heat in the room", partsInRoom, 0, 1);
    OvenDay day = new OvenDay(starts.length == 0 ? 0 : starts[0]);
    if (starts.length > 0) {
      day.run(batch, starts, roomCelsius, partsInRoom);
    }
    return day;
  }

  private void run(OvenBatch batch, double[] starts, double room, double partsInRoom) {
    OvenMarch march = new OvenMarch(batch, room, room, this::step);
    for (double start : starts) {
      Range.check("start of a batch, s,", start, first, Math.min(first + DAY, 2 * DAY));
      double begins = Math.max(march.seconds(), start - first);
      if (begins + longest <= DAY) {
        batch.rest(march, begins - march.seconds());
        march.load();
        OvenBatch.Phases phases = batch.pass(march);
        heatUp = done == 0 ? phases.heatUp() : heatUp;
        reached = reached && phases.reached();
        longest = Math.max(longest, march.seconds() - begins);
        spread(use, begins, march.seconds());
        release(partsInRoom * phases.parts(), march.seconds(), batch.coolingTime());
        carried += (1 - partsInRoom) * phases.parts();
        done++;
      }
    }
    release(march.kept(), march.seconds(), batch.boxCapacity() / batch.shell());
  }

  private void step(double since, double length, double power, double toRoom, double byFan) {
    int slot = slot(since + length / 2);
    heater[slot] += power * length / SLOT;
    given[slot] += toRoom * length / SLOT;
    vented[slot] += byFan * length / SLOT;
  }

  /** Slot of a time since the first start. */
  private int slot(double since) {
    return Math.floorMod((int) Math.floor((first + since) / SLOT), SLOTS);
  }

  /** Marks the part of each slot between two times since the first start. */
  private void spread(double[] into, double from, double to) {
    double at = from;
    while (at < to) {
      double end = Math.min(to, nextSlot(at));
      int slot = slot((at + end) / 2);
      into[slot] = Math.min(1, into[slot] + (end - at) / SLOT);
      at = end;
    }
  }

  /** Heat given off by an exponential from a time on, all days before counted in. */
  private void release(double heat, double from, double eFold) {
    double at = from;
    double left = 1;
    double whole = -Math.expm1(-DAY / eFold);
    while (at < from + DAY) {
      double end = Math.min(from + DAY, nextSlot(at));
      double after = Math.exp(-(end - from) / eFold);
      given[slot((at + end) / 2)] += heat * (left - after) / (whole * SLOT);
      left = after;
      at = end;
    }
  }

  private double nextSlot(double since) {
    double next = (Math.floor((first + since) / SLOT) + 1) * SLOT - first;
    return next > since ? next : since + SLOT;
  }

  /**
   * Heater.
   *
   * @param slot 0 to 287
   * @return mean electric power, W
   */
  public double heater(int slot) {
    return heater[slot];
  }

  /**
   * Heat that the room gets, by shell, open door and cooling parts.
   *
   * @param slot 0 to 287
   * @return mean, W, 0 or more
   */
  public double given(int slot) {
    return Math.max(0, given[slot]);
  }

  /**
   * Heat that the fan carries outdoors.
   *
   * @param slot 0 to 287
   * @return mean, W
   */
  public double vented(int slot) {
    return vented[slot];
  }

  /**
   * Part of a slot in which a batch is in the oven, its fan on.
   *
   * @param slot 0 to 287
   * @return 0 to 1
   */
  public double use(int slot) {
    return use[slot];
  }

  /**
   * Batches that find room in the day.
   *
   * @return number
   */
  public int done() {
    return done;
  }

  /**
   * Whether all parts came within 5 K of the set point in four hours.
   *
   * @return true also where there is no batch
   */
  public boolean reached() {
    return reached;
  }

  /**
   * How long the first batch takes to come up to its cure.
   *
   * @return s
   */
  public double heatUp() {
    return heatUp;
  }

  /**
   * Longest time a batch is in the oven, loading and unloading included.
   *
   * @return s
   */
  public double longest() {
    return longest;
  }

  /**
   * Heat that the parts carry out of the room.
   *
   * @return J a day
   */
  public double carried() {
    return carried;
  }

  /**
   * Electricity of the day less all that left: nothing but rounding.
   *
   * @return J
   */
  public double missing() {
    double sum = -carried;
    for (int slot = 0; slot < SLOTS; slot++) {
      sum += SLOT * (heater[slot] - given[slot] - vented[slot]);
    }
    return sum;
  }
}
