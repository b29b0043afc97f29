package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;

/** The lines that loads are told by, numbered as they come. */
final class LineList {

  private final List<Component> lines = new ArrayList<>();

  /** A line with no heat path of its own. */
  Component add(ComponentKind kind, String name, int room) {
    return add(kind, name, room, -1, 0, 0);
  }

  /**
   * A line of a face, window or door.
   *
   * @param kind what it is
   * @param name as the owner calls it
   * @param room index of the room on its inside
   * @param behind index of the room behind it; -1: none
   * @param area m²
   * @param uFactor W/(m²·K)
   * @return the line
   */
  Component add(
      ComponentKind kind, String name, int room, int behind, double area, double uFactor) {
    Component line = new Component(lines.size(), kind, name, room, behind, area, uFactor);
    lines.add(line);
    return line;
  }

  List<Component> all() {
    return List.copyOf(lines);
  }
}
