package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shopclime.quantity.Units;

/**
 * What a unit asks of the circuit its owner described, and what else the shop may draw at once.
 *
 * @param unit the unit
 * @param supply its circuit
 * @param amps current of the unit, A: that on its plate, or its rated power over its rated voltage
 * @param panelAmps everything in the shop at its rating at once, A at 240 V
 * @param others what that is besides the unit: name and amps at 240 V, greatest first
 */
public record SupplyCheck(
    CoolingUnit unit, Supply supply, double amps, double panelAmps, List<Load> others) {

  private static final double PANEL_VOLTS = 240;
  private static final double MOTOR_VOLTS = 230;
  private static final double OTHER_VOLTAGE = 0.15;
  private static final double HAIR = 1e-9;
  private static final String ASK =
      " Ask a licensed electrician; the code and the unit's plate decide.";

  /** Copies the list. */
  public SupplyCheck {
    others = List.copyOf(others);
  }

  /**
   * Something that draws current.
   *
   * @param name what the owner calls it
   * @param amps at its rating, A at 240 V
   */
  public record Load(String name, double amps) {}

  /**
   * The check of a shop's unit.
   *
   * @param shop shop
   * @return nothing where there is no unit or nothing is said of its circuit
   */
  public static Optional<SupplyCheck> of(Shop shop) {
    return shop.unit().flatMap(unit -> unit.supply().map(supply -> of(shop, unit, supply)));
  }

  private static SupplyCheck of(Shop shop, CoolingUnit unit, Supply supply) {
    double rated = unit.ratedPower();
    double amps = supply.amps().orElse(rated / unit.volts());
    List<Load> others = new ArrayList<>();
    for (Room room : shop.rooms()) {
      for (Gain gain : room.gains()) {
        double drawn = voltAmps(gain) / PANEL_VOLTS;
        if (drawn > 0) {
          others.add(new Load(gain.name(), drawn));
        }
      }
      room.dehumidifier()
          .ifPresent(drier -> others.add(new Load("Dehumidifier", watts(drier) / PANEL_VOLTS)));
    }
    others.sort((one, other) -> Double.compare(other.amps(), one.amps()));
    double all = amps * unit.volts() / PANEL_VOLTS;
    for (Load load : others) {
      all += load.amps();
    }
    return new SupplyCheck(unit, supply, amps, all, others);
  }

  /** Liters an hour over liters for each kWh. */
  private static double watts(Drier drier) {
    return 1000 * 3600 * drier.capacity() / drier.energyFactor();
  }

  /** Motors draw more than their watts; lamps and heaters draw them. */
  private static double voltAmps(Gain gain) {
    if (gain instanceof Gain.Motor motor) {
      return motor(motor.power());
    } else if (gain instanceof Gain.Compressor compressor) {
      return motor(compressor.power());
    } else if (gain instanceof Gain.Oven oven) {
      return oven.heater();
    } else if (gain instanceof Gain.Lights lights) {
      return lights.count() * lights.watts();
    } else if (gain instanceof Gain.WorkFan fan) {
      return fan.power();
    }
    return 0;
  }

  private static double motor(double watts) {
    return MOTOR_VOLTS * SupplyRules.motorAmps(watts / Units.WATTS_PER_HORSEPOWER);
  }

  /**
   * Cautions about the circuit.
   *
   * @return none where nothing said of it is out of line; that is no approval
   */
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    // NaN stands where a file could not be read, which has been said already
    if (Double.isNaN(amps)) {
      return warnings;
    }
    supply.breaker().ifPresent(breaker -> breaker(warnings, breaker));
    supply
        .volts()
        .filter(volts -> Math.abs(volts / unit.volts() - 1) > OTHER_VOLTAGE)
        .ifPresent(
            volts ->
                add(
                    warnings,
                    "volts",
                    "The outlet has "
                        + figure(volts)
                        + " V, the unit is made for "
                        + figure(unit.volts())
                        + " V."));
    if (amps > SupplyRules.MOST_AMPS || unit.volts() > SupplyRules.MOST_VOLTS) {
      add(
          warnings,
          "amps",
          "Beyond 40 A or 250 V a unit is not a room unit on cord and plug (NEC 440.62(A)).");
    }
    supply
        .panel()
        .filter(panel -> panelAmps > panel)
        .ifPresent(
            panel ->
                add(
                    warnings,
                    "panel",
                    "Everything at its rating at once would draw about "
                        + figure(panelAmps)
                        + " A at 240 V, the panel is one of "
                        + figure(panel)
                        + " A: see what need not run together. What is listed as other heat is not in"
                        + " it."));
    return warnings;
  }

  private void breaker(List<Warning> warnings, double breaker) {
    if (!(breaker > 0)) {
      return;
    }
    double alone = SupplyRules.unitLimit(breaker, false);
    double shared = SupplyRules.unitLimit(breaker, true);
    String draws = "The unit draws about " + figure(amps) + " A; ";
    String circuit = figure(breaker) + " A circuit";
    if (amps > alone + HAIR) {
      double needed = SupplyRules.continuousCircuit(amps);
      add(
          warnings,
          "breaker",
          draws
              + "even alone on a "
              + circuit
              + " it may draw "
              + figure(alone)
              + " A (80 %, NEC 440.62(B))"
              + (Double.isFinite(needed)
                  ? "; one of its own of " + figure(needed) + " A is what such a unit asks for."
                  : "."));
    } else if (amps > shared + HAIR && supply.circuit() != Supply.Sharing.ALONE) {
      boolean known = supply.circuit() == Supply.Sharing.SHARED;
      add(
          warnings,
          "circuit",
          draws
              + (known ? "on" : "if anything else hangs on")
              + " a"
              + (known ? " shared " : " ")
              + circuit
              + " it may draw "
              + figure(shared)
              + " A (50 %, NEC 440.62(C)).");
    }
    boolean listed = supply.wire() != Supply.Wire.UNKNOWN && supply.wire() != Supply.Wire.OTHER;
    if (listed && breaker > SupplyRules.breakerLimit(supply.wire())) {
      add(
          warnings,
          "wire",
          Words.of(supply.wire())
              + " copper takes a breaker of at most "
              + figure(SupplyRules.breakerLimit(supply.wire()))
              + " A (NEC 240.4(D)), this one is "
              + figure(breaker)
              + " A: the wire may overheat before it trips.");
    }
  }

  private static void add(List<Warning> warnings, String field, String text) {
    warnings.add(new Warning("unit.supply." + field, text + ASK));
  }

  /** One decimal, none where it is nil. */
  private static String figure(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
