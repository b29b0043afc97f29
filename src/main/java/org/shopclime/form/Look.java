package org.shopclime.form;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.regex.Pattern;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.border.AbstractBorder;
import javax.swing.border.Border;
import javax.swing.text.DefaultCaret;
import org.shopclime.report.ChartLook;
import org.shopclime.report.Unbroken;

/** Colours and letters of the form; the colours themselves stand in a properties file per theme. */
final class Look {

  /** Units that are kept to their figures in the form alone. */
  private static final Pattern SHORT = Pattern.compile("(?<=\\d) (?=(?:ft|in\\b|min\\b))");

  private Look() {}

  static void use(boolean dark) {
    FlatLaf.registerCustomDefaultsSource(Look.class.getPackageName(), Look.class.getClassLoader());
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }

  static ChartLook charts() {
    return FlatLaf.isLafDark() ? ChartLook.dark() : ChartLook.light();
  }

  static Color colour(String key) {
    return UIManager.getColor(key);
  }

  /** Pixels of this screen for so many at 100 %. */
  static int scaled(int pixels) {
    return UIScale.scale(pixels);
  }

  /** A thin line that takes the colour of the theme as it is when it is drawn. */
  static Border line() {
    return new AbstractBorder() {
      @Override
      public void paintBorder(Component on, Graphics ink, int x, int y, int width, int height) {
        ink.setColor(colour("Shopclime.line"));
        ink.drawRect(x, y, width - 1, height - 1);
      }

      @Override
      public Insets getBorderInsets(Component on, Insets insets) {
        insets.set(1, 1, 1, 1);
        return insets;
      }
    };
  }

  /** Letters so many times as large as usual. */
  static void letters(JComponent component, double times, int style) {
    // as a style of the theme, so that a change of theme keeps it
    String weight = style == Font.BOLD ? "bold " : "";
    component.putClientProperty("FlatLaf.style", "font: " + weight + Math.round(100 * times) + "%");
  }

  /** Letters and a colour by its name. */
  static void letters(JComponent component, double times, String colour) {
    component.putClientProperty(
        "FlatLaf.style", "font: " + Math.round(100 * times) + "%; foreground: $" + colour);
  }

  /** Does something whenever a part of the window has another size. */
  static void onResized(Component part, Runnable deed) {
    part.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            deed.run();
          }
        });
  }

  /** Text that runs over several lines, is read only and takes no focus. */
  static JTextArea wrapped(String text) {
    JTextArea area = new Wrapped();
    area.setText(text);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    area.setBorder(BorderFactory.createEmptyBorder()); // none would be replaced with the theme
    // a caret of its own, so that a new text scrolls nothing
    DefaultCaret caret = new DefaultCaret();
    caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    area.setCaret(caret);
    area.putClientProperty("FlatLaf.style", "background: null");
    return area;
  }

  /** A text whose figures keep to their units where its lines are broken. */
  static String bound(String text) {
    return SHORT.matcher(Unbroken.of(text)).replaceAll("\u00a0");
  }

  /** Text that is bound so. */
  private static final class Wrapped extends JTextArea {

    private static final long serialVersionUID = 1L;

    @Override
    public void setText(String text) {
      super.setText(bound(text));
    }
  }
}
