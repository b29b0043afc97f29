package org.shopclime.docs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The two tables of the methods page: where each equation comes from, gathered from the Javadoc of
 * the code, and every external check, gathered from the heads of the published tables. The page is
 * therefore never behind the code.
 */
final class MethodsPage {

  private static final Path MAIN = Path.of("src/main/java/org/shopclime");
  private static final Path PUBLISHED = Path.of("src/test/resources/published");
  private static final Pattern SOURCE =
      Pattern.compile(
          "\\*\\s*(?:<p>)?Source:\\s*(.*?)(?=\\n\\s*\\*\\s*\\n|\\n\\s*\\*\\s*<p>|\\n\\s*\\*\\s*<ul>"
              + "|\\n\\s*\\*\\s*@|\\*/)",
          Pattern.DOTALL);
  private static final Pattern MEMBER =
      Pattern.compile("(?:record|class|enum|interface)\\s+(\\w+)|[\\w<>\\[\\].]+\\s+(\\w+)\\s*\\(");
  private static final Pattern HEAD =
      Pattern.compile("#\\s(Quantity|Source|Status|Tolerance)\\s+(.*)");

  private MethodsPage() {}

  /** Table of sources, by room. */
  static String sources() throws IOException {
    StringBuilder page = new StringBuilder();
    for (Path room : folders(MAIN)) {
      List<String> rows = new ArrayList<>();
      try (Stream<Path> files = Files.list(room)) {
        for (Path file : files.sorted().toList()) {
          if (!file.endsWith("package-info.java")) {
            rows.addAll(sources(file));
          }
        }
      }
      if (!rows.isEmpty()) {
        page.append("### ").append(room.getFileName()).append("\n\n| code | source |\n|---|---|\n");
        rows.forEach(row -> page.append(row).append('\n'));
        page.append('\n');
      }
    }
    return page.toString();
  }

  private static List<String> sources(Path file) throws IOException {
    String text = Files.readString(file);
    String type = file.getFileName().toString().replace(".java", "");
    List<String> rows = new ArrayList<>();
    Matcher matcher = SOURCE.matcher(text);
    while (matcher.find()) {
      Matcher member = MEMBER.matcher(text);
      int end = text.indexOf("*/", matcher.start());
      String name = type;
      if (member.find(end)) {
        String found = member.group(1) == null ? member.group(2) : member.group(1);
        name = found.equals(type) ? type : type + "." + found;
      }
      rows.add("| `" + name + "` | " + plain(matcher.group(1)) + " |");
    }
    return rows;
  }

  private static String plain(String javadoc) {
    return javadoc
        .replaceAll("\\n\\s*\\*\\s*", " ")
        .replaceAll("\\{@link(?:plain)?\\s+#?([^}]*)}", "`$1`")
        .replaceAll("\\{@code\\s+([^}]*)}", "`$1`")
        .replaceAll("</?sub>", "")
        .replace("|", "\\|")
        .strip();
  }

  /** Table of external checks, by room. */
  static String checks() throws IOException {
    StringBuilder page = new StringBuilder();
    for (Path room : folders(PUBLISHED)) {
      StringBuilder excused = new StringBuilder();
      page.append("### ")
          .append(room.getFileName())
          .append("\n\n| checks | quantity | source | status | tolerance | result |\n")
          .append("|---|---|---|---|---|---|\n");
      try (Stream<Path> files = Files.list(room)) {
        for (Path file : files.sorted().toList()) {
          if (file.endsWith("not-run.csv")) {
            for (CSVRecord row : rows(file)) {
              excused.append("- ").append(row.get("id")).append(": ").append(row.get("reason"));
              excused.append('\n');
            }
          } else {
            page.append(check(file)).append('\n');
          }
        }
      }
      page.append('\n');
      if (excused.length() > 0) {
        page.append("Not run:\n\n").append(excused).append('\n');
      }
    }
    return page.toString();
  }

  private static String check(Path file) throws IOException {
    Map<String, String> head = new LinkedHashMap<>();
    String key = null;
    for (String line : Files.readAllLines(file)) {
      Matcher matcher = HEAD.matcher(line);
      if (matcher.matches()) {
        key = matcher.group(1);
        head.put(key, matcher.group(2).strip());
      } else if (line.startsWith("#") && key != null) {
        head.merge(key, line.substring(1).strip(), (a, b) -> a + " " + b);
      }
    }
    List<CSVRecord> rows = rows(file);
    TreeSet<String> ids = new TreeSet<>();
    rows.forEach(row -> ids.add(row.get("id")));
    String told = ids.size() > 4 ? ids.first() + " to " + ids.last() : String.join(", ", ids);
    return "| "
        + String.join(
            " | ",
            told,
            cell(head.get("Quantity")),
            cell(head.get("Source")),
            cell(head.get("Status")),
            cell(head.get("Tolerance")),
            (head.get("Tolerance").startsWith("shown beside") ? "shown, " : "inside, ")
                + rows.size()
                + (rows.size() == 1 ? " row" : " rows"))
        + " |";
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  private static List<CSVRecord> rows(Path file) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .get();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    }
  }

  private static List<Path> folders(Path parent) throws IOException {
    try (Stream<Path> files = Files.list(parent)) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }
}
