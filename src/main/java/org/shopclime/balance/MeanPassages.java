package org.shopclime.balance;

import java.util.function.IntToDoubleFunction;
import org.shopclime.heat.Drivers;

/** Air that changes places between rooms in the mean of a day or season. */
public final class MeanPassages {

  private final Passages passages;

  /** Part of the time that each way stands open. */
  private final double[] open;

  private final double humidHeat;

  /**
   * Means.
   *
   * @param passages what stands open
   * @param open part of the time that each does, by its number
   * @param humidHeat heat capacity of the air, J per kg of dry air and K
   */
  public MeanPassages(Passages passages, IntToDoubleFunction open, double humidHeat) {
    this.passages = passages;
    this.open = new double[passages.count()];
    for (int way = 0; way < this.open.length; way++) {
      this.open[way] = open.applyAsDouble(way);
    }
    this.humidHeat = humidHeat;
  }

  /**
   * Whether no way between rooms is told.
   *
   * @return true if there is no way at all
   */
  public boolean isEmpty() {
    return open.length == 0;
  }

  /**
   * Sets the flows between rooms.
   *
   * @param into takes the heat they carry
   * @param warm air of each room, °C
   */
  public void set(Drivers into, double[] warm) {
    int rooms = warm.length;
    double[] between = new double[rooms * rooms];
    for (int way = 0; way < open.length; way++) {
      int first = passages.first(way);
      int second = passages.second(way);
      int pair = Math.min(first, second) * rooms + Math.max(first, second);
      between[pair] += open[way] * passages.dryAir(way, warm[first], warm[second]) * humidHeat;
      into.exchange(first, second, between[pair]);
      into.exchange(second, first, between[pair]);
    }
  }
}
