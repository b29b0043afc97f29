package org.shopclime.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/**
 * What a unit does flat out at one outdoor temperature.
 *
 * @param outdoor outdoor dry bulb, °C
 * @param sensible sensible heat it takes out, W; below 0 where it would warm the room
 * @param latent latent heat it takes out, W; below 0 where the room gets moister
 * @param power electric power it draws, W
 * @param beyond what lies beyond the tested range of its curves, names of limits; empty inside it
 */
public record UnitPoint(
    double outdoor, double sensible, double latent, double power, Set<String> beyond) {

  /** Copies the set. */
  public UnitPoint {
    beyond = Set.copyOf(beyond);
  }

  /**
   * Sensible and latent heat together.
   *
   * @return W
   */
  public double total() {
    return sensible + latent;
  }

  /**
   * Air around a unit.
   *
   * @param room room air, °C
   * @param roomDewPoint its dew point, °C; above the room's temperature it counts as that
   * @param outdoorHumidityRatio moisture outdoors, kg/kg; where that is more than the air holds, it
   *     is saturated
   * @param pressure air pressure, Pa
   */
  public record Surroundings(
      double room, double roomDewPoint, double outdoorHumidityRatio, double pressure) {}

  /**
   * A unit from a cool day to a hot one.
   *
   * @param cooling the unit
   * @param air air around it
   * @param outdoors outdoor dry bulbs, °C
   * @return a point for each
   */
  public static List<UnitPoint> curve(Cooling cooling, Surroundings air, List<Double> outdoors) {
    double water =
        MoistAir.humidityRatioFromDewPoint(
            Math.min(air.roomDewPoint(), air.room()), air.pressure());
    AirState room = new AirState(air.room(), water, air.pressure());
    List<UnitPoint> points = new ArrayList<>();
    for (double outdoor : outdoors) {
      double most = MoistAir.saturationHumidityRatio(outdoor, air.pressure());
      Able able = cooling.at(outdoor, Math.min(air.outdoorHumidityRatio(), most), room);
      Set<String> beyond = new TreeSet<>();
      able.limits().forEach(limit -> beyond.add(limit.name()));
      points.add(new UnitPoint(outdoor, able.sensible(), able.latent(), able.power(), beyond));
    }
    return points;
  }
}
