package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.climate.Climates;

/** Nothing is clipped, nothing lies over something else, and every field can be reached by keys. */
class LayoutWindowTest {

  private static final List<String> PARTS =
      List.of(
          "",
          "place",
          "work",
          "unit",
          "prices",
          "air",
          "rooms[0]",
          "rooms[0].contents",
          "rooms[0].faces[0]",
          "rooms[0].faces[0].windows[0]",
          "rooms[0].faces[0].doors[0]",
          "rooms[0].faces[2]",
          "rooms[0].fans[0]",
          "rooms[0].gains[0]",
          "rooms[0].gains[1]");

  /** What FlatLaf enlarges everything by. */
  private static final String SCALE = "flatlaf.uiScale";

  private static final List<Dimension> USUAL =
      List.of(new Dimension(1366, 768), new Dimension(1100, 700));

  private static final List<Dimension> LARGE =
      List.of(new Dimension(1366, 768), new Dimension(2560, 1440));

  @TempDir Path folder;

  private static Climates climates;
  private static Answering answering;

  @BeforeAll
  static void needsDisplay() {
    Assumptions.assumeFalse(GraphicsEnvironment.isHeadless());
    climates = Climates.load();
    answering = new Remembering(climates);
  }

  @AfterEach
  void usualScale() {
    if (!GraphicsEnvironment.isHeadless()) {
      System.clearProperty(SCALE);
      Person.onEventThread(() -> Look.use(false));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void nothingIsClipped(int scale) {
    System.setProperty(SCALE, String.valueOf(scale));
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      person.untilSettled();
      assertThat(UIScale.getUserScaleFactor()).isEqualTo(scale);
      List<String> faults = new ArrayList<>();
      for (Dimension size : scale == 1 ? USUAL : LARGE) {
        Person.onEventThread(() -> person.frame().setSize(size));
        pause();
        for (String part : PARTS) {
          person.select(part);
          pause();
          faults.addAll(Person.on(() -> faults(person, size + " " + part)));
        }
        for (String tabs : List.of("middle.tabs", "answer.tabs")) {
          if (person.exists(tabs)) {
            JTabbedPane pane = person.find(tabs, JTabbedPane.class);
            for (int tab = Person.on(pane::getTabCount) - 1; tab >= 0; tab--) {
              int at = tab;
              Person.onEventThread(() -> pane.setSelectedIndex(at));
              pause();
              faults.addAll(Person.on(() -> faults(person, size + " " + tabs + " " + at)));
            }
          }
        }
      }
      assertThat(faults).as("at scale " + UIScale.getUserScaleFactor()).isEmpty();
    }
  }

  /** Lets what a change of size or text sets off come to rest. */
  static void pause() {
    for (int i = 0; i < 4; i++) {
      Person.onEventThread(() -> {});
      try {
        Thread.sleep(25);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  static List<String> faults(Person person, String where) {
    List<String> faults = new ArrayList<>();
    for (Component each : Person.all(person.frame().getContentPane())) {
      if (!each.isShowing()) {
        continue;
      }
      boolean text =
          each instanceof JLabel
              || each instanceof AbstractButton
              || each instanceof JTextArea
              || each instanceof JComboBox;
      boolean ours = each.getName() != null;
      if (text && ours && each.getHeight() < each.getPreferredSize().height) {
        faults.add(where + ": " + each.getName() + " is too low");
      }
      boolean wraps = each instanceof JTextArea || each instanceof JComboBox;
      if (text && ours && !wraps && each.getWidth() < each.getPreferredSize().width) {
        if (!"status.doing".equals(each.getName())) {
          faults.add(where + ": " + each.getName() + " is too narrow");
        }
      }
      boolean field = each instanceof JTextField || each instanceof JComboBox;
      if (field && ours && each.getWidth() < UIScale.scale(40)) {
        faults.add(where + ": " + each.getName() + " has no room to type");
      }
      if (each instanceof JPanel panel) {
        faults.addAll(overlaps(panel, where));
      }
    }
    return faults;
  }

  private static List<String> overlaps(Container panel, String where) {
    List<String> faults = new ArrayList<>();
    Component[] parts = panel.getComponents();
    for (int i = 0; i < parts.length; i++) {
      for (int j = i + 1; j < parts.length; j++) {
        Rectangle shared = parts[i].getBounds().intersection(parts[j].getBounds());
        if (parts[i].isVisible() && parts[j].isVisible() && shared.width > 1 && shared.height > 1) {
          faults.add(where + ": " + name(parts[i]) + " lies over " + name(parts[j]));
        }
      }
      Rectangle inside = parts[i].getBounds();
      if (parts[i].isVisible() && inside.x + inside.width > panel.getWidth() + 1) {
        faults.add(
            where
                + ": "
                + name(parts[i])
                + " goes over the edge of "
                + name(panel)
                + " in "
                + name(panel.getParent()));
      }
      if (parts[i].isVisible() && inside.y + inside.height > panel.getHeight() + 1) {
        faults.add(where + ": " + name(parts[i]) + " goes below the edge of " + name(panel));
      }
    }
    return faults;
  }

  private static String name(Component component) {
    return component.getName() == null ? component.getClass().getSimpleName() : component.getName();
  }

  @Test
  void everyFieldHasANameAndALabelAndTakesTheKeyboard() {
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      person.untilSettled();
      List<String> faults = new ArrayList<>();
      for (String part : PARTS) {
        person.select(part);
        faults.addAll(Person.on(() -> unreachable(person)));
      }
      JTabbedPane pages = person.find("answer.tabs", JTabbedPane.class);
      for (int page = 0; page < Person.on(pages::getTabCount); page++) {
        int at = page;
        Person.onEventThread(() -> pages.setSelectedIndex(at));
        faults.addAll(Person.on(() -> unreachable(person)));
      }
      assertThat(faults).isEmpty();
    }
  }

  /** Help says figures in the units of the fields, and is hidden where its field is. */
  @Test
  void helpGoesWithItsField() {
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      person.select("work");
      assertThat(person.text("work.airSpeed.note")).contains("0.67 mph").doesNotContain("m/s");
      person.menu(ShopMenu.Deed.SI);
      assertThat(person.text("work.airSpeed.note")).contains("0.3 m/s").doesNotContain("mph");
      String layer = "rooms[0].faces[0].build.lining[0].";
      person.select("rooms[0].faces[0]");
      pause();
      Component note = person.find(layer + "permeance.note", Component.class);
      assertThat(Person.on(note::isShowing)).isFalse();
      person.click(layer.substring(0, layer.length() - 1) + ".byHand");
      pause();
      assertThat(Person.on(note::isVisible)).isTrue();
      assertThat(person.text(layer + "permeance.note")).contains("ng/(s·m²·Pa)");
      person.menu(ShopMenu.Deed.INCH_POUND);
      assertThat(person.text(layer + "permeance.note")).contains("perm");
      person.select("air");
      assertThat(person.text("air.about.note")).contains("places for the compressor");
      assertThat(person.text("air.tools.note")).contains("All at 0 min");
      assertThat(person.text("air.tools.blowing")).isEqualTo("0 min");
    }
  }

  /** A page in which little or nothing takes the focus is read to its end by keys all the same. */
  @Test
  void pagesAreScrolledByKeys() {
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      person.untilSettled();
      JTabbedPane pages = person.find("answer.tabs", JTabbedPane.class);
      Person.onEventThread(() -> pages.setSelectedIndex(1));
      pause();
      JScrollPane page = person.find("unit.scroll", JScrollPane.class);
      Object on = pages.getInputMap().get(KeyStroke.getKeyStroke("PAGE_DOWN"));
      Object back = pages.getInputMap().get(KeyStroke.getKeyStroke("PAGE_UP"));
      Person.onEventThread(() -> deed(pages, on));
      int below = Person.on(() -> page.getVerticalScrollBar().getValue());
      assertThat(below).isGreaterThan(100);
      Person.onEventThread(() -> deed(pages, back));
      assertThat(Person.on(() -> page.getVerticalScrollBar().getValue())).isZero();
    }
  }

  /** With much room and with little every page has its title in sight and a key that opens it. */
  @ParameterizedTest
  @ValueSource(ints = {1600, 1280, 1000, 700})
  void everyPageIsInSightAndOpenedByKeys(int width) {
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      Person.onEventThread(() -> person.frame().setSize(width, 700));
      pause();
      JTabbedPane pages = person.find("answer.tabs", JTabbedPane.class);
      List<KeyStroke> keys = new ArrayList<>();
      for (int page = Person.on(pages::getTabCount) - 1; page >= 0; page--) {
        int at = page;
        JMenuItem item = Person.on(() -> item(person.frame().getJMenuBar(), "menu.page." + at));
        keys.add(item.getAccelerator());
        Person.onEventThread(item::doClick);
        pause();
        assertThat(Person.on(pages::getSelectedIndex)).isEqualTo(page);
        assertThat(Person.on(pages::isShowing)).isTrue();
        Rectangle title = Person.on(() -> pages.getBoundsAt(at));
        assertThat(new Rectangle(pages.getSize()).contains(title))
            .as(pages.getTitleAt(page) + " at " + title)
            .isTrue();
        if (page > 0) {
          Rectangle before = Person.on(() -> pages.getBoundsAt(at - 1));
          boolean after = title.y > before.y || (title.y == before.y && title.x > before.x);
          assertThat(after).as(title + " after " + before).isTrue();
        }
      }
      assertThat(keys).doesNotContainNull().doesNotHaveDuplicates();
    }
  }

  private static JMenuItem item(JMenuBar bar, String name) {
    for (int i = 0; i < bar.getMenuCount(); i++) {
      for (Component each : bar.getMenu(i).getMenuComponents()) {
        if (name.equals(each.getName())) {
          return (JMenuItem) each;
        }
      }
    }
    throw new AssertionError("no menu item is called " + name);
  }

  /** Tabs that were put away while the colours changed have the new ones when they come back. */
  @Test
  void aNarrowWindowHasTheColoursChosenInAWideOne() {
    try (Person person = new Person(SmallShop.shop(), climates, answering, folder)) {
      Person.onEventThread(() -> person.frame().setSize(700, 600));
      pause();
      Color light = Person.on(() -> person.find("middle.tabs", JTabbedPane.class).getBackground());
      Person.onEventThread(() -> person.frame().setSize(1366, 768));
      pause();
      person.menu(ShopMenu.Deed.DARK);
      Person.onEventThread(() -> person.frame().setSize(700, 600));
      pause();
      Color dark = Person.on(() -> person.find("middle.tabs", JTabbedPane.class).getBackground());
      assertThat(dark)
          .isEqualTo(Person.on(() -> UIManager.getColor("TabbedPane.background")))
          .isNotEqualTo(light);
    }
  }

  private static void deed(JTabbedPane pages, Object name) {
    pages.getActionMap().get(name).actionPerformed(new ActionEvent(pages, 0, name.toString()));
  }

  private static List<String> unreachable(Person person) {
    List<String> faults = new ArrayList<>();
    for (Component each : Person.all(person.frame().getContentPane())) {
      boolean editorOfCombo = each.getParent() instanceof JComboBox;
      boolean input =
          each instanceof JTextField
              || each instanceof JTree
              || (each instanceof AbstractButton && !editorOfCombo && each.getName() != null)
              || each instanceof JComboBox;
      if (!input || !each.isShowing()) {
        continue;
      }
      if (each.getName() == null || each.getName().isEmpty()) {
        faults.add(each.getClass() + " without a name");
      }
      if (!each.isFocusable()) {
        faults.add(each.getName() + " cannot be reached");
      }
      String words = each.getAccessibleContext().getAccessibleName();
      boolean inner = each instanceof JComboBox<?> box && box.isEditable();
      if ((words == null || words.isBlank()) && !inner) {
        faults.add(each.getName() + " without words");
      }
    }
    return faults;
  }
}
