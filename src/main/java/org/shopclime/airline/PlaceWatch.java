package org.shopclime.airline;

/**
 * Told how far the comparison of places has come, and asked whether it is still wanted; both from
 * several threads at once.
 */
public interface PlaceWatch {

  /**
   * One more run of the shop is done.
   *
   * @param done part of the whole, 0 to 1
   */
  void at(double done);

  /**
   * Whether to stop early.
   *
   * @return true to stop; the answer then ends with {@link
   *     java.util.concurrent.CancellationException}
   */
  boolean isCancelled();

  /**
   * Nobody listens.
   *
   * @return a watch that never cancels
   */
  static PlaceWatch silent() {
    return new PlaceWatch() {
      @Override
      public void at(double done) {
        // Nobody listens.
      }

      @Override
      public boolean isCancelled() {
        return false;
      }
    };
  }
}
