package org.shopclime.shop;

import java.lang.reflect.Type;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/** Shops of random content within the bounds of each field; nothing in them need fit together. */
final class RandomShops {

  private static final List<String> TEXTS =
      List.of(
          "Shop",
          "say \"hi\"",
          "2x4 wood",
          "foam 1 in",
          "1/2 in",
          "Œuvre\n\t\\",
          "",
          "XPS foam",
          "don't know",
          "outdoors",
          " padded ");

  private final Random random;
  private final UnitSystem units;

  RandomShops(long number) {
    random = new Random(number);
    units = random.nextBoolean() ? UnitSystem.SI : UnitSystem.INCH_POUND;
  }

  Shop shop() {
    return ((Shop) make(Shop.class, null)).withUnits(units);
  }

  private Object make(Type type, Say say) {
    Class<?> raw = Field.raw(type);
    if (raw == Optional.class) {
      return random.nextBoolean() ? Optional.empty() : Optional.of(make(Field.inner(type), say));
    }
    if (raw == List.class) {
      List<Object> list = new ArrayList<>();
      int size = random.nextInt(3);
      for (int i = 0; i < size; i++) {
        list.add(make(Field.inner(type), say));
      }
      return list;
    }
    if (raw == double.class || raw == Double.class) {
      return number(say);
    }
    if (raw == Span.class) {
      return span(say);
    }
    if (raw == String.class) {
      return TEXTS.get(random.nextInt(TEXTS.size()));
    }
    if (raw == Schedule.class) {
      return schedule();
    }
    if (raw.isEnum()) {
      return raw.getEnumConstants()[random.nextInt(raw.getEnumConstants().length)];
    }
    if (raw.isSealed()) {
      Class<?>[] kinds = raw.getPermittedSubclasses();
      return make(kinds[random.nextInt(kinds.length)], say);
    }
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < Field.of(raw).size(); i++) {
      Field field = Field.of(raw).get(i);
      boolean usual = field.hasDefault() && random.nextInt(3) == 0;
      values.add(usual ? Field.absent(raw).get(i).orElseThrow() : make(field.type(), field.say()));
    }
    return Field.create(raw, values);
  }

  private double number(Say say) {
    double high = Math.min(say.max(), 1e6);
    double any = say.min() + random.nextDouble() * (high - say.min());
    return switch (random.nextInt(40)) {
      case 0 -> say.min();
      case 1 -> high;
      case 2 -> any;
      default -> Math.max(say.min(), Math.min(high, typed(say.kind(), any)));
    };
  }

  /** A number as a person types it, near the one given. */
  private double typed(Kind kind, double near) {
    String text = Quantities.show(kind, near, units);
    return Quantities.read(kind, text) instanceof Reading.Good good ? good.si() + 0.0 : near;
  }

  private Span span(Say say) {
    if (say.unknown().length == 3 && random.nextBoolean()) {
      return ShopReader.unknown(say);
    }
    double[] ends = {number(say), number(say), number(say)};
    java.util.Arrays.sort(ends);
    return random.nextBoolean() ? Span.known(ends[0]) : new Span(ends[0], ends[1], ends[2]);
  }

  private Schedule schedule() {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (random.nextBoolean()) {
        days.add(day);
      }
    }
    List<Schedule.Period> periods = new ArrayList<>();
    int start = random.nextInt(600);
    while (start < 1440 && periods.size() < 3) {
      int end = start + 1 + random.nextInt(1440 - start);
      double fraction =
          random.nextInt(3) / 4.0 + (random.nextInt(20) == 0 ? random.nextDouble() / 4 : 0.5);
      periods.add(new Schedule.Period(start, end, fraction));
      start = end + random.nextInt(100);
    }
    return switch (random.nextInt(4)) {
      case 0 -> ScheduleText.work();
      case 1 -> ScheduleText.always();
      default -> days.isEmpty() ? ScheduleText.never() : new Schedule(false, days, periods);
    };
  }
}
