package org.shopclime.shop;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One component of a shop record with what {@link Say} says of it.
 *
 * @param name its name in the file
 * @param type its type
 * @param say its annotation
 */
record Field(String name, Type type, Say say) {

  /** Kept, since the walk through a shop asks for the same few records thousands of times. */
  private static final ClassValue<List<Field>> FIELDS =
      new ClassValue<>() {
        @Override
        protected List<Field> computeValue(Class<?> record) {
          return look(record);
        }
      };

  private static final ClassValue<List<Optional<Object>>> ABSENT =
      new ClassValue<>() {
        @Override
        protected List<Optional<Object>> computeValue(Class<?> record) {
          return FIELDS.get(record).stream()
              .map(f -> f.hasDefault() ? Optional.of(ShopReader.absent(f)) : Optional.empty())
              .toList();
        }
      };

  /**
   * Fields of a record, in order.
   *
   * @param record a shop record in which every component bears {@link Say}
   * @return one for each component
   */
  static List<Field> of(Class<?> record) {
    return FIELDS.get(record);
  }

  /**
   * What absent fields of a record mean.
   *
   * @param record a shop record
   * @return one for each component; nothing where it is required
   */
  static List<Optional<Object>> absent(Class<?> record) {
    return ABSENT.get(record);
  }

  private static final ClassValue<Constructor<?>> MAKERS =
      new ClassValue<>() {
        @Override
        protected Constructor<?> computeValue(Class<?> record) {
          return maker(record);
        }
      };

  private static final ClassValue<List<Method>> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> record) {
          return Stream.of(record.getRecordComponents()).map(RecordComponent::getAccessor).toList();
        }
      };

  private static List<Field> look(Class<?> record) {
    List<Field> fields = new ArrayList<>();
    for (RecordComponent component : record.getRecordComponents()) {
      Say say = component.getAnnotation(Say.class);
      if (say == null) {
        throw new IllegalArgumentException(record + " says nothing of " + component.getName());
      }
      fields.add(new Field(component.getName(), component.getGenericType(), say));
    }
    return List.copyOf(fields);
  }

  /**
   * Values of a record's components, in order.
   *
   * @param record a record of this room
   * @return values
   */
  static List<Object> values(Record record) {
    List<Object> values = new ArrayList<>();
    for (Method accessor : ACCESSORS.get(record.getClass())) {
      try {
        values.add(accessor.invoke(record));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(accessor + " cannot be read", e);
      }
    }
    return values;
  }

  /**
   * A record of these values.
   *
   * @param type the record
   * @param values one for each component, in order
   * @return the record
   * @throws IllegalArgumentException if the record refuses them
   */
  static Object create(Class<?> type, List<Object> values) {
    try {
      return MAKERS.get(type).newInstance(values.toArray());
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException) {
        throw new IllegalArgumentException(e.getCause().getMessage(), e);
      }
      throw new IllegalStateException(type + " cannot be made", e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be made", e);
    }
  }

  private static Constructor<?> maker(Class<?> record) {
    Class<?>[] types =
        Stream.of(record.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      return record.getDeclaredConstructor(types);
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException(record + " cannot be made", impossible);
    }
  }

  /** Whether an absent field has a meaning. */
  boolean hasDefault() {
    return !say.otherwise().isEmpty();
  }

  /** The class behind a type: that of a plain type, or List or Optional. */
  static Class<?> raw(Type type) {
    return type instanceof ParameterizedType generic
        ? (Class<?>) generic.getRawType()
        : (Class<?>) type;
  }

  /** What a list or optional holds. */
  static Type inner(Type type) {
    return ((ParameterizedType) type).getActualTypeArguments()[0];
  }
}
