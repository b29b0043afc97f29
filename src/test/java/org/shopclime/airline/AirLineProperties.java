package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.shopclime.air.AirState;

/** Nothing is lost on the way, whatever the parts. */
class AirLineProperties {

  @Property(edgeCases = EdgeCasesMode.NONE)
  void airWaterAndEnergyAreConserved(
      @ForAll @DoubleRange(min = -10, max = 45) double intakeCelsius,
      @ForAll @DoubleRange(min = 0.02, max = 1) double relativeHumidity,
      @ForAll @DoubleRange(min = 0, max = 60) double minutes,
      @ForAll @DoubleRange(min = 0, max = 60) double place,
      @ForAll @DoubleRange(min = -5, max = 35) double room,
      @ForAll @IntRange(max = 31) int choice) {
    AirCompressor machine = AirCompressor.usual(3700, Stages.TWO);
    AirLine line = new AirLine(machine, parts(machine, choice));
    AirState intake = AirState.ofRelativeHumidity(intakeCelsius, relativeHumidity, 99_000);
    LineResult hour =
        line.run(
            intake,
            AirDemand.of(AirTool.BLAST_POT.usedFor(minutes)),
            new LineSurroundings(place, room, room - 3));
    assertThat(hour.airMissing()).isCloseTo(0, within(1e-9 * 0.01));
    assertThat(hour.waterMissing()).isCloseTo(0, within(1e-9 * 0.0003));
    assertThat(hour.energyMissing()).isCloseTo(0, within(1e-9 * 5000));
    for (LineStep step : hour.steps()) {
      assertThat(step.drained()).isGreaterThanOrEqualTo(0);
      assertThat(step.out().humidityRatio())
          .isLessThanOrEqualTo(
              LineAir.capacity(step.out().celsius(), step.out().pressure()) * (1 + 1e-12));
    }
  }

  /** Each bit of the choice puts one part in. */
  private static List<LinePart> parts(AirCompressor machine, int choice) {
    List<LinePart> parts = new ArrayList<>();
    parts.add(DischargeTube.USUAL);
    if (choice % 2 == 1) {
      parts.add(new Aftercooler(7, LineSite.PLACE));
    }
    parts.add(AirTank.of(machine));
    if (choice / 2 % 2 == 1) {
      parts.add(RefrigeratedDryer.usual(0.006, LineSite.PLACE));
    }
    if (choice / 4 % 2 == 1) {
      parts.add(new PipeRun(12, 0.02, PipeRun.BARE_METAL, LineSite.ROOM));
    }
    if (choice / 8 % 2 == 1) {
      parts.add(new Desiccant(-40, choice / 16 % 2 == 1 ? 0.15 : 0, LineSite.ROOM));
    }
    parts.add(new ColdStretch());
    return parts;
  }
}
