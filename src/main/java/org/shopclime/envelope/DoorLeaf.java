package org.shopclime.envelope;

import java.util.List;

/**
 * A bare door of the table.
 *
 * @param name name, as an owner would write it
 * @param layers outside to inside
 * @param source where its resistance comes from
 */
public record DoorLeaf(String name, List<Layer> layers, String source) {

  /** Copies the list. */
  public DoorLeaf {
    layers = List.copyOf(layers);
  }
}
