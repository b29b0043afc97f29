package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;

/** The place is chosen with mouse or keys, and the shop gets it. */
class PlacePickerWindowTest {

  private static final String MOBILE = "722230";
  private static final String DENVER = "725650";
  private static final String SCALE = "flatlaf.uiScale";

  private static Climates climates;

  @TempDir Path folder;

  @BeforeAll
  static void needsDisplay() {
    Assumptions.assumeFalse(GraphicsEnvironment.isHeadless());
    climates = Climates.load();
  }

  @AfterEach
  void usualLook() {
    if (!GraphicsEnvironment.isHeadless()) {
      System.clearProperty(SCALE);
      Person.onEventThread(() -> Look.use(false));
    }
  }

  private static Station station(String id) {
    return climates.find(id).orElseThrow().station();
  }

  /** The dialog, open. */
  private static final class Asked implements AutoCloseable {

    final CompletableFuture<Optional<Station>> answer = new CompletableFuture<>();
    final JDialog dialog;

    Asked(Optional<Station> current, UnitSystem units, boolean dark) {
      Person.onEventThread(() -> Look.use(dark));
      javax.swing.SwingUtilities.invokeLater(
          () -> answer.complete(PlaceDialog.choose(new JLabel(), climates, current, units)));
      Person.await("the picker opens", () -> open().isPresent());
      dialog = Person.on(() -> open().orElseThrow());
      Person.await("it is drawn", () -> map().getWidth() > 100);
    }

    private static Optional<JDialog> open() {
      for (Window window : Window.getWindows()) {
        if (window instanceof JDialog dialog
            && "picker".equals(dialog.getName())
            && dialog.isShowing()) {
          return Optional.of(dialog);
        }
      }
      return Optional.empty();
    }

    <C extends Component> C find(String name, Class<C> type) {
      return Person.on(
          () ->
              type.cast(
                  Person.all(dialog).stream()
                      .filter(each -> name.equals(each.getName()))
                      .findFirst()
                      .orElseThrow(() -> new AssertionError("nothing is called " + name))));
    }

    MapView map() {
      return find("picker.map", MapView.class);
    }

    void search(String text) {
      JTextField field = find("picker.search", JTextField.class);
      Person.onEventThread(() -> field.setText(text));
    }

    String text(String name) {
      JTextArea area = find(name, JTextArea.class);
      return Person.on(area::getText).replace('\u00a0', ' ');
    }

    void untilCard(String station) {
      Person.await("its weather is shown", () -> text("picker.card.title").startsWith(station));
    }

    /** What a key does in a component: its own binding, or that of the whole window. */
    void key(String name, String key) {
      JComponent at = find(name, JComponent.class);
      KeyStroke stroke = KeyStroke.getKeyStroke(key);
      Person.onEventThread(
          () -> {
            at.requestFocusInWindow();
            at.dispatchEvent(
                new KeyEvent(
                    at,
                    KeyEvent.KEY_PRESSED,
                    System.currentTimeMillis(),
                    stroke.getModifiers(),
                    stroke.getKeyCode(),
                    KeyEvent.CHAR_UNDEFINED));
          });
    }

    void mouse(int kind, Point at, int buttons) {
      Person.onEventThread(
          () ->
              map()
                  .dispatchEvent(
                      new MouseEvent(
                          map(),
                          kind,
                          System.currentTimeMillis(),
                          buttons,
                          at.x,
                          at.y,
                          1,
                          false,
                          buttons == 0 ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1)));
    }

    void click(Point at) {
      mouse(MouseEvent.MOUSE_PRESSED, at, InputEvent.BUTTON1_DOWN_MASK);
      mouse(MouseEvent.MOUSE_RELEASED, at, InputEvent.BUTTON1_DOWN_MASK);
    }

    Optional<Station> answer() throws Exception {
      return answer.get(60, TimeUnit.SECONDS);
    }

    @Override
    public void close() {
      Person.onEventThread(dialog::dispose);
    }
  }

  @Test
  void theCurrentStationIsChosenAtFirstAndItsWeatherShown() throws Exception {
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.INCH_POUND, false)) {
      JTable list = asked.find("picker.list", JTable.class);
      assertThat(Person.on(() -> list.getRowCount())).isEqualTo(climates.stations().size());
      assertThat(Person.on(() -> list.getValueAt(list.getSelectedRow(), 0)))
          .isEqualTo("Mobile Regional AP");
      asked.untilCard("Mobile Regional AP, AL");
      assertThat(asked.text("picker.card.where")).contains(MOBILE).contains("ft above the sea");
      assertThat(asked.text("picker.climate.hotDay")).contains("°F in July");
      AccessibleContext words = Person.on(() -> asked.map().getAccessibleContext());
      assertThat(words.getAccessibleName()).isEqualTo("Map of the stations");
      assertThat(words.getAccessibleDescription()).contains("Chosen: Mobile Regional AP, AL");
      asked.key("picker.search", "ESCAPE");
      assertThat(asked.answer()).as("going back chooses nothing").isEmpty();
    }
  }

  @Test
  void typingNarrowsArrowsMoveAndEnterTakes() throws Exception {
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.SI, false)) {
      asked.search("colorado");
      JTable list = asked.find("picker.list", JTable.class);
      assertThat(Person.on(() -> list.getSelectedRow())).isZero();
      assertThat(asked.text("picker.told")).contains("in Colorado.");
      asked.search("denver");
      asked.untilCard("Denver");
      int rows = Person.on(() -> list.getRowCount());
      assertThat(rows).isBetween(1, 5);
      asked.search("mobile");
      asked.key("picker.search", "DOWN");
      assertThat(Person.on(() -> list.getSelectedRow())).isEqualTo(1);
      Object name = Person.on(() -> list.getValueAt(1, 0));
      asked.untilCard(name + ", AL");
      assertThat(asked.text("picker.card.where")).contains(" m above the sea");
      asked.key("picker.list", "ENTER");
      assertThat(asked.answer().map(Station::name)).contains(name.toString());
    }
  }

  @Test
  void whatFitsNothingCannotBeTaken() throws Exception {
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.INCH_POUND, false)) {
      asked.search("xyzzy");
      assertThat(asked.text("picker.told")).startsWith("Nothing fits: found \"xyzzy\"");
      JButton use = asked.find("picker.use", JButton.class);
      assertThat(Person.on(use::isEnabled)).isFalse();
      asked.key("picker.list", "ENTER");
      assertThat(Person.on(asked.dialog::isShowing)).isTrue();
      asked.search("");
      Person.onEventThread(() -> asked.find("picker.back", JButton.class).doClick());
      assertThat(asked.answer()).isEmpty();
    }
  }

  @Test
  void aClickOnTheMapChoosesTheNearestDot() throws Exception {
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.INCH_POUND, false)) {
      asked.search("alabama");
      Point denver = Person.on(() -> asked.map().of(station(DENVER)).orElseThrow());
      asked.mouse(MouseEvent.MOUSE_MOVED, denver, 0);
      assertThat(Person.on(() -> asked.map().pointed())).contains(station(DENVER));
      asked.click(denver);
      asked.untilCard("Denver");
      assertThat(Person.on(() -> asked.find("picker.search", JTextField.class).getText()))
          .as("the search it does not fit is over")
          .isEmpty();
      Person.onEventThread(() -> asked.find("picker.use", JButton.class).doClick());
      assertThat(asked.answer()).contains(station(DENVER));
    }
  }

  @Test
  void theMapIsMovedAndLookedAtClosely() {
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.INCH_POUND, false)) {
      MapView map = asked.map();
      MapSight whole = Person.on(map::sight);
      Person.onEventThread(() -> asked.find("picker.closer", JButton.class).doClick());
      MapSight closer = Person.on(map::sight);
      assertThat(closer.zoom()).isGreaterThan(1);
      Point at = Person.on(() -> map.of(station(MOBILE)).orElseThrow());
      Person.onEventThread(
          () ->
              map.dispatchEvent(
                  new MouseWheelEvent(
                      map,
                      MouseEvent.MOUSE_WHEEL,
                      System.currentTimeMillis(),
                      0,
                      at.x,
                      at.y,
                      0,
                      false,
                      MouseWheelEvent.WHEEL_UNIT_SCROLL,
                      1,
                      -1)));
      assertThat(Person.on(map::sight).zoom()).isGreaterThan(closer.zoom());
      assertThat(Person.on(() -> map.of(station(MOBILE)).orElseThrow()).distance(at)).isLessThan(2);
      Point to = new Point(at.x - 60, at.y - 40);
      asked.mouse(MouseEvent.MOUSE_PRESSED, at, InputEvent.BUTTON1_DOWN_MASK);
      asked.mouse(MouseEvent.MOUSE_DRAGGED, to, InputEvent.BUTTON1_DOWN_MASK);
      asked.mouse(MouseEvent.MOUSE_RELEASED, to, InputEvent.BUTTON1_DOWN_MASK);
      Point now = Person.on(() -> map.of(station(MOBILE)).orElseThrow());
      assertThat(now.x).isLessThan(at.x);
      Person.onEventThread(() -> asked.find("picker.further", JButton.class).doClick());
      Person.onEventThread(() -> asked.find("picker.whole", JButton.class).doClick());
      assertThat(Person.on(map::sight)).isEqualTo(whole);
    }
  }

  @ParameterizedTest
  @CsvSource({"1,false", "1,true", "2,false"})
  void nothingIsClippedAndEverythingIsReachedByKeys(int scale, boolean dark) {
    System.setProperty(SCALE, String.valueOf(scale));
    try (Asked asked = new Asked(Optional.of(station(MOBILE)), UnitSystem.INCH_POUND, dark)) {
      assertThat(UIScale.getUserScaleFactor()).isEqualTo(scale);
      asked.untilCard("Mobile Regional AP, AL");
      List<String> faults = new ArrayList<>();
      Person.onEventThread(
          () -> {
            for (Component each : Person.all(asked.dialog.getContentPane())) {
              boolean text = each instanceof JLabel || each instanceof JButton;
              if (!each.isShowing() || !text || each.getName() == null) {
                continue;
              }
              if (each.getWidth() < each.getPreferredSize().width
                  || each.getHeight() < each.getPreferredSize().height) {
                faults.add(each.getName() + " is clipped");
              }
              if (each instanceof JButton button
                  && button.getMnemonic() == 0
                  && button.getName().startsWith("picker")) {
                faults.add(each.getName() + " has no key");
              }
            }
          });
      assertThat(faults).isEmpty();
      JTextArea last = asked.find("picker.climate.winter.label", JTextArea.class);
      JComponent chart = asked.find("picker.card.chart", JComponent.class);
      int gap =
          Person.on(
              () ->
                  chart.getLocationOnScreen().y - last.getLocationOnScreen().y - last.getHeight());
      assertThat(gap).as("between figures and chart").isBetween(0, UIScale.scale(40));
      BufferedImage picture =
          Person.on(
              () -> {
                MapView map = asked.map();
                BufferedImage image =
                    new BufferedImage(map.getWidth(), map.getHeight(), BufferedImage.TYPE_INT_RGB);
                map.paint(image.getGraphics());
                return image;
              });
      Point at = Person.on(() -> asked.map().of(station(MOBILE)).orElseThrow());
      int heat = Person.on(() -> Look.charts().heat().getRGB());
      assertThat(picture.getRGB(at.x, at.y)).as("the chosen dot").isEqualTo(heat);
    }
  }

  @Test
  void theShopGetsTheStationAndUndoGivesItBack() {
    Answering answering = new Remembering(climates);
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      person.untilSettled();
      List<Optional<Station>> shown = new ArrayList<>();
      person.replies.placeAsked =
          (known, current) -> {
            shown.add(current);
            return Optional.empty();
          };
      person.select("place");
      person.click("place.station.map");
      assertThat(person.shop()).as("going back changes nothing").isEqualTo(SmallShop.shop());
      assertThat(shown).containsExactly(Optional.of(station(MOBILE)));
      person.replies.placeAsked = (known, current) -> Optional.of(station(DENVER));
      person.menu(ShopMenu.Deed.PLACE);
      assertThat(person.shop().place().station()).isEqualTo(DENVER);
      assertThat(person.text("place.station")).startsWith("Denver");
      person.untilSettled();
      person.menu(ShopMenu.Deed.UNDO);
      person.untilSettled();
      assertThat(person.shop()).isEqualTo(SmallShop.shop());
    }
  }
}
