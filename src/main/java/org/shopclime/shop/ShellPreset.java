package org.shopclime.shop;

import java.util.List;
import java.util.function.Function;

/**
 * A building to start from.
 *
 * @param name what it is
 * @param assumptions everything it takes for granted, one sentence each
 * @param usual size it usually has
 * @param build makes its rooms for a size; the first is the work room
 */
public record ShellPreset(
    String name, List<String> assumptions, ShellSize usual, Function<ShellSize, List<Room>> build) {

  /** Copies the list. */
  public ShellPreset {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Its rooms.
   *
   * @param size size and position
   * @return the work room and, where there is a ceiling, the attic; without gains and fans
   */
  public List<Room> rooms(ShellSize size) {
    return build.apply(size);
  }
}
