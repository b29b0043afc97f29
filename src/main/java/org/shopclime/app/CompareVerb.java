package org.shopclime.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.climate.WeatherFile;
import org.shopclime.climate.WeatherReading;
import org.shopclime.plan.YearComparison;
import org.shopclime.quantity.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "compare",
    hidden = true,
    description = "Runs three shops through hourly years and through years of day types.")
final class CompareVerb implements Callable<Integer> {

  private final Session session;

  @Parameters(index = "0", paramLabel = "WEATHERFOLDER", description = "Hourly weather files.")
  private Path weather;

  CompareVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Climates climates = Climates.load();
    List<Station> stations =
        YearComparison.stations(
            climates.stations().stream().sorted(Comparator.comparing(Station::id)).toList());
    AtomicInteger done = new AtomicInteger();
    try {
      List<List<YearComparison.Pair>> pairs =
          stations.parallelStream()
              .map(
                  station -> {
                    List<YearComparison.Pair> three = at(station, climates);
                    session
                        .err()
                        .println(
                            done.incrementAndGet() + "/" + stations.size() + " " + station.name());
                    return three;
                  })
              .toList();
      session.out().println(YearComparison.HEAD);
      pairs.forEach(three -> three.forEach(pair -> session.out().println(pair.row())));
      session.out().flush();
      return Session.GOOD;
    } catch (IllegalArgumentException wrong) {
      return session.refuse(
          new Problem(
              "compare",
              Session.oneLine(String.valueOf(first(wrong).getMessage())),
              "a folder of hourly weather files of all stations"));
    }
  }

  /** What was thrown before threads wrapped it. */
  private static Throwable first(Throwable wrong) {
    return wrong.getCause() instanceof IllegalArgumentException cause ? first(cause) : wrong;
  }

  private List<YearComparison.Pair> at(Station station, Climates climates) {
    WeatherReading reading =
        WeatherFile.read(
            file(station.id())
                .orElseThrow(
                    () -> new IllegalArgumentException("no hourly file of " + station.id())));
    if (reading instanceof WeatherReading.Good good) {
      return YearComparison.at(
          good.year(), climates.climate(station), climates.typicalYear(station).orElseThrow());
    }
    throw new IllegalArgumentException(((WeatherReading.Bad) reading).problems().get(0).sentence());
  }

  private Optional<Path> file(String id) {
    try (Stream<Path> files = Files.list(weather)) {
      return files
          .filter(file -> file.getFileName().toString().toLowerCase(Locale.ROOT).startsWith(id))
          .findFirst();
    } catch (IOException unreadable) {
      throw new IllegalArgumentException("a folder that cannot be read", unreadable);
    }
  }
}
