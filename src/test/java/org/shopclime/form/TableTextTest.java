package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;

/** The tables of the form, as text. */
class TableTextTest {

  /** The first row is the total of its own run; the lines make up the same. */
  @Test
  void partsOfTheHeatBeginWithTheirTotal() {
    CoreAnswer core = new Sizing(Examples.shop("powder-day"), Climates.load()).core();
    int hour = core.load().peakHour();
    double sensible = 0;
    double latent = 0;
    double lines = 0;
    for (RoomLoad room : core.load().rooms()) {
      sensible += room.sensible().at(hour);
      latent += room.latent().at(hour);
      for (Line line : room.lines()) {
        lines += line.sensible().at(hour) + line.latent().at(hour);
      }
    }
    assertThat(lines).isCloseTo(sensible + latent, within(1e-6));
    TableText.Table table = TableText.heat(core, UnitSystem.SI);
    List<String> all = table.rows().get(0);
    assertThat(all.get(0)).isEqualTo("All together");
    assertThat(figure(all.get(1))).isCloseTo(sensible, within(0.5));
    assertThat(figure(all.get(2))).isCloseTo(latent, within(0.5));
    assertThat(all.get(3)).isEqualTo("100 %");
    double shown = 0;
    for (List<String> row : table.rows().subList(1, table.rows().size())) {
      shown += figure(row.get(1));
    }
    assertThat(shown).as("whole watts").isCloseTo(sensible, within(0.5 * table.rows().size()));
  }

  /** Figures below nothing have a minus, not a hyphen. */
  @Test
  void minusIsAMinus() {
    CoreAnswer core = new Sizing(Examples.shop("insulated-foam-door"), Climates.load()).core();
    List<String> figures =
        TableText.heat(core, UnitSystem.INCH_POUND).rows().stream()
            .flatMap(row -> row.stream().skip(1))
            .toList();
    assertThat(figures).noneMatch(figure -> figure.contains("-"));
    boolean below =
        core.load().rooms().stream()
            .flatMap(room -> room.lines().stream())
            .anyMatch(line -> line.sensible().at(core.load().peakHour()) < -1);
    assertThat(figures.stream().anyMatch(figure -> figure.startsWith("−"))).isEqualTo(below);
  }

  /** As in the report: the best first, whole degrees, more or less than now. */
  @Test
  void changesStandInTheOrderInWhichTheyHelp() {
    SizeAnswer answer =
        new Sizing(Examples.shop("insulated-foam-door"), Climates.load())
            .answer(List.of(), Progress.silent());
    TableText.Table table = TableText.changes(answer, UnitSystem.INCH_POUND);
    assertThat(table.rows().get(0)).startsWith("As it is", "0");
    assertThat(table.rows().get(1)).first().isEqualTo("Compressor out of the room");
    assertThat(table.rows()).hasSize(answer.changes().size() + 1);
    assertThat(table.rows()).allMatch(row -> row.get(2).matches("\\d+ °F"));
    List<Double> inside =
        table.rows().stream().skip(1).map(row -> figure(row.get(2).replace(" °F", ""))).toList();
    assertThat(inside).isSorted();
    assertThat(table.asTabbed().lines().toList())
        .hasSize(table.rows().size() + 1)
        .startsWith("Change\tMore or less heat BTU/h\tInside\tWould hold")
        .contains(String.join("\t", table.rows().get(1)));
  }

  private static double figure(String text) {
    return Double.parseDouble(text.replace(",", "").replace('−', '-'));
  }
}
