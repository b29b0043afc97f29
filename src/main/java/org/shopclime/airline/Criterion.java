package org.shopclime.airline;

/** What places are ranked by, first to last. */
public enum Criterion {
  /** Safe; what is not is excluded. */
  SAFETY,
  /** Below the limit of its machine through the worst working hour; failing that, nearer to it. */
  PLACE_LIMIT,
  /** The shop's unit still holds; failing that, it misses by less. */
  SHOP_HOLDS,
  /** The line is dry to its coldest stretch. */
  DRY_LINE,
  /** Least electricity. */
  ENERGY;

  /** Whether a place passes; in energy there is only more and less. */
  boolean passes(Candidate place) {
    return switch (this) {
      case SAFETY -> place.hazards().isEmpty();
      case PLACE_LIMIT -> place.placePeak() <= place.placeLimit();
      case SHOP_HOLDS -> place.indoorPeak() <= place.indoorLimit();
      case DRY_LINE -> place.pressureDewPoint() < place.coldest();
      case ENERGY -> true;
    };
  }

  /** The figure that decides. */
  double figure(Candidate place) {
    return switch (this) {
      case SAFETY -> place.hazards().size();
      case PLACE_LIMIT -> place.placePeak();
      case SHOP_HOLDS -> place.indoorPeak();
      case DRY_LINE -> place.pressureDewPoint();
      case ENERGY -> place.kilowattHours();
    };
  }

  /**
   * How far a place fails, in whole steps of 1 K, so that trifles do not decide; 0 if it passes.
   */
  private double failing(Candidate place) {
    return switch (this) {
      case PLACE_LIMIT -> steps(place.placePeak() - place.placeLimit());
      case SHOP_HOLDS -> steps(place.indoorPeak() - place.indoorLimit());
      case SAFETY, DRY_LINE, ENERGY -> passes(place) ? 0 : 1;
    };
  }

  private static double steps(double kelvin) {
    return Math.max(0, Math.ceil(kelvin));
  }

  /** Negative if the one comes before the other by this criterion alone, 0 if it does not tell. */
  int compare(Candidate one, Candidate other) {
    return this == ENERGY
        ? Double.compare(one.kilowattHours(), other.kilowattHours())
        : Double.compare(failing(one), failing(other));
  }
}
