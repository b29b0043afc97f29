package org.shopclime.report;

import java.util.Comparator;
import java.util.List;
import org.shopclime.plan.Change;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** Changes as texts for a table. */
final class ChangeTable {

  private ChangeTable() {}

  /** Changes, the one that cools the room most first. */
  static List<Change> sorted(SizeAnswer answer) {
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
            ? "Strips are whole and hang closed; parted or worn ones hold back much less. "
            : "");
  }

  private static boolean tells(SizeAnswer answer, String what) {
    return answer.changes().stream().anyMatch(change -> change.name().contains(what));
  }

  /** Name, change of the load, warmest working hour, size that would hold. */
  static List<String> row(SizeAnswer answer, Change change, UnitSystem units) {
    PeakLines peak = PeakLines.of(answer.core().load());
    double load = change.peakSensible() + change.peakLatent() - peak.total();
    return List.of(
        Shown.line(change.name()),
        Shown.signed(load, units),
        Shown.temperature(change.indoorPeak(), units),
        size(change, units));
  }

  private static String size(Change change, UnitSystem units) {
    if (change.holds()) {
      return "your unit";
    }
    return change.recommended().isPresent()
        ? Shown.power(change.recommended().getAsDouble(), units)
        : "no usual size";
  }
}
