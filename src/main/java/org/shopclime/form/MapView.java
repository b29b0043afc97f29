package org.shopclime.form;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.shopclime.climate.Station;
import org.shopclime.report.ClimateFacts;

/**
 * The map of stations: a dot for each. Those that fit what is searched are larger and darker, the
 * one that is chosen has a ring and its name. A click chooses, the wheel goes closer, drawing with
 * the mouse moves the paper. Whatever it does can be done by keys with the list beside it.
 */
final class MapView extends JComponent {

  private static final long serialVersionUID = 1L;

  /** How far from a dot a click still means it, pixels at 100 %. */
  static final int TOLERANCE = 10;

  private static final double STEP = 1.35;
  private static final int GRID_DEGREES = 5;
  private static final int GRID_POINTS = 24;

  private final transient StationMap map;
  private final transient Consumer<Station> chooser;
  private transient Optional<MapSight> sight = Optional.empty();
  private transient Set<String> fitting = Set.of();
  private transient boolean narrowed;
  private transient Optional<StationMap.Spot> chosen = Optional.empty();
  private transient Optional<StationMap.Spot> pointed = Optional.empty();

  /**
   * A map.
   *
   * @param map where the stations lie
   * @param chooser told of the station that is clicked
   */
  MapView(StationMap map, Consumer<Station> chooser) {
    this.map = map;
    this.chooser = chooser;
    setName("picker.map");
    getAccessibleContext().setAccessibleName("Map of the stations");
    setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
    setMinimumSize(new Dimension(Look.scaled(220), Look.scaled(150)));
    setPreferredSize(new Dimension(Look.scaled(600), Look.scaled(396)));
    Mouse mouse = new Mouse();
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
    describe();
  }

  @Override
  public javax.accessibility.AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;

            @Override
            public javax.accessibility.AccessibleRole getAccessibleRole() {
              return javax.accessibility.AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }

  private void describe() {
    String which = chosen.map(spot -> ClimateFacts.name(spot.station())).orElse("none");
    getAccessibleContext()
        .setAccessibleDescription(
            map.spots().size()
                + " stations as dots, "
                + fitting.size()
                + " of them fit the search. Chosen: "
                + which
                + ". The list of stations chooses the same by keys.");
  }

  /** Shows which stations fit, and which one is chosen. */
  void show(Set<String> ids, boolean some, Optional<Station> choice) {
    fitting = ids;
    narrowed = some;
    chosen = choice.flatMap(map::of);
    chosen.ifPresent(this::reveal);
    describe();
    repaint();
  }

  /** Moves the paper if a spot is out of view. */
  private void reveal(StationMap.Spot spot) {
    Point2D.Double at = sight().toScreen(spot.x(), spot.y());
    if (!new Rectangle2D.Double(0, 0, getWidth(), getHeight()).contains(at)) {
      look(sight().centred(spot.x(), spot.y()));
    }
  }

  /** Closer, to what is chosen. */
  void closer() {
    chosen.ifPresent(spot -> look(sight().centred(spot.x(), spot.y())));
    Point2D.Double at =
        chosen
            .map(spot -> sight().toScreen(spot.x(), spot.y()))
            .orElseGet(() -> new Point2D.Double(getWidth() / 2.0, getHeight() / 2.0));
    look(sight().zoomed(STEP * STEP, at.x, at.y));
  }

  void further() {
    look(sight().zoomed(1 / (STEP * STEP), getWidth() / 2.0, getHeight() / 2.0));
  }

  void whole() {
    look(MapSight.whole(wide(), high()));
  }

  private void look(MapSight there) {
    sight = Optional.of(there);
    repaint();
  }

  MapSight sight() {
    MapSight now =
        sight
            .map(last -> last.sized(wide(), high()))
            .orElseGet(() -> MapSight.whole(wide(), high()));
    sight = Optional.of(now);
    return now;
  }

  private int wide() {
    return Math.max(1, getWidth());
  }

  private int high() {
    return Math.max(1, getHeight());
  }

  /** The station under a point of the view, if one is near enough. */
  Optional<Station> under(Point at) {
    return spot(at).map(StationMap.Spot::station);
  }

  private Optional<StationMap.Spot> spot(Point at) {
    Point2D.Double point = sight().toMap(at.x, at.y);
    return map.near(point.x, point.y, Look.scaled(TOLERANCE) / sight().scale());
  }

  /** Where a station is drawn. */
  Optional<Point> of(Station station) {
    return map.of(station)
        .map(
            spot -> {
              Point2D.Double at = sight().toScreen(spot.x(), spot.y());
              return new Point((int) Math.round(at.x), (int) Math.round(at.y));
            });
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D ink = (Graphics2D) graphics.create();
    try {
      ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      ink.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      ink.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      ink.setColor(Look.colour("Shopclime.paper"));
      ink.fillRect(0, 0, getWidth(), getHeight());
      ink.setFont(getFont() == null ? ink.getFont() : getFont());
      paintGrid(ink);
      paintBoxes(ink);
      paintStates(ink);
      paintDots(ink);
    } finally {
      ink.dispose();
    }
  }

  /** Meridians and parallels under the lower 48 states. */
  private void paintGrid(Graphics2D ink) {
    ink.setColor(Look.colour("Shopclime.line"));
    ink.setStroke(new BasicStroke(Look.scaled(10) / 14f));
    for (int longitude = -125; longitude <= -65; longitude += GRID_DEGREES) {
      line(ink, 25, longitude, 50, longitude);
    }
    for (int latitude = 25; latitude <= 50; latitude += GRID_DEGREES) {
      line(ink, latitude, -125, latitude, -65);
    }
  }

  private void line(Graphics2D ink, int south, int west, int north, int east) {
    Path2D.Double path = new Path2D.Double();
    for (int i = 0; i <= GRID_POINTS; i++) {
      double share = i / (double) GRID_POINTS;
      Point2D.Double on =
          MapFrame.LOWER_48.place(south + share * (north - south), west + share * (east - west));
      Point2D.Double at = sight().toScreen(on.x, on.y);
      if (i == 0) {
        path.moveTo(at.x, at.y);
      } else {
        path.lineTo(at.x, at.y);
      }
    }
    ink.draw(path);
  }

  private void paintBoxes(Graphics2D ink) {
    FontMetrics letters = ink.getFontMetrics();
    int gap = Look.scaled(3);
    for (MapFrame frame : MapFrame.ALL) {
      if (frame.title().isEmpty()) {
        continue;
      }
      Rectangle2D.Double box = frame.box();
      Point2D.Double corner = sight().toScreen(box.x, box.y);
      double scale = sight().scale();
      Rectangle2D.Double drawn =
          new Rectangle2D.Double(corner.x, corner.y, box.width * scale, box.height * scale);
      ink.setColor(Look.colour("Shopclime.paper"));
      ink.fill(drawn);
      ink.setColor(Look.colour("Shopclime.line"));
      ink.draw(drawn);
      ink.setColor(Look.colour("Shopclime.quiet"));
      ink.drawString(
          frame.title(), (float) corner.x + gap, (float) corner.y + letters.getAscent() + 1);
    }
  }

  /** Names of states, as far as there is room; they stand behind the dots. */
  private void paintStates(Graphics2D ink) {
    FontMetrics letters = ink.getFontMetrics();
    Color quiet = Look.colour("Shopclime.quiet");
    ink.setColor(new Color(quiet.getRed(), quiet.getGreen(), quiet.getBlue(), 190));
    List<Rectangle2D> taken = new ArrayList<>();
    for (StationMap.Name name : map.names()) {
      Point2D.Double at = sight().toScreen(name.x(), name.y());
      int width = letters.stringWidth(name.state());
      Rectangle2D.Double place =
          new Rectangle2D.Double(
              at.x - width / 2.0, at.y - letters.getAscent() / 2.0, width, letters.getAscent());
      if (taken.stream().noneMatch(place::intersects)) {
        ink.drawString(name.state(), (float) place.x, (float) (place.y + letters.getAscent()));
        taken.add(place);
      }
    }
  }

  private void paintDots(Graphics2D ink) {
    double closer = Math.sqrt(sight().zoom());
    for (StationMap.Spot spot : map.spots()) {
      if (narrowed && !fitting.contains(spot.station().id())) {
        MapMark.OTHER.paint(ink, place(spot), closer);
      }
    }
    MapMark fits = narrowed ? MapMark.FITS : MapMark.PLAIN;
    for (StationMap.Spot spot : map.spots()) {
      if (!narrowed || fitting.contains(spot.station().id())) {
        fits.paint(ink, place(spot), closer);
      }
    }
    chosen.ifPresent(spot -> MapMark.CHOSEN.paint(ink, place(spot), closer));
    Optional<Rectangle2D> named = chosen.map(spot -> paintName(ink, spot, Optional.empty()));
    pointed
        .filter(spot -> !Optional.of(spot).equals(chosen))
        .ifPresent(
            spot -> {
              double r = Look.scaled(6);
              Point2D.Double at = place(spot);
              ink.setColor(Look.charts().ink());
              ink.setStroke(new BasicStroke(Look.scaled(10) / 8f));
              ink.draw(new Ellipse2D.Double(at.x - r, at.y - r, 2 * r, 2 * r));
              paintName(ink, spot, named);
            });
  }

  private Point2D.Double place(StationMap.Spot spot) {
    return sight().toScreen(spot.x(), spot.y());
  }

  /** The name beside its dot, where it is inside the view and clear of another name. */
  private Rectangle2D paintName(Graphics2D ink, StationMap.Spot spot, Optional<Rectangle2D> other) {
    FontMetrics letters = ink.getFontMetrics();
    String name = ClimateFacts.name(spot.station());
    Point2D.Double at = place(spot);
    int pad = Look.scaled(4);
    int away = Look.scaled(11);
    double width = letters.stringWidth(name) + 2.0 * pad;
    double height = letters.getHeight() + (double) pad;
    double x = at.x + away + width <= getWidth() ? at.x + away : at.x - away - width;
    double y = at.y - height / 2;
    x = Math.max(0, Math.min(getWidth() - width, x));
    y = Math.max(0, Math.min(getHeight() - height - 1, y));
    Rectangle2D.Double card = new Rectangle2D.Double(x, y, width, height);
    if (other.isPresent() && other.get().intersects(card)) {
      Rectangle2D taken = other.get();
      card.y =
          taken.getMaxY() + 2 + height < getHeight()
              ? taken.getMaxY() + 2
              : taken.getMinY() - 2 - height;
    }
    ink.setColor(Look.colour("Shopclime.paper"));
    ink.fill(card);
    ink.setStroke(new BasicStroke(1));
    ink.setColor(Look.colour("Shopclime.quiet"));
    ink.draw(card);
    ink.setColor(Look.charts().ink());
    ink.drawString(name, (float) card.x + pad, (float) (card.y + pad / 2.0 + letters.getAscent()));
    return card;
  }

  /** What the mouse does. */
  private final class Mouse extends MouseAdapter {

    private Optional<Point> grip = Optional.empty();
    private boolean moved;

    @Override
    public void mousePressed(MouseEvent event) {
      if (SwingUtilities.isLeftMouseButton(event)) {
        grip = Optional.of(event.getPoint());
        moved = false;
      }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
      grip.ifPresent(
          from -> {
            Point to = event.getPoint();
            if (moved || from.distance(to) > Look.scaled(TOLERANCE) / 2.0) {
              moved = true;
              grip = Optional.of(to);
              look(sight().dragged((double) to.x - from.x, (double) to.y - from.y));
            }
          });
    }

    @Override
    public void mouseReleased(MouseEvent event) {
      if (grip.isPresent() && !moved) {
        under(event.getPoint()).ifPresent(chooser);
      }
      grip = Optional.empty();
    }

    @Override
    public void mouseMoved(MouseEvent event) {
      point(spot(event.getPoint()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
      point(Optional.empty());
    }

    private void point(Optional<StationMap.Spot> spot) {
      if (!spot.equals(pointed)) {
        pointed = spot;
        repaint();
      }
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
      double factor = Math.pow(STEP, -event.getPreciseWheelRotation());
      look(sight().zoomed(factor, event.getX(), event.getY()));
      point(spot(event.getPoint()));
    }
  }

  /** The station the mouse points at. */
  Optional<Station> pointed() {
    return pointed.map(StationMap.Spot::station);
  }
}
