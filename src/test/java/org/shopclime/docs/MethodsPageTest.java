package org.shopclime.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The methods page says what the code and the published tables say. When it does not, the page as
 * it should be lies in {@code target/METHODS.md}, to be copied.
 */
class MethodsPageTest {

  private static final Path PAGE = Path.of("src/docs/METHODS.md");
  private static final String SOURCES = "<!-- sources: from the Javadoc -->\n";
  private static final String CHECKS = "<!-- checks: from the heads of the published tables -->\n";

  @Test
  void thePageIsNotBehindTheCode() throws IOException {
    String page = Files.readString(PAGE);
    String fresh =
        MethodsPart.renewed(
            MethodsPart.renewed(page, SOURCES, MethodsPage.sources()),
            CHECKS,
            MethodsPage.checks());
    Path target = Path.of("target", "METHODS.md");
    Files.createDirectories(target.getParent());
    Files.writeString(target, fresh);
    assertThat(page.equals(fresh)).as("copy target/METHODS.md to src/docs").isTrue();
  }
}
