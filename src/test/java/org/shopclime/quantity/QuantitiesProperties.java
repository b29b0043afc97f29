package org.shopclime.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What is written is read again, for every kind and system. */
class QuantitiesProperties {

  @Property
  void exactReturnsTheSameNumber(
      @ForAll Kind kind,
      @ForAll UnitSystem system,
      @ForAll @Scale(9) @DoubleRange(min = -1e7, max = 1e7) double si) {
    String text = Quantities.exact(kind, si, system);
    assertThat(Quantities.read(kind, text)).as(text).isInstanceOf(Reading.Good.class);
    assertThat(((Reading.Good) Quantities.read(kind, text)).si() == si).as(text).isTrue();
  }

  @Property
  void exactReturnsAnyNumberThereIs(
      @ForAll Kind kind, @ForAll UnitSystem system, @ForAll long bits) {
    double si = Double.longBitsToDouble(bits);
    Assume.that(Double.isFinite(si));
    String text = Quantities.exact(kind, si, system);
    assertThat(Quantities.read(kind, text)).as(text).isInstanceOf(Reading.Good.class);
    assertThat(((Reading.Good) Quantities.read(kind, text)).si() == si).as(text).isTrue();
  }

  /** A text a person would write comes back no longer than it was: no 23.999999999. */
  @Property
  void exactKeepsWhatAPersonWrote(
      @ForAll Kind kind,
      @ForAll UnitSystem system,
      @ForAll @IntRange(min = 0, max = 99999) int hundredths) {
    Unit unit = UnitTable.of(kind).usual(system).get(0);
    String written = unit.with(Double.toString(hundredths / 100.0));
    double si = ((Reading.Good) Quantities.read(kind, written)).si();
    assertThat(Quantities.exact(kind, si, system).length())
        .as("%s", written)
        .isLessThanOrEqualTo(written.length() + 4);
  }

  /** Two figures or more of it, so that nobody is told something else. */
  @Property
  void showIsReadAsNearlyTheSame(
      @ForAll Kind kind,
      @ForAll UnitSystem system,
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 1e6) double figure) {
    Unit unit = UnitTable.of(kind).usual(system).get(0);
    double si = unit.toSi(BigDecimal.valueOf(figure)).doubleValue();
    String text = Quantities.show(kind, si, system);
    assertThat(Quantities.read(kind, text)).as(text).isInstanceOf(Reading.Good.class);
    double read = ((Reading.Good) Quantities.read(kind, text)).si();
    assertThat(unit.fromSi(BigDecimal.valueOf(read)).doubleValue())
        .as(text)
        .isCloseTo(figure, offset(0.05 * figure));
  }

  @Property
  void anyTextIsAnsweredAndNothingIsThrown(@ForAll Kind kind, @ForAll String text) {
    Reading reading = Quantities.read(kind, text);
    if (reading instanceof Reading.Good good) {
      assertThat(good.si()).isFinite();
    } else {
      assertThat(((Reading.Bad) reading).sentence()).startsWith("found ").contains("; takes ");
    }
  }
}
