package org.shopclime.shop;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/**
 * Records that may stand in the file as one text: a layer or board as "XPS foam 1 in", a glass by
 * its name in the tables, a leakage by its grade, electricity by its price.
 */
final class BriefText {

  /** The types that have a brief form. */
  private static final Set<Class<?>> BRIEF =
      Set.of(
          BuildLayer.class,
          Board.class,
          Glass.class,
          Leakage.class,
          Electricity.class,
          HeatSource.class);

  private static final String AVERAGE = "state average";
  private static final String ELECTRIC = "electric";

  private BriefText() {}

  /** Whether one text may stand for a record of a type, or of a sealed interface. */
  static boolean isTaken(Class<?> type) {
    return BRIEF.contains(type);
  }

  /**
   * What the text may be.
   *
   * @param type record or sealed interface
   * @param text what stands there; empty if that is no text
   * @return example for complaints, or nothing if the type has no brief form
   */
  static Optional<String> takes(Class<?> type, String text) {
    if (type == BuildLayer.class) {
      return Optional.of("a material, or one with its thickness such as \"gypsum board 1/2 in\"");
    }
    if (type == Board.class) {
      return Optional.of("a foam board with its thickness such as \"XPS foam 1 in\"");
    }
    if (type == Glass.class) {
      return Optional.of("a glass of the tables; nearest: " + quoted(Tables.nearestGlasses(text)));
    }
    if (type == Leakage.class) {
      return Optional.of("one of " + quoted(Words.all(Leakage.Grade.class)));
    }
    if (type == Electricity.class) {
      return Optional.of("\"" + AVERAGE + "\", a price such as \"15 c/kWh\"");
    }
    if (type == HeatSource.class) {
      return Optional.of("\"" + ELECTRIC + "\"");
    }
    return Optional.empty();
  }

  /**
   * Reads a brief form.
   *
   * @param type record or sealed interface
   * @param text the text
   * @return the same as an object, or nothing if the text cannot be taken
   */
  static Optional<ObjectNode> read(Class<?> type, String text) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    if (type == BuildLayer.class || type == Board.class) {
      int space = beforeThickness(type, text);
      object.put("material", space < 0 ? text.strip() : text.substring(0, space).strip());
      if (space >= 0) {
        object.put("thickness", text.substring(space).strip());
      }
      boolean enough = !text.isBlank() && (space >= 0 || type == BuildLayer.class);
      return enough ? Optional.of(object) : Optional.empty();
    }
    if (type == Glass.class) {
      return Tables.glass(text.strip())
          .map(
              glass ->
                  object
                      .put("name", glass.name())
                      .put("uFactor", exact(Kind.U_FACTOR, glass.uFactor(), UnitSystem.SI))
                      .put("shgc", exact(Kind.FRACTION, glass.shgc(), UnitSystem.SI)));
    }
    if (type == Leakage.class && Words.read(Leakage.Grade.class, text).isPresent()) {
      return Optional.of(object.put("kind", "tightness").put("grade", text));
    }
    if (type == Electricity.class) {
      if (text.strip().equalsIgnoreCase(AVERAGE)) {
        return Optional.of(object.put("kind", AVERAGE));
      }
      boolean price = Quantities.read(Kind.ENERGY_PRICE, text) instanceof Reading.Good;
      return price ? Optional.of(object.put("kind", "flat").put("price", text)) : Optional.empty();
    }
    if (type == HeatSource.class && text.strip().equalsIgnoreCase(ELECTRIC)) {
      return Optional.of(object.put("kind", ELECTRIC));
    }
    return Optional.empty();
  }

  /**
   * Writes a brief form that {@link #read} takes back unchanged.
   *
   * @param value record
   * @param units system of units
   * @return the text, or nothing if the record needs an object
   */
  static Optional<String> write(Object value, UnitSystem units) {
    if (value instanceof BuildLayer layer) {
      boolean byHand =
          layer.conductivity().isPresent()
              || layer.density().isPresent()
              || layer.specificHeat().isPresent()
              || layer.resistance().isPresent()
              || layer.permeance().isPresent()
              || layer.sd().isPresent();
      return byHand
          ? Optional.empty()
          : brief(BuildLayer.class, layer.material(), layer.thickness(), units);
    }
    if (value instanceof Board board) {
      return brief(Board.class, board.material(), Optional.of(board.thickness()), units);
    }
    if (value instanceof Glass glass) {
      return Tables.glass(glass.name()).filter(glass::equals).map(Glass::name);
    }
    if (value instanceof Leakage.Tightness tightness) {
      return Optional.of(Words.of(tightness.grade()));
    }
    if (value instanceof Electricity.StateAverage) {
      return Optional.of(AVERAGE);
    }
    if (value instanceof Electricity.Flat flat) {
      return Optional.of(exact(Kind.ENERGY_PRICE, flat.price(), units));
    }
    if (value instanceof HeatSource.Electric) {
      return Optional.of(ELECTRIC);
    }
    return Optional.empty();
  }

  private static Optional<String> brief(
      Class<?> type, String material, Optional<Double> thickness, UnitSystem units) {
    String text =
        material + thickness.map(metres -> " " + exact(Kind.LENGTH, metres, units)).orElse("");
    int space = beforeThickness(type, text);
    boolean same =
        material.equals(material.strip())
            && !material.isEmpty()
            && space == (thickness.isPresent() ? material.length() : -1);
    return same ? Optional.of(text) : Optional.empty();
  }

  /**
   * Where the first space stands behind which there is nothing but a length; -1: nowhere, or the
   * length is part of a layer's name, as in "concrete block hollow 12 in".
   */
  private static int beforeThickness(Class<?> type, String text) {
    if (type == BuildLayer.class && Tables.hasMaterial(text)) {
      return -1;
    }
    for (int i = 1; i < text.length(); i++) {
      if (Character.isWhitespace(text.charAt(i))
          && !text.substring(0, i).isBlank()
          && Quantities.read(Kind.LENGTH, text.substring(i + 1)) instanceof Reading.Good) {
        return i;
      }
    }
    return -1;
  }

  private static String exact(Kind kind, double si, UnitSystem units) {
    return Quantities.exact(kind, si, units);
  }

  /**
   * Words in quotes.
   *
   * @param words words
   * @return such as {@code "a", "b"}
   */
  static String quoted(List<String> words) {
    return words.isEmpty() ? "none" : "\"" + String.join("\", \"", words) + "\"";
  }
}
