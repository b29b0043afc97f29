package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** Other days and other work as texts for a table. */
public final class ScenarioTable {

  /** What the rows leave out. */
  public static final String NOTE =
      "Each line is the whole shop run again; fans run as described, also where the oven is off."
          + " Dust, at best: the same air lost through a clean coil; at worst: as coils were measured"
          + " that were dirty. Days are those of a typical"
          + " year: real years have hotter and more humid ones.";

  private ScenarioTable() {}

  /**
   * Heads of the columns.
   *
   * @param answer the whole answer
   * @return one for each column of {@link #rows}
   */
  public static List<String> heads(SizeAnswer answer) {
    return answer.unit().isPresent()
        ? List.of("", "Warmest working hour", "Your unit", "Would hold")
        : List.of("", "Warmest hour", "Would hold");
  }

  /**
   * The rows.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return name, warmest hour, whether the shop's unit holds (if there is one), the smallest usual
   *     size that does
   */
  public static List<List<String>> rows(SizeAnswer answer, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (Scenario scenario : answer.scenarios()) {
      List<String> row = new ArrayList<>();
      row.add(Shown.line(scenario.name()));
      row.add(Shown.temperature(scenario.indoorPeak(), units));
      if (answer.unit().isPresent()) {
        row.add(scenario.holds() ? "holds" : "does not hold");
      }
      row.add(
          scenario.recommended().isPresent()
              ? Shown.power(scenario.recommended().getAsDouble(), units)
              : "no usual size");
      rows.add(row);
    }
    return rows;
  }
}
