package org.shopclime.run;

import org.shopclime.balance.DayKind;
import org.shopclime.balance.Near;

/** Runs a day with its books, and holds what comes in against what stays and is taken out. */
final class DayBooks {

  private static final double DAY = 86_400;

  private DayBooks() {}

  /**
   * Runs one day from where a runner stands; its heat and water close to rounding, and all that is
   * told is finite.
   *
   * @param runner the runner
   * @param kind working or idle day
   * @param rooms number of its rooms
   * @return the books of that day
   */
  static DayLedger closed(DayRunner runner, DayKind kind, int rooms) {
    DayLedger ledger = new DayLedger(rooms);
    double held = runner.waterHeld();
    runner.audit(ledger);
    runner.run(kind);
    double turnover =
        Math.abs(ledger.sources)
            + Math.abs(ledger.streams)
            + Math.abs(ledger.boundaries)
            + Math.abs(ledger.stored)
            + Math.abs(ledger.plants)
            + Math.abs(ledger.removed);
    double in =
        ledger.sources + ledger.streams + ledger.boundaries + ledger.plants - ledger.removed;
    Near.nothing("heat", in - ledger.stored, turnover);
    double water = ledger.waterIn + ledger.waterGiven - ledger.waterCoil - ledger.waterFallen;
    Near.nothing("water", runner.waterHeld() - held - water, held + given(ledger));
    Near.finite(runner.trace());
    runner.rooms().forEach(Near::finite);
    Near.nothing("unit", DAY * runner.trace().sensible().mean() - ledger.removed, turnover);
    return ledger;
  }

  /** Water given to the air, also by a unit that makes it moister, kg. */
  static double given(DayLedger ledger) {
    return Math.abs(ledger.waterGiven) + Math.max(0, -ledger.waterCoil);
  }
}
