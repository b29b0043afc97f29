package org.shopclime.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampSpell;
import org.shopclime.plan.DampAnswer;

/**
 * A slice through a wall at a time.
 *
 * @param path the wall
 * @param spell the time
 */
public record WallPicture(DampPath path, DampSpell spell) {

  /** Most pictures. */
  private static final int MOST = 3;

  /**
   * The worst of each kind of finding, the gravest kind first; where nothing is found, a wall on
   * the humid day.
   *
   * @param damp the walls
   * @return up to three; none if no wall was looked at
   */
  public static List<WallPicture> of(DampAnswer damp) {
    List<WallPicture> pictures = new ArrayList<>();
    damp.alike().stream()
        .map(alike -> alike.get(0))
        .filter(each -> each.worst().isPresent())
        .sorted(Comparator.comparing(DampFinding::kind).thenComparing(each -> -each.severity()))
        .limit(MOST)
        .forEach(each -> pictures.add(new WallPicture(each.path(), each.worst().orElseThrow())));
    Optional<DampPath> any =
        damp.walls().paths().stream().filter(path -> path.spells().size() > 1).findFirst();
    if (pictures.isEmpty() && any.isPresent()) {
      pictures.add(new WallPicture(any.get(), any.get().spells().get(1)));
    }
    return pictures;
  }
}
