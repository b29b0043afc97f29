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
  private record Fitting(Station station, Fit fit) {}

  /** What was typed: all its words, and those before a state at the end. */
  private record Wish(List<String> plain, List<String> place, Optional<UsState> state) {
    static Wish of(String text) {
      List<String> plain = PlaceWords.plain(text);
      Optional<UsState> state = UsState.ending(plain);
      int before = plain.size() - state.map(known -> known.wordsAtEnd(plain)).orElse(0);
      return new Wish(plain, plain.subList(0, before), state);
    }
  }

  private final List<Named> stations;

  StationSearch(List<Station> stations) {
    this.stations =
        stations.stream().map(one -> new Named(one, PlaceWords.of(one.name()))).toList();
  }

  /**
   * The one station meant. Of several that fit alike in one state, one whose number ends in 0 goes
   * before the others; between states nobody but the owner can choose. Behind the name of a state
   * without such a place, beginnings of words are no sign of another one.
   */
  Optional<Station> find(String text) {
    String wanted = text.strip();
    Optional<Named> numbered =
        stations.stream().filter(one -> one.station().id().equals(wanted)).findFirst();
    if (numbered.isPresent()) {
      return numbered.map(Named::station);
    }
    Wish wish = Wish.of(wanted);
    List<Fitting> fitting = fitting(wish);
    List<Station> best =
        fitting.stream()
            .filter(one -> one.fit() == fitting.get(0).fit())
            .filter(one -> wish.state().isEmpty() || isSure(one, wish.state().get()))
            .map(Fitting::station)
            .toList();
    if (best.size() > 1 && best.stream().map(Station::state).distinct().count() == 1) {
      List<Station> main = best.stream().filter(StationSearch::isMain).toList();
      best = main.size() == 1 ? main : best;
    }
    return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
  }

  private static boolean isSure(Fitting one, UsState state) {
    return one.fit() != Fit.BEGINNINGS_OF_WORDS || one.station().state().equals(state.code());
  }

  /** Stations that fit, the best first; otherwise those spelt most alike. */
  List<Station> suggestions(String text) {
    List<Station> fitting = fitting(text);
    return fitting.isEmpty() ? alike(text) : fitting.stream().limit(MOST_SUGGESTED).toList();
  }

  /**
   * Stations that fit, the best first; of those that fit alike main airports first. A state as last
   * word narrows, unless nothing would be left.
   */
  List<Station> fitting(String text) {
    return fitting(Wish.of(text)).stream().map(Fitting::station).toList();
  }

  /** Stations whose name is the text or begins with it as whole words. */
  List<Station> beginning(String text) {
    List<String> plain = PlaceWords.plain(text);
    return stations.stream()
        .filter(one -> fit(plain, one).compareTo(Fit.BEGINNING) <= 0)
        .map(Named::station)
        .toList();
  }

  /** Stations spelt most alike, in the state that was typed if it has any. */
  List<Station> alike(String text) {
    Wish wish = Wish.of(text);
    List<Named> there =
        stations.stream()
            .filter(
                one -> wish.state().map(UsState::code).equals(Optional.of(one.station().state())))
            .toList();
    String typed =
        String.join(" ", PlaceWords.spelt(there.isEmpty() ? wish.plain() : wish.place()));
    return (there.isEmpty() ? stations : there)
        .stream()
            .sorted(Comparator.comparingInt(one -> strangeness(typed, one)))
            .limit(MOST_SUGGESTED)
            .map(Named::station)
            .toList();
  }

  private List<Fitting> fitting(Wish wish) {
    List<Fitting> all = new ArrayList<>();
    List<Fitting> here = new ArrayList<>();
    for (Named one : stations) {
      Fit whole = fit(wish.plain(), one);
      Fit place =
          wish.state().filter(state -> state.code().equals(one.station().state())).isPresent()
              ? fit(wish.place(), one)
              : Fit.NONE;
      Fit best = place.compareTo(whole) < 0 ? place : whole;
      if (place != Fit.NONE) {
        here.add(new Fitting(one.station(), best));
      }
      if (best != Fit.NONE) {
        all.add(new Fitting(one.station(), best));
      }
    }
    return (here.isEmpty() ? all : here)
        .stream()
            .sorted(
                Comparator.comparing(Fitting::fit)
                    .thenComparing(one -> !isMain(one.station()))
                    .thenComparing(one -> one.station().name()))
            .toList();
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
