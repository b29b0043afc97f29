package org.shopclime.report;

import java.util.List;

/** Pieces of a page, every text escaped. The page is well-formed XML too. */
final class Html {

  private final StringBuilder page = new StringBuilder();

  /** An owner's or our own text, fit to stand between tags and in attributes. */
  static String escape(String text) {
    String line = Unbroken.of(Shown.line(text));
    StringBuilder safe = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      char sign = line.charAt(i);
      switch (sign) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(sign);
      }
    }
    return safe.toString();
  }

  /** Markup as it is. */
  Html raw(String markup) {
    page.append(markup).append('\n');
    return this;
  }

  /** One element with a text, such as {@code <p class="answer">}. */
  Html element(String tag, String kind, String text) {
    String as = kind.isEmpty() ? "" : " class=\"" + kind + "\"";
    return raw("<" + tag + as + ">" + escape(text) + "</" + tag + ">");
  }

  Html element(String tag, String text) {
    return element(tag, "", text);
  }

  /** A list with a dot before each line; nothing if it is empty. */
  Html list(List<String> lines) {
    if (!lines.isEmpty()) {
      raw("<ul>");
      lines.forEach(line -> element("li", line));
      raw("</ul>");
    }
    return this;
  }

  /** A table with a head; the first column is the name of its row. */
  Html table(List<String> head, List<List<String>> rows) {
    raw("<div class=\"wide\"><table><thead><tr>");
    head.forEach(
        cell -> raw(cell.isEmpty() ? "<td></td>" : "<th scope=\"col\">" + escape(cell) + "</th>"));
    raw("</tr></thead><tbody>");
    for (List<String> row : rows) {
      page.append("<tr><th scope=\"row\">").append(escape(row.get(0))).append("</th>");
      row.subList(1, row.size())
          .forEach(cell -> page.append("<td>").append(escape(cell)).append("</td>"));
      raw("</tr>");
    }
    return raw("</tbody></table></div>");
  }

  /** A picture inside the page. */
  Html picture(byte[] png, int width, String alt, String caption) {
    String data = java.util.Base64.getEncoder().encodeToString(png);
    raw("<figure>");
    raw(
        "<img width=\""
            + width
            + "\" src=\"data:image/png;base64,"
            + data
            + "\" alt=\""
            + escape(alt)
            + "\" />");
    if (!caption.isEmpty()) {
      element("figcaption", caption);
    }
    return raw("</figure>");
  }

  @Override
  public String toString() {
    return page.toString();
  }
}
