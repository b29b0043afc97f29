package org.shopclime.plan;

import java.util.List;

/**
 * What to do first with some money: the changes within it that gain most over the years, the
 * quickest to pay first, each told as it comes after the ones before it.
 *
 * @param budget $
 * @param steps changes in their order; empty where none pays for itself
 */
public record FirstSteps(double budget, List<Payback> steps) {

  /** Copies the list. */
  public FirstSteps {
    steps = List.copyOf(steps);
  }

  /**
   * What the steps cost.
   *
   * @return $
   */
  public double cost() {
    return steps.stream().mapToDouble(Payback::cost).sum();
  }

  /**
   * What they save together.
   *
   * @return $ a year
   */
  public double saved() {
    return steps.stream().mapToDouble(Payback::saved).sum();
  }
}
