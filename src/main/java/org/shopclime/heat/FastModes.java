package org.shopclime.heat;

import java.util.ArrayList;
import java.util.List;

/**
 * The fast modes of a chain that others stand for, kept to hand its temperatures over to the modes
 * of the same chain under other films.
 */
final class FastModes {

  private static final class Mode {

    /** 1/s. */
    private final double rate;

    /** Weights at the faces. */
    private final double left;

    private final double right;

    /** Its size in each node that has a capacity, times the root of that. */
    private final double[] shape;

    Mode(double rate, double left, double right, double[] shape) {
      this.rate = rate;
      this.left = left;
      this.right = right;
      this.shape = shape;
    }
  }

  private final int size;
  private final List<Mode> modes = new ArrayList<>();
  private double directLeft;
  private double directRight;

  /** None, of a chain whose shapes are not wanted. */
  FastModes() {
    this(0);
  }

  /** None yet, of a chain with so many nodes that have a capacity. */
  FastModes(int size) {
    this.size = size;
  }

  void add(double rate, double left, double right, double[] shape) {
    modes.add(new Mode(rate, left, right, shape));
  }

  /** One of those that stand for them follows at once, with these weights at the faces. */
  void direct(double left, double right) {
    directLeft = left;
    directRight = right;
  }

  /** Weights of the one that follows at once; zeros if none does. */
  double[] direction() {
    return new double[] {directLeft, directRight};
  }

  /** What they add to the nodes once they have followed steady drives of both ends. */
  double[] nodes(double leftDrive, double rightDrive) {
    double[] nodes = new double[size];
    for (Mode mode : modes) {
      double sized = (mode.left * leftDrive + mode.right * rightDrive) / mode.rate;
      for (int i = 0; i < size; i++) {
        nodes[i] += sized * mode.shape[i];
      }
    }
    return nodes;
  }

  /** What they make of both faces in a chain with these nodes. */
  double[] faces(double[] nodes) {
    double[] faces = new double[2];
    for (Mode mode : modes) {
      double sized = product(mode.shape, nodes);
      faces[0] += mode.left * sized;
      faces[1] += mode.right * sized;
    }
    return faces;
  }

  static double product(double[] one, double[] other) {
    if (one.length != other.length) {
      throw new IllegalArgumentException("the networks differ in their nodes");
    }
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
