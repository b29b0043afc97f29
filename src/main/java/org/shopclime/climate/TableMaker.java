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
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shopclime.quantity.Problem;

/** Makes the tables of stations and of typical years from a folder of hourly files. */
public final class TableMaker {
  /** Name of the table of stations in the folder it is written to. */
  public static final String STATIONS = "stations.csv";

  /** Name of the table of day types in the folder it is written to. */
  public static final String DAY_TYPES = "daytypes.csv";

  /** Name of the table of shapes in the folder it is written to. */
  public static final String SHAPES = "shapes.csv";

  /** Name of the table of the order of days in the folder it is written to. */
  public static final String ORDER = "order.csv";

  /** Told of every file read. */
  @FunctionalInterface
  public interface Progress {
    /**
     * One more file is read. Files are told one at a time, in the order in which they are done.
     *
     * @param read files read so far, from 1
     * @param all files to read
     * @param name name of the file
     * @param refused why the file was passed over, or nothing where it was taken
     * @param notes what was filled or is odd in a file that was taken
     */
    void read(int read, int all, String name, Optional<Problem> refused, List<String> notes);
  }

  /**
   * What one file gives.
   *
   * @param climate with the file's own aerosol depth, or else one found without neighbours
   * @param year its typical year
   * @param file where it was read
   */
  private record Made(StationClimate climate, TypicalYear year, Path file) {
    Station station() {
      return climate.station();
    }

    boolean tells() {
      return climate.aerosol().source() instanceof AerosolSource.Own;
    }

    StationClimate climate(Map<Station, Months> telling) {
      return tells()
          ? climate
          : AerosolFill.neighbour(station(), telling).map(climate::with).orElse(climate);
    }
  }

  private final List<Path> files;
  private final Progress progress;
  private int read;

  private TableMaker(List<Path> files, Progress progress) {
    this.files = files;
    this.progress = progress;
  }

  /**
   * Reads all hourly files of a folder on all processors, then writes the tables, by state and
   * number. A file that cannot be taken is passed over and told. The tables do not depend on the
   * number of processors.
   *
   * @param hourlyFolder folder of hourly files whose names begin with the station's number
   * @param outFolder folder the tables are written to, made if missing
   * @param progress told of every file read
   * @throws IOException if a folder cannot be read or a table not written, if no station was found
   *     or one twice; the message says which
   */
  public static void make(Path hourlyFolder, Path outFolder, Progress progress) throws IOException {
    make(hourlyFolder, outFolder, progress, Runtime.getRuntime().availableProcessors());
  }

  static void make(Path hourlyFolder, Path outFolder, Progress progress, int threads)
      throws IOException {
    List<Made> made = new TableMaker(hourlyFiles(hourlyFolder), progress).all(threads);
    if (made.isEmpty()) {
      throw new IOException("no hourly file of a station in " + hourlyFolder);
    }
    refuseTwins(made);
    Map<Station, Months> telling =
        made.stream()
            .filter(Made::tells)
            .collect(Collectors.toMap(Made::station, one -> one.climate().aerosol().depth()));
    List<Made> sorted =
        made.stream()
            .sorted(
                Comparator.comparing((Made one) -> one.station().state())
                    .thenComparing(one -> one.station().id()))
            .toList();
    List<TypicalYear> years = sorted.stream().map(Made::year).toList();
    StationTable.write(
        outFolder.resolve(STATIONS), sorted.stream().map(one -> one.climate(telling)).toList());
    TypicalYearTable.writeTypes(outFolder.resolve(DAY_TYPES), years);
    TypicalYearTable.writeShapes(outFolder.resolve(SHAPES), years);
    TypicalYearTable.writeOrder(outFolder.resolve(ORDER), years);
  }

  private static void refuseTwins(List<Made> made) throws IOException {
    Map<String, Path> files = new HashMap<>();
    for (Made one : made) {
      Path other = files.put(one.station().id(), one.file());
      if (other != null) {
        throw new IOException(
            "station "
                + one.station().id()
                + " twice, in "
                + name(other)
                + " and "
                + name(one.file()));
      }
    }
  }

  private List<Made> all(int threads) throws IOException {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Optional<Made>>> results = new ArrayList<>();
      for (Path file : files) {
        results.add(workers.submit(() -> one(file)));
      }
      List<Made> made = new ArrayList<>();
      for (Future<Optional<Made>> result : results) {
        result.get().ifPresent(made::add);
      }
      return made;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped before all files were read", stopped);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private Optional<Made> one(Path file) {
    WeatherReading reading = WeatherFile.read(file);
    if (reading instanceof WeatherReading.Bad bad) {
      tell(file, Optional.of(bad.problems().get(0)), List.of());
      return Optional.empty();
    }
    WeatherReading.Good good = (WeatherReading.Good) reading;
    WeatherYear year = good.year();
    Aerosol aerosol = AerosolFill.of(year, Map.of());
    Made made = new Made(StationStatistics.of(year, aerosol), DayTypes.of(year), file);
    tell(file, Optional.empty(), good.notes());
    return Optional.of(made);
  }

  private synchronized void tell(Path file, Optional<Problem> refused, List<String> notes) {
    progress.read(++read, files.size(), name(file), refused, notes);
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
