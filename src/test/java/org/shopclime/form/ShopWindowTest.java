package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.RepaintManager;
import javax.swing.TransferHandler;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.Figure;
import org.shopclime.report.SizeFigures;
import org.shopclime.report.SizeJson;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;

/** The window as a person uses it. */
class ShopWindowTest {

  private static final Pattern NUMBER = Pattern.compile("-?[\\d,]+(\\.\\d+)?");

  private static Climates climates;
  private static Answering answering;

  @TempDir Path folder;
  private EventThreadGuard guard;
  private RepaintManager before;
  private Person person;

  @BeforeAll
  static void needsDisplay() {
    Assumptions.assumeFalse(GraphicsEnvironment.isHeadless());
    climates = Climates.load();
    answering = new Remembering(climates);
  }

  @BeforeEach
  void open() {
    before = RepaintManager.currentManager(null);
    guard = EventThreadGuard.install();
    person = new Person(SmallShop.shop(), climates, answering, folder.resolve("settings"));
    person.untilSettled();
  }

  @AfterEach
  void close() {
    if (person != null) {
      person.close();
      RepaintManager.setCurrentManager(before);
      assertThat(guard.touches()).as("components touched off the event thread").isEmpty();
    }
  }

  /** Does something, waits until the shop is another and its answer is shown, and checks it. */
  private void change(Runnable deed) throws IOException {
    Shop old = person.shop();
    deed.run();
    person.until("the shop changes", () -> !person.window().session().now().equals(old));
    person.untilSettled();
    check(false);
  }

  /** Holds every figure shown against the saved file, read back and reckoned. */
  private void check(boolean anew) throws IOException {
    Path file = folder.resolve("shop.json");
    person.replies.saved.add(file);
    person.menu(ShopMenu.Deed.SAVE_AS);
    person.until(
        "it is saved",
        () ->
            !person.window().session().isDirty()
                && person.window().session().file().equals(Optional.of(file)));
    Answering source = anew ? Answering.of(climates) : answering;
    ShopReading reading = ShopFile.read(Files.readString(file), source.stations());
    assertThat(reading).isInstanceOf(ShopReading.Good.class);
    ShopReading.Good good = (ShopReading.Good) reading;
    SizeAnswer answer = source.whole(good.shop(), good.warnings(), Progress.silent());
    JsonNode json = new ObjectMapper().readTree(SizeJson.of(answer));
    List<Figure> figures = SizeFigures.of(answer, UnitSystem.INCH_POUND);
    assertThat(figures).hasSizeGreaterThan(10);
    for (Figure figure : figures) {
      String shown = person.text("figure." + figure.key());
      assertThat(shown).as(figure.key()).isEqualTo(figure.value());
      JsonNode value = json.at("/" + figure.key().replace('.', '/'));
      boolean counts = figure.key().endsWith("F") || figure.key().endsWith("Btuh");
      if (counts) {
        assertThat(value.isNumber()).as(figure.key() + " in " + json).isTrue();
        assertThat(number(shown)).as(figure.key()).isCloseTo(value.asDouble(), near(shown));
      } else if (value.isBoolean()) {
        assertThat(shown).isEqualTo(value.asBoolean() ? "yes" : "no");
      }
    }
    for (String key : FormText.KEYS.keySet()) {
      assertThat(person.exists("key." + key)).as(key).isEqualTo(json.at(pointer(key)).isNumber());
      if (person.exists("key." + key)) {
        assertThat(person.text("key." + key)).isEqualTo(person.text("figure." + key));
      }
    }
  }

  private static String pointer(String key) {
    return "/" + key.replace('.', '/');
  }

  private static double number(String text) {
    Matcher number = NUMBER.matcher(text);
    assertThat(number.find()).as(text).isTrue();
    return Double.parseDouble(number.group().replace(",", ""));
  }

  /** Half of the last digit that is not an idle zero. */
  private static org.assertj.core.data.Offset<Double> near(String text) {
    Matcher number = NUMBER.matcher(text);
    assertThat(number.find()).as(text).isTrue();
    BigDecimal figure = new BigDecimal(number.group().replace(",", ""));
    int scale = figure.signum() == 0 ? 0 : figure.stripTrailingZeros().scale();
    return org.assertj.core.data.Offset.offset(0.5001 * Math.pow(10, -scale));
  }

  @Test
  void everyKindOfFieldReachesTheAnswerAndTheFile() throws IOException {
    check(false);
    change(() -> person.pick("place.level", "0.4 %"));
    change(() -> person.type("place.typedPeak", "104 °F"));
    change(() -> person.type("place.groundReflectance", "30 %"));
    change(() -> person.pick("place.shelter", "Open"));
    person.select("work");
    change(() -> person.type("work.hours", "Mon-Sat 7:00-12:00, 13:00-15:00"));
    change(() -> person.type("work.pullDown", "2 h"));
    change(() -> person.pick("work.clock", "Standard"));
    person.select("unit");
    change(() -> person.type("unit.capacity", "18000 BTU/h"));
    change(() -> person.pick("unit.label", "EER"));
    change(() -> person.click("unit.airflow.unknown"));
    assertThat(person.text("unit.airflow.low")).isEqualTo("60 %");
    change(() -> person.click("unit.airflow.unknown"));
    person.select("rooms[0]");
    change(() -> person.type("rooms[0].floorArea", "25 m2"));
    change(() -> person.type("rooms[0].setPoint", "80"));
    change(() -> person.pick("rooms[0].leakage.kind", "Air changes"));
    change(() -> person.click("rooms[0].leakage.airChanges.unknown"));
    change(() -> person.type("rooms[0].leakage.airChanges", "0.8 /h"));
    person.select("rooms[0].faces[0]");
    change(() -> person.type("rooms[0].faces[0].azimuth", "SW"));
    change(() -> person.type("rooms[0].faces[0].build.cavity", "R-19"));
    change(() -> person.pick("rooms[0].faces[0].build.member", "2x6"));
    change(() -> person.type("rooms[0].faces[0].build.lining[0].thickness", "5/8 in"));
    change(() -> person.click("rooms[0].faces[0].build.lining.add"));
    change(() -> person.click("rooms[0].faces[0].overhang.present"));
    change(() -> person.type("rooms[0].faces[0].overhang.depth", "0.5 m"));
    person.select("rooms[0].faces[0].windows[0]");
    change(
        () ->
            person.pick("rooms[0].faces[0].windows[0].glass.name.list", "single clear, aluminium"));
    assertThat(person.text("rooms[0].faces[0].windows[0].glass.shgc")).isEqualTo("79 %");
    person.select("rooms[0].faces[0].doors[0]");
    change(() -> person.pick("rooms[0].faces[0].doors[0].seal", "Daylight"));
    person.select("rooms[0].gains[1]");
    change(() -> person.type("rooms[0].gains[1].power", "2 hp"));
    change(() -> person.pick("rooms[0].gains[1].kind", "Other"));
    person.select("rooms[0].fans[0]");
    change(() -> person.type("rooms[0].fans[0].flow", "100 cfm"));

    Shop shop = person.shop();
    assertThat(shop.rooms().get(0).gains().get(1)).isInstanceOf(Gain.Other.class);
    assertThat(shop.rooms().get(0).leakage()).isInstanceOf(Leakage.AirChanges.class);
    check(true);
  }

  /** Prices leave the size as it is, but each of them reaches the shop, its answer and its file. */
  @Test
  void pricesAreTypedAndTiersAdded() throws IOException {
    String sentence = person.text("answer.sentence");
    person.select("prices");
    change(() -> person.pick("prices.electricity.kind", "Flat"));
    change(() -> person.type("prices.electricity.price", "0.18 dollars/kWh"));
    change(() -> person.type("prices.source", "the bill of June 2026"));
    change(() -> person.type("prices.budget", "300 dollars"));
    person.type("prices.firstCosts.windowUnit", "450");
    person.until(
        "it asks for the unit",
        () -> person.text("prices.firstCosts.windowUnit.note").contains("such as \"$450\""));
    change(() -> person.type("prices.firstCosts.windowUnit", "$450"));
    assertThat(person.shop().prices().electricity()).isEqualTo(new Electricity.Flat(0.18));
    assertThat(person.shop().prices().budget()).hasValue(300.0);
    assertThat(person.shop().prices().firstCosts().windowUnit()).hasValue(450.0);

    change(() -> person.pick("prices.electricity.kind", "Tiers"));
    String first = "prices.electricity.tiers[0]";
    change(() -> person.click(first.replace("[0]", ".add")));
    assertThat(person.text(first + ".upTo")).isEqualTo("500 kWh");
    change(() -> person.type(first + ".price", "0.12 dollars/kWh"));
    change(() -> person.type(first + ".upTo", "600 kWh"));
    change(() -> person.type(first.replace("0", "1") + ".price", "0.21 dollars/kWh"));
    change(() -> person.click("prices.changes.add"));
    change(() -> person.type("prices.changes[0].cost", "85 dollars"));
    change(() -> person.click("prices.changes.add"));
    assertThat(person.shop().prices().changes())
        .extracting(Prices.ChangePrice::change)
        .doesNotHaveDuplicates();

    person.type(first + ".upTo", "none");
    person.until(
        "the list complains",
        () -> person.text("prices.electricity.tiers.note").contains("tiers that do not rise"));
    person.type(first + ".upTo", "600 kWh");
    person.until(
        "it is calm",
        () ->
            person
                .text("prices.electricity.tiers.note")
                .equals("The first kWh of a month first; the last has no end."));
    person.untilSettled();
    person.type("prices.budget", "-5 dollars");
    person.until("it complains", () -> person.text("prices.budget.note").contains("found"));
    assertThat(person.shop().prices().budget()).hasValue(300.0);
    person.type("prices.budget", "300 dollars");
    person.untilSettled();

    ShopReading kept = ShopFile.read(folder.resolve("shop.json"), answering.stations());
    Prices prices = ((ShopReading.Good) kept).shop().prices();
    assertThat(prices).isEqualTo(person.shop().prices());
    List<Electricity.Tier> tiers = ((Electricity.Tiers) prices.electricity()).tiers();
    assertThat(tiers).extracting(Electricity.Tier::price).containsExactly(0.12, 0.21);
    assertThat(tiers.get(0).upTo()).hasValue(600.0);
    assertThat(tiers.get(1).upTo()).isEmpty();
    assertThat(prices.changes()).hasSize(2);
    assertThat(prices.changes().get(0).cost()).isEqualTo(85);
    assertThat(prices.source()).isEqualTo("the bill of June 2026");
    assertThat(person.text("answer.sentence")).isEqualTo(sentence);
    person.menu(ShopMenu.Deed.UNDO); // what was typed into the tier, as a whole
    person.menu(ShopMenu.Deed.UNDO);
    person.untilSettled();
    assertThat(person.shop().prices().changes()).hasSize(1);
  }

  @Test
  void aRangeIsTypedEndByEnd() throws IOException {
    person.select("rooms[0].faces[0]");
    String path = "rooms[0].faces[0].absorptance";
    person.click(path + ".range");
    change(() -> person.type(path + ".high", "80 %"));
    change(() -> person.type(path + ".low", "40 %"));
    person.type(path + ".likely", "90 %");
    person.until("it complains", () -> person.text(path + ".note").contains("must rise"));
    person.type(path + ".likely", "60 %");
    person.until("it is calm", () -> !person.text(path + ".note").contains("must rise"));
    change(() -> person.click(path + ".range"));
  }

  @Test
  void whatCannotBeTakenKeepsTheLastAnswerAndSaysWhy() {
    Shop shop = person.shop();
    String sentence = person.text("answer.sentence");
    person.select("rooms[0]");
    person.type("rooms[0].height", "about nine");
    person.until(
        "it complains", () -> person.text("rooms[0].height.note").contains("found \"about nine\""));
    assertThat(person.shop()).isEqualTo(shop);
    assertThat(person.text("answer.sentence")).isEqualTo(sentence);
    Component answer = person.find("answer.sentence", Component.class);
    assertThat(Person.on(answer::isEnabled)).isFalse();
    person.type("rooms[0].height", "8 ft");
    person.untilSettled();
    assertThat(Person.on(answer::isEnabled)).isTrue();
    assertThat(person.shop()).isEqualTo(shop);
  }

  @Test
  void whatDoesNotFitTogetherIsToldAtItsField() {
    person.select("rooms[0].faces[0].windows[0]");
    person.type("rooms[0].faces[0].windows[0].width", "28 ft");
    person.until("it complains", () -> person.text("warnings.toggle").contains("to mind"));
    person.until("it says what", () -> person.text("status.doing").contains("Window"));
    assertThat(person.text("rooms[0].faces[0].windows[0].about.note"))
        .contains("found offset and width together 29 ft");
    assertThat(person.shop().rooms().get(0).faces().get(0).windows().get(0).width())
        .isGreaterThan(8);
    person.menu(ShopMenu.Deed.UNDO);
    person.untilSettled();
    assertThat(person.shop()).isEqualTo(SmallShop.shop());
  }

  @Test
  void undoAndRedoGoBackAndForth() throws IOException {
    Shop first = person.shop();
    person.select("rooms[0]");
    change(() -> person.type("rooms[0].setPoint", "75 °F"));
    change(() -> person.pick("rooms[0].leakage.grade", "Leaky"));
    Shop last = person.shop();
    person.menu(ShopMenu.Deed.UNDO);
    person.menu(ShopMenu.Deed.UNDO);
    assertThat(person.shop()).isEqualTo(first);
    assertThat(person.text("rooms[0].setPoint")).isEqualTo("78 °F");
    person.menu(ShopMenu.Deed.REDO);
    person.menu(ShopMenu.Deed.REDO);
    assertThat(person.shop()).isEqualTo(last);
    assertThat(person.text("rooms[0].setPoint")).isEqualTo("75 °F");
  }

  @Test
  void partsAreAddedDoubledAndRemoved() {
    person.select("rooms[0].faces[0]");
    Additions additions = new Additions();
    additions.choose("add.Window");
    assertThat(person.shop().rooms().get(0).faces().get(0).windows().get(1).name())
        .isEqualTo("Window 2");
    person.click("parts.duplicate");
    assertThat(person.shop().rooms().get(0).faces().get(0).windows()).hasSize(3);
    person.click("parts.remove");
    person.click("parts.remove");
    assertThat(person.shop()).isEqualTo(SmallShop.shop());
    additions.choose("add.Room");
    assertThat(person.shop().rooms()).hasSize(2);
    person.type("rooms[1].name", "Shop");
    person.until(
        "a name that is taken is refused",
        () -> person.text("rooms[1].name.note").contains("taken"));
  }

  /** The menu behind "Add". */
  private final class Additions {

    void choose(String name) {
      Person.onEventThread(
          () -> {
            for (JMenuItem item : person.window().additions()) {
              if (name.equals(item.getName())) {
                item.doClick();
                return;
              }
            }
            throw new AssertionError(name);
          });
    }
  }

  @Test
  void unsavedChangesAreAskedAfter() throws IOException {
    person.select("rooms[0]");
    change(() -> person.type("rooms[0].setPoint", "75 °F"));
    assertThat(Person.on(() -> person.frame().getTitle())).doesNotContain("*");
    person.menu(ShopMenu.Deed.UNDO);
    assertThat(Person.on(() -> person.frame().getTitle())).startsWith("* ");
    person.replies.unsaved.add(Questions.Unsaved.BACK);
    person.menu(ShopMenu.Deed.CLOSE);
    assertThat(person.replies.asked).hasSize(1);
    assertThat(Person.on(() -> person.frame().isDisplayable())).isTrue();
    person.replies.unsaved.add(Questions.Unsaved.SAVE);
    person.menu(ShopMenu.Deed.CLOSE);
    person.until("it closes", () -> !person.frame().isDisplayable());
    ShopReading reading = ShopFile.read(folder.resolve("shop.json"), person.answering.stations());
    assertThat(((ShopReading.Good) reading).shop()).isEqualTo(SmallShop.shop());
  }

  @Test
  void aBadFileIsListedAndTheShopStays() throws IOException {
    Path bad = folder.resolve("bad.json");
    Files.writeString(bad, SmallShop.TEXT.replace("\"8 ft\"", "\"8\"").replace("plywood", "wool"));
    person.replies.opened.add(bad);
    person.menu(ShopMenu.Deed.OPEN);
    person.until("it says so", () -> person.replies.problems.size() > 2);
    assertThat(person.replies.problems.get(0)).contains("bad.json").contains("stays");
    assertThat(person.replies.problems).anyMatch(line -> line.startsWith("rooms[0].height: found"));
    assertThat(person.replies.problems).noneMatch(line -> line.contains("Exception"));
    assertThat(person.shop()).isEqualTo(SmallShop.shop());
    person.replies.saved.add(folder.resolve("no such folder").resolve("shop.json"));
    person.replies.problems.clear();
    person.menu(ShopMenu.Deed.SAVE_AS);
    person.until("it says so", () -> !person.replies.problems.isEmpty());
    assertThat(person.replies.problems).noneMatch(line -> line.contains("\tat "));
  }

  @Test
  void unitsChangeTextsAndNotTheShop() {
    Shop shop = person.shop();
    person.select("rooms[0]");
    String sentence = person.text("answer.sentence");
    person.menu(ShopMenu.Deed.SI);
    assertThat(person.shop()).isEqualTo(shop);
    assertThat(person.text("rooms[0].setPoint")).isEqualTo("25.6 °C");
    assertThat(person.text("answer.sentence")).contains("°C").doesNotContain("°F");
    assertThat(person.text("figure.peak.totalBtuh")).endsWith("W");
    JLabel area = person.find("rooms[0].floorArea.label", JLabel.class);
    assertThat(area.getLabelFor().getName()).isEqualTo("rooms[0].floorArea");
    person.menu(ShopMenu.Deed.INCH_POUND);
    assertThat(person.text("answer.sentence")).isEqualTo(sentence);
    assertThat(person.shop()).isEqualTo(shop);
    person.menu(ShopMenu.Deed.DARK);
    assertThat(person.shop()).isEqualTo(shop);
    assertThat(new FormSettings(folder.resolve("settings")).isDark()).isTrue();
    person.menu(ShopMenu.Deed.LIGHT);
  }

  @Test
  void aCopyIsSetAsideAndDroppedAgain() throws IOException {
    FormSettings settings = new FormSettings(folder.resolve("settings"));
    person.select("rooms[0]");
    person.type("rooms[0].setPoint", "75 °F");
    person.until("it is changed", () -> person.window().session().isDirty());
    Person.onEventThread(() -> person.window().filing().copyAside());
    person.until("a copy is there", () -> Files.exists(settings.unsavedCopy()));
    ShopReading copy = ShopFile.read(settings.unsavedCopy(), person.answering.stations());
    assertThat(((ShopReading.Good) copy).shop()).isEqualTo(person.shop());
    check(false);
    person.until("the copy is gone", () -> !Files.exists(settings.unsavedCopy()));

    Path left = folder.resolve("settings").resolve("unsaved-999999999999.json");
    Shop other = SmallShop.shop().withName("Left behind");
    ShopFile.save(other, left);
    Person.onEventThread(() -> person.window().filing().offerCopies());
    person.until("it is taken up", () -> person.window().session().now().equals(other));
    assertThat(Person.on(() -> person.window().session().isDirty())).isTrue();
    person.until("the copy is gone", () -> !Files.exists(left));
  }

  @Test
  void theAnswerLeavesAsReportAndSheet() throws Exception {
    Path report = folder.resolve("report");
    person.replies.folders.add(report);
    person.menu(ShopMenu.Deed.REPORT);
    person.until("it is written", () -> person.text("status.doing").contains("Report written"));
    assertThat(report).isNotEmptyDirectory();
    Optional<PrintedAnswer> sheet = Person.on(() -> person.window().sheet());
    BufferedImage page = new BufferedImage(612, 792, BufferedImage.TYPE_INT_RGB);
    PageFormat format = new PageFormat();
    Person.onEventThread(
        () ->
            assertThat(sheet.orElseThrow().print(page.createGraphics(), format, 0))
                .isEqualTo(Printable.PAGE_EXISTS));
    assertThat(sheet.orElseThrow().print(page.createGraphics(), format, 1))
        .isEqualTo(Printable.NO_SUCH_PAGE);
  }

  @Test
  void aNewShopIsPickedStretchedAndPlaced() {
    NewShopBox box = Person.on(() -> new NewShopBox(KnownNames.of(climates), UnitSystem.SI));
    assertThat(Person.on(box::shop)).as("no place is taken unasked").isEmpty();
    Person.onEventThread(
        () -> {
          for (Component each : Person.all((java.awt.Container) box.component())) {
            if ("new.station".equals(each.getName())) {
              ((javax.swing.JComboBox<?>) each).setSelectedItem("722230");
            } else if ("new.length".equals(each.getName())) {
              ((javax.swing.JTextField) each).setText("9");
            } else if ("new.unit".equals(each.getName())) {
              ((javax.swing.JTextField) each).setText("5275");
            }
          }
        });
    Shop made = Person.on(box::shop).orElseThrow();
    assertThat(made.place().station()).isEqualTo("722230");
    assertThat(made.unit().orElseThrow().capacity()).as("W, as typed").isEqualTo(5275);
    assertThat(made.rooms().get(0).faces()).anyMatch(face -> Math.abs(face.width() - 9) < 1e-9);
    JTextField unit =
        Person.on(
            () ->
                Person.all((java.awt.Container) box.component()).stream()
                    .filter(each -> "new.unit".equals(each.getName()))
                    .map(JTextField.class::cast)
                    .findFirst()
                    .orElseThrow());
    Person.onEventThread(() -> unit.setText("big"));
    assertThat(Person.on(box::shop)).as("no word is a size").isEmpty();
    Person.onEventThread(() -> unit.setText("none"));
    assertThat(Person.on(box::shop).orElseThrow().unit()).isEmpty();
  }

  @Test
  void aNewShopTakesThePlaceOfTheOld() {
    Shop other = SmallShop.shop().withName("Another");
    person.replies.made.add(other);
    person.menu(ShopMenu.Deed.NEW);
    person.until("it is there", () -> person.window().session().now().equals(other));
    assertThat(Person.on(() -> person.frame().getTitle())).contains("Another");
    person.untilSettled();
  }

  /** Who opens the form for the first time is told that it shows an example. */
  @Test
  void anExampleIsCalledOneUntilAnotherShopIsThere() {
    assertThat(person.text("welcome.words")).contains("example").contains(person.shop().name());
    assertThat(Person.on(() -> person.find("welcome", Component.class).isVisible())).isTrue();
    person.replies.made.add(SmallShop.shop().withName("Mine"));
    person.click("welcome.new");
    person.until("it is there", () -> person.window().session().now().name().equals("Mine"));
    assertThat(Person.on(() -> person.find("welcome", Component.class).isVisible())).isFalse();
    person.untilSettled();
  }

  @Test
  void helpTellsTheFirstSteps() {
    person.menu(ShopMenu.Deed.STEPS);
    assertThat(person.replies.asked.get(person.replies.asked.size() - 1))
        .contains("File, New")
        .contains("things to mind");
  }

  @Test
  void aFileCanBeDroppedOnTheWindow() throws IOException {
    Path file = folder.resolve("dropped.json");
    ShopFile.save(SmallShop.shop().withName("Dropped"), file);
    Person.onEventThread(
        () -> {
          TransferHandler taker = person.frame().getTransferHandler();
          Transferable files = dragged(DataFlavor.javaFileListFlavor, List.of(file.toFile()));
          assertThat(taker.importData(new TransferHandler.TransferSupport(person.frame(), files)))
              .isTrue();
          Transferable words = dragged(DataFlavor.stringFlavor, "dropped.json");
          assertThat(taker.importData(new TransferHandler.TransferSupport(person.frame(), words)))
              .as("words are no file")
              .isFalse();
        });
    person.until("it is open", () -> person.window().session().now().name().equals("Dropped"));
    person.untilSettled();
  }

  private static Transferable dragged(DataFlavor flavor, Object what) {
    return new Transferable() {
      @Override
      public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {flavor};
      }

      @Override
      public boolean isDataFlavorSupported(DataFlavor asked) {
        return flavor.equals(asked);
      }

      @Override
      public Object getTransferData(DataFlavor asked) {
        return what;
      }
    };
  }

  @Test
  void theWindowComesBackWhereItWas() {
    Rectangle place = new Rectangle(20, 30, 1010, 660);
    Person.onEventThread(() -> person.frame().setBounds(place));
    person.close();
    FormSettings settings = new FormSettings(folder.resolve("settings"));
    assertThat(settings.window()).contains(place);
    settings.keepWindow(new Rectangle(-5000, -5000, 900, 700)); // on a screen that is gone
    person = new Person(SmallShop.shop(), climates, answering, folder.resolve("settings"));
    assertThat(Person.on(() -> person.frame().getX())).isNotNegative();
    person.untilSettled();
  }

  @Test
  void aPictureIsSavedSharp() throws IOException {
    ChartPanel chart = person.find("chart.day", ChartPanel.class);
    assertThat(Person.on(() -> chart.getPopupMenu().getComponentCount())).isEqualTo(2);
    BufferedImage image =
        ImageIO.read(new ByteArrayInputStream(Person.on(() -> PictureMenu.png(chart))));
    assertThat(image.getWidth()).isGreaterThan(chart.getWidth());
    assertThat(PictureMenu.named(Path.of("day"))).isEqualTo(Path.of("day.png"));
    assertThat(PictureMenu.named(Path.of("v1.2"))).isEqualTo(Path.of("v1.2.png"));
    assertThat(PictureMenu.named(Path.of("day.PNG"))).isEqualTo(Path.of("day.PNG"));
  }
}
