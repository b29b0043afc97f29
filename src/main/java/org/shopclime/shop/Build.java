package org.shopclime.shop;

import java.util.List;
import org.shopclime.quantity.Kind;

/** What a face is built of, listed from outside to inside. */
public sealed interface Build permits Build.Layers, Build.Framed, Build.Slab {

  /**
   * One layer behind the other.
   *
   * @param layers outside to inside, at least one
   */
  record Layers(@Say(label = "Layers, outside first") List<BuildLayer> layers) implements Build {

    /** Copies the list. */
    public Layers {
      layers = List.copyOf(layers);
    }
  }

  /**
   * Studs, joists or rafters with the space between them open or filled.
   *
   * @param member depth of stud, joist or rafter by trade name
   * @param spacing distance between their centres, m
   * @param cladding layers outside the framing, outside first
   * @param cavity resistance of the batt or fill in the space, m²·K/W; 0: empty
   * @param gaps part of the filled area that is void or badly fitted, 0 to 1
   * @param continuous resistance of an unbroken insulation across the framing on its outside (for a
   *     ceiling: above the joists), m²·K/W
   * @param lining layers inside the framing, outside first; empty: bare studs
   */
  record Framed(
      @Say(label = "Framing") Member member,
      @Say(
              label = "Spacing",
              help = "{16 or 24 in|400 or 600 mm}, center to center.",
              kind = Kind.LENGTH,
              min = 0.2,
              max = 3,
              usualMax = 1.3,
              otherwise = "16 in")
          double spacing,
      @Say(label = "Outside of the framing", otherwise = "[]") List<BuildLayer> cladding,
      @Say(label = "Insulation between", kind = Kind.R_VALUE, max = 15, otherwise = "R-0")
          double cavity,
      @Say(
              label = "Gaps in its insulation",
              help = "Part of the area where the batt is missing or badly fitted.",
              kind = Kind.FRACTION,
              max = 0.5,
              otherwise = "0 %",
              unknown = {"0 %", "3 %", "8 %"})
          Span gaps,
      @Say(label = "Unbroken insulation", kind = Kind.R_VALUE, max = 20, otherwise = "R-0")
          double continuous,
      @Say(label = "Inside of the framing", otherwise = "[]") List<BuildLayer> lining)
      implements Build {

    /** Copies the lists. */
    public Framed {
      cladding = List.copyOf(cladding);
      lining = List.copyOf(lining);
    }

    /**
     * The same with another fill between the framing.
     *
     * @param cavity resistance of the batt or fill, m²·K/W
     * @return the changed record
     */
    public Framed withCavity(double cavity) {
      return new Framed(member, spacing, cladding, cavity, gaps, continuous, lining);
    }

    /**
     * The same with another unbroken insulation.
     *
     * @param continuous resistance of the unbroken insulation, m²·K/W
     * @return the changed record
     */
    public Framed withContinuous(double continuous) {
      return new Framed(member, spacing, cladding, cavity, gaps, continuous, lining);
    }
  }

  /**
   * Slab on the ground.
   *
   * @param layers slab and what lies on it, outside (ground side) first
   * @param exposedPerimeter length of slab edge along outdoors, m
   * @param edgeInsulation resistance of insulation down or along the edge, m²·K/W
   * @param edgeDepth how far that insulation reaches, m
   * @param soilConductivity conductivity of the soil, W/(m·K)
   */
  record Slab(
      @Say(label = "Layers, ground side first") List<BuildLayer> layers,
      @Say(label = "Edge along outdoors", kind = Kind.LENGTH, max = 1000) double exposedPerimeter,
      @Say(label = "Edge insulation", kind = Kind.R_VALUE, max = 10, otherwise = "R-0")
          double edgeInsulation,
      @Say(label = "Edge insulation reaches", kind = Kind.LENGTH, max = 3, otherwise = "0 ft")
          double edgeDepth,
      @Say(
              label = "Soil conductivity",
              help =
                  "Clay {10|1.5}, sand or gravel {14|2}, rock {24 BTU·in/(h·ft²·°F)|3.5 W/(m·K)}.",
              kind = Kind.CONDUCTIVITY,
              min = 0.2,
              max = 5,
              otherwise = "2 W/m·K",
              unknown = {"1.5 W/m·K", "2 W/m·K", "3.5 W/m·K"},
              lowIsKind = false)
          Span soilConductivity)
      implements Build {

    /** Copies the list. */
    public Slab {
      layers = List.copyOf(layers);
    }
  }
}
