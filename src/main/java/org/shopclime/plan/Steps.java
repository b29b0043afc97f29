package org.shopclime.plan;

import java.util.concurrent.CancellationException;

/** Tells progress from several threads at once, never backwards, and stops when it is cancelled. */
final class Steps {

  private final Progress progress;
  private double told;

  Steps(Progress progress) {
    this.progress = progress;
  }

  /**
   * Some part is reached.
   *
   * @param part what, in a few words
   * @param done part of the whole, 0 to 1; less than was told before is not told
   * @throws CancellationException if no longer wanted
   */
  synchronized void at(String part, double done) {
    if (progress.isCancelled()) {
      throw new CancellationException("no longer wanted");
    }
    if (done >= told) {
      told = done;
      progress.at(part, done);
    }
  }
}
