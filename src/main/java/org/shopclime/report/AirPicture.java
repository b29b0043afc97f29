package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.shopclime.balance.AirBook;
import org.shopclime.balance.AirPath;
import org.shopclime.plan.AirAnswer;
import org.shopclime.quantity.UnitSystem;

/**
 * The air of a shop as a box with arrows as wide as their flow: from the left what comes in from
 * outdoors, to the right what goes out; above the box what is led to a hood and out again without
 * mixing; inside it what is filtered and returned. Both sides are equally wide in all.
 */
public final class AirPicture {

  /** What it shows. */
  public static final String CAPTION =
      "Arrows are as wide as their flow of air in that hour. Left: outdoor air coming in; right: room"
          + " air going out; both sides are equal. Above: air led to a hood that does not mix with"
          + " the room's; inside: air filtered and given back.";

  /** Width of all arrows of one side together, px. */
  private static final double WIDEST = 96;

  private static final double LEAST = 1.5;

  /** Room for a name of two lines and its flow. */
  private static final double ROW = 54;

  private static final double GAP = 10;
  private static final double MARGIN = 14;
  private static final double LABEL = 0.3;
  private static final double HEAD = 9;
  private static final double CENTRE = 84;
  private static final double TEXT = 14;

  private final AirAnswer air;
  private final UnitSystem units;
  private final ChartLook look;
  private final List<Flow> in = new ArrayList<>();
  private final List<Flow> out = new ArrayList<>();
  private final List<Flow> past = new ArrayList<>();
  private final List<Flow> returned = new ArrayList<>();
  private final double perFlow;

  /** A flow with its name. */
  private record Flow(String name, double flow) {}

  /**
   * The picture.
   *
   * @param air the air of the shop
   * @param units system of units to show
   * @param look colours
   */
  public AirPicture(AirAnswer air, UnitSystem units, ChartLook look) {
    this.air = air;
    this.units = units;
    this.look = look;
    for (AirPath path : air.book().paths()) {
      String name = Shown.line(path.name());
      boolean leaks = path.kind() == AirPath.Kind.LEAKS;
      add(in, leaks ? name + " in" : name, path.in());
      add(out, leaks ? name + " out" : name, path.out());
      add(past, "Led to " + name, path.led());
      add(returned, name + ", filtered and returned", path.returned());
    }
    double most = air.book().in();
    for (List<Flow> each : List.of(past, returned)) {
      most = Math.max(most, each.stream().mapToDouble(Flow::flow).max().orElse(0));
    }
    perFlow = most > 0 ? WIDEST / most : 0;
  }

  private static void add(List<Flow> to, String name, double flow) {
    if (flow > 0) {
      to.add(new Flow(name, flow));
    }
  }

  private double wide(Flow flow) {
    return Math.max(LEAST, flow.flow() * perFlow);
  }

  private double rows(List<Flow> flows) {
    double sum = 0;
    for (Flow flow : flows) {
      sum += Math.max(ROW, wide(flow) + GAP);
    }
    return sum;
  }

  /**
   * Height it needs.
   *
   * @return px for letters of usual size
   */
  public int height() {
    double box = Math.max(rows(in), rows(out)) + 2 * GAP;
    double inside = CENTRE + GAP + rows(returned) + returned.size() * TEXT;
    return (int) Math.ceil(2 * MARGIN + rows(past) + Math.max(box, inside + 2 * GAP) + ROW);
  }

  /**
   * Draws it.
   *
   * @param graphics where to
   * @param area area to fill, px
   */
  public void draw(Graphics2D graphics, Rectangle2D area) {
    graphics.setColor(look.paper());
    graphics.fill(area);
    double left = area.getX() + LABEL * area.getWidth();
    double right = area.getMaxX() - LABEL * area.getWidth();
    double top = area.getY() + MARGIN + ROW / 2 + rows(past);
    double bottom = area.getMaxY() - MARGIN;
    Rectangle2D box = new Rectangle2D.Double(left, top, right - left, bottom - top);
    graphics.setColor(look.shade());
    graphics.fill(box);
    past(graphics, area);
    side(graphics, in, area.getX() + MARGIN, left, box, true);
    side(graphics, out, right, area.getMaxX() - MARGIN, box, false);
    returned(graphics, box);
    graphics.setColor(look.ink());
    graphics.setStroke(new BasicStroke(2));
    graphics.draw(box);
    heads(graphics, area, box);
    centre(graphics, box);
  }

  private void heads(Graphics2D graphics, Rectangle2D area, Rectangle2D box) {
    graphics.setFont(look.font().deriveFont(Font.BOLD));
    graphics.setColor(look.ink());
    AirBook book = air.book();
    double y = box.getY() - GAP / 2;
    if (past.isEmpty()) {
      write(graphics, "in: " + AirText.flow(book.in(), units), area.getX() + MARGIN, y, 0);
      write(graphics, "out: " + AirText.flow(book.out(), units), area.getMaxX() - MARGIN, y, 1);
    } else {
      double below = box.getY() + GAP + 2;
      write(graphics, "in: " + AirText.flow(book.in(), units), area.getX() + MARGIN, below, 0);
      write(graphics, "out: " + AirText.flow(book.out(), units), area.getMaxX() - MARGIN, below, 1);
    }
  }

  /** Arrows of one side, one below the other, each with its name on its shaft's row. */
  private void side(
      Graphics2D graphics,
      List<Flow> flows,
      double from,
      double to,
      Rectangle2D box,
      boolean entering) {
    double free = box.getHeight() - rows(flows);
    double y = box.getY() + Math.max(GAP, free / 2);
    for (Flow flow : flows) {
      double row = Math.max(ROW, wide(flow) + GAP);
      double middle = y + row / 2 + GAP / 2;
      double start = entering ? to - (to - from) * 0.34 : from - 22;
      double end = entering ? to + 22 : from + (to - from) * 0.34;
      arrow(graphics, start, end, middle, wide(flow), entering ? look.outdoor() : look.indoor());
      graphics.setFont(look.font());
      graphics.setColor(look.ink());
      double edge = entering ? start - 6 : end + HEAD + 6;
      double room = entering ? start - from - 6 : to - edge;
      label(graphics, flow, edge, middle, room, entering ? 1 : 0);
      y += row;
    }
  }

  /** Air that passes above the box. */
  private void past(Graphics2D graphics, Rectangle2D area) {
    double y = area.getY() + MARGIN;
    for (Flow flow : past) {
      double row = Math.max(ROW, wide(flow) + GAP);
      double middle = y + row / 2;
      double start = area.getX() + MARGIN + area.getWidth() * 0.36;
      arrow(graphics, start, area.getMaxX() - MARGIN - HEAD, middle, wide(flow), look.moisture());
      graphics.setFont(look.font());
      graphics.setColor(look.ink());
      label(graphics, flow, start - 6, middle, start - 6 - area.getX() - MARGIN, 1);
      y += row;
    }
  }

  /** Air that stays, at the bottom of the box. */
  private void returned(Graphics2D graphics, Rectangle2D box) {
    double y = box.getMaxY() - rows(returned) - returned.size() * TEXT - GAP / 2;
    double reach = box.getWidth() * 0.3;
    for (Flow flow : returned) {
      double row = Math.max(ROW, wide(flow) + GAP);
      arrow(
          graphics,
          box.getCenterX() + reach,
          box.getCenterX() - reach,
          y + row / 2,
          wide(flow),
          look.without());
      graphics.setFont(look.smallFont());
      graphics.setColor(look.ink());
      write(
          graphics,
          flow.name() + " " + AirText.flow(flow.flow(), units),
          box.getCenterX(),
          y + row + TEXT / 2,
          0.5);
      y += row + TEXT;
    }
  }

  private void arrow(
      Graphics2D graphics, double from, double to, double y, double wide, Color colour) {
    double way = Math.signum(to - from);
    double half = wide / 2;
    double head = half + 5;
    Path2D shape = new Path2D.Double();
    shape.moveTo(from, y - half);
    shape.lineTo(to, y - half);
    shape.lineTo(to, y - head);
    shape.lineTo(to + way * HEAD, y);
    shape.lineTo(to, y + head);
    shape.lineTo(to, y + half);
    shape.lineTo(from, y + half);
    shape.closePath();
    graphics.setColor(colour);
    graphics.fill(shape);
  }

  /** A name over its flow beside an arrow, cut to the room there is. */
  private void label(
      Graphics2D graphics, Flow flow, double x, double middle, double room, double align) {
    FontMetrics metrics = graphics.getFontMetrics();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : flow.name().split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (metrics.stringWidth(longer) > room && !line.isEmpty()) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    if (lines.size() > 2) {
      lines = new ArrayList<>(List.of(lines.get(0), lines.get(1) + " …"));
    }
    lines.add(AirText.flow(flow.flow(), units));
    double height = metrics.getHeight() - 1.0;
    double y = middle - height * lines.size() / 2 + metrics.getAscent();
    for (String each : lines) {
      write(graphics, each, x, y, align);
      y += height;
    }
  }

  private void centre(Graphics2D graphics, Rectangle2D box) {
    AirBook book = air.book();
    List<String> lines = new ArrayList<>();
    lines.add(Shown.power(book.total(), units));
    lines.add(AirText.water(book.water(), units) + " of water an hour");
    if (air.partOfUnit().isPresent()) {
      lines.add(Shown.percent(air.partOfUnit().getAsDouble()) + " of the unit");
    }
    if (book.suction().pascals() > 0.5) {
      lines.add("up to " + Math.round(book.suction().pascals()) + " Pa of suction");
    }
    double height = graphics.getFontMetrics(look.font()).getHeight();
    double space = box.getHeight() - rows(returned) - returned.size() * TEXT;
    double y = box.getY() + (space - height * (lines.size() + 1)) / 2 + height;
    graphics.setColor(look.ink());
    graphics.setFont(look.font());
    write(graphics, "outdoor air brings", box.getCenterX(), y, 0.5);
    for (int i = 0; i < lines.size(); i++) {
      graphics.setFont(i == 0 ? look.font().deriveFont(Font.BOLD, look.type() + 3f) : look.font());
      write(graphics, lines.get(i), box.getCenterX(), y + (i + 1) * height + 2, 0.5);
    }
  }

  /** A text with its begin (0), middle (0.5) or end (1) at x. */
  private static void write(Graphics2D graphics, String text, double x, double y, double align) {
    double width = graphics.getFontMetrics().stringWidth(text);
    graphics.drawString(text, (float) (x - align * width), (float) y);
  }
}
