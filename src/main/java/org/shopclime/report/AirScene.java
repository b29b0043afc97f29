package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import org.shopclime.airline.Placement;

/**
 * A shop in section with its compressor in one place, not to scale: walls, roof, the place filled
 * by how hot it gets, its vents, and arrows where air goes.
 *
 * <p>Drawn in a frame of {@value #WIDE} by {@value #HIGH}, outdoors at its sides.
 */
final class AirScene {

  /** Width of the frame. */
  static final double WIDE = 160;

  /** Height of the frame. */
  static final double HIGH = 96;

  private static final double GROUND = 92;
  private static final double EAVES = 40;
  private static final double RIDGE = 10;
  private static final double LEFT = 22;
  private static final double RIGHT = 116;
  private static final double CLOSET = 78;
  private static final double CLOSET_TOP = 50;
  private static final double LEAN_TO = 142;
  private static final double HATCH = 5;
  private static final double HEAD = 4;

  /** How a place does. */
  enum Heat {
    /** Within what its machine takes. */
    WITHIN,
    /** Hotter than that. */
    ABOVE,
    /** Not safe, whatever its heat. */
    EXCLUDED
  }

  private final Graphics2D ink;
  private final ChartLook look;

  private AirScene(Graphics2D ink, ChartLook look) {
    this.ink = ink;
    this.look = look;
  }

  /** Draws a scene into a box, as large as fits. */
  static void draw(
      Graphics2D ink, Rectangle2D box, Placement.Kind kind, Heat heat, ChartLook look) {
    Graphics2D own = (Graphics2D) ink.create();
    double scale = Math.min(box.getWidth() / WIDE, box.getHeight() / HIGH);
    own.translate(
        box.getX() + (box.getWidth() - scale * WIDE) / 2,
        box.getY() + (box.getHeight() - scale * HIGH) / 2);
    own.scale(scale, scale);
    try {
      new AirScene(own, look).draw(kind, heat);
    } finally {
      own.dispose();
    }
  }

  private void draw(Placement.Kind kind, Heat heat) {
    ink.setColor(look.shade());
    ink.fill(outline());
    Optional<Shape> place = place(kind);
    place.ifPresent(shape -> fill(ink, shape, heat, look));
    ink.setColor(look.ink());
    ink.setStroke(new BasicStroke(1));
    ink.draw(new Line2D.Double(2, GROUND, WIDE - 2, GROUND));
    ink.setStroke(new BasicStroke(2, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
    ink.draw(outline());
    ink.setStroke(new BasicStroke(1.4f));
    ink.draw(new Line2D.Double(LEFT, EAVES, RIGHT, EAVES));
    if (kind == Placement.Kind.UNDER_STAIR) {
      stair();
    }
    place.ifPresent(
        shape -> {
          boolean thick =
              switch (kind) {
                case CLOSED_INSULATED_CLOSET, OUTDOOR_LOOP, OUTDOOR_LOOP_FAN -> true;
                default -> false;
              };
          ink.setStroke(new BasicStroke(thick ? 4 : 1.4f));
          if (kind == Placement.Kind.OPEN_ROOF) {
            openRoof();
          } else if (kind != Placement.Kind.LOFT && kind != Placement.Kind.IN_ROOM) {
            ink.draw(shape);
          }
          if (thick) {
            ink.setColor(look.paper());
            ink.setStroke(new BasicStroke(1.6f));
            ink.draw(shape);
            ink.setColor(look.ink());
          }
        });
    machine(kind);
    vents(kind);
  }

  /** Fills a place; hot ones are hatched too, so that they are told apart without colour. */
  static void fill(Graphics2D ink, Shape place, Heat heat, ChartLook look) {
    Color colour =
        switch (heat) {
          case WITHIN -> ClimateChart.mixed(look.paper(), look.indoor(), 0.35f);
          case ABOVE -> ClimateChart.mixed(look.paper(), look.heat(), 0.4f);
          case EXCLUDED -> look.grid();
        };
    ink.setColor(colour);
    ink.fill(place);
    if (heat == Heat.WITHIN) {
      return;
    }
    Graphics2D inside = (Graphics2D) ink.create();
    inside.clip(place);
    inside.setStroke(new BasicStroke(0.8f));
    inside.setColor(heat == Heat.ABOVE ? look.heat() : look.ink());
    Rectangle2D box = place.getBounds2D();
    double step = heat == Heat.ABOVE ? HATCH : 2 * HATCH;
    for (double x = box.getX() - box.getHeight(); x < box.getMaxX(); x += step) {
      inside.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getY()));
      if (heat == Heat.EXCLUDED) {
        inside.draw(new Line2D.Double(x, box.getY(), x + box.getHeight(), box.getMaxY()));
      }
    }
    inside.dispose();
  }

  private static Shape outline() {
    Path2D.Double shop = new Path2D.Double();
    shop.moveTo(LEFT, GROUND);
    shop.lineTo(LEFT, EAVES);
    shop.lineTo((LEFT + RIGHT) / 2, RIDGE);
    shop.lineTo(RIGHT, EAVES);
    shop.lineTo(RIGHT, GROUND);
    shop.closePath();
    return shop;
  }

  private static Optional<Shape> place(Placement.Kind kind) {
    return Optional.of(
        switch (kind) {
          case IN_ROOM -> new Rectangle2D.Double(LEFT, EAVES, RIGHT - LEFT, GROUND - EAVES);
          case LOFT -> {
            Path2D.Double loft = new Path2D.Double();
            loft.moveTo(LEFT, EAVES);
            loft.lineTo((LEFT + RIGHT) / 2, RIDGE);
            loft.lineTo(RIGHT, EAVES);
            loft.closePath();
            yield loft;
          }
          case LEAN_TO -> {
            Path2D.Double shed = new Path2D.Double();
            shed.moveTo(RIGHT, GROUND);
            shed.lineTo(RIGHT, 54);
            shed.lineTo(LEAN_TO, 62);
            shed.lineTo(LEAN_TO, GROUND);
            shed.closePath();
            yield shed;
          }
          case OPEN_ROOF -> new Rectangle2D.Double(RIGHT + 1, 64, LEAN_TO - RIGHT, GROUND - 64);
          case UNDER_STAIR -> {
            Path2D.Double under = new Path2D.Double();
            under.moveTo(50, GROUND);
            under.lineTo(50, 82);
            under.lineTo(94, 48);
            under.lineTo(94, GROUND);
            under.closePath();
            yield under;
          }
          case CLOSED_CLOSET,
              CLOSED_INSULATED_CLOSET,
              GRILLES_TO_ROOM,
              FAN_TO_ROOM,
              STACK_OUTDOORS,
              FAN_OUTDOORS,
              OUTDOOR_LOOP,
              OUTDOOR_LOOP_FAN ->
              new Rectangle2D.Double(CLOSET, CLOSET_TOP, RIGHT - CLOSET, GROUND - CLOSET_TOP);
        });
  }

  /** A roof on a post, open below. */
  private void openRoof() {
    ink.draw(new Line2D.Double(LEAN_TO, GROUND, LEAN_TO, 63));
    ink.setStroke(new BasicStroke(2.4f));
    ink.draw(new Line2D.Double(RIGHT, 52, LEAN_TO + 8, 65));
  }

  /** Treads that climb to the loft. */
  private void stair() {
    Path2D.Double treads = new Path2D.Double();
    int steps = 8;
    double from = 40;
    double run = (98 - from) / steps;
    double rise = (GROUND - EAVES - 4) / steps;
    treads.moveTo(from, GROUND);
    for (int i = 0; i < steps; i++) {
      treads.lineTo(from + i * run, GROUND - (i + 1) * rise);
      treads.lineTo(from + (i + 1) * run, GROUND - (i + 1) * rise);
    }
    ink.setStroke(new BasicStroke(1.4f));
    ink.draw(treads);
  }

  /** A tank on feet with a pump on it. */
  private void machine(Placement.Kind kind) {
    double x =
        switch (kind) {
          case IN_ROOM -> 58;
          case LOFT -> 58;
          case LEAN_TO, OPEN_ROOF -> 118.5;
          case UNDER_STAIR -> 71;
          default -> 86;
        };
    double floor = kind == Placement.Kind.LOFT ? EAVES : GROUND;
    Area whole = new Area(new RoundRectangle2D.Double(x, floor - 11, 21, 9, 9, 9));
    whole.add(new Area(new Rectangle2D.Double(x + 3, floor - 3, 2, 3)));
    whole.add(new Area(new Rectangle2D.Double(x + 16, floor - 3, 2, 3)));
    whole.add(new Area(new Rectangle2D.Double(x + 3, floor - 18, 6, 8)));
    whole.add(new Area(new Ellipse2D.Double(x + 10, floor - 18, 8, 8)));
    ink.setStroke(new BasicStroke(1.6f));
    ink.setColor(look.paper());
    ink.draw(whole);
    ink.setColor(look.ink());
    ink.fill(whole);
  }

  private void vents(Placement.Kind kind) {
    double low = GROUND - 8;
    double high = CLOSET_TOP + 7;
    switch (kind) {
      case GRILLES_TO_ROOM -> {
        grille(CLOSET, low);
        grille(CLOSET, high);
        arrow(CLOSET - 22, low, CLOSET - 5, low);
        arrow(CLOSET - 5, high, CLOSET - 22, high);
      }
      case FAN_TO_ROOM -> {
        grille(CLOSET, low);
        fan(CLOSET, high);
        arrow(CLOSET - 22, low, CLOSET - 5, low);
        arrow(CLOSET - 7, high, CLOSET - 24, high);
      }
      case STACK_OUTDOORS -> {
        grille(CLOSET, low);
        arrow(CLOSET - 22, low, CLOSET - 5, low);
        stack();
      }
      case FAN_OUTDOORS -> {
        grille(CLOSET, low);
        fan(RIGHT, high);
        arrow(CLOSET - 22, low, CLOSET - 5, low);
        arrow(RIGHT + 7, high, RIGHT + 24, high);
      }
      case OUTDOOR_LOOP -> {
        grille(RIGHT, low);
        grille(RIGHT, high);
        arrow(RIGHT + 24, low, RIGHT + 5, low);
        arrow(RIGHT + 5, high, RIGHT + 24, high);
      }
      case OUTDOOR_LOOP_FAN -> {
        grille(RIGHT, low);
        fan(RIGHT, high);
        arrow(RIGHT + 24, low, RIGHT + 5, low);
        arrow(RIGHT + 7, high, RIGHT + 24, high);
      }
      case LEAN_TO -> {
        grille(LEAN_TO, GROUND - 7);
        grille(LEAN_TO, 70);
        arrow(LEAN_TO + 16, GROUND - 7, LEAN_TO + 5, GROUND - 7);
        arrow(LEAN_TO + 5, 70, LEAN_TO + 16, 70);
      }
      case OPEN_ROOF -> {
        arrow(LEAN_TO + 16, GROUND - 7, LEAN_TO + 4, GROUND - 7);
        arrow(LEAN_TO + 4, 73, LEAN_TO + 16, 73);
      }
      case LOFT -> {
        arrow(LEFT - 14, EAVES + 6, LEFT + 3, EAVES - 5);
        arrow(RIGHT + 14, EAVES + 6, RIGHT - 3, EAVES - 5);
        arrow((LEFT + RIGHT) / 2, RIDGE + 2, (LEFT + RIGHT) / 2, RIDGE - 9);
      }
      case IN_ROOM, CLOSED_CLOSET, CLOSED_INSULATED_CLOSET, UNDER_STAIR -> {
        // nothing passes
      }
    }
  }

  /** A pipe from the closet through loft and roof. */
  private void stack() {
    Rectangle2D pipe = new Rectangle2D.Double(96, 8, 7, CLOSET_TOP - 8);
    ink.setColor(look.paper());
    ink.fill(pipe);
    ink.setColor(look.ink());
    ink.setStroke(new BasicStroke(1.2f));
    ink.draw(new Line2D.Double(96, 8, 96, CLOSET_TOP));
    ink.draw(new Line2D.Double(103, 8, 103, CLOSET_TOP));
    arrow(99.5, CLOSET_TOP - 8, 99.5, 12);
  }

  /** Blades in a gap of an upright wall. */
  private void grille(double x, double y) {
    ink.setColor(look.paper());
    ink.fill(new Rectangle2D.Double(x - 3, y - 5, 6, 10));
    ink.setColor(look.ink());
    ink.setStroke(new BasicStroke(1.1f));
    for (double at = -4; at <= 4; at += 4) {
      ink.draw(new Line2D.Double(x - 2.5, y + at + 1.2, x + 2.5, y + at - 1.2));
    }
  }

  private void fan(double x, double y) {
    Shape ring = new Ellipse2D.Double(x - 6, y - 6, 12, 12);
    ink.setColor(look.paper());
    ink.fill(ring);
    ink.setColor(look.ink());
    ink.setStroke(new BasicStroke(1.2f));
    ink.draw(ring);
    for (int blade = 0; blade < 3; blade++) {
      ink.fill(new Arc2D.Double(x - 5, y - 5, 10, 10, 120 * blade, 55, Arc2D.PIE));
    }
  }

  private void arrow(double fromX, double fromY, double toX, double toY) {
    ink.setColor(look.ink());
    ink.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    ink.draw(new Line2D.Double(fromX, fromY, toX, toY));
    Path2D.Double head = new Path2D.Double();
    head.moveTo(-HEAD, -HEAD * 0.7);
    head.lineTo(1, 0);
    head.lineTo(-HEAD, HEAD * 0.7);
    head.closePath();
    AffineTransform turn = AffineTransform.getTranslateInstance(toX, toY);
    turn.rotate(Math.atan2(toY - fromY, toX - fromX));
    ink.fill(turn.createTransformedShape(head));
  }
}
