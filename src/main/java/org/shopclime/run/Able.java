package org.shopclime.run;

import java.util.Optional;
import java.util.Set;
import org.shopclime.air.AirState;
import org.shopclime.unit.Delivered;
import org.shopclime.unit.Limit;
import org.shopclime.unit.RoomEffect;
import org.shopclime.unit.RoomPlant;
import org.shopclime.unit.WetCoil;

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

  /** Water its coil takes out, kg/s; what comes with induced air is not in it. */
  private final double condensed;

  /** What hangs on its coil between runs; null where it drains away as the fan stops. */
  private final WetCoil coil;

  /** Heat into the room where it is on and nothing is asked of it, W. */
  private final double fanAlone;

  private Able(
      double sensible,
      double latent,
      double condensate,
      double power,
      Set<Limit> limits,
      Slower slower,
      boolean inProportion,
      double condensed,
      WetCoil coil,
      double fanAlone) {
    this.sensible = sensible;
    this.latent = latent;
    this.condensate = condensate;
    this.power = power;
    this.limits = limits;
    this.slower = slower;
    this.inProportion = inProportion;
    this.condensed = condensed;
    this.coil = coil;
    this.fanAlone = fanAlone;
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
        false,
        flatOut.condensate(),
        null,
        0);
  }

  /** Any plant, which goes on and off. */
  static Able onOff(RoomPlant plant, AirState room, AirState outdoor) {
    RoomEffect effect = plant.at(room, outdoor, 1);
    double condensed = Math.max(0, -effect.water());
    return of(effect.withInducedAirCounted(room, outdoor), room, null, false, condensed, 0);
  }

  /**
   * A plant that runs slower where less is asked.
   *
   * @param fanAlone heat it gives its room where nothing is asked, W
   */
  static Able variable(RoomPlant plant, AirState room, AirState outdoor, double fanAlone) {
    Slower slower = new Slower(plant, room, outdoor);
    return of(plant.at(room, outdoor, 1), room, slower, false, 0, fanAlone);
  }

  /** A plant that goes on and off, its starts costing nothing. */
  static Able inProportion(RoomPlant plant, AirState room, AirState outdoor) {
    return of(plant.at(room, outdoor, 1), room, null, true, 0, 0);
  }

  private static Able of(
      RoomEffect effect,
      AirState room,
      Slower slower,
      boolean inProportion,
      double condensed,
      double fanAlone) {
    return new Able(
        -effect.sensible(),
        latent(effect, room),
        -effect.water(),
        effect.power(),
        effect.limits(),
        slower,
        inProportion,
        condensed,
        null,
        fanAlone);
  }

  /** The same with a fan that runs on over its coil while it does not. */
  Able withFanOver(WetCoil wet) {
    return new Able(
        sensible,
        latent,
        condensate,
        power,
        limits,
        slower,
        inProportion,
        condensed,
        wet,
        wet.fanPower());
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

  /** What hangs on its coil between runs; nothing where it drains away as the fan stops. */
  Optional<WetCoil> coil() {
    return Optional.ofNullable(coil);
  }

  /** Water its coil takes out, kg/s; what comes with induced air is not in it. */
  double condensed() {
    return condensed;
  }

  /**
   * What it gives where it is on and nothing is asked, as a part of its sensible capacity.
   *
   * @return 0, or less where its fan warms the room
   */
  double idle() {
    return fanAlone == 0 || sensible <= 0 ? 0 : -fanAlone / sensible;
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
    if (!isSlower(share)) {
      return share * condensate;
    }
    return -slower.giving(share * sensible).water();
  }

  /** Latent heat it takes out then, W. */
  double latent(double share) {
    if (!isSlower(share)) {
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
    if (!isSlower(share)) {
      return (inProportion ? share : running) * power;
    }
    return slower.giving(share * sensible).power();
  }

  /** Part of the time it runs then. */
  double running(double share, double ifOnOff) {
    if (!isSlower(share)) {
      return inProportion ? share : ifOnOff;
    }
    return slower.giving(share * sensible).runFraction();
  }

  /** Whether a part is given by running slower. */
  private boolean isSlower(double share) {
    return slower != null && (share != 0 || fanAlone > 0);
  }
}
