package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;

/** What is said of compressed air in a shop file. */
class CompressedAirTest {

  private static Shop read(String air) {
    String text = DayFile.text().replaceFirst("\"rooms\"", air + "\"rooms\"");
    return ((ShopReading.Good) ShopFile.read(text, Stations.any())).shop();
  }

  @Test
  void nothingSaidIsTheDefault() {
    assertThat(read("").air()).isEqualTo(CompressedAir.unsaid());
    assertThat(read("\"air\": {},").air()).isEqualTo(CompressedAir.unsaid());
    assertThat(ShopFile.write(read(""))).doesNotContain("\"air\"");
  }

  @Test
  void everyFieldIsReadAndWritten() {
    Shop shop =
        read(
            "\"air\": {\"stages\": \"two\", \"freeAir\": \"15 cfm\", \"pressure\": \"150 psi\","
                + " \"tank\": \"60 gal\", \"tools\": {\"blastCabinet\": \"30 min\"}, \"coldest\":"
                + " \"60 °F\", \"intake\": \"outdoors\", \"aftercooler\": \"yes\", \"dropLeg\":"
                + " \"25 ft\", \"dryer\": \"refrigerated\", \"closetWidth\": \"6 ft\","
                + " \"closetDepth\": \"3 ft\", \"closetHeight\": \"7 ft\", \"fumes\": \"yes\","
                + " \"flame\": \"yes\", \"openRoofRise\": \"9 °F\", \"toolsDraw\": \"90 %\"},");
    CompressedAir air = shop.air();
    assertThat(air.stages()).isEqualTo(CompressedAir.PumpStages.TWO);
    assertThat(air.freeAir().orElseThrow()).isCloseTo(15 * 4.719474e-4, within(1e-8));
    assertThat(air.pressure().orElseThrow()).isCloseTo(150 * 6894.757, within(1.0));
    assertThat(air.tank().orElseThrow()).isCloseTo(60 * 3.785412e-3, within(1e-6));
    assertThat(air.tools().together()).isEqualTo(1800);
    assertThat(air.coldest()).isEqualTo(Optional.of((60 - 32) / 1.8));
    assertThat(air.dryer()).isEqualTo(CompressedAir.AirDryer.REFRIGERATED);
    assertThat(air.toolsDraw()).isEqualTo(Span.known(0.9));
    // A difference: 9 °F are 5 K, without the 32 of a temperature.
    assertThat(air.openRoofRise()).isCloseTo(5, within(1e-12));
    ShopReading again = ShopFile.read(ShopFile.write(shop), Stations.any());
    assertThat(((ShopReading.Good) again).shop()).isEqualTo(shop);
  }

  @Test
  void whatToolsDrawIsUnknownByAFourthOnceToolsAreTold() {
    assertThat(read("").air().toolsDraw()).isEqualTo(new Span(0.75, 1, 1.25));
    assertThat(Unknowns.of(read(""))).noneMatch(place -> place.path().startsWith("air."));
    Shop told = read("\"air\": {\"tools\": {\"sanding\": \"20 min\"}},");
    assertThat(Unknowns.of(told))
        .extracting(SpanPlace::path)
        .contains("air.toolsDraw")
        .noneMatch(path -> path.endsWith(".duty"));
    assertThat(Unknowns.choose(told, Choice.UNKIND).air().toolsDraw()).isEqualTo(Span.known(1.25));
    assertThat(Unknowns.of(Unknowns.choose(told, Choice.KIND))).isEmpty();
    Shop timed = read("\"air\": {\"tools\": {\"sanding\": \"20 min\"}, \"toolsDraw\": \"100 %\"},");
    assertThat(Unknowns.of(timed)).noneMatch(place -> place.path().startsWith("air."));
  }

  @Test
  void riseUnderAnOpenRoofIsADifferenceWithinItsRange() {
    assertThat(read("").air().openRoofRise()).isEqualTo(2);
    for (String wrong : List.of("0 K", "-2 K", "40 K", "5 m", "warm")) {
      String text =
          DayFile.text()
              .replaceFirst(
                  "\"rooms\"", "\"air\": {\"openRoofRise\": \"" + wrong + "\"}, \"rooms\"");
      List<Problem> problems = ((ShopReading.Bad) ShopFile.read(text, Stations.any())).problems();
      assertThat(problems).hasSize(1);
      assertThat(problems.get(0).sentence()).startsWith("air.openRoofRise").contains(wrong);
    }
  }
}
