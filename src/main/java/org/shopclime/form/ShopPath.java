package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/**
 * A place in a shop, written as in the file: {@code rooms[0].faces[2].height}.
 *
 * @param steps from the shop inwards; none: the shop itself
 */
record ShopPath(List<Step> steps) {

  /** The shop itself. */
  static final ShopPath SHOP = new ShopPath(List.of());

  /** No element of a list. */
  private static final int WHOLE = -1;

  ShopPath {
    steps = List.copyOf(steps);
  }

  /**
   * One step inwards.
   *
   * @param name component
   * @param index element of a list; -1: the component as a whole
   */
  record Step(String name, int index) {

    @Override
    public String toString() {
      return index == WHOLE ? name : name + "[" + index + "]";
    }
  }

  static ShopPath parse(String text) {
    ShopPath path = SHOP;
    if (text.isEmpty()) {
      return path;
    }
    for (String part : List.of(text.split("\\.", -1))) {
      int bracket = part.indexOf('[');
      path =
          bracket < 0
              ? path.child(part)
              : path.child(
                  part.substring(0, bracket),
                  Integer.parseInt(part.substring(bracket + 1, part.length() - 1)));
    }
    return path;
  }

  ShopPath child(String name) {
    return child(name, WHOLE);
  }

  ShopPath child(String name, int index) {
    List<Step> longer = new ArrayList<>(steps);
    longer.add(new Step(name, index));
    return new ShopPath(longer);
  }

  Step last() {
    return steps.get(steps.size() - 1);
  }

  boolean isElement() {
    return !steps.isEmpty() && last().index() != WHOLE;
  }

  ShopPath parent() {
    return new ShopPath(steps.subList(0, steps.size() - 1));
  }

  /** The list of which this is an element. */
  ShopPath list() {
    return parent().child(last().name());
  }

  /** Another element of the same list. */
  ShopPath sibling(int index) {
    return parent().child(last().name(), index);
  }

  boolean isWithin(ShopPath other) {
    return steps.size() >= other.steps.size()
        && steps.subList(0, other.steps.size()).equals(other.steps);
  }

  /** What stands here; nothing if the shop has no such place. Optionals on the way are opened. */
  Optional<Object> value(Shop shop) {
    Object value = shop;
    for (Step step : steps) {
      if (value instanceof Optional<?> optional) {
        value = optional.orElse(null);
      }
      if (!(value instanceof Record record) || !has(record, step.name())) {
        return Optional.empty();
      }
      value = ShopParts.value(record, step.name());
      if (step.index() != WHOLE) {
        if (!(value instanceof List<?> list) || step.index() >= list.size()) {
          return Optional.empty();
        }
        value = list.get(step.index());
      }
    }
    return Optional.of(value);
  }

  /** The record that stands here, out of an optional too. */
  Optional<Record> record(Shop shop) {
    return value(shop)
        .flatMap(value -> value instanceof Optional<?> held ? held : Optional.of(value))
        .filter(Record.class::isInstance)
        .map(Record.class::cast);
  }

  /** The shop with something else here. */
  Shop with(Shop shop, Object value) {
    return (Shop) with(shop, steps, value);
  }

  private static Object with(Object from, List<Step> steps, Object value) {
    if (steps.isEmpty()) {
      return value;
    }
    if (from instanceof Optional<?> optional) {
      return Optional.of(with(optional.orElseThrow(), steps, value));
    }
    Record record = (Record) from;
    Step step = steps.get(0);
    List<Step> rest = steps.subList(1, steps.size());
    Object old = ShopParts.value(record, step.name());
    Object changed;
    if (step.index() == WHOLE) {
      changed = with(old, rest, value);
    } else {
      List<Object> elements = new ArrayList<>((List<?>) old);
      elements.set(step.index(), with(elements.get(step.index()), rest, value));
      changed = elements;
    }
    return ShopParts.with(record, step.name(), changed);
  }

  private static boolean has(Record record, String name) {
    return ShopParts.of(record.getClass()).stream().anyMatch(entry -> entry.name().equals(name));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (Step step : steps) {
      text.append(text.length() == 0 ? "" : ".").append(step);
    }
    return text.toString();
  }
}
