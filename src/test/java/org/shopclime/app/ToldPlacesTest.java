package org.shopclime.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.Progress;

class ToldPlacesTest {

  /** Runs end in any order on several threads; what is told only grows, and its end wipes it. */
  @Test
  void whatIsToldOnlyGrows() {
    List<Double> told = new ArrayList<>();
    ToldPlaces places =
        new ToldPlaces(
            new Progress() {
              @Override
              public void at(String part, double done) {
                told.add(done);
              }

              @Override
              public boolean isCancelled() {
                return false;
              }
            });
    for (double done : new double[] {0.1, 0.3, 0.2, 1, 0.9}) {
      places.at(done);
    }
    assertThat(told).containsExactly(0.1, 0.3, 1.0);
    assertThat(places.isCancelled()).isFalse();
  }

  @Test
  void lineIsWipedAtTheEnd() {
    StringWriter terminal = new StringWriter();
    ToldPlaces places = new ToldPlaces(new ToldProgress(new PrintWriter(terminal)));
    places.at(0.25);
    places.at(1);
    assertThat(terminal.toString())
        .contains("\r25 %  places for the compressor")
        .endsWith("\r" + " ".repeat(48) + "\r");
  }
}
