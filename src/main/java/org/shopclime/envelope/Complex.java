package org.shopclime.envelope;

/** A complex number, as far as periodic heat flow needs it. */
record Complex(double re, double im) {

  static final Complex ZERO = new Complex(0, 0);
  static final Complex ONE = new Complex(1, 0);

  Complex plus(Complex other) {
    return new Complex(re + other.re, im + other.im);
  }

  Complex times(Complex other) {
    return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
  }

  Complex times(double factor) {
    return new Complex(re * factor, im * factor);
  }

  double modulus() {
    return Math.hypot(re, im);
  }

  /** Angle, rad, above -π up to π. */
  double angle() {
    return Math.atan2(im, re);
  }
}
