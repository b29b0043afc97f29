package org.shopclime.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampSpell;
import org.shopclime.plan.DampAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The part of the page on damp in the walls. */
final class DampSection {

  private static final int WIDTH = 760;
  private static final int HEIGHT = 400;
  private static final double PRINT = 2;

  /** Most pictures. */
  private static final int MOST = 3;

  private DampSection() {}

  /** Writes it; nothing if the walls were not looked at. */
  static void write(Html page, SizeAnswer answer, UnitSystem units, boolean charts) {
    List<String> lines = DampText.lines(answer, units);
    if (lines.isEmpty()) {
      return;
    }
    page.element("h2", "Damp in the walls").list(lines);
    if (charts) {
      for (Picture picture : pictures(answer.damp().orElseThrow())) {
        page.picture(
            ChartImage.png(
                WallChart.of(picture.path(), picture.spell(), units, ChartLook.light()),
                WIDTH,
                HEIGHT,
                PRINT),
            WIDTH,
            "A slice through the wall with its layers, the temperature and the dew point across"
                + " them. "
                + WallChart.caption(picture.path(), picture.spell(), units),
            WallChart.caption(picture.path(), picture.spell(), units));
      }
    }
  }

  /** A slice at a time. */
  record Picture(DampPath path, DampSpell spell) {}

  /** The worst of each kind of finding; where nothing is found, a wall on the humid day. */
  static List<Picture> pictures(DampAnswer damp) {
    List<Picture> pictures = new ArrayList<>();
    damp.alike().stream()
        .map(alike -> alike.get(0))
        .filter(each -> each.worst().isPresent())
        .sorted(Comparator.comparing(DampFinding::kind).thenComparing(each -> -each.severity()))
        .limit(MOST)
        .forEach(each -> pictures.add(new Picture(each.path(), each.worst().orElseThrow())));
    Optional<DampPath> any =
        damp.walls().paths().stream().filter(path -> path.spells().size() > 1).findFirst();
    if (pictures.isEmpty() && any.isPresent()) {
      pictures.add(new Picture(any.get(), any.get().spells().get(1)));
    }
    return pictures;
  }
}
