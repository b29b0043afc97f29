package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Warning;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class HtmlReportTest {

  private static final String NASTY =
      "Bob's <script>alert(\"x\")</script> & \u001b[31m\u0000 ]]> &amp; shop \uD800";

  @TempDir private Path folder;

  private static Document parse(Path page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(Files.readAllBytes(page)));
  }

  private static String text(Document page) {
    return page.getDocumentElement().getTextContent().replace('\u00a0', ' ');
  }

  @Test
  void thePageIsWellFormedAndHoldsTheAnswer() throws Exception {
    SizeAnswer answer = Answers.example();
    Path page = HtmlReport.write(answer, UnitSystem.INCH_POUND, folder.resolve("new/report"));
    assertThat(page).isEqualTo(folder.resolve("new/report/report.html"));
    String text = text(parse(page));
    assertThat(text)
        .contains(answer.shop().name())
        .contains(AnswerText.sentence(answer, UnitSystem.INCH_POUND))
        .contains(AnswerText.facts(answer, UnitSystem.INCH_POUND))
        .contains(new Assumptions(answer, UnitSystem.INCH_POUND).lines())
        .contains(new Assumptions(answer, UnitSystem.INCH_POUND).unknowns())
        .contains(Assumptions.LIMITS)
        .contains("The unit in the heat")
        .contains(UnitLimits.lines(answer, UnitSystem.INCH_POUND));
    answer
        .core()
        .load()
        .rooms()
        .forEach(room -> room.lines().forEach(line -> assertThat(text).contains(line.name())));
    answer.changes().forEach(change -> assertThat(text).contains(change.name()));
    assertThat(text).contains(" lb on 100 ft²)");
    String caution = DampWords.warnings(answer.damp().orElseThrow()).get(0).text();
    assertThat(answer.warnings()).extracting(Warning::text).contains(caution);
    assertThat(text).as("once is enough").doesNotContain(caution);
  }

  /**
   * What a screen reader reads out: each picture in words, no empty caption, no nameless column.
   */
  @Test
  void picturesAndTablesAreTold() throws Exception {
    Document page =
        parse(HtmlReport.write(Answers.example(), UnitSystem.INCH_POUND, folder.resolve("told")));
    NodeList pictures = page.getElementsByTagName("img");
    assertThat(pictures.getLength()).isGreaterThan(4);
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      assertThat(picture.getAttribute("alt")).hasSizeGreaterThan(40);
      assertThat(picture.getAttribute("width")).isEqualTo("760");
    }
    for (String tag : List.of("figcaption", "th", "h2", "li", "p")) {
      NodeList all = page.getElementsByTagName(tag);
      for (int i = 0; i < all.getLength(); i++) {
        assertThat(all.item(i).getTextContent()).as(tag + " " + i).isNotBlank();
      }
    }
  }

  @Test
  void timesAreToldInHoursAndMinutes() {
    assertThat(Shown.duration(45)).isEqualTo("45 min");
    assertThat(Shown.duration(120)).isEqualTo("2 h");
    assertThat(Shown.duration(355)).isEqualTo("5 h 55 min");
  }

  @Test
  void nothingIsLoadedFromElsewhere() throws Exception {
    Path page = HtmlReport.write(Answers.example(), UnitSystem.SI, folder);
    Document document = parse(page);
    assertThat(Files.readString(page)).doesNotContain("http:", "https:", "@import", "url(");
    for (String tag : new String[] {"link", "script", "iframe", "object"}) {
      assertThat(document.getElementsByTagName(tag).getLength()).as(tag).isZero();
    }
    NodeList images = document.getElementsByTagName("img");
    assertThat(images.getLength()).isEqualTo(9);
    for (int i = 0; i < images.getLength(); i++) {
      Element image = (Element) images.item(i);
      assertThat(image.getAttribute("src")).startsWith("data:image/png;base64,");
      byte[] png = Base64.getDecoder().decode(image.getAttribute("src").substring(22));
      assertThat(new String(png, 1, 3, StandardCharsets.US_ASCII)).isEqualTo("PNG");
      assertThat(image.getAttribute("alt")).hasSizeGreaterThan(40);
    }
  }

  @Test
  void anOwnersTextCannotBecomeMarkup() throws Exception {
    SizeAnswer answer = Answers.named(Answers.example(), Answers.example().shop().withName(NASTY));
    Path page = HtmlReport.write(answer, UnitSystem.INCH_POUND, folder, false);
    Document document = parse(page);
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("Bob's <script>alert(\"x\")</script> &  [31m  ]]> &amp; shop");
    assertThat(Html.escape("a\"b'c<d>&\u202e")).isEqualTo("a&quot;b&#39;c&lt;d&gt;&amp;");
  }

  @Test
  void withoutFontsThePageSaysSoAndTheFiguresStay() throws Exception {
    Path page = HtmlReport.write(Answers.example(), UnitSystem.INCH_POUND, folder, false);
    Document document = parse(page);
    assertThat(document.getElementsByTagName("img").getLength()).isZero();
    assertThat(text(document)).containsOnlyOnce(HtmlReport.NO_CHARTS);
    assertThat(folder.resolve("hours.csv")).isNotEmptyFile();
  }

  @Test
  void onlyWholeFilesStand() throws IOException {
    Files.writeString(folder.resolve("report.html"), "old");
    Files.writeString(folder.resolve("mine.txt"), "mine");
    HtmlReport.write(Answers.example(), UnitSystem.INCH_POUND, folder, false);
    assertThat(folder.resolve("report.html")).content().contains("</html>");
    assertThat(folder.resolve("mine.txt")).hasContent("mine");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "report.html", "hours.csv", "components.csv", "changes.csv", "mine.txt");
    }
  }

  @Test
  void aFolderThatIsAFileIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    assertThatThrownBy(
            () -> HtmlReport.write(Answers.example(), UnitSystem.INCH_POUND, file, false))
        .isInstanceOf(IOException.class);
    assertThat(file).hasContent("mine");
  }

  @Test
  void answersWithoutUnitOrWorkOrLoadHaveTheirPage() throws Exception {
    SizeAnswer idle =
        Answers.withoutUnit(
            Answers.day(hour -> 90, Set.of(), hour -> 0),
            OptionalDouble.empty(),
            Answers.known(90));
    String text = text(parse(HtmlReport.write(idle, UnitSystem.SI, folder)));
    assertThat(text).contains("No working hours").doesNotContain("NaN", "Infinity", "null");
  }
}
