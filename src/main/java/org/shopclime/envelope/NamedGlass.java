package org.shopclime.envelope;

/**
 * A window of the table: glass with its frame, or glass alone.
 *
 * @param name name, as an owner would write it
 * @param uFactor transmittance at rating films, W/(m²·K)
 * @param shgc solar heat gain coefficient at normal incidence, 0 to 1
 * @param source where the figures come from
 */
public record NamedGlass(String name, double uFactor, double shgc, String source) {

  /** Refuses figures outside their ranges. */
  public NamedGlass {
    Range.requireAbove("U-factor of " + name + ", W/(m²·K),", uFactor, 0, 10);
    Range.require("solar heat gain of " + name, shgc, 0, 1);
  }
}
