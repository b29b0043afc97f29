package org.shopclime.app;

import org.shopclime.airline.PlaceWatch;
import org.shopclime.plan.Progress;

/** Tells how far the comparison of places has come; a run overtaken by a later one is not told. */
final class ToldPlaces implements PlaceWatch {

  private final Progress told;
  private double most;

  ToldPlaces(Progress told) {
    this.told = told;
  }

  @Override
  public synchronized void at(double done) {
    if (done > most) {
      most = done;
      told.at("places for the compressor", done);
    }
  }

  @Override
  public boolean isCancelled() {
    return told.isCancelled();
  }
}
