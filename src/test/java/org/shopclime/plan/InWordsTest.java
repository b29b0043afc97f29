package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Words in a row. */
class InWordsTest {

  @Test
  void wordsAreJoinedAsInASentence() {
    assertThat(InWords.row(List.of())).isEmpty();
    assertThat(InWords.row(List.of("a"))).isEqualTo("a");
    assertThat(InWords.row(List.of("a", "b"))).isEqualTo("a and b");
    assertThat(InWords.row(List.of("a", "b", "c"))).isEqualTo("a, b and c");
  }
}
