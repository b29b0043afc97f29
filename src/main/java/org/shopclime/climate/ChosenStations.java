package org.shopclime.climate;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * The stations picked by hand for the table: the airport of the largest city of each state, of the
 * District of Columbia and of Puerto Rico, and some more.
 */
public final class ChosenStations implements Predicate<Station> {
  private static final String LIST = "/climate-data/chosen.csv";

  private final Set<String> ids;

  private ChosenStations(Set<String> ids) {
    this.ids = ids;
  }

  /**
   * The list that travels with the program.
   *
   * @return the stations it names
   */
  public static ChosenStations load() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream bytes = ChosenStations.class.getResourceAsStream(LIST)) {
      if (bytes == null) {
        throw new IllegalStateException("the program came without " + LIST);
      }
      try (CSVParser rows = format.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
        return new ChosenStations(
            rows.stream().map(row -> row.get("id")).collect(Collectors.toUnmodifiableSet()));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * Numbers of the stations.
   *
   * @return six-digit numbers; cannot be changed
   */
  public Set<String> ids() {
    return ids;
  }

  @Override
  public boolean test(Station station) {
    return ids.contains(station.id());
  }
}
