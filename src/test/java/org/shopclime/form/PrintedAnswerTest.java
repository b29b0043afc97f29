package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import org.junit.jupiter.api.Test;

class PrintedAnswerTest {

  private static final String TOLD =
      Look.bound("83 °F by 4 pm (79–89 °F) where you wish 78 °F; keeps up until about 92 °F.");

  /** However wide the paper, no line begins with the F of a °F and none is empty. */
  @Test
  void linesEndAtSpaces() {
    AttributedString text = new AttributedString(TOLD);
    text.addAttribute(TextAttribute.FONT, new Font(Font.SANS_SERIF, Font.PLAIN, 13));
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (int width = 120; width < 640; width++) {
      LineBreakMeasurer lines = new LineBreakMeasurer(text.getIterator(), context);
      while (lines.getPosition() < TOLD.length()) {
        int start = lines.getPosition();
        int end = PrintedAnswer.end(TOLD, lines, width);
        assertThat(end).isGreaterThan(start);
        assertThat(end == TOLD.length() || TOLD.charAt(end - 1) == ' ')
            .as(width + ": " + TOLD.substring(start, end))
            .isTrue();
        lines.setPosition(end);
      }
    }
  }
}
