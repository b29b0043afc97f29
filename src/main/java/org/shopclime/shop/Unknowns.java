package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shopclime.quantity.Kind;

/** What an owner does not know about a shop, listed and decided. */
public final class Unknowns {

  /** An unknown tightness is likely leaky, good to very leaky: numbers 3, 1 and 4 of the grades. */
  private static final Leakage.Grade KIND = Leakage.Grade.GOOD;

  private static final Leakage.Grade LIKELY = Leakage.Grade.LEAKY;
  private static final Leakage.Grade UNKIND = Leakage.Grade.VERY_LEAKY;

  private static final String NAME = ".name";

  /** What tools draw, of the usual. */
  private static final String DRAW = "air.toolsDraw";

  private Unknowns() {}

  /**
   * Everything that is not known exactly. How long a compressor runs is none of it where its tools
   * are told: what they draw decides then, and is none of it elsewhere.
   *
   * @param shop shop
   * @return spans of some width and unknown tightnesses, in the order of the file
   */
  public static List<SpanPlace> of(Shop shop) {
    List<SpanPlace> places = new ArrayList<>();
    resolved(
        shop,
        place -> {
          places.add(place);
          return Optional.empty();
        });
    String decided = decided(shop);
    places.removeIf(place -> place.path().equals(decided));
    return List.copyOf(places);
  }

  /** Where nothing is unknown: running time that tools decide, or what tools draw that do not. */
  private static String decided(Shop shop) {
    return shop.air().tools().together() > 0
        ? LineCompressor.of(shop).map(LineCompressor::dutyPath).orElse(DRAW)
        : DRAW;
  }

  /**
   * The shop with all of them decided the same way.
   *
   * @param shop shop
   * @param choice which end
   * @return a shop without unknowns
   */
  public static Shop choose(Shop shop, Choice choice) {
    String decided = decided(shop);
    return resolved(
        shop, place -> decided.equals(place.path()) ? Optional.empty() : Optional.of(choice));
  }

  /**
   * The shop with one of them decided.
   *
   * @param shop shop
   * @param one place from {@link #of}
   * @param choice which end
   * @return a shop with one unknown less
   */
  public static Shop chooseOne(Shop shop, SpanPlace one, Choice choice) {
    return resolved(
        shop, place -> place.path().equals(one.path()) ? Optional.of(choice) : Optional.empty());
  }

  /**
   * The shop with each of them decided on its own.
   *
   * @param shop shop
   * @param choices which end for each; nothing: leave it open
   * @return the shop with those decided
   */
  public static Shop resolved(Shop shop, Function<SpanPlace, Optional<Choice>> choices) {
    List<Named> names = names(shop);
    return Walk.through(
        shop,
        (path, value, say) -> {
          if (value instanceof Span span && !span.isKnown()) {
            SpanPlace place =
                new SpanPlace(
                    path, say.label(), owner(names, path), say.kind(), span, say.lowIsKind());
            return choices.apply(place).map(choice -> end(place, choice)).orElse(span);
          }
          if (value == Leakage.Grade.UNKNOWN) {
            Span grades = new Span(1, 3, 4);
            SpanPlace place =
                new SpanPlace(path, say.label(), owner(names, path), Kind.COUNT, grades, true);
            return choices.apply(place).map(Unknowns::grade).orElse(Leakage.Grade.UNKNOWN);
          }
          return value;
        });
  }

  private static Span end(SpanPlace place, Choice choice) {
    if (choice == Choice.LIKELY) {
      return Span.known(place.span().likely());
    }
    boolean low = (choice == Choice.KIND) == place.lowIsKind();
    return Span.known(low ? place.span().low() : place.span().high());
  }

  private static Leakage.Grade grade(Choice choice) {
    if (choice == Choice.LIKELY) {
      return LIKELY;
    }
    return choice == Choice.KIND ? KIND : UNKIND;
  }

  /** All names of records, in the order of the walk. */
  private static List<Named> names(Shop shop) {
    List<Named> names = new ArrayList<>();
    Walk.through(
        shop,
        (path, value, say) -> {
          if (value instanceof String text && path.endsWith(NAME)) {
            names.add(new Named(path.substring(0, path.length() - NAME.length() + 1), text));
          }
          return value;
        });
    return names;
  }

  /** Name of the nearest named record around a place. */
  private static String owner(List<Named> names, String path) {
    return names.stream()
        .filter(named -> path.startsWith(named.inside()))
        .reduce((before, last) -> last)
        .map(Named::name)
        .orElse("");
  }

  /** A name, and how the paths of all in its record begin. */
  private record Named(String inside, String name) {}
}
