package org.shopclime.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampWalls;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.StationClimate;
import org.shopclime.shop.Shop;

/**
 * Damp in the walls of a shop.
 *
 * @param walls times, air of the rooms and state of each path
 * @param findings what was found, path by path
 */
public record DampAnswer(DampWalls walls, List<DampFinding> findings) {

  /** Copies the list. */
  public DampAnswer {
    findings = List.copyOf(findings);
  }

  /** Looks at a shop at its place. */
  static DampAnswer of(Shop shop, HotDay day, Climates climates) {
    StationClimate climate = HotDays.climate(shop.place(), climates);
    DampWalls walls =
        DampWalls.of(
            shop,
            day,
            DesignDays.humidDay(climate),
            climate,
            climates.typicalDays(climate.station()));
    return new DampAnswer(walls, walls.paths().stream().map(DampFinding::of).toList());
  }

  /**
   * Findings of one kind at like layers on like paths, the worst of each first.
   *
   * @return lists of one or more, in the order of the findings
   */
  public List<List<DampFinding>> alike() {
    Map<List<Object>, List<DampFinding>> groups = new LinkedHashMap<>();
    for (DampFinding finding : findings) {
      groups
          .computeIfAbsent(
              List.of(
                  finding.kind(),
                  DampWords.where(finding),
                  finding.path().way(),
                  finding.unknown(),
                  finding.fromRoom()),
              key -> new ArrayList<>())
          .add(finding);
    }
    Comparator<DampFinding> worst = Comparator.comparingDouble(each -> -each.severity());
    groups.values().forEach(group -> group.sort(worst));
    return List.copyOf(groups.values());
  }
}
