package org.shopclime.envelope;

import java.util.List;

/**
 * How a wave of outdoor temperature comes through a wall: how much weaker and how much later.
 *
 * @param uFactor steady transmittance, W/(m²·K)
 * @param amplitude heat flow into a room held steady, per kelvin of the outdoor wave, W/(m²·K)
 * @param timeShift how much later the peak comes through, s, 0 to one period (a lag of more than a
 *     period reads as its remainder)
 */
public record PeriodicTransmittance(double uFactor, double amplitude, double timeShift) {

  /**
   * The exact answer for homogeneous layers.
   *
   * <p>Source: ISO 13786:2017, ch. 7 and 8 (heat transfer matrix of each layer, multiplied).
   *
   * @param layers outside to inside
   * @param outsideFilmR resistance of the outside film, m²·K/W, 0 to 10
   * @param insideFilmR resistance of the inside film, m²·K/W, 0 to 10
   * @param period period of the wave, s, 60 to 4e7; a day is 86400
   * @return the transmittance
   * @throws IllegalArgumentException if a figure is outside its range, or a layer is thicker than
   *     300 times the depth the wave reaches
   */
  public static PeriodicTransmittance of(
      List<Layer> layers, double outsideFilmR, double insideFilmR, double period) {
    Range.require("period, s,", period, 60, 4e7);
    Matrix matrix = Matrix.resistance(Range.require("outside film", outsideFilmR, 0, 10));
    for (Layer layer : layers) {
      matrix = matrix.times(Matrix.of(layer, period));
    }
    matrix = matrix.times(Matrix.resistance(Range.require("inside film", insideFilmR, 0, 10)));
    double steady = 1 / (outsideFilmR + resistance(layers) + insideFilmR);
    double amplitude = 1 / matrix.b().modulus();
    // Y12 = -1 / Z12: its angle is that of -Z12, turned round; a lag is a negative angle.
    double lag = matrix.b().times(-1).angle();
    double turns = lag / (2 * Math.PI);
    return new PeriodicTransmittance(steady, amplitude, (turns - Math.floor(turns)) * period);
  }

  /**
   * Decrement factor.
   *
   * @return amplitude over steady transmittance, 0 to 1
   */
  public double decrement() {
    return amplitude / uFactor;
  }

  private static double resistance(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::resistance).sum();
  }

  /** Heat transfer matrix Z = (a b; c d) of ISO 13786. */
  private record Matrix(Complex a, Complex b, Complex c, Complex d) {

    static Matrix resistance(double resistance) {
      return new Matrix(Complex.ONE, new Complex(-resistance, 0), Complex.ZERO, Complex.ONE);
    }

    static Matrix of(Layer layer, double period) {
      if (layer.heatCapacity() == 0) {
        return resistance(layer.resistance());
      }
      double conductivity = layer.conductivity();
      double depth =
          Math.sqrt(conductivity * period / (Math.PI * layer.density() * layer.specificHeat()));
      double x =
          Range.require(
              "depth of " + layer.name() + " in waves", layer.thickness() / depth, 0, 300);
      double coshCos = Math.cosh(x) * Math.cos(x);
      double sinhSin = Math.sinh(x) * Math.sin(x);
      double sinhCos = Math.sinh(x) * Math.cos(x);
      double coshSin = Math.cosh(x) * Math.sin(x);
      Complex a = new Complex(coshCos, sinhSin);
      Complex b =
          new Complex(sinhCos + coshSin, coshSin - sinhCos).times(-depth / (2 * conductivity));
      Complex c = new Complex(sinhCos - coshSin, sinhCos + coshSin).times(-conductivity / depth);
      return new Matrix(a, b, c, a);
    }

    Matrix times(Matrix next) {
      return new Matrix(
          a.times(next.a).plus(b.times(next.c)),
          a.times(next.b).plus(b.times(next.d)),
          c.times(next.a).plus(d.times(next.c)),
          c.times(next.b).plus(d.times(next.d)));
    }
  }
}
