package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import org.shopclime.balance.ToolTime;
import org.shopclime.climate.Station;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.DrierAnswer;
import org.shopclime.plan.DustAnswer;
import org.shopclime.plan.FanAnswer;
import org.shopclime.plan.PadsAnswer;
import org.shopclime.plan.PortableAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.LivedDay;
import org.shopclime.run.PullDown;
import org.shopclime.run.Trace;

/**
 * The answer for machines: one JSON object (RFC 8259) in inch-pound units. Every key of a quantity
 * ends in its unit; hours are hour-ending 1 to 24, local standard time, means over the hour;
 * fractions run from 0 to 1.
 */
public final class SizeJson {

  private static final int DECIMALS = 2;
  private static final int FRACTION_DECIMALS = 4;
  private static final int HOURS = 24;

  private SizeJson() {}

  /**
   * The whole answer as one JSON object, on several lines.
   *
   * @param answer the whole answer
   * @return JSON; figures rounded to 0.01, fractions to 0.0001; what there is not is null
   */
  public static String of(SizeAnswer answer) {
    return tree(answer).toPrettyString();
  }

  static ObjectNode tree(SizeAnswer answer) {
    CoreAnswer core = answer.core();
    LivedDay day = core.unit().orElse(core.without());
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("shop", answer.shop().name());
    place(root, core.hotDay().station());
    hotDay(root, core);
    root.set("setPointF", temperature(day.setPoint()));
    PeakLines peak = PeakLines.of(core.load());
    root.putObject("peak")
        .put("hour", peak.hour())
        .put("sensibleBtuh", heat(peak.sensible()))
        .put("latentBtuh", heat(peak.latent()))
        .put("totalBtuh", heat(peak.total()));
    components(root, peak);
    unit(root, answer);
    LivedDay without = core.without();
    WorkerText worker = new WorkerText(answer);
    ObjectNode unitOff = root.putObject("withoutUnit");
    unitOff
        .<ObjectNode>set("indoorPeakF", temperature(without.peakTemperature()))
        .put("indoorPeakHour", without.peakHour())
        .set("operativePeakF", temperature(without.operativePeak()));
    worker.put(unitOff, without);
    worker.put(root, day);
    root.put("workerAirSpeedMph", rounded(Units.milesPerHour(worker.fastest()), DECIMALS));
    Trace trace = day.trace();
    hours(root, "indoorF", hour -> Units.fahrenheit(trace.air().at(hour)), DECIMALS);
    hours(root, "dewPointF", hour -> Units.fahrenheit(trace.dewPoint().at(hour)), DECIMALS);
    hours(root, "relativeHumidity", trace.relativeHumidity()::at, FRACTION_DECIMALS);
    root.putObject("band")
        .<ObjectNode>set("indoorPeakLowF", temperature(answer.band().low()))
        .<ObjectNode>set("indoorPeakHighF", temperature(answer.band().high()))
        .put("decidedBy", answer.band().decidedBy().orElse(null));
    changes(root, answer, peak);
    DrierAnswer.of(answer)
        .ifPresentOrElse(dry -> drier(root, dry), () -> root.putNull("dehumidifier"));
    ArrayNode scenarios = root.putArray("scenarios");
    answer
        .scenarios()
        .forEach(
            scenario ->
                scenarios
                    .addObject()
                    .put("name", scenario.name())
                    .put("holds", scenario.holds())
                    .<ObjectNode>set("indoorPeakF", temperature(scenario.indoorPeak()))
                    .put("recommendedBtuh", rounded(scenario.recommended(), Units::btuh)));
    root.putObject("winter")
        .<ObjectNode>set("designF", temperature(answer.winter().design()))
        .put("typicalYearF", rounded(answer.winter().typicalYear(), Units::fahrenheit))
        .put("basis", new WinterText(answer.winter(), UnitSystem.INCH_POUND).basis())
        .<ObjectNode>set("indoorF", temperature(answer.winter().indoor()))
        .put("lossBtuh", heat(answer.winter().loss()))
        .put("heaterWatts", rounded(answer.winter().heater(), DECIMALS))
        .put("heatPumpBtuh", rounded(answer.winter().pump(), Units::btuh));
    DampJson.put(root, answer);
    AirJson.put(root, answer);
    ToolTime.of(answer.shop(), core.hotDay().pressure())
        .ifPresentOrElse(
            time ->
                root.putObject("compressorByTools")
                    .put("name", time.machine().machine().name())
                    .put("askedShare", rounded(time.asked(), FRACTION_DECIMALS))
                    .put("duty", rounded(time.duty(), FRACTION_DECIMALS)),
            () -> root.putNull("compressorByTools"));
    ArrayNode warnings = root.putArray("warnings");
    answer
        .warnings()
        .forEach(
            warning ->
                warnings.addObject().put("path", warning.path()).put("text", warning.text()));
    return root;
  }

  /** Where the weather was observed. */
  static void place(ObjectNode root, Station station) {
    root.putObject("place")
        .put("id", station.id())
        .put("name", station.name())
        .put("state", station.state())
        .put("latitudeDeg", station.latitudeDeg())
        .put("longitudeDeg", station.longitudeDeg())
        .put("elevationFt", rounded(Units.feet(station.elevationM()), DECIMALS));
  }

  private static void hotDay(ObjectNode root, CoreAnswer core) {
    ObjectNode hotDay = root.putObject("hotDay");
    hotDay.put("month", core.hotDay().date().getMonthValue());
    hours(hotDay, "dryBulbF", hour -> Units.fahrenheit(core.hotDay().dryBulb().at(hour)), DECIMALS);
    hours(hotDay, "wetBulbF", hour -> Units.fahrenheit(core.hotDay().wetBulb().at(hour)), DECIMALS);
  }

  private static void components(ObjectNode root, PeakLines peak) {
    ArrayNode components = root.putArray("components");
    for (PeakLines.PeakLine line : peak.lines()) {
      components
          .addObject()
          .put("name", line.name())
          .put("kind", line.line().kind().word())
          .put("room", line.room())
          .put("areaFt2", rounded(Units.squareFeet(line.line().area()), DECIMALS))
          .put(
              "uFactorBtuhFt2F", rounded(Units.uFactorIp(line.line().uFactor()), FRACTION_DECIMALS))
          .put("driveF", rounded(Units.fahrenheitDifference(line.drive()), DECIMALS))
          .put("share", rounded(line.share(), FRACTION_DECIMALS))
          .put("sensibleBtuh", heat(line.sensible()))
          .put("latentBtuh", heat(line.latent()))
          .put("pencilBtuh", heat(line.pencil()));
    }
  }

  private static void unit(ObjectNode root, SizeAnswer answer) {
    CoreAnswer core = answer.core();
    LivedDay day = core.unit().orElse(core.without());
    ObjectNode unit = root.putObject("unit");
    unit.putNull("ratedBtuh").putNull("deliveredSensibleBtuh").putNull("deliveredLatentBtuh");
    answer
        .unit()
        .ifPresent(
            own ->
                unit.put("ratedBtuh", heat(own.rated()))
                    .put("deliveredSensibleBtuh", heat(own.deliveredSensible()))
                    .put("deliveredLatentBtuh", heat(own.deliveredLatent()))
                    .put(
                        "coilWaterLb",
                        rounded(Units.pounds(CoilWater.kilograms(own.day().trace())), DECIMALS)));
    answer
        .unit()
        .ifPresent(
            own -> {
              hours(unit, "runShare", own.day().trace().running()::at, FRACTION_DECIMALS);
              hours(unit, "powerWatts", own.day().trace().power()::at, DECIMALS);
            });
    unit.put("holds", answer.unit().isPresent() && day.holds())
        .put("verdict", AnswerText.heading(answer))
        .<ObjectNode>set("indoorPeakF", temperature(day.peakTemperature()))
        .put("indoorPeakHour", day.peakHour())
        .<ObjectNode>set("operativePeakF", temperature(day.operativePeak()))
        .put(
            "keepsUpToF",
            answer.unit().map(own -> rounded(own.keepsUpTo(), Units::fahrenheit)).orElse(null))
        .put(
            "limitReason",
            answer.unit().map(own -> own.limitReason().orElse(null)).orElse(reason(answer)))
        .put("recommendedBtuh", rounded(answer.recommended(), Units::btuh));
    FloorAreaGuide.of(answer)
        .ifPresentOrElse(
            guide ->
                unit.put("guideByFloorAreaBtuh", heat(guide.usual()))
                    .put("guideByFloorAreaSunnyBtuh", heat(guide.sunny())),
            () -> unit.putNull("guideByFloorAreaBtuh").putNull("guideByFloorAreaSunnyBtuh"));
    answer
        .unit()
        .flatMap(UnitAnswer::pullDown)
        .ifPresentOrElse(
            morning -> pullDown(unit.putObject("pullDown"), morning),
            () -> unit.putNull("pullDown"));
    answer
        .unit()
        .flatMap(own -> own.day().mostStarts())
        .ifPresentOrElse(
            most ->
                unit.putObject("cycling")
                    .put("hour", most.hour())
                    .put("startsPerHour", rounded(most.starts(), DECIMALS))
                    .put("runMinutes", rounded(most.minutes(), DECIMALS))
                    .put("tooBig", answer.isTooBig()),
            () -> unit.putNull("cycling"));
    DustAnswer.of(answer).ifPresentOrElse(dust -> dust(unit, dust), () -> unit.putNull("dust"));
    answer
        .unit()
        .flatMap(UnitAnswer::fan)
        .ifPresentOrElse(fan -> fan(unit, fan), () -> unit.putNull("fan"));
    PadsAnswer.of(answer.shop(), core)
        .ifPresentOrElse(pads -> pads(unit, pads), () -> unit.putNull("pads"));
    PortableAnswer.of(answer)
        .ifPresentOrElse(
            told ->
                unit.putObject("portable")
                    .put("saccBtuh", heat(told.adjusted()))
                    .put("saccTyped", told.typed())
                    .put("machineBtuh", heat(told.machine()))
                    .put("machineEerBtuPerWh", rounded(told.eer() * Units.btuh(1), DECIMALS))
                    .put("recommendedSaccBtuh", rounded(told.recommended(), Units::btuh)),
            () -> unit.putNull("portable"));
  }

  private static void dust(ObjectNode unit, DustAnswer dust) {
    ObjectNode told = unit.putObject("dust");
    told.put("lostAirflowShare", rounded(dust.lostAirflow(), DECIMALS))
        .set("cleanIndoorPeakF", temperature(dust.clean()));
    end(told.putObject("atBest"), dust.best());
    end(told.putObject("atWorst"), dust.worst());
  }

  private static void end(ObjectNode to, DustAnswer.End end) {
    to.put("capacityLostShare", rounded(end.capacityLost(), DECIMALS))
        .put("capacityLostBtuh", heat(end.capacity()))
        .put("extraEnergyShare", rounded(end.extraEnergy(), DECIMALS))
        .<ObjectNode>set("indoorPeakF", temperature(end.indoorPeak()))
        .put("holds", end.holds())
        .put("recommendedBtuh", rounded(end.recommended(), Units::btuh));
  }

  private static void pullDown(ObjectNode told, PullDown morning) {
    told.<ObjectNode>set("startF", temperature(morning.start()))
        .put("downAfterHours", hours(morning.minutes()))
        .put("switchOnBeforeWorkHours", hours(morning.lead()));
    if (morning.soaked().isEmpty()) {
      told.putNull("soaked");
      return;
    }
    PullDown.Soaked soaked = morning.soaked().get();
    told.putObject("soaked")
        .<ObjectNode>set("startF", temperature(soaked.start()))
        .put("startHour", soaked.hour())
        .put("downAfterHours", hours(soaked.minutes()));
  }

  private static void fan(ObjectNode unit, FanAnswer fan) {
    ObjectNode told = unit.putObject("fan");
    fan(told.putObject("runsOn"), fan.runsOn());
    fan(told.putObject("stopping"), fan.stopping());
  }

  private static void fan(ObjectNode to, FanAnswer.Effect effect) {
    to.put("humidityPeakShare", rounded(effect.humidity(), FRACTION_DECIMALS))
        .<ObjectNode>set("indoorPeakF", temperature(effect.indoorPeak()))
        .put("holds", effect.holds())
        .put("unitEnergyKwh", rounded(effect.energy(), DECIMALS));
  }

  private static void drier(ObjectNode root, DrierAnswer drier) {
    ObjectNode told = root.putObject("dehumidifier");
    told.put("energyKwh", rounded(drier.energy(), DECIMALS))
        .put("waterGal", rounded(Units.gallons(drier.water() / 1000), DECIMALS));
    drier(told.putObject("with"), drier.with());
    drier(told.putObject("without"), drier.without());
  }

  private static void drier(ObjectNode to, DrierAnswer.Effect effect) {
    to.put("humidityPeakShare", rounded(effect.humidity(), FRACTION_DECIMALS))
        .put("humidityMeanShare", rounded(effect.meanHumidity(), FRACTION_DECIMALS))
        .<ObjectNode>set("indoorPeakF", temperature(effect.indoorPeak()))
        .put("unitEnergyKwh", rounded(effect.unitEnergy(), DECIMALS));
  }

  private static void pads(ObjectNode unit, PadsAnswer pads) {
    unit.putObject("pads")
        .put("airflowCfm", rounded(Units.cfm(pads.airflow()), DECIMALS))
        .<ObjectNode>set("supplyF", temperature(pads.supply()))
        .<ObjectNode>set("outdoorDewPointF", temperature(pads.outdoorDewPoint()))
        .put("humidityShare", rounded(pads.humidity(), FRACTION_DECIMALS))
        .put("humidityWithoutShare", rounded(pads.humidityWithout(), FRACTION_DECIMALS))
        .put("waterGal", rounded(Units.gallons(pads.water() / 1000), DECIMALS))
        .put("tooHumid", pads.isDoubted());
  }

  private static BigDecimal hours(OptionalInt minutes) {
    return minutes.isPresent() ? rounded(minutes.getAsInt() / 60.0, DECIMALS) : null;
  }

  /** Why there is no limit: only said where there is no unit. */
  private static String reason(SizeAnswer answer) {
    return answer.unit().isPresent() ? null : "no unit is given";
  }

  private static void changes(ObjectNode root, SizeAnswer answer, PeakLines peak) {
    ArrayNode changes = root.putArray("changes");
    double indoor = answer.core().indoorPeak();
    answer
        .changes()
        .forEach(
            change ->
                changes
                    .addObject()
                    .put("name", change.name())
                    .put("peakSensibleBtuh", heat(change.peakSensible()))
                    .put("peakLatentBtuh", heat(change.peakLatent()))
                    .<ObjectNode>set("indoorPeakF", temperature(change.indoorPeak()))
                    .put("recommendedBtuh", rounded(change.recommended(), Units::btuh))
                    .put("holds", change.holds())
                    .put(
                        "peakSensibleDifferenceBtuh", heat(change.peakSensible() - peak.sensible()))
                    .put("peakLatentDifferenceBtuh", heat(change.peakLatent() - peak.latent()))
                    .put(
                        "indoorPeakDifferenceF",
                        rounded(
                            Units.fahrenheitDifference(change.indoorPeak() - indoor), DECIMALS)));
  }

  private static void hours(
      ObjectNode parent, String key, IntToDoubleFunction valueOfHour, int decimals) {
    ArrayNode array = parent.putArray(key);
    for (int hour = 1; hour <= HOURS; hour++) {
      array.add(rounded(valueOfHour.applyAsDouble(hour), decimals));
    }
  }

  private static com.fasterxml.jackson.databind.JsonNode temperature(double celsius) {
    BigDecimal figure =
        Double.isFinite(celsius) ? rounded(Units.fahrenheit(celsius), DECIMALS) : null;
    return JsonNodeFactory.instance.numberNode(figure);
  }

  private static BigDecimal heat(double watts) {
    return rounded(Units.btuh(watts), DECIMALS);
  }

  private static BigDecimal rounded(
      OptionalDouble si, java.util.function.DoubleUnaryOperator unit) {
    return si.isPresent() ? rounded(unit.applyAsDouble(si.getAsDouble()), DECIMALS) : null;
  }

  /** Nothing where a figure is not finite, as where no hour is judged. */
  static BigDecimal rounded(double value, int decimals) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)
        : null;
  }
}
