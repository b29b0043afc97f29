package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds stations by what a person types. */
final class StationSearch {
  private static final int MOST_SUGGESTED = 5;

  /** How well a name fits, the best first. */
  enum Fit {
    WHOLE,
    BEGINNING,
    WORDS,
    BEGINNINGS_OF_WORDS,
    NONE
  }

  /** A station with the words of its name. */
  private record Named(Station station, List<String> words) {}

  /** A station that fits. */
  private record Fitting(Station station, Fit fit, boolean hub) {
    /** Whether it fits as well as another; a whole name is a beginning as well. */
    boolean isLike(Fitting other) {
      return fit == other.fit()
          || (fit.compareTo(Fit.BEGINNING) <= 0 && other.fit.compareTo(Fit.BEGINNING) <= 0);
    }
  }

  /** What was typed: all its words, and those before a state at the end. */
  private record Wish(List<String> plain, List<String> place, Optional<UsState> state) {
    static Wish of(String text) {
      List<String> plain = PlaceWords.plain(text);
      Optional<UsState> state = UsState.ending(plain);
      int before = plain.size() - state.map(known -> known.wordsAtEnd(plain)).orElse(0);
      return new Wish(plain, plain.subList(0, before), state);
    }
  }

  private final List<Station> stations;

  StationSearch(List<Station> stations) {
    this.stations = stations;
  }

  /**
   * The one station meant. Of several in one state whole names go first, then numbers that end in
   * 0; between states, or where a state's name stands alone, nobody but the owner can choose.
   * Behind the name of a state without such a place, beginnings of words are no sign of another
   * one.
   */
  Optional<Station> find(String text) {
    String wanted = text.strip();
    Optional<Station> numbered =
        stations.stream().filter(one -> one.id().equals(wanted)).findFirst();
    Wish wish = Wish.of(wanted);
    if (numbered.isPresent() || PlaceWords.areKinds(wish.plain())) {
      return numbered;
    }
    List<Fitting> fitting = fitting(wish);
    List<Fitting> likely = fitting.stream().filter(one -> one.isLike(fitting.get(0))).toList();
    Optional<UsState> alone = UsState.of(wish.plain());
    boolean settled =
        likely.stream().map(one -> one.station().state()).distinct().count() == 1
            && likely.stream().allMatch(one -> isSure(one, wish.state()))
            && alone
                .map(state -> state.code().equals(likely.get(0).station().state()))
                .orElse(true);
    List<Station> best =
        likely.stream()
            .filter(one -> settled && one.fit() == likely.get(0).fit())
            .map(Fitting::station)
            .toList();
    List<Station> main = best.stream().filter(StationSearch::isMain).toList();
    List<Station> chosen = best.size() > 1 && main.size() == 1 ? main : best;
    return chosen.size() == 1 ? Optional.of(chosen.get(0)) : Optional.empty();
  }

  private static boolean isSure(Fitting one, Optional<UsState> state) {
    return one.fit() != Fit.BEGINNINGS_OF_WORDS
        || state.map(known -> known.code().equals(one.station().state())).orElse(true);
  }

  /** Stations that fit, the best first; otherwise those spelt most alike. */
  List<Station> suggestions(String text) {
    List<Station> fitting = fitting(text);
    return fitting.isEmpty() ? alike(text) : fitting.stream().limit(MOST_SUGGESTED).toList();
  }

  /**
   * Stations that fit, the best first; of those that fit alike main airports first. A state as last
   * word narrows, unless nothing would be left. Several words that are parts of a name whole are
   * not taken for beginnings of the words of others.
   */
  List<Station> fitting(String text) {
    return fitting(Wish.of(text)).stream().map(Fitting::station).toList();
  }

  /** Stations whose name is the text or begins with it as whole words. */
  List<Station> beginning(String text) {
    List<String> plain = PlaceWords.plain(text);
    return named().stream()
        .filter(one -> fit(plain, one).compareTo(Fit.BEGINNING) <= 0)
        .map(Named::station)
        .toList();
  }

  /** Stations spelt most alike, in the state that was typed if it has any. */
  List<Station> alike(String text) {
    Wish wish = Wish.of(text);
    List<Named> all = named();
    List<Named> there =
        all.stream()
            .filter(
                one -> wish.state().map(UsState::code).equals(Optional.of(one.station().state())))
            .toList();
    String typed =
        String.join(" ", PlaceWords.spelt(there.isEmpty() ? wish.plain() : wish.place()));
    return (there.isEmpty() ? all : there)
        .stream()
            .sorted(Comparator.comparingInt(one -> strangeness(typed, one)))
            .limit(MOST_SUGGESTED)
            .map(Named::station)
            .toList();
  }

  private List<Fitting> fitting(Wish wish) {
    List<Fitting> all = new ArrayList<>();
    List<Fitting> here = new ArrayList<>();
    for (Named one : named()) {
      Fit whole = fit(wish.plain(), one);
      Fit place =
          wish.state().filter(state -> state.code().equals(one.station().state())).isPresent()
              ? fit(wish.place(), one)
              : Fit.NONE;
      Fit best = place.compareTo(whole) < 0 ? place : whole;
      if (place != Fit.NONE) {
        here.add(new Fitting(one.station(), best, isHub(one)));
      }
      if (best != Fit.NONE) {
        all.add(new Fitting(one.station(), best, isHub(one)));
      }
    }
    List<Fitting> taken = here.isEmpty() ? all : here;
    Fit first = taken.stream().map(Fitting::fit).min(Comparator.naturalOrder()).orElse(Fit.NONE);
    boolean whole = wish.place().size() > 1 && first.compareTo(Fit.WORDS) <= 0;
    return taken.stream()
        .filter(one -> !whole || one.fit() != Fit.BEGINNINGS_OF_WORDS)
        .sorted(
            Comparator.comparing(Fitting::fit)
                .thenComparing(one -> !isMain(one.station()))
                .thenComparing(one -> !one.hub())
                .thenComparing(one -> one.station().name()))
        .toList();
  }

  private List<Named> named() {
    return stations.stream().map(one -> new Named(one, PlaceWords.of(one.name()))).toList();
  }

  private static boolean isHub(Named one) {
    return one.words().contains("international");
  }

  /** A station of the world network, usually the city's main airport. */
  static boolean isMain(Station station) {
    return station.id().endsWith("0");
  }

  private static Fit fit(List<String> plain, Named one) {
    List<String> words = PlaceWords.spelt(plain);
    List<String> name = one.words();
    if (words.isEmpty()) {
      return Fit.NONE;
    }
    if (name.equals(words)) {
      return Fit.WHOLE;
    }
    if (Collections.indexOfSubList(name, words) == 0) {
      return Fit.BEGINNING;
    }
    if (name.containsAll(words)) {
      return Fit.WORDS;
    }
    // A word cut short reads like an abbreviation of another: "S" is South, or the start of San.
    boolean begins =
        plain.stream()
            .allMatch(
                word ->
                    name.stream()
                        .anyMatch(
                            part ->
                                part.startsWith(word) || part.startsWith(PlaceWords.spelt(word))));
    return begins ? Fit.BEGINNINGS_OF_WORDS : Fit.NONE;
  }

  /**
   * Letters to change, add or drop to make the beginning of the station's name of what was typed.
   */
  private static int strangeness(String typed, Named one) {
    String name = String.join(" ", one.words());
    int[] above = new int[name.length() + 1];
    Arrays.setAll(above, i -> i);
    for (int row = 1; row <= typed.length(); row++) {
      int[] here = new int[above.length];
      here[0] = row;
      for (int i = 1; i < here.length; i++) {
        int changed = above[i - 1] + (typed.charAt(row - 1) == name.charAt(i - 1) ? 0 : 1);
        here[i] = Math.min(changed, 1 + Math.min(above[i], here[i - 1]));
      }
      above = here;
    }
    return Arrays.stream(above).min().orElseThrow();
  }
}
