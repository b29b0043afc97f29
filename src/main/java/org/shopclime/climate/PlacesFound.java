package org.shopclime.climate;

import java.util.List;

/** What a search for places came to. */
public sealed interface PlacesFound {

  /**
   * The stations found, the best first.
   *
   * @return cannot be changed; empty only where nothing was found
   */
  List<FoundPlace> places();

  /**
   * A point was asked for.
   *
   * @param point the point
   * @param places every station there is, the nearest first
   */
  record Near(GeoPoint point, List<FoundPlace> places) implements PlacesFound {
    /** Copies the list. */
    public Near {
      places = List.copyOf(places);
    }
  }

  /**
   * A name or number was asked for.
   *
   * @param places the stations that fit, the best first; distances from the first
   */
  record Fitting(List<FoundPlace> places) implements PlacesFound {
    /** Copies the list. */
    public Fitting {
      places = List.copyOf(places);
    }
  }

  /**
   * A state or territory was asked for.
   *
   * @param name its name, such as "Texas"
   * @param places all its stations, those named like the state first, then by name; distances from
   *     the first
   * @param namesakes stations elsewhere whose name begins like the state's
   */
  record InState(String name, List<FoundPlace> places, List<Station> namesakes)
      implements PlacesFound {
    /** Copies the lists. */
    public InState {
      places = List.copyOf(places);
      namesakes = List.copyOf(namesakes);
    }
  }

  /**
   * Nothing fits.
   *
   * @param found what was asked for, in quotes, or what is wrong with it
   * @param takes what is taken instead, with an example
   * @param alike stations spelt most alike, the most alike first; empty where the text is no name
   */
  record Nothing(String found, String takes, List<Station> alike) implements PlacesFound {
    /** Copies the list. */
    public Nothing {
      alike = List.copyOf(alike);
    }

    @Override
    public List<FoundPlace> places() {
      return List.of();
    }
  }
}
