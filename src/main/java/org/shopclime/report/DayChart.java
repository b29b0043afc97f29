package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.util.function.IntToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;
import org.shopclime.shop.Shop;

/**
 * The hot day by the clock on the wall: temperatures above, and below them the heat to take out
 * against what the unit can give. Working hours are shaded.
 */
public final class DayChart {

  private static final float BOLD = DayPanels.BOLD;
  private static final float PLAIN = DayPanels.PLAIN;
  private static final float DASH = DayPanels.DASH;

  private final UnitSystem units;
  private final ChartLook look;
  private final DayPanels panels;

  private DayChart(UnitSystem units, ChartLook look, WallClock clock) {
    this.units = units;
    this.look = look;
    this.panels = new DayPanels(units, look, clock);
  }

  /**
   * The chart.
   *
   * @param core heart of the answer
   * @param shop the shop asked about
   * @param units system of units to show
   * @param look colours
   * @return chart of two panels over one axis of time; a point stands in the middle of its hour
   */
  public static JFreeChart of(CoreAnswer core, Shop shop, UnitSystem units, ChartLook look) {
    DayChart day = new DayChart(units, look, new WallClock(shop.work(), core.hotDay().date()));
    return day.panels.chart(day.temperatures(core), day.loads(core));
  }

  private XYPlot temperatures(CoreAnswer core) {
    XYPlot plot = panels.temperatures();
    LivedDay told = core.unit().orElse(core.without());
    line(plot, "Outdoors", look.outdoor(), ChartStyle.line(PLAIN), at(core.hotDay().dryBulb()::at));
    Trace without = core.without().trace();
    if (core.unit().isPresent()) {
      line(
          plot,
          "Inside, unit off",
          look.without(),
          ChartStyle.dashed(PLAIN, 2 * DASH),
          at(without.air()::at));
      line(
          plot,
          "Inside, with the unit",
          look.indoor(),
          ChartStyle.line(BOLD),
          at(told.trace().air()::at));
    } else {
      line(plot, "Inside", look.without(), ChartStyle.line(BOLD), at(without.air()::at));
    }
    line(
        plot,
        "Dew point inside",
        look.moisture(),
        ChartStyle.dashed(PLAIN, DASH),
        at(told.trace().dewPoint()::at));
    line(plot, "Wished inside", look.ink(), ChartStyle.dashed(1, 2), at(hour -> told.setPoint()));
    return plot;
  }

  private XYPlot loads(CoreAnswer core) {
    XYPlot plot = panels.heat();
    for (RoomLoad load : core.load().rooms()) {
      if (load.room() == core.room()) {
        line(
            plot,
            "Heat to take out",
            look.heat(),
            ChartStyle.line(PLAIN),
            hour -> Shown.flow(load.sensible().at(hour), units));
        line(
            plot,
            "Moisture to take out",
            look.moisture(),
            ChartStyle.line(PLAIN),
            hour -> Shown.flow(load.latent().at(hour), units));
      }
    }
    core.unit()
        .map(LivedDay::trace)
        .ifPresent(
            trace -> {
              line(
                  plot,
                  "Heat the unit can take out",
                  look.indoor(),
                  ChartStyle.line(BOLD),
                  hour -> whileOn(trace, trace.canGive().at(hour), hour));
              line(
                  plot,
                  "Moisture it can take out",
                  look.indoor(),
                  ChartStyle.dashed(PLAIN, DASH),
                  hour -> whileOn(trace, trace.canGiveLatent().at(hour), hour));
            });
    return plot;
  }

  /** Nothing is drawn for hours in which the unit is off. */
  private double whileOn(Trace trace, double watts, int hour) {
    return DayPanels.isOff(trace, hour) ? Double.NaN : Shown.flow(watts, units);
  }

  private IntToDoubleFunction at(IntToDoubleFunction celsius) {
    return hour -> Shown.degrees(celsius.applyAsDouble(hour), units);
  }

  private void line(
      XYPlot plot, String name, Color color, Stroke stroke, IntToDoubleFunction valueOfHour) {
    panels.line(plot, name, color, stroke, valueOfHour);
  }
}
