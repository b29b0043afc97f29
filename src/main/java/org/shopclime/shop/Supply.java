package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * The circuit a cooling unit hangs on, as far as its owner knows it.
 *
 * @param amps current on the unit's plate, A; absent: rated power over rated voltage
 * @param volts voltage at the outlet, V
 * @param breaker rating of the breaker or fuse, A
 * @param wire copper size of the circuit
 * @param circuit whether anything else hangs on it
 * @param panel rating of the shop's panel or of the feeder to it, A
 */
public record Supply(
    @Say(
            label = "Amps on its plate",
            help = "Leave empty to reckon them from capacity and efficiency.",
            kind = Kind.CURRENT,
            min = 0.5,
            max = 100,
            otherwise = "none")
        Optional<Double> amps,
    @Say(
            label = "Volts at the outlet",
            kind = Kind.VOLTAGE,
            min = 100,
            max = 480,
            otherwise = "none")
        Optional<Double> volts,
    @Say(
            label = "Breaker",
            help = "The amps on its handle.",
            kind = Kind.CURRENT,
            min = 5,
            max = 200,
            usualMin = 15,
            usualMax = 60,
            otherwise = "none")
        Optional<Double> breaker,
    @Say(label = "Copper wire", otherwise = "don't know") Wire wire,
    @Say(
            label = "Shared",
            help = "Whether lights or other machines hang on the same breaker.",
            otherwise = "don't know")
        Sharing circuit,
    @Say(
            label = "Panel",
            help = "Main breaker of the shop's panel.",
            kind = Kind.CURRENT,
            min = 20,
            max = 1000,
            usualMin = 30,
            usualMax = 400,
            otherwise = "none")
        Optional<Double> panel) {

  /** Copper sizes of small circuits. */
  public enum Wire {
    /** Nobody knows. */
    UNKNOWN,
    /** 14 AWG copper. */
    AWG_14,
    /** 12 AWG copper. */
    AWG_12,
    /** 10 AWG copper. */
    AWG_10,
    /** Another size or another metal, on which nothing is said here. */
    OTHER
  }

  /** Whether anything else hangs on the circuit. */
  public enum Sharing {
    /** Nobody knows. */
    UNKNOWN,
    /** Nothing else. */
    ALONE,
    /** Lights or other machines too. */
    SHARED
  }
}
