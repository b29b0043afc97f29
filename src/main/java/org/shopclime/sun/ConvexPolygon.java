package org.shopclime.sun;

import java.util.Arrays;

/** A convex polygon in a plane; corners in order, either way round. */
final class ConvexPolygon {

  private final double[] x;
  private final double[] y;

  private ConvexPolygon(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /** A line from one point to another, and the same line moved. */
  static ConvexPolygon swept(
      double x1, double y1, double x2, double y2, double moveX, double moveY) {
    return new ConvexPolygon(
        new double[] {x1, x2, x2 + moveX, x1 + moveX},
        new double[] {y1, y2, y2 + moveY, y1 + moveY});
  }

  double area() {
    return Math.abs(signedArea());
  }

  /** The part that lies in the other one too (Sutherland and Hodgman, 1974). */
  ConvexPolygon within(ConvexPolygon other) {
    double turn = other.signedArea();
    if (turn == 0) {
      return new ConvexPolygon(new double[0], new double[0]);
    }
    ConvexPolygon left = this;
    int corners = other.x.length;
    for (int i = 0; i < corners; i++) {
      int next = (i + 1) % corners;
      left =
          left.cut(
              other.x[i],
              other.y[i],
              Math.signum(turn) * (other.x[next] - other.x[i]),
              Math.signum(turn) * (other.y[next] - other.y[i]));
    }
    return left;
  }

  /** What lies to the left of a line through a point. */
  private ConvexPolygon cut(double px, double py, double dx, double dy) {
    double[] newX = new double[2 * x.length];
    double[] newY = new double[2 * x.length];
    int count = 0;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      double here = dx * (y[i] - py) - dy * (x[i] - px);
      double there = dx * (y[j] - py) - dy * (x[j] - px);
      if (here >= 0) {
        newX[count] = x[i];
        newY[count++] = y[i];
      }
      if (here * there < 0) {
        double share = here / (here - there);
        newX[count] = x[i] + share * (x[j] - x[i]);
        newY[count++] = y[i] + share * (y[j] - y[i]);
      }
    }
    return new ConvexPolygon(Arrays.copyOf(newX, count), Arrays.copyOf(newY, count));
  }

  private double signedArea() {
    double twice = 0;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      twice += x[i] * y[j] - x[j] * y[i];
    }
    return twice / 2;
  }
}
