package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Units;

/** Prices in the shop file: read, written, checked. */
class PricesTest {

  private static final String ALL =
      """
      {"electricity": {"kind": "time of use", "otherwise": "8.5 c/kWh", "periods": [
         {"price": "$0.32/kWh", "when": "Mon-Fri 14:00-20:00", "from": "June", "to": "September"},
         {"price": "0.12 $/kWh", "when": "Mon-Fri 6:00-10:00", "from": "november", "to": "march"}]},
       "source": "bill of June 2026", "monthlyCharge": "$14.50", "demandCharge": "2 $/kW",
       "otherUse": "1,100 kWh",
       "heater": {"kind": "propane", "price": "2.90 $/gal", "efficiency": "92 %"},
       "firstCosts": {"windowUnit": "$450", "heatPump": "$1,900", "heater": "80 $",
         "windowUnitYears": 9},
       "changes": [{"change": "walls filled", "cost": "$350"},
                   {"change": "1 1/2 in foam in the doors", "cost": "$90"}],
       "budget": "$300",
       "ahead": {"years": 12, "rise": "2 %", "discount": "3 %", "band": "25 %"}}""";

  private static ShopReading read(String prices) {
    String text = DayFile.text().strip();
    return ShopFile.read(
        text.substring(0, text.length() - 1) + ", \"prices\": " + prices + "}", Stations.any());
  }

  private static Shop good(String prices) {
    ShopReading reading = read(prices);
    assertThat(reading).as("%s", reading).isInstanceOf(ShopReading.Good.class);
    return ((ShopReading.Good) reading).shop();
  }

  private static List<String> bad(String prices) {
    ShopReading reading = read(prices);
    assertThat(reading).isInstanceOf(ShopReading.Bad.class);
    return ((ShopReading.Bad) reading).problems().stream().map(Problem::sentence).toList();
  }

  private static List<String> warnings(String prices) {
    return ((ShopReading.Good) read(prices))
        .warnings().stream()
            .map(Warning::sentence)
            .filter(text -> text.startsWith("prices"))
            .toList();
  }

  @Test
  void everythingIsReadAndComesBack() {
    Shop shop = good(ALL);
    Prices prices = shop.prices();
    Electricity.TimeOfUse hours = (Electricity.TimeOfUse) prices.electricity();
    assertThat(hours.otherwise()).isCloseTo(0.085, offset(1e-12));
    assertThat(hours.periods().get(0).price()).isCloseTo(0.32, offset(1e-12));
    assertThat(hours.periods().get(0).to()).isEqualTo(Month.SEPTEMBER);
    assertThat(prices.source()).isEqualTo("bill of June 2026");
    assertThat(prices.monthlyCharge()).isEqualTo(14.5);
    assertThat(prices.otherUse()).contains(1100.0);
    HeatSource.Propane propane = (HeatSource.Propane) prices.heater();
    assertThat(propane.price() * Units.CUBIC_METRES_PER_GALLON).isCloseTo(2.9, offset(1e-9));
    assertThat(prices.firstCosts())
        .isEqualTo(
            new Prices.FirstCosts(
                Optional.of(450.0), Optional.of(1900.0), Optional.of(80.0), 9, 15, 15));
    assertThat(prices.changes())
        .containsExactly(
            new Prices.ChangePrice(Improvement.WALLS_FILLED, 350),
            new Prices.ChangePrice(Improvement.INCH_AND_HALF_IN_DOORS, 90));
    assertThat(prices.budget()).contains(300.0);
    assertThat(prices.ahead()).isEqualTo(new Prices.YearsAhead(12, 0.02, 0.03, 0.25));
    String written = ShopFile.write(shop);
    assertThat(written)
        .contains("\"$14.5\"", "\"2.9 $/gal\"", "\"32 c/kWh\"", "\"1100 kWh\"", "\"june\"");
    ShopReading again = ShopFile.read(written, Stations.any());
    assertThat(((ShopReading.Good) again).shop()).isEqualTo(shop);
  }

  @Test
  void aPriceMayStandAlone() {
    Shop shop = good("{\"electricity\": \"13.9 c/kWh\"}");
    assertThat(shop.prices().electricity()).isEqualTo(new Electricity.Flat(0.139));
    assertThat(ShopFile.write(shop)).contains("\"prices\": {\"electricity\": \"13.9 c/kWh\"}");
    assertThat(good("{\"electricity\": \"State average\", \"heater\": \"electric\"}").prices())
        .isEqualTo(Prices.unsaid());
  }

  @Test
  void nothingSaidIsTheSameAsLeftOut() {
    assertThat(ShopParts.absent(Shop.class, "prices")).contains(Prices.unsaid());
    assertThat(DayFile.shop().prices()).isEqualTo(Prices.unsaid());
    assertThat(ShopFile.write(DayFile.shop())).doesNotContain("prices");
    assertThat(ShopParts.create(Prices.class, Map.of())).isEqualTo(Prices.unsaid());
  }

  @Test
  void tiersMustRiseAndEndInOneWithoutEnd() {
    String tiers = "{\"electricity\": {\"kind\": \"tiers\", \"tiers\": [%s]}%s}";
    String two = "{\"price\": \"11 c/kWh\", \"upTo\": \"750 kWh\"}, {\"price\": \"13 c/kWh\"}";
    assertThat(warnings(tiers.formatted(two, ", \"otherUse\": \"900 kWh\""))).isEmpty();
    assertThat(warnings(tiers.formatted(two, "")))
        .containsExactly(
            "prices.otherUse: other use a month is not told: the unit is reckoned from the first tier on, though house"
                + " and shop may have filled it already.");
    assertThat(bad(tiers.formatted("", "")))
        .containsExactly("prices.electricity.tiers: found none; takes at least one tier");
    assertThat(bad(tiers.formatted("{\"price\": \"11 c/kWh\", \"upTo\": \"750 kWh\"}", "")))
        .containsExactly(
            "prices.electricity.tiers: found tiers that end at 750 kWh in January; takes in every"
                + " month steps of rising \"upTo\", the last of them without one");
    assertThat(bad(tiers.formatted(two + ", {\"price\": \"15 c/kWh\", \"upTo\": \"800 kWh\"}", "")))
        .singleElement()
        .asString()
        .contains("found tiers that do not rise in January");
    assertThat(
            bad(
                tiers.formatted(
                    "{\"price\": \"15 c/kWh\", \"from\": \"may\", \"to\": \"october\"}", "")))
        .singleElement()
        .asString()
        .contains("found no tier in January");
  }

  @Test
  void hoursMayNotMeetOrBeParts() {
    String hours =
        "{\"electricity\": {\"kind\": \"time of use\", \"otherwise\": \"9 c/kWh\", \"periods\": ["
            + "{\"price\": \"30 c/kWh\", \"when\": \"Mon-Fri 14:00-20:00\"},"
            + "{\"price\": \"20 c/kWh\", \"when\": \"%s\", \"from\": \"june\"}]}}";
    assertThat(warnings(hours.formatted("Sat 14:00-20:00"))).isEmpty();
    assertThat(warnings(hours.formatted("Fri 20:00-22:00"))).isEmpty();
    assertThat(bad(hours.formatted("Fri 19:00-22:00")))
        .containsExactly(
            "prices.electricity.periods[1].when: found \"Fri 19:00-22:00\", which meets periods[0];"
                + " takes hours of their own");
    assertThat(bad(hours.formatted("work"))).singleElement().asString().contains("whole periods");
    assertThat(bad(hours.formatted("Sat 9:00-12:00 50 %")))
        .singleElement()
        .asString()
        .contains("nothing in percent");
  }

  @Test
  void whatMakesNoSenseIsRefusedInOneLine() {
    assertThat(bad("{\"electricity\": \"15 cents\"}"))
        .containsExactly(
            "prices.electricity: found \"15 cents\"; takes \"state average\", a price such as"
                + " \"15 c/kWh\", or an object with \"kind\" and what belongs to it");
    assertThat(bad("{\"electricity\": \"-0.15 $/kWh\"}"))
        .singleElement()
        .asString()
        .contains("prices.electricity.price: found \"-0.15 $/kWh\"", "from 0 c/kWh to 500 c/kWh");
    assertThat(bad("{\"changes\": [{\"change\": \"new roof\", \"cost\": \"$5\"}]}"))
        .singleElement()
        .asString()
        .contains("prices.changes[0].change: found \"new roof\"", "\"walls filled\"");
    assertThat(
            bad(
                "{\"changes\": [{\"change\": \"leaks halved\", \"cost\": \"$5\"},"
                    + " {\"change\": \"leaks halved\", \"cost\": \"$7\"}]}"))
        .containsExactly(
            "prices.changes[1].change: found \"leaks halved\", which has a price already; takes"
                + " each change once");
    assertThat(bad("{\"firstCosts\": {\"heaterYears\": 2.5}}"))
        .containsExactly("prices.firstCosts.heaterYears: found 2.5; takes a whole number of years");
    assertThat(bad("{\"ahead\": {\"years\": 7.5}}"))
        .containsExactly("prices.ahead.years: found 7.5; takes a whole number of years");
    assertThat(bad("{\"heater\": {\"kind\": \"propane\"}}"))
        .singleElement()
        .asString()
        .contains("prices.heater.price: found nothing; takes a price of a liquid");
    assertThat(warnings("{\"budget\": \"$300\"}"))
        .containsExactly("prices.budget: has no effect: no change of the shop has a price");
    assertThat(warnings("{\"firstCosts\": {\"heatPump\": \"$2,000\"}}"))
        .containsExactly("prices.firstCosts: has no effect without the price of a window unit");
    assertThat(warnings("{\"electricity\": \"60 c/kWh\"}"))
        .containsExactly(
            "prices.electricity.price: 60 c/kWh is unusual; usual is 6 c/kWh to 50 c/kWh");
  }
}
