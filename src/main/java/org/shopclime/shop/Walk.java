package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Goes through everything in a shop record, innermost first, by its components. */
final class Walk {

  /** What to make of a value met on the way. */
  interface Change {

    /**
     * Looks at a value.
     *
     * @param path where it stands, such as {@code rooms[0].faces[2].height}
     * @param value number, text, span, schedule, enum constant or record; never a list or optional
     * @param say what is said of the component it stands in, or of the list that holds it
     * @return the value to stand there instead, or the same
     */
    Object apply(String path, Object value, Say say);
  }

  private Walk() {}

  /**
   * Changes what is in a shop.
   *
   * @param shop shop
   * @param change what to make of each value
   * @return the changed shop
   */
  static Shop through(Shop shop, Change change) {
    return (Shop) inside("", shop, change);
  }

  /**
   * Changes all records of one type.
   *
   * @param shop shop
   * @param type record
   * @param change what to make of each
   * @param <T> record
   * @return the changed shop
   */
  static <T> Shop each(Shop shop, Class<T> type, UnaryOperator<T> change) {
    return through(
        shop,
        (path, value, say) -> type.isInstance(value) ? change.apply(type.cast(value)) : value);
  }

  private static Object inside(String path, Record record, Change change) {
    List<Field> fields = Field.of(record.getClass());
    List<Object> values = Field.values(record);
    List<Object> changed = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Field field = fields.get(i);
      String at = path.isEmpty() ? field.name() : path + "." + field.name();
      changed.add(value(at, values.get(i), field.say(), change));
    }
    return same(changed, values) ? record : Field.create(record.getClass(), changed);
  }

  private static Object value(String path, Object value, Say say, Change change) {
    if (value instanceof Optional<?> optional) {
      Optional<Object> changed = optional.map(held -> value(path, held, say, change));
      return same(changed.stream().toList(), optional.stream().toList()) ? value : changed;
    }
    if (value instanceof List<?> list) {
      List<Object> changed = new ArrayList<>();
      for (Object element : list) {
        changed.add(value(path + "[" + changed.size() + "]", element, say, change));
      }
      return same(changed, list) ? value : changed;
    }
    boolean whole = value instanceof Span || value instanceof Schedule;
    boolean record = value instanceof Record && !whole;
    return change.apply(path, record ? inside(path, (Record) value, change) : value, say);
  }

  /**
   * Whether nothing was changed: what is passed on is the same object. To compare what the records
   * hold would go through all of them once more at every level.
   */
  /** Whether two values of components are equal. */
  static boolean alike(Object one, Object other) {
    if (one == other) {
      return true;
    }
    if (one instanceof Record record
        && other instanceof Record compared
        && record.getClass() == compared.getClass()) {
      return alike(Field.values(record), Field.values(compared));
    }
    if (one instanceof List<?> list && other instanceof List<?> others) {
      boolean alike = list.size() == others.size();
      for (int i = 0; alike && i < list.size(); i++) {
        alike = alike(list.get(i), others.get(i));
      }
      return alike;
    }
    if (one instanceof Optional<?> held && other instanceof Optional<?> others) {
      return alike(held.orElse(null), others.orElse(null));
    }
    return one != null && one.equals(other);
  }

  private static boolean same(List<?> changed, List<?> values) {
    boolean same = changed.size() == values.size();
    for (int i = 0; same && i < values.size(); i++) {
      same = changed.get(i) == values.get(i);
    }
    return same;
  }
}
