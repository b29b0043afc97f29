package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.MadeShops;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;

/** The guide by floor area beside the size that holds. */
class FloorAreaGuideTest {

  private static final SizeAnswer FOAM = answer(Examples.shop("insulated-foam-door"));

  private static SizeAnswer answer(Shop shop) {
    return new Sizing(shop, MadeShops.CLIMATES).answer(List.of(), Progress.silent());
  }

  private static Shop people(double count) {
    Shop shop = Examples.shop("insulated-foam-door");
    return shop.withRooms(shop.rooms().stream().map(room -> people(room, count)).toList());
  }

  private static Room people(Room room, double count) {
    return room.withGains(
        room.gains().stream()
            .map(
                gain ->
                    gain instanceof Gain.People one
                        ? new Gain.People(one.name(), count, one.activity(), one.when())
                        : gain)
            .toList());
  }

  /**
   * 24 ft by 24 ft are 576 ft²: 14,000 BTU/h of the row from 550 to 700 ft², one person; a tenth
   * more in much sun. Two persons beyond two are 1,200 more.
   */
  @Test
  void theSizeIsThatOfItsRow() {
    FloorAreaGuide guide = FloorAreaGuide.of(FOAM).orElseThrow();
    assertThat(Units.btuh(guide.usual())).isCloseTo(14_000, within(1e-6));
    assertThat(Units.btuh(guide.sunny())).isCloseTo(15_400, within(1e-6));
    FloorAreaGuide four = FloorAreaGuide.of(answer(people(4))).orElseThrow();
    assertThat(Units.btuh(four.usual())).isCloseTo(15_200, within(1e-6));
  }

  /**
   * The shares of the load's own lines, as the table of the answer has them: (4,098 + 2,573 + 339 +
   * 58) / 14,147.
   */
  @Test
  void whatItDoesNotKnowIsTheSumOfTheLines() {
    PeakLines peak = PeakLines.of(FOAM.core().load());
    List<String> work = List.of("Compressor", "Roll-up door open", "Belt grinder", "Radio");
    double sum =
        peak.lines().stream()
            .filter(line -> work.contains(line.name()))
            .mapToDouble(PeakLines.PeakLine::share)
            .sum();
    double share = FloorAreaGuide.of(FOAM).orElseThrow().workShare();
    assertThat(share).isCloseTo(sum, within(1e-9)).isCloseTo(0.50, within(0.01));
  }

  @Test
  void itIsToldInTextFiguresAndJson() throws JsonProcessingException {
    assertThat(AnswerText.facts(FOAM, UnitSystem.INCH_POUND))
        .filteredOn(fact -> fact.contains("guide by floor area"))
        .singleElement()
        .asString()
        .startsWith("The published guide by floor area says 14,000 BTU/h for 576 ft²")
        .contains("18,000 BTU/h is the smallest usual size that holds here");
    assertThat(SizeFigures.of(FOAM, UnitSystem.SI))
        .filteredOn(figure -> figure.key().equals("unit.guideByFloorAreaBtuh"))
        .singleElement()
        .satisfies(figure -> assertThat(figure.value()).contains("4"));
    JsonNode unit = new ObjectMapper().readTree(SizeJson.of(FOAM)).get("unit");
    assertThat(unit.get("guideByFloorAreaBtuh").asInt()).isEqualTo(14_000);
    assertThat(unit.get("guideByFloorAreaSunnyBtuh").asInt()).isEqualTo(15_400);
  }
}
