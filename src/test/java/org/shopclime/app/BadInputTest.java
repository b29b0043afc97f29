package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.shop.Examples;

/** Bad input ends with code 2, one line for each problem, and nothing on standard output. */
class BadInputTest {

  @TempDir private Path folder;

  private static void refused(CommandsTest.Outcome outcome, String... lines) {
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().toList()).isEqualTo(List.of(lines));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {
        "siz>command line: found \"siz\"; takes one of the verbs size, year, airline, places,"
            + " example, form",
        "--jsn>command line: found \"--jsn\"; takes --version, --help",
        "size --jsn>size: found \"--jsn\"; takes FILE and the options --json, --report, --units,"
            + " --help",
        "size a b>size: found \"b\"; takes FILE and the options --json, --report, --units, --help",
        "size --units metric>size --units: found \"metric\"; takes ip|si",
        "size --report>size --report: found nothing; takes DIR",
        "example barn>example: found \"barn\"; takes one of \"bare-studs\", \"insulated\","
            + " \"insulated-foam-door\", \"oven-day\", \"powder-day\"",
        "example --list barn>example --list: found \"barn\"; takes no name: it lists all of them",
        "example --list insulated>example --list: found \"insulated\"; takes no name: it lists all of"
            + " them",
        "places mobile --all --limit 3>places --limit: found \"3\" beside --all; takes one of the"
            + " two, not both",
        "size @shop.json>@shop.json: found no file; takes a shop file that can be read",
        "size --units ip --units si>size --units: found it more than once; takes it once",
        "tables here>tables: found nothing; takes OUTFOLDER",
        "form>form: found no display; takes a display to open a window on; size needs none"
      },
      ignoreLeadingAndTrailingWhitespace = true,
      maxCharsPerColumn = 400)
  void wordsOfTheCommandLine(String words, String line) {
    refused(CommandsTest.run(words.split(" ")), line);
  }

  /** What changes nothing is said; the answer is the same. */
  @Test
  void unitsBesideJsonAreNotIgnoredInSilence() {
    CommandsTest.Outcome plain = CommandsTest.run("places", "mobile", "--json");
    CommandsTest.Outcome asked = CommandsTest.run("places", "mobile", "--json", "--units", "si");
    assertThat(plain.err()).isEmpty();
    assertThat(asked.out()).isEqualTo(plain.out());
    assertThat(asked.code()).isZero();
    assertThat(asked.err().lines().toList())
        .containsExactly(
            "places --units: changes nothing beside --json, whose keys end in their units");
    assertThat(CommandsTest.run("places", "mobile", "--units", "si").err()).isEmpty();
  }

  @Test
  void filesThatCannotBeRead() throws IOException {
    String missing = folder.resolve("missing.json").toString();
    refused(
        CommandsTest.run("size", missing),
        missing + ": found no file; takes a shop file that can be read");
    refused(
        CommandsTest.run("size", folder.toString()),
        folder + ": found a folder; takes a shop file that can be read");
    Path latin = Files.write(folder.resolve("latin.json"), new byte[] {'{', (byte) 0xE9, '}'});
    refused(
        CommandsTest.run("size", latin.toString()),
        latin + ": found bytes that are not UTF-8 text; takes a shop file that can be read");
    Path cut =
        Files.writeString(folder.resolve("cut.json"), Examples.text("insulated").substring(0, 200));
    CommandsTest.Outcome outcome = CommandsTest.run("size", cut.toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err().lines().toList())
        .singleElement()
        .asString()
        .startsWith("line ")
        .contains("damaged JSON");
  }

  @Test
  void everyProblemOfAFileHasItsLine() throws IOException {
    String text =
        Examples.text("insulated")
            .replace("\"722230\"", "\"Mobil, ZZ\"")
            .replace("\"12000 BTU/h\"", "\"12000\"");
    Path file = Files.writeString(folder.resolve("two.json"), text);
    CommandsTest.Outcome outcome = CommandsTest.run("size", file.toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err().lines().toList())
        .hasSize(2)
        .anyMatch(line -> line.startsWith("place.station: found \"Mobil, ZZ\"; takes "))
        .anyMatch(line -> line.startsWith("unit.capacity: found \"12000\"; takes "));
  }

  @Test
  void folderThatCannotTakeAReport() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "mine");
    refused(
        CommandsTest.run("size", "--report", file.toString()),
        file + ": found a file; takes a folder that can be written to");
    assertThat(file).hasContent("mine");
    CommandsTest.Outcome below = CommandsTest.run("size", "--report", file.resolve("x").toString());
    assertThat(below.code()).isEqualTo(2);
    assertThat(below.err().lines().toList()).hasSize(1);
  }

  /** What is there but cannot be taken is named as what it is. */
  @Test
  void emptyNamesDevicesAndFoldersWithoutWeather() {
    refused(CommandsTest.run("size", ""), "FILE: found \"\"; takes a shop file that can be read");
    refused(
        CommandsTest.run("airline", ""), "FILE: found \"\"; takes a shop file that can be read");
    if (Files.exists(Path.of("/dev/null"))) {
      refused(
          CommandsTest.run("size", "--report", "/dev/null"),
          "/dev/null: found something that is no folder; takes a folder that can be written to");
    }
    CommandsTest.Outcome compared = CommandsTest.run("compare", folder.toString());
    assertThat(compared.code()).isEqualTo(2);
    assertThat(compared.err().lines().toList())
        .singleElement()
        .asString()
        .startsWith("compare: found no hourly file of ");
  }

  @Test
  void weatherFolderThatIsMissing() {
    String missing = folder.resolve("weather").toString();
    CommandsTest.Outcome outcome = CommandsTest.run("tables", missing, folder.toString());
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err().lines().toList())
        .containsExactly(
            "tables: found "
                + missing
                + "; takes a folder of hourly weather files and a folder to write to");
  }

  @Test
  void aNameWithALineBreakStaysOneLine() {
    refused(
        CommandsTest.run("example", "a\nb"),
        "example: found \"a b\"; takes one of \"bare-studs\", \"insulated\","
            + " \"insulated-foam-door\", \"oven-day\", \"powder-day\"");
  }

  /** Files of another kind are named as what they are. */
  @Test
  void whatIsNoShopFileIsNamed(@TempDir Path folder) throws IOException {
    Path table = Files.writeString(folder.resolve("log.json"), "Date,Temp\n2026-07-01,96\n");
    refused(
        CommandsTest.run("size", table.toString()),
        "file: found no JSON but a text that begins \"Date,Temp\"; takes a shop file, which begins"
            + " with a curly bracket; the verb example prints one");
    Path remark = Files.writeString(folder.resolve("remark.json"), "// my shop\n{}");
    refused(
        CommandsTest.run("size", remark.toString()),
        "file: found a remark; takes no remarks; the field \"note\" of the shop holds them");
    Path curly = Files.writeString(folder.resolve("curly.json"), "{\u201cshopclime\u201d: 1}");
    refused(
        CommandsTest.run("size", curly.toString()),
        "file: found curly or single quotes, as a word processor makes them; takes plain \" quotes");
    String unknown = Examples.text("insulated").replace("\"722230\"", "\"999999\"");
    refused(
        CommandsTest.run(
            "size", Files.writeString(folder.resolve("unknown.json"), unknown).toString()),
        "place.station: found \"999999\"; takes a station of the climate tables by number or name,"
            + " such as \"722230\" or \"Mobile\"; the verb places finds them by town or point");
  }
}
