package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.plan.AirAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Room;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;

class AirTextTest {

  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
  private static SizeAnswer answer;

  private static Fan fan(String name, FanWay way, FanUse use, double led) {
    return new Fan(name, way, 600 * CFM, ScheduleText.work(), use, 1200, led);
  }

  @BeforeAll
  static void ask() {
    Shop shop = Examples.shop("oven-day");
    List<Fan> fans =
        List.of(
            fan("Dust", FanWay.OUT, FanUse.DUST_COLLECTOR, 0),
            fan("Blast", FanWay.FILTERED_RETURN, FanUse.BLAST_CABINET, 0),
            fan("Hood", FanWay.OUT, FanUse.OVEN_HOOD, 0.5));
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(0, rooms.get(0).withFans(fans));
    answer =
        new Sizing(shop.withRooms(rooms), Climates.load()).answer(List.of(), Progress.silent());
  }

  @Test
  void textSaysBothSidesAndWhatItCosts() {
    String text = SizeText.of(answer, UnitSystem.INCH_POUND).replaceAll("\\s+", " ");
    assertThat(text)
        .contains("The air of the shop", "The oven on a working day", "of outdoor air comes in")
        .contains(
            "Blast, returned", "capture first, comfort second", "NFPA 86", "Cured after work");
    assertThat(SizeText.of(answer, UnitSystem.SI).replaceAll("\\s+", " "))
        .contains("m³/h", "kg of water");
    List<List<String>> rows = AirText.rows(answer.air().orElseThrow(), UnitSystem.INCH_POUND);
    List<String> sums = rows.get(rows.size() - 1);
    assertThat(sums.get(1)).isEqualTo(sums.get(2));
    assertThat(rows).allMatch(row -> row.size() == AirText.heads(UnitSystem.SI).size());
  }

  @Test
  void jsonAddsUp() throws JsonProcessingException {
    JsonNode air = new ObjectMapper().readTree(SizeJson.of(answer)).get("airBalance");
    double in = 0;
    double out = 0;
    double heat = 0;
    for (JsonNode path : air.get("paths")) {
      in += path.get("inCfm").asDouble();
      out += path.get("outCfm").asDouble();
      heat += path.get("sensibleBtuh").asDouble();
    }
    assertThat(in).isCloseTo(air.get("inCfm").asDouble(), within(0.05));
    assertThat(out).isCloseTo(in, within(0.05));
    assertThat(heat).isCloseTo(air.get("sensibleBtuh").asDouble(), within(0.05));
    JsonNode oven = new ObjectMapper().readTree(SizeJson.of(answer)).get("oven");
    assertThat(oven.get("ovens").get(0).get("roomBtuh")).hasSize(24);
    assertThat(oven.get("variants")).isNotEmpty();
  }

  /** In both looks the picture shows every kind of flow and leaves its margin free. */
  @Test
  void pictureShowsEachFlow() {
    AirAnswer air = answer.air().orElseThrow();
    for (ChartLook look : List.of(ChartLook.light(), ChartLook.dark())) {
      for (UnitSystem units : UnitSystem.values()) {
        AirPicture picture = new AirPicture(air, units, look);
        BufferedImage image = new BufferedImage(760, picture.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        picture.draw(graphics, new Rectangle2D.Double(0, 0, 760, picture.height()));
        graphics.dispose();
        for (Color each : List.of(look.outdoor(), look.indoor(), look.without(), look.moisture())) {
          assertThat(count(image, each)).as("%s", each).isGreaterThan(100);
        }
        for (int x = 0; x < 760; x++) {
          assertThat(image.getRGB(x, 1)).isEqualTo(look.paper().getRGB());
          assertThat(image.getRGB(x, picture.height() - 2)).isEqualTo(look.paper().getRGB());
        }
      }
    }
  }

  private static int count(BufferedImage image, Color colour) {
    int count = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        count += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
    }
    return count;
  }
}
