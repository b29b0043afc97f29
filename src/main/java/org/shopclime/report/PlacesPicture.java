package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jfree.chart.ui.Drawable;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.quantity.UnitSystem;

/**
 * Every place where the compressor could stand, each as the shop in section with the machine there:
 * its rank, the temperature of its worst hour, its water; those excluded with the reason. As many
 * stand side by side as fit.
 */
public final class PlacesPicture implements Drawable {

  private static final double LEAST_TILE = 172;
  private static final double MOST_TILE = 300;
  private static final double GAP = 10;
  private static final double PAD = 8;
  private static final double BADGE = 22;
  private static final double EDGE = 6;
  private static final double SCENE = 104;
  private static final double KEY = 12;
  private static final double KEY_GAP = 18;
  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  private final AirlineAnswer answer;
  private final UnitSystem units;
  private final ChartLook look;
  private final AirReasons reasons;
  private final WallClock clock;

  /**
   * A picture.
   *
   * @param answer the answer
   * @param units system of units to show
   * @param look colours
   */
  public PlacesPicture(AirlineAnswer answer, UnitSystem units, ChartLook look) {
    this.answer = answer;
    this.units = units;
    this.look = look;
    reasons = new AirReasons(answer, units);
    clock = new WallClock(answer.shop().work(), answer.day().date());
  }

  /** A text where it is drawn; x and y of its box are its upper left corner. */
  record Label(String text, Font font, Color colour, Rectangle2D box) {

    double baseline() {
      return box.getY() + font.getLineMetrics(text, MEASURE).getAscent();
    }
  }

  /** A place where it is drawn. */
  record Tile(PlaceAnswer place, Rectangle2D box, Rectangle2D scene, List<Label> labels) {}

  /** A sign and what it means. */
  record Key(AirScene.Heat heat, Rectangle2D sign, Label label) {}

  /** All that is drawn for a width. */
  record Layout(List<Tile> tiles, List<Key> keys, double height) {}

  /**
   * How high it is.
   *
   * @param width width it is drawn for, px
   * @return height in which all of it is seen at its own size, px
   */
  public double height(double width) {
    return layout(width).height();
  }

  @Override
  public void draw(Graphics2D graphics, Rectangle2D area) {
    Graphics2D ink = (Graphics2D) graphics.create();
    ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    ink.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    ink.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    ink.setColor(look.paper());
    ink.fill(area);
    Layout layout = layout(area.getWidth());
    double scale = Math.min(1, area.getHeight() / layout.height());
    ink.translate(area.getX() + area.getWidth() * (1 - scale) / 2, area.getY());
    ink.scale(scale, scale);
    layout.tiles().forEach(tile -> draw(ink, tile));
    for (Key key : layout.keys()) {
      AirScene.fill(ink, key.sign(), key.heat(), look);
      ink.setColor(look.ink());
      ink.setStroke(new BasicStroke(1));
      ink.draw(key.sign());
      draw(ink, key.label());
    }
    ink.dispose();
  }

  private void draw(Graphics2D ink, Tile tile) {
    AirScene.Heat heat = heat(tile.place());
    Shape frame =
        new RoundRectangle2D.Double(
            tile.box().getX() + 1,
            tile.box().getY() + 1,
            tile.box().getWidth() - 2,
            tile.box().getHeight() - 2,
            10,
            10);
    boolean best = tile.place().ranked().rank().filter(rank -> rank == 1).isPresent();
    ink.setColor(best ? look.indoor() : look.grid());
    ink.setStroke(new BasicStroke(best ? 2.5f : 1));
    ink.draw(frame);
    badge(ink, tile.place(), tile.box());
    AirScene.draw(ink, tile.scene(), tile.place().placement().kind(), heat, look);
    tile.labels().forEach(label -> draw(ink, label));
  }

  private void badge(Graphics2D ink, PlaceAnswer place, Rectangle2D box) {
    double x = box.getX() + PAD;
    double y = box.getY() + PAD;
    boolean ranked = place.ranked().rank().isPresent();
    ink.setColor(look.ink());
    if (ranked) {
      ink.fill(new Ellipse2D.Double(x, y, BADGE, BADGE));
    } else {
      ink.setStroke(new BasicStroke(2));
      ink.draw(new Rectangle2D.Double(x + 2, y + 2, BADGE - 4, BADGE - 4));
    }
    String sign = place.ranked().rank().map(String::valueOf).orElse("×");
    Font font = bold();
    Rectangle2D size = font.getStringBounds(sign, MEASURE);
    ink.setFont(font);
    ink.setColor(ranked ? look.paper() : look.ink());
    ink.drawString(
        sign,
        (float) (x + (BADGE - size.getWidth()) / 2),
        (float) (y + BADGE / 2 - size.getCenterY()));
  }

  private static void draw(Graphics2D ink, Label label) {
    ink.setFont(label.font());
    ink.setColor(label.colour());
    ink.drawString(label.text(), (float) label.box().getX(), (float) label.baseline());
  }

  /** How a place does by its worst hour. */
  static AirScene.Heat heat(PlaceAnswer place) {
    if (place.ranked().rank().isEmpty()) {
      return AirScene.Heat.EXCLUDED;
    }
    return place.placePeak() > AirCompressor.MOST_AMBIENT
        ? AirScene.Heat.ABOVE
        : AirScene.Heat.WITHIN;
  }

  Layout layout(double width) {
    double inside = Math.max(LEAST_TILE, width - 2 * EDGE);
    int fit = (int) Math.floor((inside + GAP) / (LEAST_TILE + GAP));
    int columns = Math.max(1, Math.min(fit, answer.places().size()));
    double tile = Math.min(MOST_TILE, (inside - (columns - 1) * GAP) / columns);
    List<Tile> tiles = new ArrayList<>();
    double top = EDGE;
    for (int first = 0; first < answer.places().size(); first += columns) {
      List<PlaceAnswer> places =
          answer.places().subList(first, Math.min(first + columns, answer.places().size()));
      // Scenes of a row stand side by side, below the longest name.
      double names = places.stream().mapToDouble(place -> named(place, tile)).max().orElse(0);
      List<Tile> row = new ArrayList<>();
      double height = 0;
      for (int i = 0; i < places.size(); i++) {
        Tile made = tile(places.get(i), EDGE + i * (tile + GAP), top, tile, names);
        row.add(made);
        height = Math.max(height, made.box().getHeight());
      }
      for (Tile made : row) {
        Rectangle2D box =
            new Rectangle2D.Double(made.box().getX(), top, made.box().getWidth(), height);
        tiles.add(new Tile(made.place(), box, made.scene(), made.labels()));
      }
      top += height + GAP;
    }
    List<Key> keys = keys(inside, top);
    double bottom = keys.stream().mapToDouble(key -> key.label().box().getMaxY()).max().orElse(top);
    return new Layout(tiles, keys, bottom + EDGE);
  }

  /** How high a name is in its tile. */
  private double named(PlaceAnswer place, double width) {
    return name(new ArrayList<>(), place, 0, 0, width);
  }

  private double name(
      List<Label> labels, PlaceAnswer place, double left, double top, double width) {
    double text = left + PAD + BADGE + PAD;
    double y =
        wrap(labels, AirReasons.name(place), bold(), text, top + 2, left + width - PAD - text);
    return Math.max(y, top + BADGE) - top;
  }

  private Tile tile(PlaceAnswer place, double left, double top, double width, double names) {
    List<Label> labels = new ArrayList<>();
    name(labels, place, left, top + PAD, width);
    double sceneTop = top + PAD + names + 4;
    Rectangle2D scene = new Rectangle2D.Double(left + PAD, sceneTop, width - 2 * PAD, SCENE);
    double y = sceneTop + SCENE + 4;
    double room = width - 2 * PAD;
    double x = left + PAD;
    y = wrap(labels, Shown.temperature(place.placePeak(), units), large(), x, y, room);
    y = wrap(labels, clock.during(place.peakHour()) + over(place), font(), x, y, room);
    y = wrap(labels, "Room: " + Shown.temperature(place.indoorPeak(), units), font(), x, y, room);
    y = wrap(labels, water(place), font(), x, y, room);
    if (place.ranked().rank().isEmpty()) {
      y = wrap(labels, AirReasons.excluded(place), bold(), x, y + 2, room);
    }
    return new Tile(
        place, new Rectangle2D.Double(left, top, width, y + PAD - top), scene, List.copyOf(labels));
  }

  private String over(PlaceAnswer place) {
    double above = place.placePeak() - AirCompressor.MOST_AMBIENT;
    String told = Shown.difference(above, units);
    if (above > 0 && told.startsWith("0 ")) {
      return ", just over its limit";
    }
    return above > 0 ? ", " + told + " over its limit" : ", within its limit";
  }

  private String water(PlaceAnswer place) {
    String unit = units == UnitSystem.SI ? " g" : " fl oz";
    return "Water an hour: "
        + AirTable.water(place.tankWater(), units)
        + unit
        + " in the tank, "
        + AirTable.water(place.lineWater(), units)
        + unit
        + " in the line";
  }

  private List<Key> keys(double width, double top) {
    List<Key> keys = new ArrayList<>();
    double x = EDGE;
    double y = top;
    for (AirScene.Heat heat : AirScene.Heat.values()) {
      boolean there = answer.places().stream().anyMatch(place -> heat(place) == heat);
      if (!there) {
        continue;
      }
      String text =
          switch (heat) {
            case WITHIN -> "up to its limit, " + reasons.limit();
            case ABOVE -> "hotter than its limit";
            case EXCLUDED -> "excluded: not safe";
          };
      Rectangle2D size = font().getStringBounds(Unbroken.of(text), MEASURE);
      double wide = KEY + 5 + size.getWidth();
      if (x > EDGE && x + wide > width + EDGE) {
        x = EDGE;
        y += size.getHeight() + 4;
      }
      Rectangle2D sign = new Rectangle2D.Double(x, y + (size.getHeight() - KEY) / 2, KEY, KEY);
      Rectangle2D box = new Rectangle2D.Double(x + KEY + 5, y, size.getWidth(), size.getHeight());
      keys.add(new Key(heat, sign, new Label(Unbroken.of(text), font(), look.ink(), box)));
      x += wide + KEY_GAP;
    }
    return keys;
  }

  /** Adds lines of a text and tells where the next may stand. */
  private double wrap(
      List<Label> labels, String text, Font font, double left, double top, double width) {
    double y = top;
    String line = "";
    for (String word : (Unbroken.of(text) + " \n").split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      boolean end = word.equals("\n");
      if (!line.isEmpty() && (end || wide(longer, font) > width)) {
        Rectangle2D size = font.getStringBounds(line, MEASURE);
        Rectangle2D box = new Rectangle2D.Double(left, y, size.getWidth(), size.getHeight());
        labels.add(new Label(line, font, look.ink(), box));
        y += size.getHeight();
        line = word;
      } else {
        line = longer;
      }
    }
    return y;
  }

  private static double wide(String text, Font font) {
    return font.getStringBounds(text, MEASURE).getWidth();
  }

  private Font font() {
    return look.font();
  }

  private Font bold() {
    return look.font().deriveFont(Font.BOLD);
  }

  private Font large() {
    return look.font().deriveFont(Font.BOLD, look.type() + 5f);
  }

  /**
   * What it shows, in words.
   *
   * @return a sentence for each place, the best first
   */
  public String words() {
    return answer.places().stream()
        .map(
            place ->
                AirReasons.heading(place)
                    + ": "
                    + Shown.temperature(place.placePeak(), units)
                    + " there "
                    + clock.during(place.peakHour())
                    + over(place)
                    + ". "
                    + water(place)
                    + "."
                    + (place.ranked().rank().isEmpty()
                        ? " " + AirReasons.excluded(place) + "."
                        : ""))
        .collect(Collectors.joining(" "));
  }
}
