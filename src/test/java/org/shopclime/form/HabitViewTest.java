package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.Yearly;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The page on leaving the unit on: run once when it is looked at, a week at a time. */
class HabitViewTest {

  @Test
  void runsTheYearWhenLookedAt() throws InterruptedException, InvocationTargetException {
    Shop shop = Examples.shop(Examples.USUAL);
    Optional<HabitAnswer> answer = new Yearly(shop, Climates.load()).habits(Progress.silent());
    AtomicInteger asked = new AtomicInteger();
    HabitView[] made = new HabitView[1];
    SwingUtilities.invokeAndWait(
        () -> {
          made[0] =
              new HabitView(
                  of -> {
                    asked.incrementAndGet();
                    return answer;
                  });
          made[0].show(shop, UnitSystem.INCH_POUND);
        });
    HabitView view = made[0];
    assertThat(asked).as("nobody looks").hasValue(0);
    SwingUtilities.invokeAndWait(
        () -> {
          look(view);
          look(view);
        });
    JComboBox<?> weeks = (JComboBox<?>) named(view, "habits.week");
    for (int i = 0; i < 600 && weeks.getItemCount() == 0; i++) {
      Thread.sleep(50);
    }
    assertThat(asked).hasValue(1);
    SwingUtilities.invokeAndWait(
        () -> {
          JTextArea caption = (JTextArea) named(view, "habits.caption");
          JTextArea words = (JTextArea) named(view, "habits.words");
          ChartPanel chart = (ChartPanel) named(view, "chart.habits");
          assertThat(weeks.getItemCount()).isEqualTo(2);
          assertThat(caption.getText()).startsWith("The hottest week of the year, the week from");
          assertThat(words.getText())
              .startsWith("Leaving it on costs")
              .contains(Look.bound("85 °F"));
          Object first = chart.getChart();
          weeks.setSelectedIndex(1);
          assertThat(caption.getText()).startsWith("The damp week of spring");
          assertThat(chart.getChart()).isNotSameAs(first);
          view.show(shop, UnitSystem.SI);
          assertThat(weeks.getSelectedIndex()).isEqualTo(1);
          assertThat(words.getText()).contains(Look.bound("29.4 °C"));
        });
    assertThat(asked).as("other units ask for no other year").hasValue(1);
  }

  /** As when its tab comes to the front. */
  private static void look(HabitView view) {
    view.component()
        .dispatchEvent(
            new java.awt.event.ComponentEvent(
                view.component(), java.awt.event.ComponentEvent.COMPONENT_SHOWN));
  }

  private static Component named(HabitView view, String name) {
    return all(view.component())
        .filter(each -> name.equals(each.getName()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Component> all(Component of) {
    Stream<Component> own = Stream.of(of);
    return of instanceof Container several
        ? Stream.concat(own, Stream.of(several.getComponents()).flatMap(HabitViewTest::all))
        : own;
  }
}
