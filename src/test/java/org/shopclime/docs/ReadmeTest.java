package org.shopclime.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.app.Commands;
import org.shopclime.shop.Examples;

/**
 * What the first page shows as output is what the program says. A mark before a block tells the
 * command and the words its part begins with, and perhaps those its last paragraph begins with;
 * {@code *} alone marks a list of the sentences of all examples. When the page is behind, as it
 * should be it lies in {@code target/README.md}, to be copied.
 */
class ReadmeTest {

  private static final Path PAGE = Path.of("README.md");
  private static final Pattern BLOCK =
      Pattern.compile(
          "<!-- told by ([^:]+): (.+?)(?: \\.\\.\\. (.+?))? -->\\n```\\n(.*?)```\\n",
          Pattern.DOTALL);
  private static final Pattern STAGE =
      Pattern.compile("(?m)^\\| ([^|\\n]+) <!-- (\\S+) --> \\| .* \\|$");

  @TempDir Path folder;

  private final Map<String, List<String>> told = new HashMap<>();

  @Test
  void theOutputsAreThoseOfTheProgram() throws IOException {
    String page = Files.readString(PAGE);
    String fresh = BLOCK.matcher(page).replaceAll(this::block);
    fresh = STAGE.matcher(fresh).replaceAll(this::stage);
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target", "README.md"), fresh);
    assertThat(BLOCK.matcher(page).results()).hasSizeGreaterThan(5);
    assertThat(STAGE.matcher(page).results()).hasSize(Examples.names().size());
    assertThat(page.equals(fresh)).as("copy target/README.md to the top").isTrue();
  }

  private String block(MatchResult found) {
    String command = found.group(1);
    List<String> lines = lines(command);
    int start = first(lines, 0, found.group(2));
    assertThat(start).as("%s says %s", command, found.group(2)).isLessThan(lines.size());
    int end = found.group(3) == null ? start : first(lines, start, found.group(3));
    assertThat(end).as("%s says %s", command, found.group(3)).isLessThan(lines.size());
    int after = end + 1;
    while (after < lines.size()
        && !lines.get(after).isBlank()
        && !lines.get(after).startsWith("- ")) {
      after++;
    }
    String shown = String.join("\n", lines.subList(start, after));
    String whole = found.group();
    String mark = whole.substring(0, whole.indexOf("```\n") + 4);
    return Matcher.quoteReplacement(mark + shown + "\n```\n");
  }

  private String stage(MatchResult found) {
    List<String> lines = lines("size " + found.group(2));
    StringBuilder sentence = new StringBuilder();
    for (int i = 2; !lines.get(i).isBlank(); i++) {
      sentence.append(sentence.isEmpty() ? "" : " ").append(lines.get(i));
    }
    return Matcher.quoteReplacement(
        "| %s <!-- %s --> | %s |".formatted(found.group(1), found.group(2), sentence));
  }

  private static int first(List<String> lines, int from, String words) {
    int at = from;
    while (at < lines.size() && !lines.get(at).strip().startsWith(words)) {
      at++;
    }
    return at;
  }

  /** What a command says; the name of an example stands for its file, + for prices in it. */
  private List<String> lines(String command) {
    return told.computeIfAbsent(
        command,
        words -> {
          String[] args = words.split(" ");
          try {
            for (int i = 1; i < args.length; i++) {
              args[i] = file(args[i]);
            }
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          StringWriter out = new StringWriter();
          StringWriter err = new StringWriter();
          int code = Commands.run(args, new PrintWriter(out), new PrintWriter(err));
          assertThat(code).as("%s: %s", words, err).isZero();
          return out.toString().lines().toList();
        });
  }

  private String file(String word) throws IOException {
    String name = word.replaceFirst("\\+$", "");
    if (!Examples.names().contains(name)) {
      return word;
    }
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode shop = (ObjectNode) mapper.readTree(Examples.text(name));
    if (word.endsWith("+")) {
      try (InputStream prices = ReadmeTest.class.getResourceAsStream("prices.json")) {
        shop.set("prices", mapper.readTree(prices));
      }
    }
    Path file = folder.resolve(word + ".json");
    Files.writeString(file, mapper.writeValueAsString(shop));
    return file.toString();
  }
}
