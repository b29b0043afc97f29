package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/** Kinds of work to start from (common practice), each saying what it takes for granted. */
public final class WorkPresets {

  private static final Schedule WORK = ScheduleText.work();

  private WorkPresets() {}

  /**
   * All presets.
   *
   * @return in the order shown
   */
  public static List<WorkPreset> all() {
    return List.of(handTools(), metalBench(), blastAndPowder());
  }

  /**
   * A preset by name.
   *
   * @param name name as in {@link WorkPreset#name}
   * @return the preset, or nothing
   */
  public static Optional<WorkPreset> find(String name) {
    return all().stream().filter(preset -> preset.name().equals(name)).findFirst();
  }

  private static WorkPreset handTools() {
    return new WorkPreset(
        "Hand tools and radio",
        List.of(
            "One person at light bench work in the working hours.",
            "Four LED lights of 40 W are on in the working hours.",
            "A radio takes 20 W.",
            "No machine, no compressor, no fan to outdoors."),
        List.of(person(Gain.Activity.LIGHT_BENCH_WORK), lights(4), radio()),
        List.of());
  }

  private static WorkPreset metalBench() {
    return new WorkPreset(
        "Metal bench with 5 hp compressor",
        List.of(
            "One person at moderate work in the working hours.",
            "Six LED lights of 40 W are on in the working hours.",
            "A radio takes 20 W.",
            "A 1.5 hp belt grinder runs 15 % of the time at 60 % load.",
            "A 5 hp compressor stands in the room; how much it runs nobody knows, likely 30 %.",
            "No fan to outdoors."),
        List.of(person(Gain.Activity.MODERATE_WORK), lights(6), radio(), grinder(), compressor()),
        List.of());
  }

  private static WorkPreset blastAndPowder() {
    double heater = 6000;
    Gain oven =
        new Gain.Oven(
            "Curing oven",
            Typed.length("3 ft"),
            Typed.length("3 ft"),
            Typed.length("4 ft"),
            Span.known(Typed.rValue("R-8")),
            Typed.si(Kind.TEMPERATURE, "400 °F"),
            heater,
            Typed.si(Kind.MASS, "50 lb"),
            0,
            ScheduleText.read("Mon-Sat 13:00-16:00").orElseThrow());
    Gain vacuum = new Gain.Other("Blast cabinet vacuum", 1100, 0.3, 0, WORK);
    Fan exhaust =
        new Fan(
            "Oven exhaust",
            FanWay.OUT,
            Typed.si(Kind.AIR_FLOW, "150 CFM"),
            ScheduleText.read("Mon-Sat 13:00-16:00").orElseThrow());
    return new WorkPreset(
        "Blast and powder-coat day",
        List.of(
            "One person at heavy work in the working hours.",
            "Six LED lights of 40 W are on in the working hours.",
            "A 5 hp compressor stands in the room; how much it runs nobody knows, likely 30 %.",
            "The blast cabinet's vacuum takes 1,100 W and gives its air back to the room.",
            "A 3 x 3 x 4 ft oven with R-8 walls and a 6 kW heater is at 400 °F from 1 to 4 pm"
                + " and cures 50 lb of steel an hour; its hood takes none of its heat.",
            "A fan blows 150 CFM out while the oven is hot."),
        List.of(person(Gain.Activity.HEAVY_WORK), lights(6), compressor(), vacuum, oven),
        List.of(exhaust));
  }

  private static Gain person(Gain.Activity activity) {
    return new Gain.People("People", 1, activity, WORK);
  }

  private static Gain lights(double count) {
    return new Gain.Lights("Lights", count, 40, Gain.Lamp.LED, WORK);
  }

  private static Gain radio() {
    return new Gain.Other("Radio", 20, 0.3, 0, WORK);
  }

  private static Gain grinder() {
    return new Gain.Motor(
        "Belt grinder", Typed.si(Kind.POWER, "1.5 hp"), 0.6, Span.known(0.15), WORK);
  }

  private static Gain compressor() {
    return new Gain.Compressor(
        "Compressor", Typed.si(Kind.POWER, "5 hp"), new Span(0.1, 0.3, 0.6), WORK);
  }
}
