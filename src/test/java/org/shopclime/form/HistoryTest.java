package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {

  @Test
  void goesBackAndForth() {
    History<String> history = new History<>("a");
    assertThat(history.canUndo()).isFalse();
    assertThat(history.undo()).isEqualTo("a");
    history.push("b", "");
    history.push("c", "");
    assertThat(history.undo()).isEqualTo("b");
    assertThat(history.undo()).isEqualTo("a");
    assertThat(history.redo()).isEqualTo("b");
    history.push("d", "");
    assertThat(history.canRedo()).isFalse();
    assertThat(history.undo()).isEqualTo("b");
  }

  @Test
  void typingInOneFieldIsOneStep() {
    History<String> history = new History<>("a");
    history.push("b", "width");
    history.push("c", "width");
    history.push("c", "width");
    assertThat(history.undo()).isEqualTo("a");
    assertThat(history.redo()).isEqualTo("c");
    history.push("d", "width");
    history.push("e", "height");
    history.pause();
    history.push("f", "height");
    assertThat(history.undo()).isEqualTo("e");
    assertThat(history.undo()).isEqualTo("d");
    assertThat(history.undo()).isEqualTo("c");
  }
}
