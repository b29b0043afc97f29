package org.shopclime.report;

import java.util.Optional;
import org.shopclime.plan.PortableAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CoolingUnit;

/** The two capacities on the carton of a portable unit, as facts. */
final class PortableText {

  private PortableText() {}

  /** What the label says, and what was made of it; without the full stop. */
  static String label(SizeAnswer answer, UnitSystem units) {
    Optional<PortableAnswer> told = PortableAnswer.of(answer).filter(PortableAnswer::typed);
    return told.isEmpty()
        ? "The label says " + Shown.power(answer.unit().orElseThrow().rated(), units)
        : "The label says "
            + Shown.power(told.get().adjusted(), units)
            + " SACC, taken as a machine of "
            + machine(told.get(), units);
  }

  /** The machine behind a SACC, with what is left out of it. */
  static String machine(CoolingUnit owned, UnitSystem units) {
    CoolingUnit machine = PortableAnswer.asMachine(owned);
    return figures(machine.capacity(), machine.efficiency(), units);
  }

  private static String machine(PortableAnswer told, UnitSystem units) {
    return figures(told.machine(), told.eer(), units);
  }

  private static String figures(double capacity, double eer, UnitSystem units) {
    return Shown.power(capacity, units)
        + " (EER "
        + Quantities.show(Kind.EFFICIENCY, eer, units)
        + ") less what hose and drawn-in air cost in the label's weather; here both are charged hour by"
        + " hour";
  }

  /** What the size that holds is called on a carton. */
  static Optional<String> sizes(SizeAnswer answer, UnitSystem units) {
    return PortableAnswer.of(answer)
        .filter(told -> told.recommended().isPresent())
        .map(
            told ->
                "Sizes here are those of the machine; a portable unit like this one of "
                    + Shown.power(answer.recommended().orElseThrow(), units)
                    + " has about "
                    + Shown.power(told.recommended().orElseThrow(), units)
                    + " SACC on its carton, and the larger figure there is for hotter, damper air and"
                    + " above both.");
  }
}
