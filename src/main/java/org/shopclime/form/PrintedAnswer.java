package org.shopclime.form;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.Rectangle2D;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.text.AttributedString;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.shopclime.report.Figure;

/**
 * One sheet for the wall: the sentence, the figures, both pictures.
 *
 * @param title name of the shop
 * @param sentence the answer
 * @param figures figures with their meaning
 * @param charts pictures in light colours
 */
record PrintedAnswer(String title, String sentence, List<Figure> figures, List<JFreeChart> charts)
    implements Printable {

  private static final int TEXT = 10;

  /** Room for the last lines, points. */
  private static final int FOOT = 28;

  private static final String CAUTION =
      "Computed by Shopclime from the shop as it was described: an estimate to choose by, not a"
          + " design and not an approval. Local code, the makers' instructions and licensed trades"
          + " decide.";

  /** Letters of the pictures as part of those on the screen, so that axes keep their names. */
  private static final double SMALL = 0.7;

  /** The lowest picture, of two panels, is as much higher than the others. */
  private static final double LAST = 1.5;

  PrintedAnswer {
    figures = List.copyOf(figures);
    charts = List.copyOf(charts);
  }

  @Override
  public int print(Graphics graphics, PageFormat format, int page) {
    if (page > 0) {
      return NO_SUCH_PAGE;
    }
    Graphics2D sheet = (Graphics2D) graphics;
    sheet.setColor(Color.BLACK);
    double left = format.getImageableX();
    double width = format.getImageableWidth();
    double y = format.getImageableY();
    y = text(sheet, title, Font.BOLD, TEXT + 6, left, y, width) + 4;
    y = text(sheet, sentence, Font.PLAIN, TEXT + 3, left, y, width) + 8;
    double half = width / 2;
    double column = y;
    double below = y;
    int second = secondColumn();
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (i == second) {
        column = y;
      }
      double x = i < second ? left : left + half;
      column =
          text(
              sheet, figure.label() + ": " + figure.value(), Font.PLAIN, TEXT, x, column, half - 8);
      below = Math.max(below, column);
    }
    y = below + 8;
    double rest = format.getImageableY() + format.getImageableHeight() - FOOT - y;
    double each = rest / (Math.max(1, charts.size()) - 1 + LAST);
    for (int i = 0; i < charts.size(); i++) {
      double height = i == charts.size() - 1 ? LAST * each : each;
      if (each > 60) {
        Graphics2D part = (Graphics2D) sheet.create();
        part.translate(left, y);
        part.scale(SMALL, SMALL);
        charts.get(i).draw(part, new Rectangle2D.Double(0, 0, width / SMALL, (height - 6) / SMALL));
        part.dispose();
      }
      y += height;
    }
    text(sheet, CAUTION, Font.ITALIC, TEXT - 2, left, y + 4, width);
    return PAGE_EXISTS;
  }

  /** Where the right column begins: not with a figure that speaks of the one before it. */
  private int secondColumn() {
    int second = (figures.size() + 1) / 2;
    while (second < figures.size()
        && figures.get(second).label().matches(".*\\b(that|then)\\b.*")) {
      second++;
    }
    return second;
  }

  /** Where a line ends: at a space, since the measurer would part a degree sign from its F. */
  static int end(String words, LineBreakMeasurer lines, double width) {
    int most = lines.nextOffset((float) width);
    int space = words.lastIndexOf(' ', most - 1);
    return most < words.length() && space >= lines.getPosition() ? space + 1 : most;
  }

  private static double text(
      Graphics2D sheet, String words, int style, int size, double x, double y, double width) {
    if (words.isBlank()) {
      return y;
    }
    String told = Look.bound(words);
    AttributedString text = new AttributedString(told);
    text.addAttribute(TextAttribute.FONT, new Font(Font.SANS_SERIF, style, size));
    FontRenderContext context = sheet.getFontRenderContext();
    LineBreakMeasurer lines = new LineBreakMeasurer(text.getIterator(), context);
    double at = y;
    while (lines.getPosition() < told.length()) {
      TextLayout line = lines.nextLayout((float) width, end(told, lines, width), false);
      at += line.getAscent();
      line.draw(sheet, (float) x, (float) at);
      at += line.getDescent() + line.getLeading();
    }
    return at;
  }
}
