package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoteTest {

  @Test
  void aProblemTakesThePlaceOfTheHelpUntilItIsGone() {
    Note note = new Note("Height of the wall.", "height");
    note.tell(Optional.of("takes a length"));
    assertThat(note.component().getText()).isEqualTo("\u26A0 takes a length");
    note.tell(Optional.empty());
    assertThat(note.component().getText()).isEqualTo("Height of the wall.");
  }

  @Test
  void withoutHelpAndProblemThereIsNoLine() {
    Note note = new Note("", "height");
    note.tell(Optional.empty());
    assertThat(note.component().isVisible()).isFalse();
    note.tell(Optional.of("takes a length"));
    assertThat(note.component().isVisible()).isTrue();
  }
}
