package org.shopclime;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The house: which room may touch which. The same table stands on each room's page. */
class HouseTest {

  private static final String ROOT = "org.shopclime.";

  private static final Map<String, Set<String>> MAY_TOUCH =
      Map.ofEntries(
          Map.entry("quantity", Set.of()),
          Map.entry("air", Set.of()),
          Map.entry("heat", Set.of()),
          Map.entry("sun", Set.of("air")),
          Map.entry("envelope", Set.of("air", "quantity")),
          Map.entry("gain", Set.of("air", "quantity")),
          Map.entry("leakage", Set.of("air", "quantity")),
          Map.entry("unit", Set.of("air", "quantity")),
          Map.entry("climate", Set.of("air", "sun", "quantity")),
          Map.entry("shop", Set.of("quantity", "envelope", "climate")),
          Map.entry(
              "balance",
              Set.of("shop", "climate", "envelope", "gain", "leakage", "sun", "heat", "air")),
          Map.entry("load", Set.of("balance", "heat", "air")),
          Map.entry("run", Set.of("balance", "unit", "leakage", "heat", "air")),
          Map.entry("bill", Set.of("quantity")),
          Map.entry(
              "airline", Set.of("run", "balance", "gain", "leakage", "shop", "climate", "air")),
          Map.entry("plan", Set.of("run", "load", "balance", "bill", "shop", "climate")),
          Map.entry(
              "report",
              Set.of(
                  "quantity",
                  "air",
                  "heat",
                  "sun",
                  "envelope",
                  "gain",
                  "leakage",
                  "unit",
                  "climate",
                  "shop",
                  "balance",
                  "load",
                  "run",
                  "bill",
                  "airline",
                  "plan")),
          Map.entry(
              "form",
              Set.of(
                  "quantity",
                  "air",
                  "heat",
                  "sun",
                  "envelope",
                  "gain",
                  "leakage",
                  "unit",
                  "climate",
                  "shop",
                  "balance",
                  "load",
                  "run",
                  "bill",
                  "airline",
                  "plan",
                  "report")),
          Map.entry(
              "app",
              Set.of(
                  "quantity",
                  "air",
                  "heat",
                  "sun",
                  "envelope",
                  "gain",
                  "leakage",
                  "unit",
                  "climate",
                  "shop",
                  "balance",
                  "load",
                  "run",
                  "bill",
                  "airline",
                  "plan",
                  "report",
                  "form")));

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.shopclime");

  @Test
  void everyRoomIsInTheTable() {
    Set<String> rooms =
        HOUSE.stream()
            .map(JavaClass::getPackageName)
            .map(name -> name.substring(Math.min(name.length(), ROOT.length())))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(MAY_TOUCH.keySet()).containsAll(rooms);
  }

  @Test
  void arrowsPointOneWay() {
    MAY_TOUCH.forEach(
        (room, allowed) -> {
          String[] others =
              MAY_TOUCH.keySet().stream()
                  .filter(other -> !other.equals(room) && !allowed.contains(other))
                  .map(other -> ROOT + other + "..")
                  .toArray(String[]::new);
          if (others.length > 0) {
            noClasses()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .allowEmptyShould(true)
                .because("package-info of " + room + " lists " + allowed)
                .check(HOUSE);
          }
        });
  }

  @Test
  void roomsFormNoRing() {
    slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void nothingSharedChanges() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .because("a shared field that changes makes one calculation depend on another")
        .check(HOUSE);
  }

  @Test
  void windowsAndChartsStayAtTheEdge() {
    noClasses()
        .that()
        .resideOutsideOfPackages(ROOT + "form..", ROOT + "report..", ROOT + "app..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.swing..", "java.awt..", "org.jfree..", "com.formdev..")
        .because("the core knows nothing of its window")
        .check(HOUSE);
  }

  @Test
  void onlyTheAppSpeaksToTheTerminal() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "app..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .because("a room that prints cannot be used by another")
        .check(HOUSE);
  }

  @Test
  void noReflectionAroundTheArrows() {
    noClasses()
        .should()
        .callMethod(Class.class, "forName", String.class)
        .because("reflection is no way round the arrows")
        .check(HOUSE);
  }
}
