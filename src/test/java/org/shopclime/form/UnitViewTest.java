package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
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
import org.shopclime.report.AnswerText;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The page on the cooling unit: cases are chosen and laid over each other. */
class UnitViewTest {

  private static SizeAnswer answer(Shop shop) {
    return new Sizing(shop, Climates.load()).answer(List.of(), Progress.silent());
  }

  @Test
  void casesAreChosenAndLaidOver() throws InterruptedException, InvocationTargetException {
    SizeAnswer answer = answer(Examples.shop(Examples.USUAL));
    UnitView view = Person.on(UnitView::new);
    Person.onEventThread(() -> view.show(answer, UnitSystem.INCH_POUND));
    Person.await(
        "the curve is there", () -> ((ChartPanel) named(view, "chart.unit")).getChart() != null);
    SwingUtilities.invokeAndWait(
        () -> {
          JComboBox<?> first = (JComboBox<?>) named(view, "unit.case");
          JComboBox<?> second = (JComboBox<?>) named(view, "unit.over");
          assertThat(first.getItemCount()).isEqualTo(answer.scenarios().size());
          assertThat(first.getSelectedItem()).isEqualTo("Work + compressor");
          assertThat(second.getSelectedItem()).isEqualTo("Dusty coil and filter, at worst");
          assertThat(text(view, "unit.sentence"))
              .isEqualTo(AnswerText.sentence(answer, UnitSystem.INCH_POUND));
          assertThat(text(view, "unit.caption")).contains("°F outdoors");
          assertThat(text(view, "unit.limits")).contains("no maker's data");
          assertThat(text(view, "unit.day")).contains("Dashed: Dusty coil");
          for (String chart : List.of("unit", "cases", "sizes", "risk")) {
            ChartPanel panel = (ChartPanel) named(view, "chart." + chart);
            assertThat(panel.getChart()).as(chart).isNotNull();
            assertThat(panel.getAccessibleContext().getAccessibleName()).isNotBlank();
          }

          Object before = ((ChartPanel) named(view, "chart.cases")).getChart();
          first.setSelectedItem("Work");
          second.setSelectedItem("nothing");
          assertThat(text(view, "unit.day")).startsWith("Work: at most").doesNotContain("Dashed");
          assertThat(((ChartPanel) named(view, "chart.cases")).getChart()).isNotSameAs(before);
          second.setSelectedItem("Work");
          assertThat(text(view, "unit.day")).doesNotContain("Dashed");

          second.setSelectedItem("Most humid day");
          view.show(answer, UnitSystem.SI);
          assertThat(first.getSelectedItem()).isEqualTo("Work");
          assertThat(second.getSelectedItem()).isEqualTo("Most humid day");
          assertThat(text(view, "unit.day")).contains("°C").doesNotContain("°F");
          view.makeStale(true);
          assertThat(named(view, "unit.sentence").isEnabled()).isFalse();
        });
  }

  @Test
  void withoutUnitItSaysWhatToDo() throws InterruptedException, InvocationTargetException {
    SizeAnswer answer = answer(Examples.shop(Examples.USUAL).withUnit(Optional.empty()));
    SwingUtilities.invokeAndWait(
        () -> {
          UnitView view = new UnitView();
          view.show(answer, UnitSystem.INCH_POUND);
          assertThat(named(view, "chart.unit").isVisible()).isFalse();
          assertThat(text(view, "unit.caption")).contains("Cooling unit");
          assertThat(named(view, "unit.limits").isVisible()).isFalse();
          assertThat(text(view, "unit.day")).doesNotContain("the unit");
          assertThat(((ChartPanel) named(view, "chart.cases")).getChart()).isNotNull();
        });
  }

  private static String text(UnitView view, String name) {
    return ((JTextArea) named(view, name)).getText().replace('\u00a0', ' ');
  }

  private static Component named(UnitView view, String name) {
    return all(view.component())
        .filter(each -> name.equals(each.getName()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Component> all(Component from) {
    Stream<Component> within =
        from instanceof Container container
            ? Stream.of(container.getComponents()).flatMap(UnitViewTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(from), within);
  }
}
