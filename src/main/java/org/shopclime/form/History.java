package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;

/**
 * What a thing was, is, and would be again: a list and an index.
 *
 * @param <T> an immutable thing
 */
final class History<T> {

  private final List<T> states = new ArrayList<>();
  private int index;
  private String lastKey = "";

  History(T first) {
    states.add(first);
  }

  T now() {
    return states.get(index);
  }

  /**
   * A new state; what was undone is forgotten. States one after the other with the same key, which
   * is not empty, count as one: text typed into one field.
   */
  void push(T state, String key) {
    if (state.equals(now())) {
      return;
    }
    boolean same = !key.isEmpty() && key.equals(lastKey) && index > 0;
    if (!same) {
      index++;
    }
    states.subList(index, states.size()).clear();
    states.add(state);
    lastKey = key;
  }

  /** What comes next counts as a state of its own. */
  void pause() {
    lastKey = "";
  }

  boolean canUndo() {
    return index > 0;
  }

  boolean canRedo() {
    return index < states.size() - 1;
  }

  T undo() {
    pause();
    index = Math.max(0, index - 1);
    return now();
  }

  T redo() {
    pause();
    index = Math.min(states.size() - 1, index + 1);
    return now();
  }
}
