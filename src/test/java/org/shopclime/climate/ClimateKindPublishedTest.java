package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.climate.ClimateKind.Moisture;
import org.shopclime.climate.ClimateKind.Summers;
import org.shopclime.climate.ClimateKind.Winters;

/** The words for a climate against the zones that the building code gives the same places. */
class ClimateKindPublishedTest {
  private static final String TABLE = "/published/climate/climate-zones.csv";

  private final Climates climates = Climates.load();

  @ParameterizedTest
  @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
  void saysNothingTheZoneDenies(String id, String place, String city, String zone, String status) {
    Station station = PlaceSearch.of(climates.stations(), place).places().get(0).station();
    ClimateKind kind = ClimateKind.of(climates.find(station.id()).orElseThrow());
    String name = id + ", " + city + ", " + zone + ", " + status;
    assertThat(kind.winters()).as(name).isIn((Object[]) winters(zone.charAt(0)));
    switch (zone.charAt(1)) {
      case 'A' -> assertThat(kind.moisture()).as(name).isIn(Moisture.HUMID, Moisture.FAIRLY_HUMID);
      case 'B' -> assertThat(kind.moisture()).as(name).isEqualTo(Moisture.DRY);
      default -> {
        assertThat(kind.moisture()).as(name).isNotEqualTo(Moisture.HUMID);
        assertThat(kind.summers()).as(name).isIn(Summers.WARM, Summers.MILD);
      }
    }
  }

  private static Winters[] winters(char zone) {
    return switch (zone) {
      case '1' -> new Winters[] {Winters.WARM};
      case '2', '3' -> new Winters[] {Winters.MILD, Winters.WARM};
      case '4' -> new Winters[] {Winters.MILD, Winters.COLD};
      case '5' -> new Winters[] {Winters.COLD};
      default -> new Winters[] {Winters.VERY_COLD};
    };
  }

  @Test
  void everyRowOfTheCollectionIsThere() throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    Set<String> ids = new TreeSet<>();
    try (CSVParser rows =
        format.parse(
            new InputStreamReader(
                ClimateKindPublishedTest.class.getResourceAsStream(TABLE),
                StandardCharsets.UTF_8))) {
      for (CSVRecord row : rows) {
        ids.add(row.get("id"));
      }
    }
    assertThat(ids)
        .containsExactly(
            "L-01", "L-02", "L-03", "L-05", "L-07", "L-09", "L-10", "L-12", "L-14", "L-15", "L-16",
            "L-18", "L-19", "L-20", "L-21", "L-23", "L-24", "L-26", "L-28", "L-30", "L-35");
  }
}
