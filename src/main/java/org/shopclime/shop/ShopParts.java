package org.shopclime.shop;

import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/**
 * The components of shop records for whoever shows and changes them one by one, led by {@link Say}.
 */
public final class ShopParts {

  private ShopParts() {}

  /**
   * One component of a shop record.
   *
   * @param name its name in the file
   * @param type its class: {@code double}, {@link Span}, {@link String}, {@link Schedule}, an enum,
   *     a record, a sealed interface, {@link List} or {@link Optional}
   * @param held what a list or optional holds; otherwise the same as {@code type}
   * @param say what is said of it
   */
  public record Entry(String name, Class<?> type, Class<?> held, Say say) {}

  /**
   * The components of a record.
   *
   * @param record a shop record, every component of which bears {@link Say}
   * @return one for each, in order
   * @throws IllegalArgumentException if a component bears none
   */
  public static List<Entry> of(Class<?> record) {
    return Field.of(record).stream()
        .map(
            field ->
                new Entry(
                    field.name(),
                    Field.raw(field.type()),
                    field.type() instanceof ParameterizedType
                        ? Field.raw(Field.inner(field.type()))
                        : Field.raw(field.type()),
                    field.say()))
        .toList();
  }

  /**
   * The value of one component.
   *
   * @param record a shop record
   * @param name name of the component
   * @return its value; lists and optionals as they are
   * @throws IllegalArgumentException if there is no such component
   */
  public static Object value(Record record, String name) {
    return Field.values(record).get(index(record.getClass(), name));
  }

  /**
   * The same record with one value changed.
   *
   * @param record a shop record
   * @param name name of the component
   * @param value its new value
   * @return the changed record
   * @throws IllegalArgumentException if there is no such component, it does not take the value, or
   *     the record refuses it
   */
  public static Record with(Record record, String name, Object value) {
    List<Object> values = new ArrayList<>(Field.values(record));
    values.set(index(record.getClass(), name), value);
    return (Record) Field.create(record.getClass(), values);
  }

  /**
   * A record of which only some values are said, as in a file.
   *
   * @param type a shop record
   * @param said values by the names of their components; others are as if absent
   * @param <R> the record
   * @return the record
   * @throws IllegalArgumentException if a name is unknown, a required value is missing, or the
   *     record refuses them
   */
  public static <R extends Record> R create(Class<R> type, Map<String, Object> said) {
    said.keySet().forEach(name -> index(type, name));
    List<Object> values = new ArrayList<>();
    for (Field field : Field.of(type)) {
      values.add(
          said.containsKey(field.name())
              ? said.get(field.name())
              : absent(type, field.name())
                  .orElseThrow(
                      () ->
                          new IllegalArgumentException(
                              type.getSimpleName() + " without \"" + field.name() + "\"")));
    }
    return type.cast(Field.create(type, values));
  }

  /**
   * What an absent component means.
   *
   * @param record a shop record
   * @param name name of the component
   * @return its value, or nothing if it is required
   * @throws IllegalArgumentException if there is no such component
   */
  public static Optional<Object> absent(Class<?> record, String name) {
    return Field.absent(record).get(index(record, name));
  }

  /**
   * The span that "don't know" means.
   *
   * @param say what is said of a span
   * @return low, likely and high, or nothing if it may not be unknown
   */
  public static Optional<Span> unknown(Say say) {
    return say.unknown().length == 3 ? Optional.of(ShopReader.unknown(say)) : Optional.empty();
  }

  /**
   * Reads a figure and holds it against the bounds of its component.
   *
   * @param say what is said of the component
   * @param text text as typed
   * @param units system in which a complaint names the bounds
   * @return the figure in SI, or what was found and what is taken
   */
  public static Reading read(Say say, String text, UnitSystem units) {
    Reading reading = Quantities.read(say.kind(), text);
    if (reading instanceof Reading.Good good) {
      // adding 0 turns -0, which would not be equal to 0 in a record, into 0
      return Bounds.holds(say, good.si())
          ? new Reading.Good(good.si() + 0.0)
          : new Reading.Bad("\"" + text.strip() + "\"", Bounds.takes(say, units));
    }
    String found = ((Reading.Bad) reading).found();
    return new Reading.Bad(found, Bounds.takes(say, units));
  }

  /**
   * Whether two shop records are equal. The same as {@link Object#equals}, which for records is
   * linked at run time and at the first call takes far longer than this.
   *
   * @param one a shop record
   * @param other another
   * @return true if all their components are equal
   */
  public static boolean alike(Record one, Record other) {
    return Walk.alike(one, other);
  }

  /**
   * The kinds of a sealed interface.
   *
   * @param type {@link Build}, {@link Leakage} or {@link Gain}
   * @return its records, in order
   */
  public static List<Class<?>> kinds(Class<?> type) {
    return List.copyOf(Arrays.asList(type.getPermittedSubclasses()));
  }

  /**
   * The word for one of those kinds.
   *
   * @param type record of a sealed interface
   * @return such as {@code "blower door"}, as in the file
   */
  public static String kind(Class<?> type) {
    return Words.kind(type);
  }

  private static int index(Class<?> record, String name) {
    List<Field> fields = Field.of(record);
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException(record.getSimpleName() + " has no \"" + name + "\"");
  }
}
