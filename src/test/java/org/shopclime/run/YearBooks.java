package org.shopclime.run;

import org.shopclime.balance.Near;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;

/**
 * Hours of a year that were run with their books.
 *
 * @param result what is told of them
 * @param ledger their books
 */
record YearBooks(YearResult result, DayLedger ledger) {

  private static final double JOULES_PER_KILOWATT_HOUR = 3.6e6;

  /** Runs a whole year, as {@link #closed(ShopYear, YearRun, int, int)}. */
  static YearBooks closed(ShopYear year, YearRun run) {
    return closed(year, run, 0, YearWeather.HOURS);
  }

  /**
   * Runs the days before some hours and then these; their heat and water close to rounding, and
   * what is told of the plants is what the books say they did.
   *
   * @param year the year
   * @param run its run, at its beginning
   * @param from first hour that is told
   * @param to hour after the last
   * @return result and books
   * @throws RoomTooHot as the run
   */
  static YearBooks closed(ShopYear year, YearRun run, int from, int to) {
    run.warmUp(from);
    DayLedger ledger = new DayLedger(year.rooms());
    double held = run.waterHeld();
    double heat = run.heatHeld();
    run.audit(ledger);
    YearResult result = run.run(from, to);
    double turnover = ledger.sources + Math.abs(ledger.boundaries) + Math.abs(ledger.streams);
    double in = ledger.sources + ledger.plants + ledger.streams + ledger.boundaries;
    Near.nothing("heat", in - ledger.removed - ledger.stored, turnover);
    Near.nothing("heat held", run.heatHeld() - heat - ledger.stored - ledger.handedOver, turnover);
    double water = ledger.waterIn + ledger.waterGiven - ledger.waterCoil - ledger.waterFallen;
    Near.nothing("water", run.waterHeld() - held - water, run.waterHeld() + DayBooks.given(ledger));
    double plants = 0;
    for (int room = 0; room < year.rooms(); room++) {
      plants +=
          result.kilowattHours(YearResult.Figure.HEATING, room)
              - result.kilowattHours(YearResult.Figure.COOLING, room);
    }
    double told = plants * JOULES_PER_KILOWATT_HOUR;
    Near.nothing("told", told - (ledger.plants - ledger.removed), turnover);
    return new YearBooks(result, ledger);
  }
}
