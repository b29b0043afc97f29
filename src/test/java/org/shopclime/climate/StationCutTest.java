package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class StationCutTest {

  private static final String TABLE =
      """
      # words

      # more, words
      id,what
      10,a
      1,b
      1,c
      100,d
      1,e
      2,"ä, f\"""";

  /** Gives what it has in pieces of one byte, as a stream may. */
  private static InputStream slow(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)) {
      @Override
      public synchronized int read(byte[] into, int at, int most) {
        return super.read(into, at, Math.min(1, most));
      }
    };
  }

  private static String cut(String table, String id) throws IOException {
    return StationCut.of(slow(table), id);
  }

  @Test
  void headAndTheRowsOfTheStationAreKept() throws IOException {
    String head = "# words\n\n# more, words\nid,what\n";
    assertThat(cut(TABLE, "1")).isEqualTo(head + "1,b\n1,c\n");
    assertThat(cut(TABLE, "10")).isEqualTo(head + "10,a\n");
    assertThat(cut(TABLE, "100")).isEqualTo(head + "100,d\n");
    assertThat(cut(TABLE, "2")).isEqualTo(head + "2,\"ä, f\"");
    assertThat(cut(TABLE, "3")).isEqualTo(head);
    assertThat(cut("", "3")).isEmpty();
    assertThat(cut("# words", "3")).isEqualTo("# words");
  }

  @Test
  void itSaysWhatTheWholeTableSays() throws IOException {
    Climates climates = Climates.load();
    String types = Files.readString(Path.of("climate-data", "daytypes.csv"));
    String shapes = Files.readString(Path.of("climate-data", "shapes.csv"));
    String order = Files.readString(Path.of("climate-data", "order.csv"));
    List<Station> stations = climates.stations();
    for (Station station :
        List.of(stations.get(0), stations.get(500), stations.get(stations.size() - 1))) {
      TypicalYear year = TypicalYearTable.find(station, types, shapes, order).orElseThrow();
      assertThat(climates.typicalYear(station)).contains(year);
      assertThat(climates.typicalDays(station)).contains(year.days());
    }
  }
}
