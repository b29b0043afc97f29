package org.shopclime.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/** What the shop file says of panes, angles, shares and set-backs, and what it refuses. */
class FabricInsideTest {

  private static String file(String name) {
    return ShopFile.write(FabricRun.shop(name));
  }

  private static List<String> problems(String text) {
    ShopReading reading = ShopFile.read(text, Stations.any());
    return reading instanceof ShopReading.Bad bad
        ? bad.problems().stream().map(problem -> problem.path()).toList()
        : List.of();
  }

  @Test
  void allFilesReadBackAsTheyWereWritten() {
    for (String name : FabricFiles.all().keySet()) {
      ShopReading reading = ShopFile.read(file(name), Stations.any());
      assertThat(reading).as(name).isInstanceOf(ShopReading.Good.class);
      assertThat(((ShopReading.Good) reading).shop()).as(name).isEqualTo(FabricRun.shop(name));
    }
  }

  @Test
  void panesAreToldOneWay() {
    String good = file("600");
    String glass = "rooms[0].faces[2].windows[0].glass.panes";
    assertThat(problems(good)).isEmpty();
    assertThat(problems(good.replace("\"gap\": \"12 mm\"", "\"gapConductance\": \"6 W/m2K\"")))
        .isEmpty();
    assertThat(problems(good.replaceAll(",\\s*\"gap\": \"12 mm\"", ""))).contains(glass + ".gap");
    String byIndex =
        good.replaceAll("\"transmittance\": \"[^\"]*\"", "\"index\": 1.526")
            .replaceAll("\"reflectance\": \"[^\"]*\"", "\"extinction\": \"19.6 /m\"");
    assertThat(problems(byIndex)).isEmpty();
    assertThat(problems(byIndex.replace("\"19.6 /m\"", "\"0.0196 /mm\""))).isEmpty();
    assertThat(problems(byIndex.replaceAll("\"index\": 1.526", "\"transmittance\": \"0.8\"")))
        .contains(glass);
    assertThat(
            problems(good.replaceAll("\"reflectance\": \"[^\"]*\"", "\"reflectance\": \"0.25\"")))
        .contains(glass);
  }

  @Test
  void wordsAreKnown() {
    String good = file("640");
    assertThat(problems(good.replace("\"traced\"", "\"followed\""))).contains("rooms[0].sunInside");
    assertThat(problems(good.replace("\"traced\"", "\"shares\"")))
        .as("no face has a share")
        .contains("rooms[0].sunInside");
    assertThat(problems(good.replace("\"setBack\"", "\"setback\""))).contains("rooms[0].setback");
  }
}
