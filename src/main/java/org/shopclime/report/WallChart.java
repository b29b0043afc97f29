package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampSpell;
import org.shopclime.envelope.SlicedWall;
import org.shopclime.envelope.Vapour;
import org.shopclime.plan.DampWords;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/**
 * A slice through a wall, outdoors on the left: its layers to scale (very thin ones widened so that
 * they can be seen), temperature and dew point across them, and rings where the dew point reaches
 * the temperature.
 */
public final class WallChart {

  /** Least width of a layer and width of the air at either side, parts of the wall's thickness. */
  private static final double LEAST = 0.035;

  private static final double AIR = 0.14;

  /** Conductivity of insulation, W/(m·K). */
  private static final double USUAL_CONDUCTIVITY = 0.04;

  private static final double ABOVE = 0.8;
  private static final double BELOW = 0.06;
  private static final float BOLD = 2.6f;
  private static final float RING = 3;
  private static final double RING_SIZE = 15;

  private final DampPath path;
  private final DampSpell spell;
  private final UnitSystem units;
  private final ChartLook look;
  private final List<SlicedWall.Plane> planes;

  /** Places of the faces of the layers as drawn, in or mm; one more than there are layers. */
  private final double[] faces;

  private WallChart(DampPath path, DampSpell spell, UnitSystem units, ChartLook look) {
    this.path = path;
    this.spell = spell;
    this.units = units;
    this.look = look;
    planes = spell.diffusion().wall().planes();
    faces = new double[path.layers().size() + 1];
    double whole = path.layers().stream().mapToDouble(WallChart::thickness).sum();
    for (int layer = 0; layer < path.layers().size(); layer++) {
      double drawn = Math.max(LEAST * whole, thickness(path.layers().get(layer)));
      faces[layer + 1] =
          faces[layer] + (units == UnitSystem.SI ? drawn * 1000 : Units.inches(drawn));
    }
  }

  /** Thickness, m; of a layer told by its resistance alone, that of so much insulation. */
  private static double thickness(org.shopclime.envelope.Layer layer) {
    return layer.isThicknessTold() ? layer.thickness() : USUAL_CONDUCTIVITY * layer.resistance();
  }

  /**
   * The picture.
   *
   * @param path a path that is judged
   * @param spell one of its times
   * @param units system of units to show
   * @param look colours
   * @return chart
   */
  public static JFreeChart of(DampPath path, DampSpell spell, UnitSystem units, ChartLook look) {
    return new WallChart(path, spell, units, look).chart();
  }

  private JFreeChart chart() {
    double width = faces[faces.length - 1];
    NumberAxis depth =
        new NumberAxis(
            "Depth from the outer face, "
                + (units == UnitSystem.SI ? "mm" : "in")
                + " (layers to scale, thin ones widened)");
    ChartStyle.axis(depth, look);
    depth.setRange(-AIR * width, (1 + AIR) * width);
    depth.setNumberFormatOverride(ChartStyle.figures("0.#"));
    NumberAxis degrees =
        new NumberAxis("Temperature and dew point, " + Shown.temperatureUnit(units));
    ChartStyle.axis(degrees, look);
    degrees.setNumberFormatOverride(ChartStyle.figures("#,##0.#"));
    XYSeries temperature = new XYSeries("Temperature");
    XYSeries dewPoint = new XYSeries("Dew point of the air in the wall");
    XYSeries rings = new XYSeries("Dew point reached: water falls out");
    lay(temperature, dewPoint, rings);
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(temperature);
    data.addSeries(dewPoint);
    data.addSeries(rings);
    XYPlot plot = new XYPlot(data, depth, degrees, renderer());
    ChartStyle.plot(plot, look);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(look.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    double low = Math.min(temperature.getMinY(), dewPoint.getMinY());
    double high = Math.max(temperature.getMaxY(), dewPoint.getMaxY());
    double span = Math.max(high - low, 4);
    degrees.setRange(low - BELOW * span, high + ABOVE * span);
    layers(plot, high + ABOVE * span);
    return ChartStyle.chart(plot, look);
  }

  private XYLineAndShapeRenderer renderer() {
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    lines.setDrawSeriesLineAsPath(true);
    lines.setSeriesPaint(0, look.indoor());
    lines.setSeriesStroke(0, ChartStyle.line(BOLD));
    lines.setSeriesPaint(1, look.moisture());
    lines.setSeriesStroke(1, ChartStyle.dashed(BOLD, 6));
    lines.setSeriesLinesVisible(2, false);
    lines.setSeriesShapesVisible(2, true);
    lines.setSeriesShapesFilled(2, false);
    lines.setSeriesShape(
        2, new Ellipse2D.Double(-RING_SIZE / 2, -RING_SIZE / 2, RING_SIZE, RING_SIZE));
    lines.setSeriesPaint(2, look.ink());
    lines.setSeriesOutlinePaint(2, look.ink());
    lines.setSeriesOutlineStroke(2, new BasicStroke(RING));
    lines.setSeriesStroke(2, new BasicStroke(RING));
    lines.setUseOutlinePaint(false);
    lines.setDrawOutlines(true);
    return lines;
  }

  /** Both lines from the air on the outer side to that on the inner one. */
  private void lay(XYSeries temperature, XYSeries dewPoint, XYSeries rings) {
    double width = faces[faces.length - 1];
    double edge = AIR * width;
    add(temperature, -edge, spell.outerAir());
    add(temperature, -edge / 2, spell.outerAir());
    add(dewPoint, -edge, dewPoint(spell.outerPressure()));
    int last = planes.size() - 1;
    for (int plane = 0; plane <= last; plane++) {
      double at = place(plane);
      add(temperature, at, spell.diffusion().temperature(plane));
      add(dewPoint, at, spell.diffusion().dewPoint(plane));
      boolean dew =
          (plane == 0 && spell.diffusion().dewOutside())
              || (plane == last && spell.diffusion().dewInside());
      if (dew || spell.diffusion().rate(plane) > 0) {
        add(rings, at, spell.diffusion().temperature(plane));
      }
    }
    add(temperature, width + edge / 2, spell.innerAir());
    add(temperature, width + edge, spell.innerAir());
    add(dewPoint, width + edge, dewPoint(spell.innerPressure()));
  }

  private void add(XYSeries series, double at, double celsius) {
    series.add(at, Shown.degrees(celsius, units));
  }

  private static double dewPoint(double pressure) {
    return Vapour.dewPoint(Math.max(1, pressure));
  }

  /** Where a plane is drawn: its share of its layer. */
  private double place(int plane) {
    SlicedWall.Plane at = planes.get(plane);
    if (!at.isInside()) {
      return faces[at.outer() + 1];
    }
    double before = 0;
    for (int layer = 0; layer < at.outer(); layer++) {
      before += path.layers().get(layer).thickness();
    }
    double share = (at.depth() - before) / path.layers().get(at.outer()).thickness();
    return faces[at.outer()] + share * (faces[at.outer() + 1] - faces[at.outer()]);
  }

  private void layers(XYPlot plot, double top) {
    double width = faces[faces.length - 1];
    for (int layer = 0; layer < path.layers().size(); layer++) {
      if (layer % 2 == 0) {
        IntervalMarker band = new IntervalMarker(faces[layer], faces[layer + 1], look.shade());
        band.setAlpha(1);
        plot.addDomainMarker(band, Layer.BACKGROUND);
      }
      String name = DampWords.layer(path.layers().get(layer).name());
      write(plot, name, (faces[layer] + faces[layer + 1]) / 2, top);
    }
    for (double face : faces) {
      plot.addDomainMarker(new ValueMarker(face, edge(), new BasicStroke(1)), Layer.BACKGROUND);
    }
    String held = "room";
    String other = spell.outerAir() == spell.time().outdoor() ? "outdoors" : "space behind";
    write(plot, path.heldInside() ? other : held, -AIR * width / 2, top);
    write(plot, path.heldInside() ? held : "space behind", width * (1 + AIR / 2), top);
  }

  private Color edge() {
    return look.grid().darker();
  }

  /** A name that hangs from the top, read from below. */
  private void write(XYPlot plot, String text, double at, double top) {
    XYTextAnnotation name = new XYTextAnnotation(" " + text + " ", at, top);
    name.setFont(look.font());
    name.setPaint(look.ink());
    name.setRotationAnchor(TextAnchor.CENTER_RIGHT);
    name.setTextAnchor(TextAnchor.CENTER_RIGHT);
    name.setRotationAngle(-Math.PI / 2);
    plot.addAnnotation(name);
  }

  /**
   * What the picture shows, in words.
   *
   * @param path the path
   * @param spell its time
   * @param units system of units to show
   * @return such as "West wall, between the framing, January mean: outdoors 47 °F …"
   */
  public static String caption(DampPath path, DampSpell spell, UnitSystem units) {
    List<String> words = new ArrayList<>();
    words.add(Shown.line(path.component().name()));
    String way = DampWords.way(path.way());
    if (!way.isEmpty()) {
      words.add(way);
    }
    words.add(time(spell));
    String held = "room";
    String other = spell.outerAir() == spell.time().outdoor() ? "outdoors" : "behind it";
    String left = path.heldInside() ? other : held;
    String right = path.heldInside() ? held : "behind it";
    return String.join(", ", words)
        + ": "
        + left
        + " "
        + air(spell.outerAir(), spell.outerPressure(), units)
        + ", "
        + right
        + " "
        + air(spell.innerAir(), spell.innerPressure(), units)
        + ".";
  }

  /**
   * A time in words.
   *
   * @param spell the time of a path
   * @return such as "mean of January"
   */
  public static String time(DampSpell spell) {
    return switch (spell.time().kind()) {
      case HOT_DAY -> "mean of the hot day";
      case HUMID_DAY -> "mean of the humid day";
      case MONTH -> "mean of " + DampWords.month(spell.time().month());
    };
  }

  private static String air(double celsius, double pressure, UnitSystem units) {
    return Shown.temperature(celsius, units)
        + ", dew point "
        + Shown.temperature(dewPoint(pressure), units);
  }
}
