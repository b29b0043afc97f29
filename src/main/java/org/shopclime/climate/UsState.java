package org.shopclime.climate;

import java.util.List;
import java.util.Optional;

/**
 * A state or territory of the United States.
 *
 * @param code two-letter postal code
 * @param name its name
 */
record UsState(String code, String name) {
  /** States, district and territories with their postal codes (USPS Publication 28, appendix B). */
  private static final List<UsState> ALL =
      List.of(
          new UsState("AL", "Alabama"),
          new UsState("AK", "Alaska"),
          new UsState("AS", "American Samoa"),
          new UsState("AZ", "Arizona"),
          new UsState("AR", "Arkansas"),
          new UsState("CA", "California"),
          new UsState("CO", "Colorado"),
          new UsState("CT", "Connecticut"),
          new UsState("DE", "Delaware"),
          new UsState("DC", "District of Columbia"),
          new UsState("FL", "Florida"),
          new UsState("GA", "Georgia"),
          new UsState("GU", "Guam"),
          new UsState("HI", "Hawaii"),
          new UsState("ID", "Idaho"),
          new UsState("IL", "Illinois"),
          new UsState("IN", "Indiana"),
          new UsState("IA", "Iowa"),
          new UsState("KS", "Kansas"),
          new UsState("KY", "Kentucky"),
          new UsState("LA", "Louisiana"),
          new UsState("ME", "Maine"),
          new UsState("MD", "Maryland"),
          new UsState("MA", "Massachusetts"),
          new UsState("MI", "Michigan"),
          new UsState("MN", "Minnesota"),
          new UsState("MS", "Mississippi"),
          new UsState("MO", "Missouri"),
          new UsState("MT", "Montana"),
          new UsState("NE", "Nebraska"),
          new UsState("NV", "Nevada"),
          new UsState("NH", "New Hampshire"),
          new UsState("NJ", "New Jersey"),
          new UsState("NM", "New Mexico"),
          new UsState("NY", "New York"),
          new UsState("NC", "North Carolina"),
          new UsState("ND", "North Dakota"),
          new UsState("MP", "Northern Mariana Islands"),
          new UsState("OH", "Ohio"),
          new UsState("OK", "Oklahoma"),
          new UsState("OR", "Oregon"),
          new UsState("PA", "Pennsylvania"),
          new UsState("PR", "Puerto Rico"),
          new UsState("RI", "Rhode Island"),
          new UsState("SC", "South Carolina"),
          new UsState("SD", "South Dakota"),
          new UsState("TN", "Tennessee"),
          new UsState("TX", "Texas"),
          new UsState("UT", "Utah"),
          new UsState("VT", "Vermont"),
          new UsState("VI", "Virgin Islands"),
          new UsState("VA", "Virginia"),
          new UsState("WA", "Washington"),
          new UsState("WV", "West Virginia"),
          new UsState("WI", "Wisconsin"),
          new UsState("WY", "Wyoming"));

  /** The state that the words are, by code or name. */
  static Optional<UsState> of(List<String> words) {
    return ALL.stream().filter(state -> state.isWritten(words)).findFirst();
  }

  /** The state at the end of the words, the longest name first, with at least a word before it. */
  static Optional<UsState> ending(List<String> words) {
    for (int first = 1; first < words.size(); first++) {
      Optional<UsState> state = of(words.subList(first, words.size()));
      if (state.isPresent()) {
        return state;
      }
    }
    return Optional.empty();
  }

  /** How many of the last words are the state: one for its code, else those of its name. */
  int wordsAtEnd(List<String> words) {
    return words.get(words.size() - 1).equalsIgnoreCase(code) ? 1 : PlaceWords.plain(name).size();
  }

  private boolean isWritten(List<String> words) {
    return (words.size() == 1 && words.get(0).equalsIgnoreCase(code))
        || words.equals(PlaceWords.plain(name));
  }
}
