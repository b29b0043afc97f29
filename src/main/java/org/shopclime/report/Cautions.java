package org.shopclime.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.shop.Warning;

/** What to take care of beside an answer, but for what stands word by word under the damp walls. */
final class Cautions {

  /** Where the rest stands. */
  static final String DAMP = "What is damp or wet stands above, under \"Damp in the walls\".";

  private final SizeAnswer answer;
  private final List<Warning> damp;

  Cautions(SizeAnswer answer) {
    this.answer = answer;
    damp = answer.damp().map(DampWords::warnings).orElse(List.of());
  }

  /** Each caution once, with all its places. */
  List<String> lines() {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Warning warning : answer.warnings()) {
      if (!damp.contains(warning)) {
        places
            .computeIfAbsent(Shown.line(warning.text()), text -> new ArrayList<>())
            .add(PathWords.of(answer.shop(), warning.path()));
      }
    }
    return places.entrySet().stream()
        .map(entry -> Shown.row(entry.getValue()) + ": " + entry.getKey())
        .toList();
  }

  /** Whether some of it stands under the damp walls. */
  boolean hasDamp() {
    return !damp.isEmpty();
  }
}
