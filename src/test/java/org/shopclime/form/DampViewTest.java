package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;

/** Choosing a wall and a time in the page on damp walls. */
class DampViewTest {

  @Test
  void showsTheWorstFirstAndWhatIsChosen() throws InterruptedException, InvocationTargetException {
    SizeAnswer answer =
        new Sizing(Examples.shop(Examples.USUAL), Climates.load())
            .answer(List.of(), Progress.silent());
    SwingUtilities.invokeAndWait(
        () -> {
          DampView view = new DampView();
          view.show(answer, UnitSystem.INCH_POUND);
          JComboBox<?> walls = (JComboBox<?>) named(view, "damp.wall");
          JComboBox<?> times = (JComboBox<?>) named(view, "damp.time");
          JTextArea caption = (JTextArea) named(view, "damp.caption");
          ChartPanel chart = (ChartPanel) named(view, "chart.wall");
          assertThat(walls.getItemCount()).isEqualTo(answer.damp().orElseThrow().findings().size());
          assertThat(times.getItemCount()).isEqualTo(14);
          assertThat(caption.getText()).contains("mean of January").contains("At the dew point");
          Object first = chart.getChart();
          assertThat(first).isNotNull();

          walls.setSelectedItem("Ceiling, between the framing");
          assertThat(caption.getText())
              .startsWith("Ceiling, between the framing, mean of the humid day")
              .contains("that does not make the wall safe");
          times.setSelectedItem("Mean of July");
          assertThat(caption.getText()).startsWith("Ceiling, between the framing, mean of July");
          assertThat(chart.getChart()).isNotSameAs(first);

          view.show(answer, UnitSystem.SI);
          assertThat(walls.getSelectedItem()).isEqualTo("Ceiling, between the framing");
          assertThat(times.getSelectedItem()).isEqualTo("Mean of July");
          assertThat(caption.getText()).contains("°C");
        });
  }

  private static Component named(DampView view, String name) {
    return all(view.component())
        .filter(each -> name.equals(each.getName()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Component> all(Component from) {
    Stream<Component> within =
        from instanceof Container container
            ? Stream.of(container.getComponents()).flatMap(DampViewTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(from), within);
  }
}
