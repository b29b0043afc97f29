package org.shopclime.fabric;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.SurfaceSun;
import org.shopclime.balance.YearWeather;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.run.YearRun;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/**
 * One case run as the {@code year} command runs any shop file.
 *
 * @param name name of its file
 * @param result its year
 */
record FabricRun(String name, YearResult result) {

  private static final double KILO = 1000;

  /** The shop of a case. */
  static Shop shop(String name) {
    Path file = FabricFiles.FOLDER.resolve(name + ".json");
    ShopReading reading = ShopFile.read(file, Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return good.shop();
    }
    throw new IllegalStateException(file + ": " + reading);
  }

  /** Runs a case. */
  static FabricRun of(String name, YearWeather weather) {
    return new FabricRun(name, YearRun.of(ShopYear.of(shop(name), weather), Optional.empty()));
  }

  /** A figure by its name in the published tables. */
  double figure(int room, String figure) {
    return switch (figure) {
      case "heating MWh" -> result.kilowattHours(Figure.HEATING, room) / KILO;
      case "cooling MWh" -> result.kilowattHours(Figure.COOLING, room) / KILO;
      case "peak heating kW" -> peak(Figure.HEATING, room) / KILO;
      case "peak cooling kW" -> peak(Figure.COOLING, room) / KILO;
      case "warmest C" -> peak(Figure.AIR, room);
      case "coldest C" -> result.at(Figure.AIR, room, result.leastHour(Figure.AIR, room));
      case "mean C" -> result.mean(Figure.AIR, room);
      default -> sun(figure.replace(" kWh/m2", "").replace(';', ','));
    };
  }

  private double peak(Figure figure, int room) {
    return result.at(figure, room, result.peakHour(figure, room));
  }

  private double sun(String figure) {
    String on = "sun on ";
    String through = "sun through ";
    for (SurfaceSun surface : result.year().surfaces()) {
      if (figure.equals(on + surface.name())) {
        return surface.incident();
      }
      if (figure.equals(through + surface.name())) {
        return surface.transmitted();
      }
    }
    throw new IllegalArgumentException(figure);
  }

  /** Rows of a table with a head of comments. */
  static List<CSVRecord> rows(Path file) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
