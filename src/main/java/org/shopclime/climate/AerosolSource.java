package org.shopclime.climate;

/** How a station's aerosol depth was found. */
public sealed interface AerosolSource
    permits AerosolSource.Own, AerosolSource.Neighbour, AerosolSource.Inverted {

  /**
   * How it was found, in a word that the table holds.
   *
   * @return {@code OWN}, {@code NEIGHBOUR 722235 14} (number and km) or {@code INVERTED}
   */
  String label();

  /** The station's own hourly file tells it. */
  record Own() implements AerosolSource {
    @Override
    public String label() {
      return "OWN";
    }
  }

  /**
   * The nearest station that tells it lends it.
   *
   * @param id number of the lending station
   * @param distanceKm distance to it, km, 0 to 150
   */
  record Neighbour(String id, double distanceKm) implements AerosolSource {
    /** Refuses a distance beyond 150 km. */
    public Neighbour {
      Guard.within("distance, km", distanceKm, 0, AerosolFill.FARTHEST_KM);
    }

    @Override
    public String label() {
      return "NEIGHBOUR " + id + " " + Math.round(distanceKm);
    }
  }

  /** The clear-sky model was turned round on the station's own clearest hours near noon. */
  record Inverted() implements AerosolSource {
    @Override
    public String label() {
      return "INVERTED";
    }
  }

  /**
   * The source a label stands for.
   *
   * @param label as {@link #label()} gives it
   * @return the source
   * @throws IllegalArgumentException if it is no such label; the message holds it
   */
  static AerosolSource of(String label) {
    String[] words = label.strip().split(" ", -1);
    if (words.length == 1 && words[0].equals("OWN")) {
      return new Own();
    }
    if (words.length == 1 && words[0].equals("INVERTED")) {
      return new Inverted();
    }
    if (words.length == 3 && words[0].equals("NEIGHBOUR")) {
      return new Neighbour(words[1], Double.parseDouble(words[2]));
    }
    throw new IllegalArgumentException("no source of aerosol depth: " + label);
  }
}
