package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Optional;

/** What results of any shop must be: finite, and equal where they should be to rounding. */
public final class Near {

  /** Rounding, of what is compared with: some thousands of sums in double figures. */
  public static final double ROUNDING = 1e-9;

  private Near() {}

  /**
   * Holds a difference against what it is a difference in.
   *
   * @param difference should be nothing
   * @param scale what it is small against
   */
  public static void nothing(String what, double difference, double scale) {
    assertThat(difference / scale).as(what).isCloseTo(0, within(ROUNDING));
  }

  /** Holds two days against each other, the greatest value of both being what counts. */
  public static void same(String what, Profile one, Profile other, double least) {
    double scale = Math.max(least, Math.max(greatest(one), greatest(other)));
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      nothing(what + " at " + hour, one.at(hour) - other.at(hour), scale);
    }
  }

  /** Greatest size of any hour. */
  public static double greatest(Profile profile) {
    return Profile.of(hour -> Math.abs(profile.at(hour))).peak();
  }

  /** Nowhere in a result, its parts and their parts, stands anything but numbers. */
  public static void finite(Object result) {
    if (result instanceof Double number) {
      assertThat(number).isFinite();
    } else if (result instanceof Profile profile) {
      for (int hour = 1; hour <= Profile.HOURS; hour++) {
        assertThat(profile.at(hour)).isFinite();
      }
    } else if (result instanceof Collection<?> several) {
      several.forEach(Near::finite);
    } else if (result instanceof Optional<?> maybe) {
      maybe.ifPresent(Near::finite);
    } else if (result instanceof Record record) {
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        try {
          finite(part.getAccessor().invoke(record));
        } catch (ReflectiveOperationException e) {
          throw new LinkageError(part.getName(), e);
        }
      }
    }
  }
}
