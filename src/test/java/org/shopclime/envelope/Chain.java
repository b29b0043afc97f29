package org.shopclime.envelope;

/** A chain of nodes seen by a wave: a path to its periodic transmittance without ISO 13786. */
final class Chain {

  private Chain() {}

  /**
   * Heat flow into a room held steady per kelvin of an outdoor wave, found by walking outwards from
   * the room: temperature and flow at a node give those at the next one.
   *
   * @return the flow divided by the outdoor wave, W/(m²·K); its angle is the (negative) lag, rad
   */
  static Complex transmittance(
      Nodes nodes, double outsideFilmR, double insideFilmR, double period) {
    double omega = 2 * Math.PI / period;
    Complex flow = Complex.ONE;
    Complex temperature = new Complex(insideFilmR, 0);
    for (int i = nodes.count() - 1; i >= 0; i--) {
      flow = flow.plus(temperature.times(new Complex(0, omega * nodes.capacity(i))));
      double resistance = i > 0 ? 1 / nodes.conductance(i - 1) : outsideFilmR;
      temperature = temperature.plus(flow.times(resistance));
    }
    double square = temperature.modulus() * temperature.modulus();
    return new Complex(temperature.re() / square, -temperature.im() / square);
  }
}
