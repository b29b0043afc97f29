package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * Glass with its frame. In the file a name of the tables, or figures. Label figures stand for all
 * the rest unless panes or angles are given too.
 *
 * @param name name in the tables, or the owner's own
 * @param uFactor transmittance of the whole window at rating films, W/(m²·K)
 * @param shgc solar heat gain coefficient at normal incidence, 0 to 1
 * @param panes bare panes that it is made of; sun and heat then go by them
 * @param angles what passes and stays at some angles, rising from 0 to 90 degrees; empty: by label
 *     or panes
 * @param resistance resistance of the glass from face to face, m²·K/W; absent: by panes or label
 */
public record Glass(
    @Say(label = "Name") String name,
    @Say(label = "U-factor", kind = Kind.U_FACTOR, min = 0.3, max = 9) double uFactor,
    @Say(
            label = "Solar heat gain",
            help = "SHGC on the label; 79 % (0.79) for one clear pane, 58 % for two, with frame.",
            kind = Kind.FRACTION,
            min = 0.01,
            max = 0.9)
        double shgc,
    @Say(
            label = "Panes",
            help = "Bare panes by their own figures; the year and the hot day go by them.",
            otherwise = "none")
        Optional<GlassPanes> panes,
    @Say(
            label = "By angle",
            help = "What passes and stays in the glass, from 0 to 90 degrees.",
            otherwise = "[]")
        List<GlassAngle> angles,
    @Say(
            label = "Resistance, face to face",
            help = "Films not counted; leave empty to reckon it.",
            kind = Kind.R_VALUE,
            min = 0.0005,
            max = 10,
            otherwise = "none")
        Optional<Double> resistance) {

  /** Copies the list. */
  public Glass {
    angles = List.copyOf(angles);
  }

  /**
   * Glass by its label.
   *
   * @param name name in the tables, or the owner's own
   * @param uFactor transmittance of the whole window at rating films, W/(m²·K)
   * @param shgc solar heat gain coefficient at normal incidence, 0 to 1
   */
  public Glass(String name, double uFactor, double shgc) {
    this(name, uFactor, shgc, Optional.empty(), List.of(), Optional.empty());
  }
}
