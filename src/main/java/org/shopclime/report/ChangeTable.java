package org.shopclime.report;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.shopclime.plan.Change;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;

/** Changes as texts for a table. */
public final class ChangeTable {

  private ChangeTable() {}

  /**
   * Changes in the order in which they help.
   *
   * @param answer the whole answer
   * @return the one that cools the room most first
   */
  public static List<Change> sorted(SizeAnswer answer) {
    return answer.changes().stream()
        .sorted(
            Comparator.comparingDouble(Change::indoorPeak)
                .thenComparingDouble(change -> change.peakSensible() + change.peakLatent()))
        .toList();
  }

  /** What "1 in foam in the doors" is measured against, and what strips are taken to be. */
  static String note(SizeAnswer answer) {
    return (tells(answer, "foam")
            ? "A foam line is that foam in place of what the doors have now. "
            : "")
        + (tells(answer, "strips")
            ? "Strips are whole and hang closed, worn ones hold back much less, and wind is taken to pass them. "
            : "");
  }

  private static boolean tells(SizeAnswer answer, String what) {
    return answer.changes().stream().anyMatch(change -> change.name().contains(what));
  }

  /**
   * A row.
   *
   * @param answer the whole answer
   * @param change one of its changes
   * @param units system of units to show
   * @return name, heat and moisture more or less (without unit), warmest working hour, size that
   *     would hold
   */
  public static List<String> row(SizeAnswer answer, Change change, UnitSystem units) {
    PeakLines peak = PeakLines.of(answer.core().load());
    double load = change.peakSensible() + change.peakLatent() - peak.total();
    return List.of(
        Shown.line(change.name()),
        Shown.signed(load, units),
        Shown.temperature(change.indoorPeak(), units),
        size(change.holds(), change.recommended(), units));
  }

  /**
   * The shop as it stands, to set the changes against.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return texts as those of {@link #row}, no heat more or less
   */
  public static List<String> asItIs(SizeAnswer answer, UnitSystem units) {
    boolean holds = answer.core().unit().map(LivedDay::holds).orElse(false);
    return List.of(
        "As it is",
        Shown.signed(0, units),
        Shown.temperature(answer.core().indoorPeak(), units),
        size(holds, answer.recommended(), units));
  }

  private static String size(boolean holds, OptionalDouble recommended, UnitSystem units) {
    if (holds) {
      return "your unit";
    }
    return recommended.isPresent()
        ? Shown.power(recommended.getAsDouble(), units)
        : "no usual size";
  }
}
