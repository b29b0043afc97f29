package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;

/** The page on the shop's air and its oven. */
class AirViewTest {

  @Test
  void showsPictureAndWordsInBothSystems() throws InterruptedException, InvocationTargetException {
    SizeAnswer answer =
        new Sizing(Examples.shop("oven-day"), Climates.load()).answer(List.of(), Progress.silent());
    SwingUtilities.invokeAndWait(
        () -> {
          AirView view = new AirView();
          view.show(answer, UnitSystem.INCH_POUND);
          JTextArea words = (JTextArea) named(view, "air.words");
          assertThat(words.getText()).contains("cfm", "Curing oven gives the room", "NFPA 86");
          assertThat(named(view, "air.picture").getPreferredSize().height)
              .isGreaterThan(Look.scaled(150));
          view.show(answer, UnitSystem.SI);
          assertThat(words.getText()).contains("m³/h").doesNotContain("cfm");
          view.makeStale(true);
          assertThat(words.isEnabled()).isFalse();
        });
  }

  private static Component named(AirView view, String name) {
    return all(view.component())
        .filter(each -> name.equals(each.getName()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Component> all(Component from) {
    Stream<Component> within =
        from instanceof Container container
            ? Stream.of(container.getComponents()).flatMap(AirViewTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(from), within);
  }
}
