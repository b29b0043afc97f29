package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StationTableTest {
  private static final StationClimate CLIMATE =
      MadeClimate.at(new Station("111110", "A, \"B\" Field", "ZZ", -6, 35.25, -90.5, 100));

  @TempDir private Path folder;

  private String written() throws IOException {
    Path file = folder.resolve("new/stations.csv");
    StationTable.write(file, List.of(CLIMATE));
    return Files.readString(file);
  }

  @Test
  void readsWhatItWroteToTheLastPrintedDigit() throws IOException {
    List<StationClimate> read = StationTable.read(written());
    assertThat(read).hasSize(1);
    assertThat(StationTable.cells(read.get(0))).isEqualTo(StationTable.cells(CLIMATE));
    assertThat(read.get(0).station()).isEqualTo(CLIMATE.station());
    assertThat(read.get(0).levels()).isEqualTo(CLIMATE.levels());
    assertThat(read.get(0).aerosol()).isEqualTo(CLIMATE.aerosol());
    assertThat(read.get(0).hotDayWind()).isEqualTo(CLIMATE.hotDayWind());
  }

  @Test
  void namesItsSourceInTheHead() throws IOException {
    assertThat(written()).startsWith("# ").contains("NREL/TP-581-43156");
  }

  @Test
  void leavesNothingAside() throws IOException {
    assertThat(written()).isNotEmpty();
    assertThat(written()).isNotEmpty();
    assertThat(folder.resolve("new").toFile().list()).containsExactly("stations.csv");
  }

  @Test
  void saysWhereATableIsDamaged() throws IOException {
    String table = written();
    int line = (int) table.lines().count();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StationTable.read(table.replace("101325", "much")))
        .withMessageContaining("station table, line " + line)
        .withMessageContaining("much");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StationTable.read(table.replace("range_K", "range_F")))
        .withMessageContaining("range_K");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StationTable.read(table.replace("24.00,8", "36.00,8")))
        .withMessageContaining("wet bulb, °C: 36.0 is outside");
  }

  @Test
  void isMadeFromAFolderOfHourlyFiles() throws IOException {
    Path hourly = Files.createDirectory(folder.resolve("hourly"));
    List<String> lines = MadeFile.lines();
    Files.write(hourly.resolve("722230TYA.CSV"), lines);
    lines.replaceAll(line -> line.replace(",0.120,0.18", ",0.000,0.00"));
    lines.set(0, "722235,\"MOBILE DOWNTOWN AP\",AL,-6.0,30.633,-88.067,8");
    Files.write(hourly.resolve("722235.csv"), lines);
    Files.writeString(hourly.resolve("722236.csv"), "damaged");
    Files.writeString(hourly.resolve("notes.txt"), "no weather");
    StringBuilder told = new StringBuilder();
    TableMaker.make(
        hourly,
        folder.resolve("out"),
        (read, all, name, refused, notes) ->
            told.append(name).append(refused.isEmpty() ? " " : "! "));
    assertThat(told.toString().split(" "))
        .containsExactlyInAnyOrder("722230TYA.CSV", "722235.csv", "722236.csv!");
    List<StationClimate> table =
        StationTable.read(Files.readString(folder.resolve("out/stations.csv")));
    assertThat(table).extracting(one -> one.station().id()).containsExactly("722230", "722235");
    assertThat(table.get(0).aerosol().source().label()).isEqualTo("OWN");
    assertThat(table.get(1).station().name()).isEqualTo("Mobile Downtown AP");
    assertThat(table.get(1).aerosol().source().label()).isEqualTo("NEIGHBOUR 722230 18");
    assertThat(table.get(1).aerosol().depth()).isEqualTo(Months.from(month -> 0.12));
  }

  @Test
  void isNotMadeOfNothing() throws IOException {
    Path hourly = Files.createDirectory(folder.resolve("hourly"));
    assertThatIOException()
        .isThrownBy(() -> TableMaker.make(hourly, folder, (r, a, n, p, w) -> {}))
        .withMessageContaining("no hourly file of a station");
    assertThat(Optional.of(folder.resolve("stations.csv")).filter(Files::exists)).isEmpty();
  }
}
