package org.shopclime.climate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shopclime.quantity.Problem;

/** Makes the table of stations from a folder of hourly files. */
public final class TableMaker {
  /** Name of the table in the folder it is written to. */
  public static final String TABLE = "stations.csv";

  /** Told of every file read. */
  @FunctionalInterface
  public interface Progress {
    /**
     * One more file is read.
     *
     * @param read files read so far, from 1
     * @param all files to read; each station of the table is read a second time
     * @param name name of the file
     * @param refused why the file was passed over, or nothing where it was taken
     */
    void read(int read, int all, String name, Optional<Problem> refused);
  }

  private TableMaker() {}

  /**
   * Reads all hourly files of a folder, then writes the table of the wanted stations, by state and
   * number. All files are read even for a short table: any may lend its aerosol depth to a
   * neighbour. A file that cannot be taken is passed over and told.
   *
   * @param hourlyFolder folder of hourly files whose names begin with the station's number
   * @param outFolder folder the table is written to, made if missing
   * @param wanted which stations the table holds, such as {@link ChosenStations}
   * @param progress told of every file read
   * @throws IOException if a folder cannot be read or the table not written, or if no wanted
   *     station was found; the message says which
   */
  public static void make(
      Path hourlyFolder, Path outFolder, Predicate<Station> wanted, Progress progress)
      throws IOException {
    List<Path> files = hourlyFiles(hourlyFolder);
    Map<Station, Months> telling = new HashMap<>();
    List<Path> chosen = new ArrayList<>();
    int read = 0;
    for (Path file : files) {
      WeatherReading reading = WeatherFile.read(file);
      Optional<Problem> refused = Optional.empty();
      if (reading instanceof WeatherReading.Good good) {
        WeatherYear year = good.year();
        AerosolFill.own(year).ifPresent(own -> telling.put(year.station(), own.depth()));
        if (wanted.test(year.station())) {
          chosen.add(file);
        }
      } else if (reading instanceof WeatherReading.Bad bad) {
        refused = Optional.of(bad.problems().get(0));
      }
      progress.read(++read, files.size(), name(file), refused);
    }
    if (chosen.isEmpty()) {
      throw new IOException("none of the wanted stations is in " + hourlyFolder);
    }
    List<StationClimate> stations = new ArrayList<>();
    for (Path file : chosen) {
      if (WeatherFile.read(file) instanceof WeatherReading.Good good) {
        WeatherYear year = good.year();
        stations.add(StationStatistics.of(year, AerosolFill.of(year, telling)));
      }
      progress.read(++read, files.size() + chosen.size(), name(file), Optional.empty());
    }
    stations.sort(
        Comparator.comparing((StationClimate one) -> one.station().state())
            .thenComparing(one -> one.station().id()));
    StationTable.write(outFolder.resolve(TABLE), stations);
  }

  private static List<Path> hourlyFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> name(file).matches("(?i)\\d{6}.*\\.csv(\\.\\w+)?"))
          .sorted()
          .collect(Collectors.toList());
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
