package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Units;

/** A fan of which only the duct is known. */
class DuctTest {

  private static final String COLLECTOR =
      "\"fans\": [{\"name\": \"Collector\", \"way\": \"out\", \"use\": \"dust collector\"%s}], ";
  private static final String ROOM = "\"fans\": [";

  private static ShopReading read(String told) {
    String text = Examples.text("insulated-foam-door");
    assertThat(text).doesNotContain(ROOM);
    int gains = text.indexOf("\"gains\": [");
    assertThat(gains).isPositive();
    return ShopFile.read(
        text.substring(0, gains) + COLLECTOR.formatted(told) + text.substring(gains),
        Stations.any());
  }

  private static Fan fan(String told) {
    return ((ShopReading.Good) read(told)).shop().rooms().get(0).fans().get(0);
  }

  private static List<String> problems(String told) {
    return ((ShopReading.Bad) read(told)).problems().stream().map(Problem::sentence).toList();
  }

  /** Six inches are 0.196 ft² by hand; at 4,000 ft/min 785 cfm, at 2,000 half of it. */
  @Test
  void airIsAreaTimesVelocity() {
    Fan dust = fan(", \"duct\": {\"diameter\": \"6 in\"}");
    assertThat(Units.cfm(dust.moved())).isCloseTo(785, within(1.0));
    assertThat(dust.exchanged()).isEqualTo(dust.moved());
    Fan slow = fan(", \"duct\": {\"diameter\": \"6 in\", \"velocity\": \"2000 ft/min\"}");
    assertThat(Units.cfm(slow.moved())).isCloseTo(393, within(1.0));
    Duct duct = new Duct(Units.metresFromInches(6), Optional.empty());
    assertThat(Units.cfm(duct.flow(FanUse.SPRAY))).isCloseTo(393, within(1.0));
    assertThat(fan(", \"flow\": \"500 cfm\"").moved()).isCloseTo(500 / Units.cfm(1), within(1e-9));
  }

  @Test
  void aFileKeepsIt() {
    Shop shop = ((ShopReading.Good) read(", \"duct\": {\"diameter\": \"6 in\"}")).shop();
    String file = ShopFile.write(shop);
    assertThat(file).contains("\"duct\": {\"diameter\": \"6 in\"}").doesNotContain("\"flow\"");
    assertThat(((ShopReading.Good) ShopFile.read(file, Stations.any())).shop()).isEqualTo(shop);
    assertThat(fan(", \"duct\": {\"diameter\": \"6 in\"}").withWhen(ScheduleText.work()).duct())
        .isPresent();
  }

  @Test
  void oneOfTheTwoIsTold() {
    assertThat(problems(", \"flow\": \"500 cfm\", \"duct\": {\"diameter\": \"6 in\"}"))
        .singleElement()
        .asString()
        .startsWith("rooms[0].fans[0].duct: found a duct beside an air flow of 500 cfm");
    assertThat(problems(""))
        .singleElement()
        .asString()
        .startsWith("rooms[0].fans[0].flow: found nothing; takes an air flow such as");
  }
}
