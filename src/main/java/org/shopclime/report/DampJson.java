package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampRoom;
import org.shopclime.balance.DampSpell;
import org.shopclime.balance.DampTime;
import org.shopclime.envelope.Diffusion;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.RetarderClass;
import org.shopclime.envelope.SlicedWall;
import org.shopclime.envelope.Vapour;
import org.shopclime.plan.DampAnswer;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Units;

/** Damp in the walls for machines. */
final class DampJson {

  private static final int DECIMALS = 2;
  private static final int FINE = 4;
  private static final double GRAMS = 1000;

  private DampJson() {}

  /** Puts {@code damp} and {@code dampAir} into the answer; empty lists without a look at walls. */
  static void put(ObjectNode root, SizeAnswer answer) {
    ArrayNode damp = root.putArray("damp");
    ArrayNode airs = root.putArray("dampAir");
    answer
        .damp()
        .ifPresent(
            found -> {
              found.findings().forEach(each -> path(damp.addObject(), answer, each));
              airs(airs, answer, found);
            });
  }

  private static void path(ObjectNode node, SizeAnswer answer, DampFinding finding) {
    DampPath path = finding.path();
    node.put("face", path.component().name())
        .put("room", answer.shop().rooms().get(path.component().room()).name())
        .put("path", path.place())
        .put("way", DampWords.way(path.way()))
        .put("found", word(finding.kind()))
        .put("layer", finding.plane() < 0 ? null : DampWords.where(finding))
        .put("text", DampWords.sentence(finding));
    ArrayNode times = node.putArray("months");
    finding.months().forEach(times::add);
    boolean wet = finding.kind() == DampFinding.Kind.CONDENSES;
    node.put("onHotDay", is(finding, DampTime.Kind.HOT_DAY))
        .put("onHumidDay", is(finding, DampTime.Kind.HUMID_DAY));
    if (finding.worst().isPresent()) {
      DampTime worst = finding.worst().get().time();
      node.put("worst", word(worst))
          .put("month", worst.month())
          .put("relativeHumidity", rounded(finding.humidity(), FINE))
          .put("from", finding.fromRoom() ? "room" : "outdoors");
    } else {
      node.putNull("worst").putNull("month").putNull("relativeHumidity").putNull("from");
    }
    node.put("mostGramsM2", wet ? rounded(finding.mostWater() * GRAMS, DECIMALS) : null)
        .put("mostMonth", wet && finding.mostWater() > 0 ? finding.wettestMonth() : null)
        .put("leftGramsM2", wet ? rounded(finding.waterLeft() * GRAMS, DECIMALS) : null)
        .put("driesOut", wet ? finding.waterLeft() == 0 : null);
    ArrayNode layers = node.putArray("layers");
    for (Layer layer : path.layers()) {
      ObjectNode each = layers.addObject().put("name", layer.name());
      each.put(
          "thicknessIn",
          layer.isThicknessTold() ? rounded(Units.inches(layer.thickness()), FINE) : null);
      if (layer.vapour().isPresent() && layer.vapour().getAsDouble() > 0) {
        double air = layer.vapour().getAsDouble();
        each.put("sdM", rounded(air, FINE))
            .put("permeancePerm", rounded(Vapour.permeance(air) / Vapour.PERM, FINE));
        RetarderClass of = RetarderClass.of(Vapour.permeance(air));
        each.put("retarderClass", of == RetarderClass.OPEN ? null : of.name());
      } else {
        each.putNull("sdM").putNull("permeancePerm").putNull("retarderClass");
      }
    }
    ArrayNode spells = node.putArray("times");
    path.spells().forEach(spell -> spell(spells.addObject(), spell));
  }

  private static void spell(ObjectNode node, DampSpell spell) {
    Diffusion diffusion = spell.diffusion();
    node.put("time", word(spell.time())).put("month", spell.time().month());
    ArrayNode temperatures = node.putArray("layerFacesF");
    ArrayNode dewPoints = node.putArray("layerDewPointsF");
    for (int plane = 0; plane < diffusion.wall().planes().size(); plane++) {
      SlicedWall.Plane at = diffusion.wall().planes().get(plane);
      if (!at.isInside()) {
        temperatures.add(rounded(Units.fahrenheit(diffusion.temperature(plane)), DECIMALS));
        dewPoints.add(rounded(Units.fahrenheit(diffusion.dewPoint(plane)), DECIMALS));
      }
    }
    node.put("condensesGramsM2Day", rounded(spell.rate() * 86_400 * GRAMS, DECIMALS));
  }

  private static void airs(ArrayNode airs, SizeAnswer answer, DampAnswer found) {
    for (int time = 0; time < found.walls().times().size(); time++) {
      DampTime at = found.walls().times().get(time);
      for (DampRoom room : found.walls().rooms(time)) {
        airs.addObject()
            .put("time", word(at))
            .put("month", at.month())
            .put("room", answer.shop().rooms().get(room.room()).name())
            .put("state", room.state().name().toLowerCase(Locale.ROOT))
            .put("outdoorF", rounded(Units.fahrenheit(at.outdoor()), DECIMALS))
            .put(
                "outdoorDewPointF",
                rounded(Units.fahrenheit(Vapour.dewPoint(at.outdoorPressure())), DECIMALS))
            .put("indoorF", rounded(Units.fahrenheit(room.celsius()), DECIMALS))
            .put("relativeHumidity", rounded(room.humidity(), FINE));
      }
    }
  }

  private static boolean is(DampFinding finding, DampTime.Kind kind) {
    return finding.times().stream().anyMatch(time -> time.kind() == kind);
  }

  private static String word(DampFinding.Kind kind) {
    return switch (kind) {
      case CONDENSES -> "condenses";
      case DEW -> "dew on the room side";
      case NEAR -> "above 80 %";
      case NONE -> "nothing by this method";
      case NOT_JUDGED -> "not judged";
    };
  }

  private static String word(DampTime time) {
    return switch (time.kind()) {
      case HOT_DAY -> "hot day";
      case HUMID_DAY -> "humid day";
      case MONTH -> "month";
    };
  }

  private static java.math.BigDecimal rounded(double value, int decimals) {
    return SizeJson.rounded(value, decimals);
  }
}
