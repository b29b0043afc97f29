package org.shopclime.plan;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Everything a result holds, each number by its bits, in the order of its fields. */
final class Bits {

  private static final String OURS = "org.shopclime.";

  private final List<Object> found = new ArrayList<>();

  private Bits() {}

  /** Bits of numbers, and texts, in a row. */
  static List<Object> of(Object result) {
    Bits bits = new Bits();
    bits.add(result);
    return bits.found;
  }

  private void add(Object value) {
    if (value instanceof Double number) {
      found.add(Double.doubleToRawLongBits(number));
    } else if (value instanceof OptionalDouble number) {
      found.add(number.isPresent());
      number.ifPresent(this::add);
    } else if (value instanceof OptionalInt number) {
      found.add(number.isPresent());
      number.ifPresent(this::add);
    } else if (value instanceof Optional<?> held) {
      found.add(held.isPresent());
      held.ifPresent(this::add);
    } else if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, held) -> {
            add(key);
            add(held);
          });
    } else if (value instanceof Collection<?> collection) {
      found.add(collection.size());
      collection.forEach(this::add);
    } else if (value != null && value.getClass().isArray()) {
      for (int i = 0; i < Array.getLength(value); i++) {
        add(Array.get(value, i));
      }
    } else if (value instanceof Enum<?> || isPlain(value)) {
      found.add(String.valueOf(value));
    } else {
      fields(value);
    }
  }

  private static boolean isPlain(Object value) {
    return value == null
        || value instanceof String
        || value instanceof Number
        || value instanceof Boolean
        || value instanceof Temporal
        || value instanceof Throwable;
  }

  private void fields(Object value) {
    Class<?> type = value.getClass();
    if (!type.getName().startsWith(OURS)) {
      throw new IllegalArgumentException("does not know how to look into " + type);
    }
    for (Field field : type.getDeclaredFields()) {
      if (!Modifier.isStatic(field.getModifiers())) {
        field.setAccessible(true);
        try {
          add(field.get(value));
        } catch (IllegalAccessException impossible) {
          throw new IllegalStateException(impossible);
        }
      }
    }
  }
}
