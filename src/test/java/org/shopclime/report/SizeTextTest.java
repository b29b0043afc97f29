package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

class SizeTextTest {

  @Test
  void columnsStandUnderEachOther() {
    String text = SizeText.of(Answers.example(), UnitSystem.INCH_POUND);
    List<String> lines = text.lines().toList();
    int head = lines.indexOf(lines.stream().filter(l -> l.contains("share")).findFirst().get());
    int end = lines.get(head).indexOf("share") + "share".length();
    for (int i = head + 1; !lines.get(i).isEmpty(); i++) {
      assertThat(lines.get(i).substring(0, end)).as(lines.get(i)).endsWith(" %");
    }
    assertThat(lines).allMatch(line -> line.length() <= 100);
    assertThat(text).contains("All together").contains("leaks halved").contains("Take care");
  }

  /** What is damp is told once, under its own heading, with a word where to find it. */
  @Test
  void dampWallsAreToldOnce() {
    SizeAnswer answer = Answers.example();
    String text = SizeText.of(answer, UnitSystem.INCH_POUND);
    assertThat(DampWords.warnings(answer.damp().orElseThrow())).isNotEmpty();
    assertThat(text.split("damp between the OSB|Damp between the OSB", -1)).hasSize(2);
    assertThat(text).contains(Cautions.DAMP);
    assertThat(new Cautions(answer).lines())
        .isNotEmpty()
        .doesNotHaveDuplicates()
        .noneMatch(line -> line.contains("ISO 13788"));
  }

  @Test
  void aNameCannotSteerTheTerminal() {
    SizeAnswer answer =
        Answers.named(Answers.example(), Answers.SHOP.withName("a\u001b[2Jb\nc\u202ed"));
    assertThat(SizeText.of(answer, UnitSystem.INCH_POUND))
        .startsWith("a [2Jb c d\n")
        .doesNotContain("\u001b");
  }

  @Test
  void figuresKeepToTheirUnits() {
    assertThat(Unbroken.of("85 °F by 4 pm, 3,000 W, 45 %, 12,000 BTU/h and 9 kWh, 3 Walls"))
        .isEqualTo(
            "85\u00a0°F by 4\u00a0pm, 3,000\u00a0W, 45\u00a0%, 12,000\u00a0BTU/h and 9\u00a0kWh,"
                + " 3 Walls");
  }

  @Test
  void placesAreToldByTheirNames() {
    assertThat(PathWords.of(Answers.SHOP, "rooms[0].faces[0].doors[0].boards"))
        .isEqualTo("Shop, West wall, Roll-up door");
    assertThat(PathWords.of(Answers.SHOP, "rooms[0].gains[4].duty")).isEqualTo("Shop, Compressor");
    assertThat(PathWords.of(Answers.SHOP, "rooms[1].leakage")).isEqualTo("Attic");
    assertThat(PathWords.of(Answers.SHOP, "unit.volts")).isEqualTo("Cooling unit");
    assertThat(PathWords.of(Answers.SHOP, "rooms[9].faces[9].doors[9]"))
        .isEqualTo("rooms[9].faces[9].doors[9]");
  }

  @Test
  void otherWorkAndOtherDaysStandInATable() {
    String text = SizeText.of(Answers.example(), UnitSystem.INCH_POUND);
    assertThat(text)
        .contains("Other work, other days\n")
        .containsPattern("\n  work +79 °F +holds +12,000 BTU/h\n")
        .containsPattern("\n  work \\+ compressor +84 °F +does not hold +18,000 BTU/h\n");
  }

  @Test
  void changesThatCoolMostComeFirst() {
    assertThat(ChangeTable.sorted(Answers.example()))
        .isSortedAccordingTo((one, other) -> Double.compare(one.indoorPeak(), other.indoorPeak()));
  }

  @Test
  void roundingIsWorthTheAnswer() {
    UnitSystem ip = UnitSystem.INCH_POUND;
    assertThat(Shown.power(org.shopclime.quantity.Units.wattsFromBtuh(12345), ip))
        .isEqualTo("12,300 BTU/h");
    assertThat(Shown.power(org.shopclime.quantity.Units.wattsFromBtuh(987), ip))
        .isEqualTo("990 BTU/h");
    assertThat(Shown.range(25, 25.1, ip)).isEqualTo("77 °F");
    assertThat(Shown.range(-20, -10, ip)).isEqualTo("−4–14 °F");
    assertThat(Shown.signed(-1000, UnitSystem.SI)).isEqualTo("−1,000");
    assertThat(Shown.signed(0.2, UnitSystem.SI)).isEqualTo("0");
    assertThat(Shown.row(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(Shown.row(List.of())).isEmpty();
  }
}
