package org.shopclime.shop;

import java.util.List;

/**
 * A kind of work to start from.
 *
 * @param name what it is
 * @param assumptions everything it takes for granted, one sentence each
 * @param gains what gives off heat
 * @param fans fans that move air in or out
 */
public record WorkPreset(String name, List<String> assumptions, List<Gain> gains, List<Fan> fans) {

  /** Copies the lists. */
  public WorkPreset {
    assumptions = List.copyOf(assumptions);
    gains = List.copyOf(gains);
    fans = List.copyOf(fans);
  }
}
