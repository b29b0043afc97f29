package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Units;

/** What is said of the circuit of a unit. */
class SupplyCheckTest {

  private static final String UNIT =
      "{\"capacity\": \"12000 BTU/h\", \"efficiency\": \"10 BTU/Wh\", \"volts\": \"115 V\","
          + " \"supply\": ";

  private static ShopReading read(String supply) {
    String text = DayFile.text();
    int at = text.indexOf("\"unit\"");
    assertThat(at).isPositive();
    int begin = text.indexOf('{', at);
    int end = text.indexOf('}', begin);
    return ShopFile.read(
        text.substring(0, begin) + UNIT + supply + "}" + text.substring(end + 1), Stations.any());
  }

  private static List<String> said(String supply) {
    ShopReading reading = read(supply);
    assertThat(reading).isInstanceOf(ShopReading.Good.class);
    return ((ShopReading.Good) reading)
        .warnings().stream()
            .map(Warning::sentence)
            .filter(text -> text.startsWith("unit.supply"))
            .toList();
  }

  /** 12,000 BTU/h at 10 BTU/Wh are 1,200 W; over 115 V 10.43 A: more than half of 20, not 80 %. */
  /** A unit with another room, size or airflow hangs on the same circuit. */
  @Test
  void theCircuitStays() {
    Optional<Supply> supply =
        Optional.of(
            new Supply(
                Optional.of(10.0),
                Optional.empty(),
                Optional.of(15.0),
                Supply.Wire.AWG_14,
                Supply.Sharing.ALONE,
                Optional.empty()));
    CoolingUnit unit = Examples.shop("insulated").unit().orElseThrow().withSupply(supply);
    assertThat(unit.withRoom("Loft").supply()).isEqualTo(supply);
    assertThat(unit.withCapacity(5000).supply()).isEqualTo(supply);
    assertThat(unit.withAirflow(Span.known(0.5)).supply()).isEqualTo(supply);
  }

  @Test
  void aSharedCircuitIsTold() {
    assertThat(said("{\"breaker\": \"20 A\", \"circuit\": \"shared\"}"))
        .containsExactly(
            "unit.supply.circuit: The unit draws about 10.4 A; on a shared 20 A circuit it may draw"
                + " 10 A (50 %, NEC 440.62(C)). Ask a licensed electrician; the code and the unit's"
                + " plate decide.");
    assertThat(said("{\"breaker\": \"20 A\"}"))
        .singleElement()
        .asString()
        .contains("if anything else hangs on a 20 A circuit it may draw 10 A");
    assertThat(said("{\"breaker\": \"20 A\", \"circuit\": \"alone\"}")).isEmpty();
  }

  @Test
  void tooMuchForItsOwnCircuitIsTold() {
    assertThat(said("{\"amps\": \"12.1 A\", \"breaker\": \"15 A\", \"circuit\": \"alone\"}"))
        .singleElement()
        .asString()
        .startsWith(
            "unit.supply.breaker: The unit draws about 12.1 A; even alone on a 15 A circuit")
        .contains("12 A (80 %, NEC 440.62(B)); one of its own of 20 A");
    assertThat(said("{\"amps\": \"12 A\", \"breaker\": \"15 A\", \"circuit\": \"alone\"}"))
        .isEmpty();
  }

  @Test
  void aBreakerTooGreatForItsWireIsTold() {
    assertThat(said("{\"breaker\": \"20 A\", \"wire\": \"14 AWG\", \"circuit\": \"alone\"}"))
        .singleElement()
        .asString()
        .startsWith("unit.supply.wire: 14 AWG copper takes a breaker of at most 15 A");
    assertThat(said("{\"breaker\": \"20 A\", \"wire\": \"12 AWG\", \"circuit\": \"alone\"}"))
        .isEmpty();
    assertThat(said("{\"breaker\": \"20 A\", \"wire\": \"other\", \"circuit\": \"alone\"}"))
        .isEmpty();
  }

  @Test
  void anotherVoltageIsTold() {
    assertThat(said("{\"volts\": \"240 V\"}"))
        .singleElement()
        .asString()
        .contains("The outlet has 240 V, the unit is made for 115 V.");
    assertThat(said("{\"volts\": \"120 V\"}")).isEmpty();
    assertThat(said("{\"amps\": \"41 A\"}")).singleElement().asString().contains("440.62(A)");
  }

  @Test
  void theWholeShopAtOnceIsToldOfItsPanel() {
    assertThat(said("{\"panel\": \"40 A\"}"))
        .singleElement()
        .asString()
        .contains("the panel is one of 40 A");
    assertThat(said("{\"panel\": \"100 A\"}")).isEmpty();
  }

  /** 1,200 W of unit, a motor of 1 hp (8 A at 230 V), 4 lamps of 60 W: 5 + 7.67 + 1 A at 240 V. */
  @Test
  void theSumByPencil() {
    Shop shop = DayFile.shop();
    CoolingUnit unit =
        new CoolingUnit("", 12000, 10, EfficiencyLabel.EER, 115, Span.known(1))
            .withSupply(Optional.of(supply()));
    Room room =
        shop.rooms()
            .get(0)
            .withGains(
                List.of(
                    new Gain.Lights("Lamps", 4, 60, Gain.Lamp.LED, ScheduleText.work()),
                    new Gain.Motor(
                        "Saw", Units.WATTS_PER_HORSEPOWER, 1, Span.known(1), ScheduleText.work())));
    SupplyCheck check =
        SupplyCheck.of(shop.withRooms(List.of(room)).withUnit(Optional.of(unit))).orElseThrow();
    assertThat(check.amps()).isCloseTo(1200 / 115.0, offset(1e-9));
    assertThat(check.others()).extracting(SupplyCheck.Load::name).containsExactly("Saw", "Lamps");
    assertThat(check.panelAmps()).isCloseTo(5 + 8 * 230 / 240.0 + 1, offset(1e-9));
  }

  /** 12 L a day, half a liter an hour, at 1.5 L/kWh: 333 W, 1.39 A at 240 V. */
  @Test
  void aDehumidifierCountsToo() {
    Shop shop = DayFile.shop();
    Shop dry =
        shop.withUnit(shop.unit().map(unit -> unit.withSupply(Optional.of(supply()))))
            .withRooms(
                List.of(
                    shop.rooms()
                        .get(0)
                        .withGains(List.of())
                        .withDehumidifier(Optional.of(new Drier(12 / 86_400.0, 1.5, 0.5)))));
    SupplyCheck check = SupplyCheck.of(dry).orElseThrow();
    assertThat(check.others()).extracting(SupplyCheck.Load::name).containsExactly("Dehumidifier");
    assertThat(check.others().get(0).amps()).isCloseTo(1000 / 3.0 / 240, offset(1e-9));
  }

  private static Supply supply() {
    return new Supply(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Supply.Wire.UNKNOWN,
        Supply.Sharing.UNKNOWN,
        Optional.empty());
  }

  @Test
  void nothingSaidNothingChecked() {
    assertThat(SupplyCheck.of(DayFile.shop())).isEmpty();
    assertThat(said("{}")).isEmpty();
  }

  @Test
  void itsErrorsAreLines() {
    assertThat(problems("{\"breaker\": \"20\"}"))
        .singleElement()
        .asString()
        .startsWith("unit.supply.breaker: found \"20\"; takes a current with its unit");
    assertThat(problems("{\"breaker\": \"2000 A\"}"))
        .singleElement()
        .asString()
        .contains("unit.supply.breaker: found \"2000 A\"");
    assertThat(problems("{\"wire\": \"16 AWG\"}"))
        .containsExactly(
            "unit.supply.wire: found \"16 AWG\"; takes one of \"don't know\", \"14 AWG\","
                + " \"12 AWG\", \"10 AWG\", \"other\"");
    assertThat(problems("{\"brake\": \"20 A\"}"))
        .singleElement()
        .asString()
        .startsWith("unit.supply.brake: found an unknown field");
  }

  private static List<String> problems(String supply) {
    ShopReading reading = read(supply);
    assertThat(reading).isInstanceOf(ShopReading.Bad.class);
    return ((ShopReading.Bad) reading).problems().stream().map(Problem::sentence).toList();
  }
}
