package org.shopclime.airline;

import java.util.List;
import org.shopclime.air.MoistAir;

/**
 * Heat, air and water of an air line in the mean of one hour.
 *
 * @param running how the machine runs
 * @param drawn air drawn in
 * @param pumpHeat heat of motor and pump at its place, W
 * @param steps what became of the air, part by part
 * @param tool air at the tool, let down to the pressure around
 * @param toolAir dry air that reaches the tool, kg/s
 */
public record LineResult(
    AirCompressor.Running running,
    LineAir drawn,
    double pumpHeat,
    List<LineStep> steps,
    LineAir tool,
    double toolAir) {

  private static final double GRAMS_PER_HOUR = 3.6e6;
  private static final double KG_PER_LITRE = 0.998;

  /** Keeps a copy. */
  public LineResult {
    steps = List.copyOf(steps);
  }

  /**
   * Heat given off where the line passes. Pump and motor stand at the place; what leaves with the
   * air is missing there and comes in the room.
   *
   * @param site where
   * @return W; may be a little below nothing where cold air warms up
   */
  public double heatAt(LineSite site) {
    double heat = site == LineSite.PLACE ? pumpHeat : 0;
    for (LineStep step : steps) {
      heat += step.site() == site ? step.heat() : 0;
    }
    return heat;
  }

  /**
   * Electric power of machine and dryers.
   *
   * @return W
   */
  public double electricWatts() {
    return running.electricWatts() + steps.stream().mapToDouble(LineStep::electric).sum();
  }

  /**
   * Water drawn in as vapour.
   *
   * @return g/h
   */
  public double waterDrawn() {
    return running.dryAir() * drawn.humidityRatio() * GRAMS_PER_HOUR;
  }

  /**
   * Water that drops out in parts of a kind.
   *
   * @param where kind of part
   * @return g/h
   */
  public double drained(LineStep.Where where) {
    return steps.stream().filter(step -> step.where() == where).mapToDouble(LineStep::drained).sum()
        * GRAMS_PER_HOUR;
  }

  /**
   * Water at the machine: tube, aftercooler and tank.
   *
   * @return g/h
   */
  public double tankWater() {
    return drained(LineStep.Where.TUBE)
        + drained(LineStep.Where.AFTERCOOLER)
        + drained(LineStep.Where.TANK);
  }

  /**
   * Water in pipe and hose, before the tool.
   *
   * @return g/h
   */
  public double lineWater() {
    return drained(LineStep.Where.PIPE) + drained(LineStep.Where.COLD_STRETCH);
  }

  /**
   * Water that a dryer takes out, drained or held.
   *
   * @return g/h
   */
  public double dryerWater() {
    return drained(LineStep.Where.DRYER) + held();
  }

  /**
   * Water taken up by drying agents.
   *
   * @return g/h
   */
  public double held() {
    return steps.stream().mapToDouble(LineStep::held).sum() * GRAMS_PER_HOUR;
  }

  /**
   * Water that passes the tool as vapour.
   *
   * @return g/h
   */
  public double toolVapour() {
    return toolAir * tool.humidityRatio() * GRAMS_PER_HOUR;
  }

  /**
   * Water let go with the purge of drying agents, beside what they held.
   *
   * @return g/h
   */
  public double purgeVapour() {
    return steps.stream().mapToDouble(step -> step.purge() * step.out().humidityRatio()).sum()
        * GRAMS_PER_HOUR;
  }

  /**
   * Water to be drained on a day of such hours.
   *
   * @param hours of work, 0 to 24
   * @return litres
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double litresToDrain(double hours) {
    Check.within("hours of work", hours, 0, 24);
    double grams = tankWater() + lineWater() + drained(LineStep.Where.DRYER);
    return grams * hours / 1000 / KG_PER_LITRE;
  }

  /**
   * Air as it comes to the coldest stretch.
   *
   * @return air before it; that of the end of the line where there is no such stretch
   */
  public LineAir beforeColdest() {
    LineAir before = null;
    for (LineStep step : steps) {
      if (step.where() == LineStep.Where.COLD_STRETCH) {
        break;
      }
      before = step.out();
    }
    return before == null ? drawn : before;
  }

  /**
   * Pressure dew point of the air as it comes to the coldest stretch.
   *
   * @return °C; water drops out in any stretch colder than that
   */
  public double pressureDewPoint() {
    return beforeColdest().pressureDewPoint();
  }

  /**
   * Water drawn in less all that is told to leave: nothing but rounding.
   *
   * @return kg/s
   */
  public double waterMissing() {
    return (waterDrawn() - tankWater() - lineWater() - dryerWater() - purgeVapour() - toolVapour())
        / GRAMS_PER_HOUR;
  }

  /**
   * Dry air drawn in less that at the tool and let go: nothing but rounding.
   *
   * @return kg/s
   */
  public double airMissing() {
    return running.dryAir() - toolAir - steps.stream().mapToDouble(LineStep::purge).sum();
  }

  /**
   * Energy that comes in less all that leaves: nothing but rounding. Comes in: electricity and the
   * air drawn in. Leaves: heat, air at the tool and of the purge, water drained or held.
   *
   * @return W
   */
  public double energyMissing() {
    double rest = electricWatts() + running.dryAir() * drawn.enthalpy() - pumpHeat;
    for (LineStep step : steps) {
      double celsius = step.out().celsius();
      double liquid = MoistAir.SPECIFIC_HEAT_WATER * celsius;
      double vapour = MoistAir.LATENT_HEAT + MoistAir.SPECIFIC_HEAT_VAPOUR * celsius;
      rest -= step.heat() + step.drained() * liquid;
      rest -= step.held() * (step.purge() > 0 ? vapour : liquid);
      rest -= step.purge() * step.out().enthalpy();
    }
    return rest - toolAir * tool.enthalpy();
  }
}
