package org.shopclime.bench;

import java.util.Random;
import org.shopclime.air.MoistAir;

/**
 * Air from dry cold to damp heat, at the pressures of towns: -30 to 50 °C, 5 to 100 % relative
 * humidity, 75 to 104 kPa, even in each, the same for the same number.
 */
final class AirSpread {

  static final int SIZE = 1024;

  final double[] dryBulb = new double[SIZE];
  final double[] humidityRatio = new double[SIZE];
  final double[] pressure = new double[SIZE];
  final double[] wetBulb = new double[SIZE];
  final double[] enthalpy = new double[SIZE];

  AirSpread(long number) {
    Random random = new Random(number);
    for (int i = 0; i < SIZE; i++) {
      dryBulb[i] = -30 + 80 * random.nextDouble();
      pressure[i] = 75_000 + 29_000 * random.nextDouble();
      humidityRatio[i] =
          MoistAir.humidityRatioFromRelativeHumidity(
              dryBulb[i], 0.05 + 0.95 * random.nextDouble(), pressure[i]);
      wetBulb[i] = MoistAir.wetBulb(dryBulb[i], humidityRatio[i], pressure[i]);
      enthalpy[i] = MoistAir.enthalpy(dryBulb[i], humidityRatio[i]);
    }
  }
}
