package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import org.shopclime.balance.AirBook;
import org.shopclime.balance.AirPath;
import org.shopclime.balance.AirSuction;
import org.shopclime.balance.OvenBook;
import org.shopclime.balance.ToolAir;
import org.shopclime.plan.AirAnswer;
import org.shopclime.plan.Change;
import org.shopclime.plan.OvenAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Units;

/** Air and ovens of the shop for machines. */
final class AirJson {

  private static final int DECIMALS = 2;
  private static final int FINE = 4;
  private static final double HOUR = 3600;
  private static final double MINUTE = 60;
  private static final double NEWTONS_PER_POUND = 0.45359237 * 9.80665;

  private AirJson() {}

  /** Puts {@code airBalance} and {@code oven} into the answer; null where there is none. */
  static void put(ObjectNode root, SizeAnswer answer) {
    if (answer.air().isPresent()) {
      air(root.putObject("airBalance"), answer, answer.air().get());
    } else {
      root.putNull("airBalance");
    }
    if (answer.oven().isPresent()) {
      oven(root.putObject("oven"), answer, answer.oven().get());
    } else {
      root.putNull("oven");
    }
  }

  private static void air(ObjectNode node, SizeAnswer answer, AirAnswer air) {
    AirBook book = air.book();
    node.put("room", answer.shop().rooms().get(book.room()).name())
        .put("hour", book.hour())
        .put("indoorF", rounded(Units.fahrenheit(book.indoor())))
        .put("outdoorF", rounded(Units.fahrenheit(book.outdoor())))
        .put("inCfm", cfm(book.in()))
        .put("outCfm", cfm(book.out()));
    cost(node, book.sensible(), book.latent(), book.water(), air);
    AirSuction suction = book.suction();
    ObjectNode pulled = node.putObject("suction");
    boolean draws = !suction.fans().isEmpty();
    pulled
        .put("suctionPa", rounded(suction.pascals()))
        .put("hour", draws ? suction.hour() : null)
        .put("door", suction.door().map(AirSuction.HardDoor::name).orElse(null))
        .put(
            "doorForceLbf",
            suction.door().map(door -> rounded(door.newtons() / NEWTONS_PER_POUND)).orElse(null))
        .put("flueLimitPa", rounded(suction.flueLimit()))
        .put("flueEndangered", suction.endangersFlue());
    ArrayNode fans = pulled.putArray("fans");
    suction.fans().forEach(fans::add);
    ArrayNode paths = node.putArray("paths");
    for (AirPath path : book.paths()) {
      ObjectNode each =
          paths
              .addObject()
              .put("name", path.name())
              .put("path", path.place())
              .put("kind", word(path.kind()))
              .put("use", word(path.use()))
              .put("inCfm", cfm(path.in()))
              .put("outCfm", cfm(path.out()))
              .put("ledToHoodCfm", cfm(path.led()))
              .put("returnedCfm", cfm(path.returned()));
      cost(each, path.sensible(), path.latent(), path.water(), air);
    }
    ToolAir.of(answer.shop(), answer.core().hotDay().pressure())
        .ifPresentOrElse(
            tools ->
                node.putObject("compressedAir")
                    .put("meanCfm", cfm(tools.mean()))
                    .put(
                        "drawnFrom",
                        tools.from() < 0
                            ? "outdoors"
                            : answer.shop().rooms().get(tools.from()).name())
                    .put("exchange", tools.isExchange()),
            () -> node.putNull("compressedAir"));
    ArrayNode options = node.putArray("options");
    for (AirAnswer.Option option : air.options()) {
      options
          .addObject()
          .put("fan", option.fan())
          .put("path", option.place())
          .put("way", word(option.way()))
          .put("savedBtuh", rounded(Units.btuh(option.saved())))
          .put("suctionPa", rounded(option.suction()));
    }
  }

  private static void cost(
      ObjectNode node, double sensible, double latent, double water, AirAnswer air) {
    node.put("sensibleBtuh", rounded(Units.btuh(sensible)))
        .put("latentBtuh", rounded(Units.btuh(latent)))
        .put("waterLbPerHour", SizeJson.rounded(Units.pounds(water * HOUR), FINE))
        .put(
            "share",
            air.rated().isPresent()
                ? SizeJson.rounded((sensible + latent) / air.rated().getAsDouble(), FINE)
                : null);
  }

  private static void oven(ObjectNode node, SizeAnswer answer, OvenAnswer told) {
    ArrayNode ovens = node.putArray("ovens");
    for (OvenAnswer.Oven oven : told.ovens()) {
      ObjectNode each =
          ovens
              .addObject()
              .put("name", oven.name())
              .put("path", oven.place())
              .put("room", answer.shop().rooms().get(oven.room()).name());
      ArrayNode hours = each.putArray("roomBtuh");
      for (int hour = 1; hour <= 24; hour++) {
        hours.add(rounded(Units.btuh(oven.heat().at(hour))));
      }
      if (oven.book().isPresent()) {
        OvenBook book = oven.book().get();
        each.putObject("batches")
            .put("count", book.batches())
            .put("heatUpMinutes", rounded(book.heatUp() / MINUTE))
            .put("longestMinutes", rounded(book.longest() / MINUTE))
            .put("heaterKwh", kilowattHours(book.heater()))
            .put("roomKwh", kilowattHours(book.room()))
            .put("ventedKwh", kilowattHours(book.vented()))
            .put("carriedOutKwh", kilowattHours(book.carried()));
      } else {
        each.putNull("batches");
      }
    }
    ArrayNode variants = node.putArray("variants");
    for (Change change : told.variants()) {
      variants
          .addObject()
          .put("name", change.name())
          .put("peakSensibleBtuh", rounded(Units.btuh(change.peakSensible())))
          .put("peakLatentBtuh", rounded(Units.btuh(change.peakLatent())))
          .put("indoorPeakF", rounded(Units.fahrenheit(change.indoorPeak())))
          .put("holds", change.holds())
          .put(
              "recommendedBtuh",
              change.recommended().isPresent()
                  ? rounded(Units.btuh(change.recommended().getAsDouble()))
                  : null);
    }
  }

  private static BigDecimal kilowattHours(double joules) {
    return SizeJson.rounded(Units.kilowattHours(joules), FINE);
  }

  private static BigDecimal cfm(double cubicMetres) {
    return rounded(Units.cfm(cubicMetres));
  }

  private static BigDecimal rounded(double value) {
    return SizeJson.rounded(value + 0.0, DECIMALS);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
