package org.shopclime.load;

import java.util.List;
import org.shopclime.balance.Profile;

/**
 * What must be removed from a cooled room to hold it at its set point all day.
 *
 * @param room index of the room
 * @param name its name
 * @param lines by component, each from a run of its own
 * @param sensible sensible total, W, from one run with everything on
 * @param latent latent total, W, from the water balance of the whole room
 */
public record RoomLoad(int room, String name, List<Line> lines, Profile sensible, Profile latent) {

  /** Copies the list. */
  public RoomLoad {
    lines = List.copyOf(lines);
  }
}
