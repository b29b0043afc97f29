package org.shopclime.airline;

/** What places are ranked by, first to last. */
public enum Criterion {
  /** Safe; what is not is excluded. */
  SAFETY,
  /** Below the limit of its machine through the worst working hour. */
  PLACE_LIMIT,
  /** The shop's unit still holds. */
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

  /** Negative if the one comes before the other by this criterion alone, 0 if it does not tell. */
  int compare(Candidate one, Candidate other) {
    return this == ENERGY
        ? Double.compare(one.kilowattHours(), other.kilowattHours())
        : Boolean.compare(passes(other), passes(one));
  }
}
