package org.shopclime.plan;

/** Told how far a long answer has come, and asked whether it is still wanted. */
public interface Progress {

  /**
   * Some part is done.
   *
   * @param part what, in a few words
   * @param done part of the whole, 0 to 1
   */
  void at(String part, double done);

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
   * @return progress that never cancels
   */
  static Progress silent() {
    return new Progress() {
      @Override
      public void at(String part, double done) {
        // Nobody listens.
      }

      @Override
      public boolean isCancelled() {
        return false;
      }
    };
  }
}
