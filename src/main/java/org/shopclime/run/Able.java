package org.shopclime.run;

import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.unit.Delivered;
import org.shopclime.unit.Limit;
import org.shopclime.unit.RoomEffect;
import org.shopclime.unit.RoomPlant;

/**
 * What a unit can take out of its room in this air, and what it does when less is asked. Outdoor
 * air that it draws in through leaks is charged to it. Not for several threads at once.
 */
final class Able {

  private final double sensible;
  private final double latent;
  private final double condensate;
  private final double power;
  private final Set<Limit> limits;

  /** What runs slower where less is asked; null for what goes on and off. */
  private final Slower slower;

  /** Whether its starts cost nothing. */
  private final boolean inProportion;

  private Able(
      double sensible,
      double latent,
      double condensate,
      double power,
      Set<Limit> limits,
      Slower slower,
      boolean inProportion) {
    this.sensible = sensible;
    this.latent = latent;
    this.condensate = condensate;
    this.power = power;
    this.limits = limits;
    this.slower = slower;
    this.inProportion = inProportion;
  }

  /** A unit that goes on and off. */
  static Able of(Delivered flatOut) {
    return new Able(
        flatOut.sensible(),
        flatOut.latent(),
        flatOut.condensate(),
        flatOut.power(),
        flatOut.limits(),
        null,
        false);
  }

  /** Any plant, which goes on and off. */
  static Able onOff(RoomPlant plant, AirState room, AirState outdoor) {
    return of(plant.at(room, outdoor, 1).withInducedAirCounted(room, outdoor), room, null, false);
  }

  /** A plant that runs slower where less is asked. */
  static Able variable(RoomPlant plant, AirState room, AirState outdoor) {
    return of(plant.at(room, outdoor, 1), room, new Slower(plant, room, outdoor), false);
  }

  /** A plant that goes on and off, its starts costing nothing. */
  static Able inProportion(RoomPlant plant, AirState room, AirState outdoor) {
    return of(plant.at(room, outdoor, 1), room, null, true);
  }

  private static Able of(RoomEffect effect, AirState room, Slower slower, boolean inProportion) {
    return new Able(
        -effect.sensible(),
        latent(effect, room),
        -effect.water(),
        effect.power(),
        effect.limits(),
        slower,
        inProportion);
  }

  private static double latent(RoomEffect effect, AirState room) {
    return effect.sensible() - effect.heatToRoom(room.dryBulb());
  }

  /** A plant in its air, and what it was last asked. */
  private static final class Slower {
    private final RoomPlant plant;
    private final AirState room;
    private final AirState outdoor;
    private double asked = Double.NaN;
    private RoomEffect effect;

    Slower(RoomPlant plant, AirState room, AirState outdoor) {
      this.plant = plant;
      this.room = room;
      this.outdoor = outdoor;
    }

    RoomEffect giving(double watts) {
      if (watts != asked) {
        asked = watts;
        effect = plant.at(room, outdoor, plant.demandFor(-watts, room, outdoor));
      }
      return effect;
    }
  }

  /** Sensible heat it can take out, W; below 0 where it would warm the room. */
  double sensible() {
    return sensible;
  }

  /** Latent heat it takes out meanwhile, W; below 0 where the room gets moister. */
  double latent() {
    return latent;
  }

  /** Power it draws, W. */
  double power() {
    return power;
  }

  Set<Limit> limits() {
    return limits;
  }

  /** Whether its starts are of no interest: it runs slower, or has nothing that starts wear. */
  boolean startsFreely() {
    return slower != null || inProportion;
  }

  /**
   * Water it takes out where a part of its sensible capacity is asked.
   *
   * @param share that part, 0 to 1
   * @return kg/s; below 0 where the room gets moister
   */
  double condensate(double share) {
    if (slower == null || share == 0) {
      return share * condensate;
    }
    return -slower.giving(share * sensible).water();
  }

  /** Latent heat it takes out then, W. */
  double latent(double share) {
    if (slower == null || share == 0) {
      return share * latent;
    }
    return latent(slower.giving(share * sensible), slower.room);
  }

  /**
   * Power it draws then, mean.
   *
   * @param share part of its sensible capacity that is asked, 0 to 1
   * @param running part of the time it would have to run if it went on and off, 0 to 1
   * @return W
   */
  double power(double share, double running) {
    if (slower == null || share == 0) {
      return (inProportion ? share : running) * power;
    }
    return slower.giving(share * sensible).power();
  }

  /** Part of the time it runs then. */
  double running(double share, double ifOnOff) {
    if (slower == null || share == 0) {
      return inProportion ? share : ifOnOff;
    }
    return slower.giving(share * sensible).runFraction();
  }
}
