package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.Place;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Work;

class WordingTest {

  private static Wording of(Class<?> record, String name) {
    return Wording.of(
        ShopParts.of(record).stream()
            .filter(entry -> entry.name().equals(name))
            .findFirst()
            .orElseThrow());
  }

  private static Wording.Read read(Wording wording, String text) {
    return wording.read(text, "", UnitSystem.INCH_POUND);
  }

  /** An evaporative cooler has no rated capacity: the field is empty, not "0 BTU/h". */
  @Test
  void whatIsNotSetIsEmpty() {
    Wording capacity = of(CoolingUnit.class, "capacity");
    assertThat(capacity.write(0.0, UnitSystem.INCH_POUND)).isEmpty();
    assertThat(capacity.write(0.0, UnitSystem.SI)).isEmpty();
    assertThat(read(capacity, " ").value()).contains(0.0);
    assertThat(capacity.write(3500.0, UnitSystem.SI)).isEqualTo("3,500 W");
    // No metal pipe is a length, too.
    assertThat(of(CompressedAir.class, "dropLeg").write(0.0, UnitSystem.INCH_POUND))
        .isEqualTo("0 ft");
  }

  @Test
  void readsFiguresInEitherSystem() {
    Wording width = of(Face.class, "width");
    assertThat(read(width, "20 ft").value()).contains(Units.metresFromFeet(20));
    assertThat(read(width, "6 m").value()).contains(6.0);
    assertThat(read(width, "-1 ft").value()).isEmpty();
    assertThat(read(width, "-1 ft").complaint()).contains("found \"-1 ft\"");
    assertThat(width.write(6.0, UnitSystem.SI)).isEqualTo("6 m");
  }

  /** Beside "20 min" no other tool of the list runs "0 h", and a fan runs 60 minutes an hour. */
  @Test
  void partsOfAnHourAreTold() {
    Wording minutes = of(Fan.class, "minutes");
    assertThat(minutes.write(0.0, UnitSystem.INCH_POUND)).isEqualTo("0 min");
    assertThat(minutes.write(1200.0, UnitSystem.SI)).isEqualTo("20 min");
    assertThat(minutes.write(3600.0, UnitSystem.SI)).isEqualTo("60 min");
    assertThat(minutes.write(90.0, UnitSystem.SI)).isEqualTo("1.5 min");
    assertThat(of(Work.class, "pullDown").write(7200.0, UnitSystem.SI)).isEqualTo("2 h");
  }

  @ParameterizedTest
  @CsvSource({
    "26, 24 ft, 26 ft",
    "18, 16 in, 18 in",
    "19, R-13, R-19",
    "-5, 40 °F, -5 °F",
    "1500, '1,200 BTU/h', 1500 BTU/h",
    "26 in, 24 ft, 26 in",
    "3, 2, 3",
    "3, '', 3",
    "SW, 180°, SW",
    "30, 25 %, 30 %",
    "3/4, 1/2 in, 3/4"
  })
  void aBareNumberTakesTheUnitThatStoodThere(String typed, String stood, String meant) {
    assertThat(FormText.withUnit(typed, stood)).isEqualTo(meant);
  }

  @Test
  void emptyMeansNoneWhereNoneIsAllowed() {
    Wording peak = of(Place.class, "typedPeak");
    assertThat(read(peak, " ").value()).contains(Optional.empty());
    assertThat(read(peak, "none").value()).contains(Optional.empty());
    assertThat(read(peak, "50 °F").value()).contains(Optional.of(10.0));
    assertThat(read(peak, "warm").complaint()).startsWith("found \"warm\"");
    assertThat(peak.write(Optional.empty(), UnitSystem.SI)).isEmpty();
    assertThat(peak.write(Optional.of(10.0), UnitSystem.SI)).isEqualTo("10 °C");
  }

  @Test
  void namesMayNotBeEmpty() {
    assertThat(read(of(Door.class, "name"), " ").complaint()).contains("takes a name");
    assertThat(read(of(Door.class, "name"), " Big door ").value()).contains("Big door");
  }

  @Test
  void schedulesAreTyped() {
    Wording when = of(Fan.class, "when");
    assertThat(read(when, "work").value()).contains(ScheduleText.work());
    assertThat(read(when, "now and then").complaint())
        .isEqualTo("found \"now and then\"; takes " + ScheduleText.TAKES);
    assertThat(read(when, "").complaint()).startsWith("found nothing");
  }

  @Test
  void figuresAreShownExactlyWhereThatIsShort() {
    assertThat(FormText.figure(Kind.LENGTH, Units.metresFromFeet(9.375), UnitSystem.INCH_POUND))
        .isEqualTo("9.375 ft");
    assertThat(FormText.figure(Kind.LENGTH, 2, UnitSystem.INCH_POUND)).isEqualTo("6.56 ft");
    assertThat(FormText.figure(Kind.LENGTH, 1 / 3.0, UnitSystem.SI)).hasSizeLessThan(9);
  }
}
