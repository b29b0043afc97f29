package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceWatch;
import org.shopclime.climate.Climates;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirlineWords;
import org.shopclime.report.MadeAir;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.Stations;
import org.shopclime.shop.Warning;

/** The page on compressed air as a person uses it; its answers are made. */
class AirWindowTest {

  private static Climates climates;
  private static Answering real;
  private static AirlineAnswer made;

  @TempDir Path folder;
  private MadeAnswers answers;
  private Person person;

  /** Usual answers, but for the places of the compressor: these are made, and come when told. */
  private static final class MadeAnswers implements Answering {

    final AtomicInteger asked = new AtomicInteger();
    final AtomicReference<CountDownLatch> gate = new AtomicReference<>(new CountDownLatch(0));
    final AtomicReference<String> fault = new AtomicReference<>("");
    final AtomicInteger cancelled = new AtomicInteger();

    @Override
    public ShopCheck.Findings check(Shop shop) {
      return real.check(shop);
    }

    @Override
    public CoreAnswer quick(Shop shop) {
      return real.quick(shop);
    }

    @Override
    public SizeAnswer whole(Shop shop, List<Warning> found, Progress progress) {
      return real.whole(shop, found, progress);
    }

    @Override
    public Optional<AirlineAnswer> air(Shop shop, PlaceWatch watch) {
      asked.incrementAndGet();
      watch.at(0.25);
      try {
        gate.get().await();
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
      if (watch.isCancelled()) {
        cancelled.incrementAndGet();
        throw new CancellationException();
      }
      if (!fault.get().isEmpty()) {
        throw new IllegalStateException(fault.get());
      }
      boolean has =
          shop.rooms().stream()
              .flatMap(room -> room.gains().stream())
              .anyMatch(gain -> gain instanceof Gain.Compressor);
      return has ? Optional.of(made) : Optional.empty();
    }

    @Override
    public Stations stations() {
      return real.stations();
    }
  }

  @BeforeAll
  static void needsDisplay() {
    Assumptions.assumeFalse(GraphicsEnvironment.isHeadless());
    climates = Climates.load();
    real = new Remembering(climates);
    made = MadeAir.answer();
  }

  @BeforeEach
  void open() {
    answers = new MadeAnswers();
    person = new Person(Examples.shop(Examples.USUAL), climates, answers, folder);
    person.untilSettled();
  }

  @AfterEach
  void close() {
    if (person != null) {
      answers.gate.get().countDown();
      person.close();
      Person.onEventThread(() -> Look.use(false));
    }
  }

  private void seeAir(boolean air) {
    JTabbedPane tabs = person.find("answer.tabs", JTabbedPane.class);
    Person.onEventThread(() -> tabs.setSelectedIndex(air ? tabs.indexOfTab("Compressor") : 0));
  }

  private void untilShown() {
    person.until(
        "the places are shown",
        () ->
            !person.find("air.state", Component.class).isShowing()
                && person.find("air.sentence", Component.class).isEnabled()
                && person.find("air.sentence", Component.class).isShowing());
  }

  private boolean isEnabled(String name) {
    Component found = person.find(name, Component.class);
    return Person.on(found::isEnabled);
  }

  private boolean isShowing(String name) {
    Component found = person.find(name, Component.class);
    return Person.on(found::isShowing);
  }

  private String words(String name) {
    return person.text(name).replace('\u00a0', ' ');
  }

  @Test
  void itIsAskedOnlyWhileSeenAndShowsWords() {
    assertThat(answers.asked.get()).isZero();
    seeAir(true);
    untilShown();
    assertThat(answers.asked.get()).isEqualTo(1);
    assertThat(words("air.sentence"))
        .isEqualTo(new AirlineWords(made, UnitSystem.INCH_POUND).sentence());
    assertThat(words("air.why"))
        .contains(
            "Below \"closet with a fan from and to the room\", where it is 103 °F, because their place"
                + " gets hotter than the 104 °F the machine takes: 2. Closet with grilles to the room"
                + " 112 °F; ")
        .contains("– In the room: excluded because solvent fumes or powder reach its motor");
    assertThat(words("air.care")).contains("NFPA 33").contains("licensed").contains("fuel-gas");
    assertThat(words("air.limits")).contains("Noise is not computed");
    for (String chart : List.of("air", "vents", "water")) {
      ChartPanel panel = person.find("chart." + chart, ChartPanel.class);
      assertThat(Person.on(panel::getChart)).as(chart).isNotNull();
      assertThat(panel.getAccessibleContext().getAccessibleName()).isNotBlank();
    }
    JTable table = person.find("table.air", JTable.class);
    assertThat(Person.on(table::getRowCount)).isEqualTo(13);
    assertThat(Person.on(() -> table.getValueAt(0, 1))).isEqualTo("103");
    for (String name : List.of("air.sentence", "air.picture", "table.air", "table.line")) {
      Component found = person.find(name, Component.class);
      assertThat(found.isFocusable()).as(name).isTrue();
      assertThat(found.getAccessibleContext().getAccessibleName()).as(name).isNotBlank();
    }
    assertThat(
            person
                .find("air.picture", Component.class)
                .getAccessibleContext()
                .getAccessibleDescription())
        .contains("1. Closet with a fan from and to the room: 103 °F");

    person.menu(ShopMenu.Deed.SI);
    assertThat(words("air.sentence")).contains("°C").doesNotContain("°F");
    assertThat(Person.on(() -> table.getValueAt(0, 1))).isEqualTo("39");
    person.menu(ShopMenu.Deed.DARK);
    seeAir(false);
    seeAir(true);
    assertThat(answers.asked.get()).as("kept while the shop is the same").isEqualTo(1);
  }

  @Test
  void whileTypingTheLastAnswerIsGreyAndCanBeStopped() {
    seeAir(true);
    untilShown();
    answers.gate.set(new CountDownLatch(1));
    person.select("rooms[0]");
    person.type("rooms[0].setPoint", "about nine");
    person.until("it is grey", () -> !isEnabled("air.sentence"));
    assertThat(words("air.state")).contains("cannot be taken yet");
    person.type("rooms[0].setPoint", "80 °F");
    person.untilSettled();
    person.until("it is asked again", () -> isShowing("air.progress"));
    assertThat(isEnabled("air.sentence")).isFalse();
    assertThat(isShowing("air.sentence")).isTrue();
    assertThat(words("air.state")).contains("last answer");
    person.click("air.stop");
    assertThat(isShowing("air.progress")).isFalse();
    answers.gate.get().countDown();
    person.until("the question notices", () -> answers.cancelled.get() == 1);
    assertThat(isEnabled("air.sentence")).isFalse();
    person.click("air.again");
    untilShown();
    assertThat(answers.asked.get()).isEqualTo(3);
  }

  @Test
  void withoutCompressorItSaysSo() {
    Shop shop = person.shop();
    int at = 0;
    while (!(shop.rooms().get(0).gains().get(at) instanceof Gain.Compressor)) {
      at++;
    }
    person.select("rooms[0].gains[" + at + "]");
    person.click("parts.remove");
    person.untilSettled();
    seeAir(true);
    person.until("it says so", () -> words("air.state").equals(AirlineWords.NO_COMPRESSOR));
    assertThat(isShowing("air.state")).isTrue();
    assertThat(isShowing("air.picture")).isFalse();
    assertThat(isShowing("air.stop")).isFalse();
  }

  @Test
  void whatFailsIsToldAndTheRestOfTheAnswerStays() {
    answers.fault.set("a room where people work gets hotter than 80 °C");
    seeAir(true);
    person.until("it says so", () -> words("air.state").contains("could not be compared"));
    assertThat(words("air.state")).contains("hotter than 80 °C").doesNotContain("Exception");
    assertThat(isEnabled("answer.sentence")).isTrue();
    answers.fault.set("");
    person.click("air.again");
    untilShown();
  }

  @Test
  void nothingIsClipped() {
    seeAir(true);
    untilShown();
    List<String> faults = new ArrayList<>();
    for (Dimension size :
        List.of(new Dimension(1366, 768), new Dimension(1100, 700), new Dimension(700, 480))) {
      Person.onEventThread(() -> person.frame().setSize(size));
      LayoutWindowTest.pause();
      if (person.exists("middle.tabs")) {
        JTabbedPane middle = person.find("middle.tabs", JTabbedPane.class);
        Person.onEventThread(() -> middle.setSelectedIndex(Math.min(1, middle.getTabCount() - 1)));
      }
      LayoutWindowTest.pause();
      faults.addAll(Person.on(() -> LayoutWindowTest.faults(person, size.toString())));
      Component picture = person.find("air.picture", Component.class);
      int missing = Person.on(() -> picture.getPreferredSize().height - picture.getHeight());
      assertThat(missing).as("height missing at " + size).isLessThanOrEqualTo(1);
      Component page = person.find("air.page", Component.class);
      int wider = Person.on(() -> page.getWidth() - page.getParent().getWidth());
      assertThat(wider).as("width too much at " + size).isLessThanOrEqualTo(0);
    }
    assertThat(faults).isEmpty();
  }
}
