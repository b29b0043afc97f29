package org.shopclime;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** No published check is lost: every id expected is run, or listed with the reason why not. */
class PublishedIdsTest {

  private static final Path PUBLISHED = Path.of("src/test/resources/published");
  private static final Path TESTS = Path.of("src/test/java");
  private static final Path EXPECTED = PUBLISHED.resolve("expected-ids.csv");
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreSurroundingSpaces(true)
          .get();

  @Test
  void everyExpectedIdIsRunOrExcused() {
    Set<String> known = new TreeSet<>();
    for (Path file : tables()) {
      known.addAll(ids(file));
    }
    assertThat(known).containsAll(ids(EXPECTED));
  }

  @Test
  void everyExcuseHasAReason() {
    for (Path file : tables()) {
      if (file.endsWith("not-run.csv")) {
        for (CSVRecord row : rows(file)) {
          assertThat(row.get("reason")).as("%s of %s", row.get("id"), file).hasSizeGreaterThan(20);
        }
      }
    }
  }

  @Test
  void everyTableIsReadByATest() {
    String sources = sources();
    for (Path file : tables()) {
      if (!file.endsWith("not-run.csv")) {
        assertThat(sources)
            .as("a test that reads %s", file)
            .contains(file.getFileName().toString());
      }
    }
  }

  @Test
  void everyTableNamesQuantitySourceStatusAndTolerance() throws IOException {
    for (Path file : tables()) {
      assertThat(Files.readString(file))
          .as(file.toString())
          .contains("# Quantity", "# Source", "# Status", "# Tolerance");
    }
  }

  private static List<Path> tables() {
    try (Stream<Path> files = Files.walk(PUBLISHED)) {
      return files
          .filter(file -> file.toString().endsWith(".csv") && !file.equals(EXPECTED))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> ids(Path file) {
    return rows(file).stream()
        .map(row -> row.get("id"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<CSVRecord> rows(Path file) {
    try (CSVParser parser = FORMAT.parse(Files.newBufferedReader(file))) {
      assertThat(parser.getHeaderNames()).as("columns of %s", file).contains("id");
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sources() {
    try (Stream<Path> files = Files.walk(TESTS)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(
              file -> {
                try {
                  return Files.readString(file);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              })
          .collect(Collectors.joining());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
