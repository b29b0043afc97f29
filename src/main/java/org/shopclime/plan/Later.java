package org.shopclime.plan;

import java.util.function.Supplier;

/**
 * One of several unlike questions of a {@link Batch}: found there, told to those who wait for the
 * batch.
 *
 * @param <A> answer
 */
final class Later<A> {

  private final Supplier<A> finding;
  private A found;

  Later(Supplier<A> finding) {
    this.finding = finding;
  }

  /** Finds the answer. */
  Later<A> find() {
    found = finding.get();
    return this;
  }

  /** The answer, once the batch has it. */
  A found() {
    return found;
  }
}
