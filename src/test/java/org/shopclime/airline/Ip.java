package org.shopclime.airline;

import java.util.List;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/** Inch-pound figures of NIST SP 811 for the tests of this room, apart from those of the code. */
final class Ip {

  static final double PSI = 6894.757;
  static final double CFM = 4.719474e-4;
  static final double HORSEPOWER = 745.6999;
  static final double GALLON = 3.785412e-3;
  static final double CUBIC_FOOT = 0.02831685;
  static final double POUND = 0.45359237;
  static final double BTU_PER_HOUR = 0.2930711;

  /** Water in a gallon as the trade counts it, 8.34 lb. */
  static final double GALLON_OF_WATER = 8.34 * POUND;

  private Ip() {}

  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }

  static AirState air(double fahrenheit, double percent) {
    return AirState.ofRelativeHumidity(
        celsius(fahrenheit), percent / 100, MoistAir.STANDARD_PRESSURE);
  }

  /** A machine large enough for any test, at a tank pressure. */
  static AirCompressor machine(double psig) {
    return new AirCompressor(50_000, Stages.TWO, 0.5, psig * PSI, 1);
  }

  /** Demand of so much dry air, kg/s, all the hour long. */
  static AirDemand demand(double dryAir) {
    return AirDemand.of(new ToolUse(dryAir / ToolUse.STANDARD_DENSITY, 0, 60));
  }

  /** A line that only gets as cold as told, °F. */
  static LineResult coldLine(AirState intake, double dryAir, double psig, double lineF) {
    AirLine line = new AirLine(machine(psig), List.of(new ColdStretch()));
    return line.run(intake, demand(dryAir), new LineSurroundings(30, 25, celsius(lineF)));
  }
}
