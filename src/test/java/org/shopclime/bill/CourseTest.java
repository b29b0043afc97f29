package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Payback and cost over the years by pencil. */
class CourseTest {

  private static final Course CHEAP = course("cheap", 400, 300, 8);
  private static final Course DEAR = course("dear", 1300, 140, 15);

  private static Course course(String name, double price, double yearly, int life) {
    return new Course(name, List.of(new Course.Purchase(price, life)), yearly);
  }

  /** Two things of different lives: 300 every 5 years, 100 every 10; 12 years of 50 $. */
  @Test
  void eachThingIsBoughtAgainInItsOwnTime() {
    Course both =
        new Course("both", List.of(new Course.Purchase(300, 5), new Course.Purchase(100, 10)), 50);
    assertThat(both.firstCost()).isEqualTo(400);
    assertThat(both.presentCost(Outlook.plain(12))).isEqualTo(3 * 300 + 2 * 100 + 12 * 50);
  }

  /** The cheap one costs 800 + 15 x 300 = 5,300; 4,000 are left over 15 years for the dear one. */
  @Test
  void breakEvenIsWhatIsLeftForEachYear() {
    Outlook outlook = Outlook.plain(15);
    assertThat(DEAR.breakEven(CHEAP, outlook)).isCloseTo(4000 / 15.0, offset(1e-9));
    Outlook other = new Outlook(15, 0.03, 0.05);
    double even = DEAR.breakEven(CHEAP, other);
    Course running = course("dear", 1300, even, 15);
    assertThat(running.presentCost(other)).isCloseTo(CHEAP.presentCost(other), offset(1e-8));
    assertThat(course("gold", 9000, 0, 15).breakEven(CHEAP, outlook)).isNegative();
  }

  @Test
  void simplePaybackIsCostOverSaving() {
    assertThat(Course.simplePayback(300, 75).orElseThrow()).isEqualTo(4);
    assertThat(Course.simplePayback(0, 75).orElseThrow()).isZero();
    assertThat(Course.simplePayback(300, 0)).isEmpty();
    assertThat(Course.simplePayback(300, -5)).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> Course.simplePayback(-1, 5));
  }

  @Test
  void theDearerOneWinsInTheSixthYear() {
    // 900 more to buy, 160 less a year: 5.6 years; 400 + 5 x 300 = 1,900 < 1,300 + 5 x 140 = 2,000;
    // after six 2,200 > 2,140.
    Outlook outlook = Outlook.plain(15);
    assertThat(CHEAP.cumulative(5, outlook)).isEqualTo(1900);
    assertThat(DEAR.cumulative(5, outlook)).isEqualTo(2000);
    assertThat(DEAR.cumulative(6, outlook)).isEqualTo(2140);
    assertThat(DEAR.firstYearAhead(CHEAP, outlook)).hasValue(6);
    assertThat(CHEAP.firstYearAhead(DEAR, outlook)).hasValue(0);
    assertThat(DEAR.firstYearAhead(CHEAP, Outlook.plain(5))).isEmpty();
  }

  @Test
  void whatIsWornOutIsBoughtAgain() {
    Outlook outlook = Outlook.plain(15);
    // by the end of year 8 it is worn out; it is bought again where a ninth year is to come
    assertThat(CHEAP.cumulative(8, outlook)).isEqualTo(400 + 8 * 300);
    assertThat(CHEAP.cumulative(9, outlook)).isEqualTo(800 + 9 * 300);
    assertThat(CHEAP.presentCost(outlook)).isEqualTo(800 + 15 * 300);
    assertThat(DEAR.presentCost(outlook)).isEqualTo(1300 + 15 * 140);
  }

  @Test
  void laterMoneyCountsLess() {
    // one year at 5 %, prices up 2 %: 400 + 300 x 1.02 / 1.05
    Outlook outlook = new Outlook(9, 0.02, 0.05);
    assertThat(CHEAP.cumulative(1, outlook)).isCloseTo(400 + 306 / 1.05, offset(1e-9));
    // bought again after eight years: 400 / 1.05^8 = 270.74
    double run = outlook.worthOfAll(300);
    assertThat(CHEAP.presentCost(outlook)).isCloseTo(400 + 270.736 + run, offset(1e-3));
  }

  @Test
  void sillyFiguresAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> course("x", -1, 0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> course("x", 0, Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> course("x", 0, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Outlook.plain(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Outlook(10, 0.6, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Outlook(10, 0, -0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> LabelYear.kilowattHours(0, 3));
  }
}
