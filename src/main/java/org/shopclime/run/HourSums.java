package org.shopclime.run;

import java.util.EnumSet;
import java.util.Set;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.Limit;

/** Sums over the steps of each hour of a day, of which its means are told. */
final class HourSums {

  private static final int AIR = 0;
  private static final int OPERATIVE = 1;
  private static final int WATER = 2;
  private static final int SENSIBLE = 3;
  private static final int LATENT = 4;
  private static final int CAN_GIVE = 5;
  private static final int CAN_GIVE_LATENT = 6;
  private static final int RUNNING = 7;
  private static final int POWER = 8;
  private static final int STARTS = 9;
  private static final int DRIER_POWER = 10;
  private static final int DRIER_WATER = 11;
  private static final int COUNT = 12;

  private final ModeMarch march;
  private final int room;
  private final double pressure;

  /** Shortest steps in an hour. */
  private final int steps;

  private final double[][] of = new double[COUNT][Profile.HOURS];
  private final Set<Limit> limits = EnumSet.noneOf(Limit.class);

  /** Air, water and heat that holds each room, by hour, where a machine is placed. */
  private final double[][][] rooms;

  /**
   * Nothing so far.
   *
   * @param model the shop on the day
   * @param march its march
   * @param room index of the room that is told
   * @param parts number of steps in five minutes
   */
  HourSums(ShopModel model, ModeMarch march, int room, int parts) {
    this.march = march;
    this.room = room;
    pressure = model.pressure();
    steps = DaySlots.PER_HOUR * parts;
    rooms = new double[model.rooms()][3][Profile.HOURS];
  }

  /**
   * Adds the step last made for a room, where a machine is placed.
   *
   * @param of index of the room
   * @param hour 0 to 23
   * @param slots how many of the shortest steps it lasts
   * @param water its mean water, kg/kg
   */
  void addRoom(int of, int hour, int slots, double water) {
    rooms[of][0][hour] += slots * march.meanAir(of);
    rooms[of][1][hour] += slots * water;
    rooms[of][2][hour] += slots * march.plant(of);
  }

  /**
   * Adds the step last made for the room that is told.
   *
   * @param hour 0 to 23
   * @param slots how many of the shortest steps it lasts
   * @param water its water, kg/kg
   * @param unit what its unit did
   * @param driers what its dehumidifier did
   */
  void add(int hour, int slots, double water, DayUnit unit, Driers driers) {
    double air = march.meanAir(room);
    of[AIR][hour] += slots * air;
    of[OPERATIVE][hour] += slots * ((air + march.meanStar(room)) / 2);
    of[WATER][hour] += slots * water;
    of[DRIER_POWER][hour] += slots * driers.power(room);
    of[DRIER_WATER][hour] += slots * driers.water(room);
    Able able = unit.able();
    if (able != null) {
      of[SENSIBLE][hour] += slots * (unit.fraction() * able.sensible());
      of[CAN_GIVE][hour] += slots * able.sensible();
      of[CAN_GIVE_LATENT][hour] += slots * able.latent();
      Control.Given given = unit.given();
      of[LATENT][hour] += slots * given.latent();
      of[RUNNING][hour] += slots * given.running();
      of[POWER][hour] += slots * given.power();
      of[STARTS][hour] += slots * given.starts();
      if (unit.fraction() > 0) {
        limits.addAll(able.limits());
      }
    }
  }

  /** Mean air of an hour, 0 to 23, °C. */
  double meanAir(int hour) {
    return of[AIR][hour] / steps;
  }

  /** What the unit was asked beyond the tested range of its curves while it ran. */
  Set<Limit> limits() {
    return limits;
  }

  /** A room; only where a machine is placed. */
  RoomHours room(int of) {
    return new RoomHours(mean(rooms[of][0]), mean(rooms[of][1]), mean(rooms[of][2]));
  }

  /** The day of the room that is told. */
  Trace trace() {
    Profile air = mean(of[AIR]);
    Profile water = mean(of[WATER]);
    return new Trace(
        air,
        mean(of[OPERATIVE]),
        Profile.of(hour -> MoistAir.dewPoint(water.at(hour), pressure)),
        Profile.of(
            hour -> Math.min(1, MoistAir.relativeHumidity(air.at(hour), water.at(hour), pressure))),
        mean(of[SENSIBLE]),
        mean(of[LATENT]),
        mean(of[CAN_GIVE]),
        mean(of[CAN_GIVE_LATENT]),
        mean(of[RUNNING]),
        mean(of[POWER]),
        mean(of[STARTS]),
        mean(of[DRIER_POWER]),
        mean(of[DRIER_WATER]));
  }

  private Profile mean(double[] sums) {
    return Profile.of(hour -> sums[hour - 1] / steps);
  }
}
