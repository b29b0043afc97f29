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
  private enum Fit {
    WHOLE,
    BEGINNING,
    WORDS,
    BEGINNINGS_OF_WORDS,
    NONE
  }

  private final List<Station> stations;

  StationSearch(List<Station> stations) {
    this.stations = stations;
  }

  Optional<Station> find(String text) {
    String wanted = text.strip();
    List<Station> best = stations.stream().filter(one -> one.id().equals(wanted)).toList();
    if (best.isEmpty()) {
      best = best(fitting(words(wanted)), words(wanted));
    }
    if (best.size() > 1) {
      List<Station> main = best.stream().filter(one -> one.id().endsWith("0")).toList();
      best = main.size() == 1 ? main : best;
    }
    return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
  }

  List<Station> suggestions(String text) {
    List<String> words = words(text);
    List<Station> fitting = fitting(words);
    if (fitting.isEmpty()) {
      String typed = String.join(" ", words);
      fitting =
          stations.stream()
              .sorted(Comparator.comparingInt(one -> strangeness(typed, one)))
              .toList();
    }
    return fitting.stream().limit(MOST_SUGGESTED).toList();
  }

  /**
   * Stations that fit, the best first. A state as last word narrows, unless nothing would be left.
   */
  private List<Station> fitting(List<String> words) {
    List<Station> here = new ArrayList<>();
    if (words.size() > 1) {
      String state = words.get(words.size() - 1);
      List<String> place = words.subList(0, words.size() - 1);
      stations.stream()
          .filter(one -> one.state().equalsIgnoreCase(state))
          .filter(one -> fit(place, one) != Fit.NONE)
          .sorted(Comparator.comparing(one -> fit(place, one)))
          .forEach(here::add);
    }
    return here.isEmpty()
        ? stations.stream()
            .filter(one -> fit(words, one) != Fit.NONE)
            .sorted(Comparator.comparing(one -> fit(words, one)))
            .toList()
        : here;
  }

  /** Of stations sorted by fit those that fit as well as the first. */
  private static List<Station> best(List<Station> fitting, List<String> words) {
    if (fitting.isEmpty()) {
      return fitting;
    }
    Fit first = bestFit(words, fitting.get(0));
    return fitting.stream().filter(one -> bestFit(words, one) == first).toList();
  }

  private static Fit bestFit(List<String> words, Station station) {
    Fit whole = fit(words, station);
    boolean hasState =
        words.size() > 1 && station.state().equalsIgnoreCase(words.get(words.size() - 1));
    Fit place = hasState ? fit(words.subList(0, words.size() - 1), station) : Fit.NONE;
    return place.compareTo(whole) < 0 ? place : whole;
  }

  private static Fit fit(List<String> words, Station station) {
    List<String> name = words(station.name());
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
    boolean begins =
        words.stream().allMatch(word -> name.stream().anyMatch(part -> part.startsWith(word)));
    return begins ? Fit.BEGINNINGS_OF_WORDS : Fit.NONE;
  }

  /** Runs of letters and digits in lower case; an apostrophe does not part them. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i <= text.length(); i++) {
      char letter = i < text.length() ? text.charAt(i) : ' ';
      if (Character.isLetterOrDigit(letter)) {
        word.append(Character.toLowerCase(letter));
      } else if (letter != '\'' && word.length() > 0) {
        words.add(word.toString());
        word.setLength(0);
      }
    }
    return words;
  }

  /**
   * Letters to change, add or drop to make the beginning of the station's name of what was typed.
   */
  private static int strangeness(String typed, Station station) {
    String name = String.join(" ", words(station.name()));
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
