package org.shopclime.run;

import org.shopclime.balance.ShopYear;
import org.shopclime.heat.ModeMarch;

/**
 * Heat that true radiation adds to the faces in the steps of a year: guessed from the steps before,
 * and found from the faces that the guess leads to, W by end of chain.
 */
final class RadiatedHeat {

  /** How far the radiation taken may move a face from that found, K. */
  static final double CLOSE = 0.05;

  private static final double HALF_HOUR = 1800;

  private final ShopYear year;
  private final ModeMarch march;
  private final double[] faces;
  private final double[] allowance;

  private double[] taken;
  private double[] found;

  /** Of the last step made. */
  private double[] made;

  private final LikeYesterday day;

  RadiatedHeat(ShopYear year, ModeMarch march) {
    this.year = year;
    this.march = march;
    allowance = march.faceConductances();
    for (int e = 0; e < allowance.length; e++) {
      allowance[e] *= CLOSE;
    }
    faces = new double[allowance.length];
    taken = new double[allowance.length];
    found = new double[allowance.length];
    made = new double[allowance.length];
    day = new LikeYesterday(allowance.length);
  }

  /** Begins with what the faces of a march radiate in an hour; returns it. */
  double[] startFrom(ModeMarch other, int hour) {
    other.faces(faces);
    year.radiation(faces, hour, made);
    day.forget();
    return made;
  }

  /** An hour begins. */
  void nextHour() {
    day.nextHour();
  }

  /**
   * Guesses what is radiated in a step: a long one is like that hour the day before, a short one
   * like the last.
   *
   * @param seconds length of the step
   */
  void guess(double seconds) {
    System.arraycopy(made, 0, taken, 0, taken.length);
    if (seconds > HALF_HOUR) {
      day.guess(taken);
    }
  }

  /** What is taken in this round. */
  double[] taken() {
    return taken;
  }

  /** Finds what the faces radiate in the step last looked at. */
  void find(int hour) {
    march.faces(faces);
    year.radiation(faces, hour, found);
  }

  /** Whether no face would move by more than so many times what is allowed. */
  boolean isWithin(double times) {
    for (int e = 0; e < taken.length; e++) {
      if (Math.abs(found[e] - taken[e]) > times * allowance[e]) {
        return false;
      }
    }
    return true;
  }

  /** Takes what was found. */
  void takeFound() {
    double[] old = taken;
    taken = found;
    found = old;
  }

  /** A step was made; what is known best of it is either what it took or what was found after. */
  void make(boolean asTaken) {
    made = day.ofThisHour();
    System.arraycopy(asTaken ? taken : found, 0, made, 0, made.length);
  }
}
