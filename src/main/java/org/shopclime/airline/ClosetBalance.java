package org.shopclime.airline;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.leakage.VentStack;

/**
 * Steady temperature of a place with a source of heat, and where that heat goes.
 *
 * <p>Source: heat balance: heat = UA room (T - room) + UA out (T - outdoors - sun) + m c (T - where
 * the air comes from), solved by halving; the right side rises with T, draughts that turn round
 * included.
 *
 * <p>Limits: no mass. A closed place heats up over hours, so the worst hour of a short day is
 * cooler than this says. Above 120 °C the source is held at what it gives there: the machine has
 * long switched off.
 *
 * @param celsius air in the place, °C
 * @param humidityRatio its vapour, kg/kg: that of the air that comes
 * @param heat given off in it, W
 * @param roomByWall heat through its faces to the room, W, either sign
 * @param outdoorsByWall heat through its faces to outdoors, W, either sign
 * @param byDraught heat taken along by the draught, W, either sign
 * @param draught air that passes
 */
public record ClosetBalance(
    double celsius,
    double humidityRatio,
    double heat,
    double roomByWall,
    double outdoorsByWall,
    double byDraught,
    Venting.Draught draught) {

  private static final double HOTTEST_SOURCE = 120;
  private static final int HALVINGS = 200;

  /**
   * The balance of a source of constant heat.
   *
   * @param closet the place
   * @param venting how air passes
   * @param around air on both sides
   * @param watts heat, W, 0 to 1e6
   * @return the balance
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static ClosetBalance of(Closet closet, Venting venting, PlaceAround around, double watts) {
    Check.within("heat in the place, W,", watts, 0, 1e6);
    return of(closet, venting, around, celsius -> watts);
  }

  /**
   * The balance of a source whose heat depends on the place.
   *
   * @param closet the place; without any conductance or draught there is no balance
   * @param venting how air passes
   * @param around air on both sides
   * @param source heat, W, by the temperature of the place, °C, -60 to 120; may fall with it, or
   *     rise by less than the place loses
   * @return the balance
   * @throws IllegalArgumentException if the place has no way to lose heat
   */
  public static ClosetBalance of(
      Closet closet, Venting venting, PlaceAround around, DoubleUnaryOperator source) {
    double coldest = Math.min(around.room().dryBulb(), around.outdoors().dryBulb());
    double low = coldest;
    double step = 10;
    while (surplus(closet, venting, around, source, low) < 0 && step < 1e5) {
      low -= step;
      step *= 2;
    }
    double high = coldest;
    step = 10;
    while (surplus(closet, venting, around, source, high) > 0) {
      high += step;
      step *= 2;
      if (step > 1e9) {
        throw new IllegalArgumentException("a place without walls or vents cannot lose heat");
      }
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (middle <= low || middle >= high) {
        break;
      }
      if (surplus(closet, venting, around, source, middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return at(closet, venting, around, source, high);
  }

  /** Heat that would be left over, W, if the place had this temperature. */
  private static double surplus(
      Closet closet,
      Venting venting,
      PlaceAround around,
      DoubleUnaryOperator source,
      double celsius) {
    ClosetBalance found = at(closet, venting, around, source, celsius);
    return found.heat - found.toRoom() - found.toOutdoors();
  }

  private static ClosetBalance at(
      Closet closet,
      Venting venting,
      PlaceAround around,
      DoubleUnaryOperator source,
      double celsius) {
    Venting.Draught draught = venting.draught(celsius, around);
    Side side = closet.roomArea() > 0 ? Side.ROOM : Side.OUTDOORS;
    AirState coming = around.at(draught.dryAir() > 0 ? draught.from() : side);
    return new ClosetBalance(
        celsius,
        coming.humidityRatio(),
        source.applyAsDouble(Math.min(celsius, HOTTEST_SOURCE)),
        closet.towardsRoom() * (celsius - around.room().dryBulb()),
        closet.towardsOutdoors() * (celsius - around.outdoors().dryBulb() - closet.sunExcess()),
        draught.dryAir()
            * MoistAir.humidHeat(coming.humidityRatio())
            * (celsius - coming.dryBulb()),
        draught);
  }

  /**
   * Heat that ends in the room, by faces and draught.
   *
   * @return W; negative where the place cools the room
   */
  public double toRoom() {
    return roomByWall + (draught.to() == Side.ROOM ? byDraught : 0);
  }

  /**
   * Heat that ends outdoors, by faces and draught.
   *
   * @return W; negative where outdoors heats the place
   */
  public double toOutdoors() {
    return outdoorsByWall + (draught.to() == Side.OUTDOORS ? byDraught : 0);
  }

  /**
   * Heat that the outdoor air brings which the room takes in exchange for its own.
   *
   * @param around air on both sides
   * @return sensible and latent, W, either sign
   */
  public double makeUpHeat(PlaceAround around) {
    return draught.outdoorAirIntoRoom() * (around.outdoors().enthalpy() - around.room().enthalpy());
  }

  /**
   * Its air, as a compressor there would draw it.
   *
   * @param pressure absolute, Pa
   * @return the state
   * @throws IllegalArgumentException if it is hotter than moist air is told, 200 °C
   */
  public AirState air(double pressure) {
    return new AirState(celsius, humidityRatio, pressure);
  }

  /**
   * Fan that keeps a place at a temperature.
   *
   * @param closet the place
   * @param from where the fan draws
   * @param around air on both sides
   * @param watts heat, W, 0 to 1e6
   * @param limit temperature wished, °C
   * @return m³/s; 0 where faces alone do it, infinite where the air comes too warm
   */
  public static double fanFor(
      Closet closet, Side from, PlaceAround around, double watts, double limit) {
    ClosetBalance still = at(closet, Venting.CLOSED, around, celsius -> watts, limit);
    double rest = still.heat - still.roomByWall - still.outdoorsByWall;
    AirState source = around.at(from);
    double each =
        source.dryAirDensity()
            * MoistAir.humidHeat(source.humidityRatio())
            * (limit - source.dryBulb());
    if (rest <= 0) {
      return 0;
    }
    return each > 0 ? rest / each : Double.POSITIVE_INFINITY;
  }

  /**
   * Temperature against the size of the vents.
   *
   * @param closet the place
   * @param venting ways of the air and height; its areas are replaced
   * @param around air on both sides
   * @param watts heat, W, 0 to 1e6
   * @param areas free area of each of the two openings, m², 0 to 1000
   * @return one point for each area
   */
  public static List<VentPoint> curve(
      Closet closet, Venting venting, PlaceAround around, double watts, List<Double> areas) {
    List<VentPoint> points = new ArrayList<>();
    for (double area : areas) {
      VentStack openings = new VentStack(area, area, venting.openings().height());
      Venting way = new Venting(venting.from(), venting.to(), openings, 0);
      points.add(new VentPoint(area, of(closet, way, around, watts)));
    }
    return List.copyOf(points);
  }

  /**
   * One point of a curve.
   *
   * @param area free area of each of the two openings, m²
   * @param balance the place with them
   */
  public record VentPoint(double area, ClosetBalance balance) {}
}
