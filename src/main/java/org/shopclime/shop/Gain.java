package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/** Something in a room that gives off heat. */
public sealed interface Gain
    permits Gain.People,
        Gain.Lights,
        Gain.Motor,
        Gain.Compressor,
        Gain.Oven,
        Gain.WorkFan,
        Gain.Other {

  /**
   * What the owner calls it.
   *
   * @return the name of its line
   */
  String name();

  /**
   * When it goes on.
   *
   * @return schedule
   */
  Schedule when();

  /**
   * People at work.
   *
   * @param name line name
   * @param count how many
   * @param activity what they do
   * @param when when
   */
  record People(
      @Say(label = "Name", otherwise = "People") String name,
      @Say(label = "How many", max = 100, otherwise = "1") double count,
      @Say(label = "Work", otherwise = "light bench work") Activity activity,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}

  /** What people do. */
  enum Activity {
    /** Seated, very light work. */
    SEATED,
    /** Light bench work. */
    LIGHT_BENCH_WORK,
    /** Moderate work on the feet. */
    MODERATE_WORK,
    /** Heavy work. */
    HEAVY_WORK
  }

  /**
   * Lights.
   *
   * @param name line name
   * @param count how many
   * @param watts power of each, W
   * @param type kind of lamp
   * @param when when
   */
  record Lights(
      @Say(label = "Name", otherwise = "Lights") String name,
      @Say(label = "How many", max = 1000) double count,
      @Say(label = "Watts each", kind = Kind.POWER, max = 5000) double watts,
      @Say(label = "Lamp", otherwise = "led") Lamp type,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}

  /** Kind of lamp. */
  enum Lamp {
    /** LED. */
    LED,
    /** Incandescent or halogen. */
    INCANDESCENT,
    /** Old fluorescent tube with magnetic ballast. */
    OLD_FLUORESCENT
  }

  /**
   * A machine with a motor.
   *
   * @param name line name
   * @param power rated shaft power, W
   * @param load part of the rated power drawn while running, 0 to 1.5
   * @param use part of the time it runs, 0 to 1
   * @param when when
   */
  record Motor(
      @Say(label = "Name") String name,
      @Say(label = "Rated power", kind = Kind.POWER, max = 100000) double power,
      @Say(
              label = "Load",
              help = "Part of its rated power it draws while it runs.",
              kind = Kind.FRACTION,
              max = 1.5,
              otherwise = "60 %")
          double load,
      @Say(
              label = "Part of the time running",
              kind = Kind.FRACTION,
              max = 1,
              otherwise = "15 %",
              unknown = {"5 %", "15 %", "30 %"})
          Span use,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}

  /**
   * An air compressor.
   *
   * @param name line name
   * @param power rated shaft power, W
   * @param duty part of the time it runs, 0 to 1
   * @param when when
   */
  record Compressor(
      @Say(label = "Name", otherwise = "Compressor") String name,
      @Say(label = "Rated power", kind = Kind.POWER, max = 100000) double power,
      @Say(
              label = "Part of the time running",
              help = "Where its tools are told with compressed air, those decide.",
              kind = Kind.FRACTION,
              max = 1,
              otherwise = "30 %",
              unknown = {"10 %", "30 %", "60 %"})
          Span duty,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}

  /**
   * A curing oven: an insulated box with electric heat.
   *
   * @param name line name
   * @param width inside width, m
   * @param depth inside depth, m
   * @param height inside height, m
   * @param insulation resistance of its walls, m²·K/W
   * @param temperature temperature it is held at, °C
   * @param heater heater power, W
   * @param parts mass of steel cured in an hour, kg
   * @param exhaust part of its heat that a hood or vent takes outdoors, 0 to 1
   * @param when when it is hot
   * @param batches what is cured in it through the day; absent: held hot, with steel by the hour
   */
  record Oven(
      @Say(label = "Name", otherwise = "Oven") String name,
      @Say(label = "Inside width", kind = Kind.LENGTH, min = 0.1, max = 10) double width,
      @Say(label = "Inside depth", kind = Kind.LENGTH, min = 0.1, max = 10) double depth,
      @Say(label = "Inside height", kind = Kind.LENGTH, min = 0.1, max = 10) double height,
      @Say(
              label = "Insulation of its walls",
              kind = Kind.R_VALUE,
              min = 0.1,
              max = 10,
              otherwise = "R-8",
              unknown = {"R-6", "R-8", "R-12"},
              lowIsKind = false)
          Span insulation,
      @Say(label = "Held at", kind = Kind.TEMPERATURE, min = 40, max = 500, otherwise = "400 °F")
          double temperature,
      @Say(label = "Heater", kind = Kind.POWER, min = 100, max = 100000, otherwise = "6 kW")
          double heater,
      @Say(label = "Steel cured an hour", kind = Kind.MASS, max = 5000, otherwise = "50 lb")
          double parts,
      @Say(label = "Heat taken out by a hood", kind = Kind.FRACTION, max = 1, otherwise = "0 %")
          double exhaust,
      @Say(label = "When hot", otherwise = "work") Schedule when,
      @Say(
              label = "Batches",
              help = "Heat by the hour, batch by batch, in place of an oven held hot.",
              otherwise = "none")
          Optional<OvenBatches> batches)
      implements Gain {

    /**
     * An oven that is held hot, with steel by the hour.
     *
     * @param name line name
     * @param width inside width, m
     * @param depth inside depth, m
     * @param height inside height, m
     * @param insulation resistance of its walls, m²·K/W
     * @param temperature temperature it is held at, °C
     * @param heater heater power, W
     * @param parts mass of steel cured in an hour, kg
     * @param exhaust part of its heat that a hood or vent takes outdoors, 0 to 1
     * @param when when it is hot
     */
    public Oven(
        String name,
        double width,
        double depth,
        double height,
        Span insulation,
        double temperature,
        double heater,
        double parts,
        double exhaust,
        Schedule when) {
      this(
          name,
          width,
          depth,
          height,
          insulation,
          temperature,
          heater,
          parts,
          exhaust,
          when,
          Optional.empty());
    }

    /**
     * The same at other times.
     *
     * @param other when it is hot
     * @return the changed record
     */
    public Oven withWhen(Schedule other) {
      return new Oven(
          name,
          width,
          depth,
          height,
          insulation,
          temperature,
          heater,
          parts,
          exhaust,
          other,
          batches);
    }

    /**
     * The same under another hood.
     *
     * @param taken part of its heat that a hood takes outdoors, 0 to 1
     * @return the changed record
     */
    public Oven withExhaust(double taken) {
      return new Oven(
          name, width, depth, height, insulation, temperature, heater, parts, taken, when, batches);
    }

    /**
     * The same with other batches.
     *
     * @param others what is cured in it
     * @return the changed record
     */
    public Oven withBatches(Optional<OvenBatches> others) {
      return new Oven(
          name,
          width,
          depth,
          height,
          insulation,
          temperature,
          heater,
          parts,
          exhaust,
          when,
          others);
    }
  }

  /**
   * A fan that blows over the worker: comfort, not cooling. It moves the room's own air, so all it
   * draws becomes heat there.
   *
   * @param name line name
   * @param power power drawn, W
   * @param airSpeed air speed at the worker, m/s
   * @param when when
   */
  record WorkFan(
      @Say(label = "Name", otherwise = "Fan") String name,
      @Say(
              label = "Draws",
              help = "20 W on a bench, 60 W on a stand, 250 W of a drum fan.",
              kind = Kind.POWER,
              max = 5000,
              usualMax = 1000,
              otherwise = "60 W")
          double power,
      @Say(
              label = "Air past the worker",
              help = "Where you stand: {2 to 4.5 mph|1 to 2 m/s} a few steps before a fan.",
              kind = Kind.SPEED,
              min = 0.05,
              max = 5,
              usualMax = 4,
              otherwise = "2 m/s")
          double airSpeed,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}

  /**
   * Anything else.
   *
   * @param name line name
   * @param power heat given off while on, sensible, W
   * @param radiantFraction part of it that is radiant, 0 to 1
   * @param moisture water given off while on, as its latent heat, W
   * @param when when
   */
  record Other(
      @Say(label = "Name") String name,
      @Say(label = "Heat", kind = Kind.POWER, max = 1e6) double power,
      @Say(label = "Radiant part", kind = Kind.FRACTION, max = 1, otherwise = "30 %")
          double radiantFraction,
      @Say(
              label = "Moisture, as heat",
              help = "About {1,050 BTU/h for each pound|680 W for each kilogram} of water an hour.",
              kind = Kind.POWER,
              max = 1e6,
              otherwise = "0 W")
          double moisture,
      @Say(label = "When", otherwise = "work") Schedule when)
      implements Gain {}
}
