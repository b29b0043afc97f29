package org.shopclime.report;

import java.util.List;
import java.util.Optional;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;
import org.shopclime.shop.SupplyCheck;
import org.shopclime.shop.SupplyRules;

/** What the unit asks of its circuit, as a caution. */
final class SupplyText {

  private static final double FLAT_OUT = 0.999;
  private static final int LARGEST = 3;

  private SupplyText() {}

  /** One fact; nothing where nothing is said of the circuit. */
  static Optional<String> fact(SizeAnswer answer) {
    return SupplyCheck.of(answer.shop()).map(check -> fact(check, answer));
  }

  private static String fact(SupplyCheck check, SizeAnswer answer) {
    String hot =
        answer
            .core()
            .unit()
            .map(LivedDay::trace)
            .map(SupplyText::flatOutPower)
            .filter(watts -> watts / check.unit().volts() > check.amps())
            .map(watts -> ", flat out on the hot day about " + amps(watts / check.unit().volts()))
            .orElse("");
    List<String> others =
        check.others().stream()
            .limit(LARGEST)
            .map(load -> Shown.line(load.name()) + " " + amps(load.amps()))
            .toList();
    return "The unit draws about "
        + amps(check.amps())
        + " at "
        + Quantities.show(Kind.VOLTAGE, check.unit().volts(), UnitSystem.INCH_POUND)
        + (check.supply().amps().isPresent() ? " by its plate" : " by its rating")
        + hot
        + (others.isEmpty()
            ? ""
            : "; with everything else at its rating at once ("
                + Shown.row(others)
                + (check.others().size() > LARGEST ? " and less" : "")
                + ") the shop draws about "
                + amps(check.panelAmps())
                + " at 240 V")
        + ". Cord at most "
        + Math.round(SupplyRules.longestCordFeet(check.unit().volts()))
        + " ft and no extension (NEC 440.64). A caution, not a design of wiring: the code and a"
        + " licensed electrician decide.";
  }

  /** Power in the hour in which the unit never stops and draws most; 0 if there is none. */
  private static double flatOutPower(Trace trace) {
    double most = 0;
    for (int hour = 1; hour <= 24; hour++) {
      if (trace.running().at(hour) > FLAT_OUT) {
        most = Math.max(most, trace.power().at(hour));
      }
    }
    return most;
  }

  private static String amps(double amps) {
    return Quantities.show(Kind.CURRENT, amps, UnitSystem.INCH_POUND);
  }
}
