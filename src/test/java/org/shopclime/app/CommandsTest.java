package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

class CommandsTest {

  /** A shop that is quickly answered: one room, nothing unknown. */
  private static final String SHED =
      """
      {
        "shopclime": 1,
        "name": "Shed",
        "place": {"station": "722230"},
        "work": {"hours": "Mon-Fri 8:00-17:00"},
        "rooms": [
          {
            "name": "Shed",
            "use": "cooled",
            "floorArea": "120 ft2",
            "height": "8 ft",
            "faces": [
              {
                "name": "South wall",
                "part": "wall",
                "azimuth": "180°",
                "width": "12 ft",
                "height": "8 ft",
                "build": {"kind": "framed", "member": "2x4", "cladding": ["OSB"]},
                "absorptance": "60 %"
              }
            ],
            "leakage": "average",
            "contents": {"iron": "100 lb", "wood": "100 lb"}
          }
        ],
        "unit": {"capacity": "5000 BTU/h"}
      }
      """;

  @TempDir private Path folder;

  /** What a command line gave back. */
  record Outcome(int code, String out, String err) {}

  /** Stands for the window: notes what it was asked to open. */
  private static final class Display implements FormLauncher {

    private final List<Optional<Path>> opened = new ArrayList<>();

    @Override
    public boolean hasDisplay() {
      return true;
    }

    @Override
    public void open(Optional<Path> file, Shop shop) {
      opened.add(file);
    }
  }

  /** A computer without a display. */
  private static final class NoDisplay implements FormLauncher {

    @Override
    public boolean hasDisplay() {
      return false;
    }

    @Override
    public void open(Optional<Path> file, Shop shop) {
      throw new IllegalStateException("no display");
    }
  }

  static Outcome run(FormLauncher form, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Commands.run(words, new PrintWriter(out), new PrintWriter(err), form);
    return new Outcome(code, out.toString(), err.toString());
  }

  static Outcome run(String... words) {
    return run(new NoDisplay(), words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"size", "year", "airline", "places", "example", "form", "tables"})
  void everyVerbHasItsHelp(String verb) {
    Outcome outcome = run(verb, "--help");
    assertThat(outcome.code()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out()).startsWith("Usage: shopclime " + verb).contains("--help");
  }

  @Test
  void theHelpNamesTheVerbsOfAnOwner() {
    Outcome outcome = run("--help");
    assertThat(outcome.code()).isZero();
    assertThat(outcome.out())
        .contains("size", "year", "places", "example", "form")
        .doesNotContain("tables");
    assertThat(run("size", "--help").out()).contains("--json", "--report", "--units", "FILE");
  }

  @Test
  void theVersionIsThatOfTheBuildFile() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    String version = pom.substring(pom.indexOf("<version>") + 9, pom.indexOf("</version>"));
    assertThat(run("--version"))
        .isEqualTo(new Outcome(0, "Shopclime " + version + System.lineSeparator(), ""));
  }

  @Test
  void examplePrintsTheFileAndNothingElse() {
    assertThat(run("example")).isEqualTo(new Outcome(0, Examples.text(Examples.USUAL), ""));
    for (String name : Examples.names()) {
      assertThat(run("example", name)).isEqualTo(new Outcome(0, Examples.text(name), ""));
    }
    assertThat(run("example", "--list").out().lines().toList()).isEqualTo(Examples.names());
  }

  @Test
  void sizeGivesOneJsonObjectAndKeepsTheReportApart() throws IOException {
    Path file = Files.writeString(folder.resolve("shed.json"), SHED);
    Outcome outcome =
        run("size", file.toString(), "--json", "--report", folder.resolve("r").toString());
    assertThat(outcome.code()).isZero();
    JsonNode json = new ObjectMapper().readTree(outcome.out());
    assertThat(json.at("/unit/ratedBtuh").doubleValue()).isEqualTo(5000);
    assertThat(json.at("/shop").textValue()).isEqualTo("Shed");
    assertThat(outcome.err())
        .isEqualTo(
            "Report: " + folder.resolve("r").resolve("report.html") + System.lineSeparator());
    assertThat(folder.resolve("r").resolve("report.html")).isNotEmptyFile();
  }

  @Test
  void sizeSpeaksTheUnitsAskedFor() throws IOException {
    Path file = Files.writeString(folder.resolve("shed.json"), SHED);
    Outcome outcome = run("size", file.toString(), "--units", "si");
    assertThat(outcome.code()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out()).contains(" °C").doesNotContain("°F").doesNotContain("BTU/h");
  }

  @Test
  void withoutVerbAndDisplayTheExampleIsAnsweredWithItsReport() {
    String before = System.getProperty(Commands.REPORTS);
    Path reports = folder.resolve("reports");
    System.setProperty(Commands.REPORTS, reports.toString());
    try {
      Outcome outcome = run();
      assertThat(outcome.code()).isZero();
      assertThat(outcome.err()).isEmpty();
      assertThat(outcome.out())
          .contains("on a 99 °F day")
          .endsWith("Report: " + reports.resolve("report.html") + System.lineSeparator());
    } finally {
      if (before == null) {
        System.clearProperty(Commands.REPORTS);
      } else {
        System.setProperty(Commands.REPORTS, before);
      }
    }
  }

  /** The usual words of {@code size} are read without the parser; it would say the same. */
  @Test
  void plainWordsMeanWhatTheyMeanToTheParser() throws IOException {
    Path shed = Files.writeString(folder.resolve("shed.json"), SHED);
    String file = shed.toString();
    String none = folder.resolve("none.json").toString();
    for (List<String> words :
        List.of(
            List.of("size", file),
            List.of("size", file, "--json"),
            List.of("size", "--json", file),
            List.of("size", none))) {
      String[] args = words.toArray(String[]::new);
      assertThat(Commands.isPlainSize(args)).isTrue();
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      int code =
          Commands.parsed(
              args, new Session(new PrintWriter(out), new PrintWriter(err), FormLauncher.window()));
      assertThat(run(args)).isEqualTo(new Outcome(code, out.toString(), err.toString()));
    }
    for (List<String> words :
        List.of(
            List.of("size", file, none),
            List.of("size", "--json", "--json"),
            List.of("size", "--help"),
            List.of("size", "@words"),
            List.of("size", ""),
            List.of("size", "--units", "si"),
            List.of("year"),
            List.<String>of())) {
      assertThat(Commands.isPlainSize(words.toArray(String[]::new))).as("%s", words).isFalse();
    }
  }

  @Test
  void withDisplayTheWindowOpens() throws IOException {
    Display display = new Display();
    assertThat(run(display)).isEqualTo(new Outcome(0, "", ""));
    Path file = Files.writeString(folder.resolve("shop.json"), Examples.text("insulated"));
    assertThat(run(display, "form", file.toString())).isEqualTo(new Outcome(0, "", ""));
    assertThat(run(display, "form")).isEqualTo(new Outcome(0, "", ""));
    assertThat(display.opened)
        .containsExactly(Optional.empty(), Optional.of(file), Optional.empty());
    assertThat(run(display, "form", "missing.json").code()).isEqualTo(2);
    assertThat(display.opened).hasSize(3);
  }
}
