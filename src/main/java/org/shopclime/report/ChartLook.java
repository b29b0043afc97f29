package org.shopclime.report;

import java.awt.Color;
import java.awt.Font;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Colours and type of a chart. The colours of lines and bars are from the palette of Okabe and Ito
 * (2008, "Color Universal Design"), which colour-blind eyes tell apart; on dark paper the blue is
 * the palette's lighter one.
 *
 * @param paper background
 * @param ink text, axes and the wished temperature
 * @param grid lines of the grid
 * @param shade working hours
 * @param outdoor outdoor air
 * @param indoor the room with its unit, and what the unit can give
 * @param without the room without cooling
 * @param heat heat to take out
 * @param moisture dew point and moisture
 * @param type size of the text, points
 */
public record ChartLook(
    Color paper,
    Color ink,
    Color grid,
    Color shade,
    Color outdoor,
    Color indoor,
    Color without,
    Color heat,
    Color moisture,
    int type) {

  private static final Color ORANGE = new Color(0xE69F00);
  private static final Color SKY_BLUE = new Color(0x56B4E9);
  private static final Color GREEN = new Color(0x009E73);
  private static final Color BLUE = new Color(0x0072B2);
  private static final Color VERMILLION = new Color(0xD55E00);
  private static final Color PURPLE = new Color(0xCC79A7);
  private static final int TYPE = 12;

  /**
   * For white paper and light windows.
   *
   * @return the look
   */
  public static ChartLook light() {
    return new ChartLook(
        Color.WHITE,
        new Color(0x222222),
        new Color(0xD0D0D0),
        new Color(0xF1F1EC),
        ORANGE,
        BLUE,
        PURPLE,
        VERMILLION,
        GREEN,
        TYPE);
  }

  /**
   * For dark windows.
   *
   * @return the look
   */
  public static ChartLook dark() {
    return new ChartLook(
        new Color(0x2B2D30),
        new Color(0xE2E2E2),
        new Color(0x4A4D52),
        new Color(0x363A40),
        ORANGE,
        SKY_BLUE,
        PURPLE,
        VERMILLION,
        GREEN,
        TYPE);
  }

  /**
   * Gives a picture a head.
   *
   * @param chart picture
   * @param words what it shows
   * @return the same picture
   */
  public JFreeChart headed(JFreeChart chart, String words) {
    TextTitle title = new TextTitle(words, font().deriveFont(Font.BOLD));
    title.setPaint(ink);
    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
    title.setPosition(RectangleEdge.TOP);
    title.setPadding(new RectangleInsets(0, 4, 4, 4));
    chart.setTitle(title);
    return chart;
  }

  Font font() {
    return new Font(Font.SANS_SERIF, Font.PLAIN, type);
  }

  Font smallFont() {
    return font().deriveFont(type - 1f);
  }
}
