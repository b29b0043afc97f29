package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.Trace;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The water a coil takes out in a day, as told and in JSON. */
class CoilWaterTest {

  /**
   * By pencil: 8 hours of some 2,700 BTU/h of moisture (more in the first) are 22,000 BTU; 1,075
   * BTU make a pound of vapor at freezing, and a pint weighs 1.04 lb: about 20 lb, 20 pints.
   */
  @Test
  void pintsOfTheExample() {
    Shop shop = Examples.shop("insulated-foam-door");
    SizeAnswer answer = new Sizing(shop, Climates.load()).answer(List.of(), Progress.silent());
    Trace trace = answer.core().unit().orElseThrow().trace();
    double latent = 0;
    double energy = 0;
    JsonNode unit = SizeJson.tree(answer).get("unit");
    for (int hour = 1; hour <= 24; hour++) {
      latent += 3600 * trace.latent().at(hour);
      energy += unit.get("powerWatts").get(hour - 1).asDouble();
      assertThat(unit.get("runShare").get(hour - 1).asDouble()).isBetween(0.0, 1.0);
    }
    double pounds = latent / 2.501e6 / 0.45359237;
    assertThat(pounds).isBetween(17.0, 30.0);
    assertThat(unit.get("coilWaterLb").asDouble()).isCloseTo(pounds, within(0.01));
    assertThat(energy / 24).isCloseTo(trace.power().mean(), within(0.01));
    assertThat(CoilWater.told(shop, trace, UnitSystem.INCH_POUND))
        .contains(Math.round(pounds * 0.45359237 / 0.473176) + " pints");
    assertThat(CoilWater.told(shop, trace, UnitSystem.SI)).contains("liters");
    assertThat(CoilWater.told(shop.withUnit(java.util.Optional.empty()), trace, UnitSystem.SI))
        .isEmpty();
  }
}
