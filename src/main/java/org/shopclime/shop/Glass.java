package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Glass with its frame. In the file a name of the tables, or figures.
 *
 * @param name name in the tables, or the owner's own
 * @param uFactor transmittance of the whole window at rating films, W/(m²·K)
 * @param shgc solar heat gain coefficient at normal incidence, 0 to 1
 */
public record Glass(
    @Say(label = "Name") String name,
    @Say(label = "U-factor", kind = Kind.U_FACTOR, min = 0.3, max = 9) double uFactor,
    @Say(
            label = "Solar heat gain",
            help = "SHGC on the label; 0.79 for one clear pane, 0.58 for two, with frame.",
            kind = Kind.FRACTION,
            min = 0.01,
            max = 0.9)
        double shgc) {}
