package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Looking materials, doors and windows up, and figures that cannot be. */
class MaterialsTest {

  /** Names owners and the other rooms count on. */
  private static final List<String> EXPECTED =
      List.of(
          "sheet steel",
          "aluminium",
          "plywood",
          "plywood 5/8 in",
          "plywood 3/4 in",
          "OSB",
          "softwood",
          "wood siding",
          "fiber-cement siding",
          "vinyl siding",
          "brick",
          "concrete",
          "concrete block hollow",
          "stucco",
          "gypsum board",
          "gypsum board 5/8 in",
          "drywall",
          "fiberglass batt",
          "mineral wool batt",
          "cellulose",
          "EPS foam",
          "XPS foam",
          "polyiso foam",
          "open-cell spray foam",
          "closed-cell spray foam",
          "vinyl-faced blanket",
          "foil bubble wrap",
          "asphalt shingles",
          "roofing felt",
          "house wrap",
          "air space",
          "soil",
          "plastic",
          "carpet");

  @Test
  void holdsWhatWorkshopsAreBuiltOf() {
    assertThat(EXPECTED).allSatisfy(name -> assertThat(Materials.find(name)).isPresent());
  }

  @Test
  void everyRowIsAsItShouldBe() {
    assertThat(Materials.all())
        .hasSizeGreaterThan(50)
        .allSatisfy(
            material -> {
              assertThat(material.status()).isIn("confirmed", "memory");
              assertThat(material.source()).isNotBlank();
              assertThat(Materials.find(material.name())).contains(material);
              assertThat(material.usualLayer().resistance()).isBetween(1e-6, 8.0);
            });
  }

  /** Diffusivity of building materials: insulation and metal aside, 1e-7 to 1.5e-6 m²/s. */
  @Test
  void solidsWarmThroughAtAnOrdinaryPace() {
    assertThat(Materials.all())
        .filteredOn(material -> material.fixedResistance().isEmpty())
        .filteredOn(material -> material.density() > 400 && material.density() < 2600)
        .allSatisfy(
            material ->
                assertThat(material.conductivity() / (material.density() * material.specificHeat()))
                    .as(material.name())
                    .isBetween(3e-8, 1.6e-6));
  }

  @Test
  void spellingDoesNotMatter() {
    assertThat(Materials.find("  ALUMINUM ")).isEqualTo(Materials.find("aluminium"));
    assertThat(Materials.find("Drywall   5/8 in").orElseThrow().name())
        .isEqualTo("gypsum board 5/8 in");
    assertThat(Materials.find("adamantium")).isEmpty();
  }

  @Test
  void nearMissesAreNamed() {
    assertThat(Materials.nearest("plywod")).hasSize(3).first().isEqualTo("plywood");
    assertThat(Materials.nearest("XPS fome")).first().isEqualTo("XPS foam");
    assertThat(Materials.nearest("steel sheet")).isNotEmpty();
    assertThat(Materials.nearest("")).hasSize(3);
    assertThat(GlassTable.nearest("double clear, vinyl")).contains("double clear, wood or vinyl");
    assertThat(DoorLeaves.nearest("roll up steel")).first().isEqualTo("roll-up steel");
  }

  @Test
  void aFixedResistanceStaysAtAnyThickness() {
    Material air = Materials.find("air space").orElseThrow();
    assertThat(air.layer(0.04).resistance()).isCloseTo(0.160, within(1e-12));
    assertThat(air.layer(0.09).resistance()).isCloseTo(0.160, within(1e-12));
    assertThat(air.usualLayer().heatCapacity()).isZero();
    Material block = Materials.find("concrete block hollow").orElseThrow();
    assertThat(block.layer(0.1).heatCapacity())
        .isCloseTo(0.1 * block.density() * block.specificHeat(), within(1e-9));
    assertThat(block.usualLayer().resistance()).isCloseTo(0.196, within(1e-12));
  }

  @Test
  void thicknessFollowsOtherwise() {
    Material foam = Materials.find("XPS foam").orElseThrow();
    assertThat(foam.layer(0.05).resistance()).isCloseTo(0.05 / 0.0288, within(1e-12));
    assertThat(foam.layer(0.05).name()).isEqualTo("XPS foam");
    assertThatThrownBy(() -> foam.layer(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("thickness of XPS foam");
  }

  @Test
  void boardsCoverTheirShareOfADoor() {
    List<Layer> board = List.of(Materials.find("XPS foam").orElseThrow().layer(0.0381));
    Assembly door = DoorLeaves.door("Roll-up steel", board, 0.9);
    assertThat(door.paths()).extracting(Path::fraction).containsExactly(0.9, 1 - 0.9);
    double films = 0.85 * InchPound.R;
    double skin = 0.0006 / 45;
    assertThat(door.uFactor(0, films))
        .isCloseTo(0.9 / (films + skin + 0.0381 / 0.0288) + 0.1 / (films + skin), within(1e-9));
    assertThat(DoorLeaves.door("roll-up steel", board, 0).paths()).hasSize(1);
    assertThat(DoorLeaves.door("roll-up steel", List.of(), 0.9).paths()).hasSize(1);
  }

  @Test
  void everyDoorAndWindowIsFoundByItsName() {
    assertThat(DoorLeaves.names())
        .allSatisfy(
            name -> {
              assertThat(DoorLeaves.find(name)).isPresent();
              assertThat(DoorLeaves.door(name, List.of(), 1).heatCapacity()).isNotNegative();
              assertThat(DoorLeaves.find(name).orElseThrow().source()).isNotBlank();
            });
    assertThat(GlassTable.names())
        .hasSizeGreaterThan(10)
        .allSatisfy(name -> assertThat(GlassTable.find(name)).isPresent());
    assertThat(GlassTable.find("single clear, aluminum")).isPresent();
    assertThat(GlassTable.find("stained")).isEmpty();
  }

  @Test
  void anUnknownDoorNamesTheNearest() {
    assertThatThrownBy(() -> DoorLeaves.door("rol-up steel", List.of(), 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("no door called \"rol-up steel\"; near: roll-up steel;");
    assertThatThrownBy(() -> DoorLeaves.door("sheet steel", List.of(), 1.1))
        .hasMessageContaining("takes 0.0 to 1.0");
  }
}
