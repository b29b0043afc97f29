package org.shopclime.climate;

import java.util.List;
import org.shopclime.quantity.Problem;

/** What came of reading a weather file: the year, or all that is wrong with it. */
public sealed interface WeatherReading permits WeatherReading.Good, WeatherReading.Bad {

  /**
   * The file could be read.
   *
   * @param year its station and its 8,760 hours
   * @param notes what was filled or is odd, a sentence each: which column, how many hours, the
   *     longest gap; empty where every figure is the file's own
   */
  record Good(WeatherYear year, List<String> notes) implements WeatherReading {
    /** Copies the list. */
    public Good {
      notes = List.copyOf(notes);
    }
  }

  /**
   * The file could not be taken.
   *
   * @param problems what is wrong, one or more, in the order of the file
   */
  record Bad(List<Problem> problems) implements WeatherReading {
    /** Copies the list and refuses an empty one. */
    public Bad {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a refusal needs at least one problem");
      }
    }
  }
}
