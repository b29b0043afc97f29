package org.shopclime.form;

import java.nio.file.Path;
import java.util.Optional;
import org.shopclime.shop.Shop;

/** The shop on the desk: what it was, is, where it is kept and whether that is up to date. */
final class ShopSession {

  private History<Shop> history;
  private Shop saved;
  private Optional<Path> file;

  ShopSession(Optional<Path> file, Shop shop) {
    this.history = new History<>(shop);
    this.saved = shop;
    this.file = file;
  }

  Shop now() {
    return history.now();
  }

  Optional<Path> file() {
    return file;
  }

  boolean isDirty() {
    return !saved.equals(now());
  }

  void propose(ShopPath path, Object value) {
    Shop before = now();
    Shop after = Tidying.after(before, path, path.with(before, value));
    boolean typed = !(value instanceof Record) && !(value instanceof java.util.List<?>);
    history.push(after, typed ? path.toString() : "");
  }

  /** What comes next is undone on its own. */
  void pause() {
    history.pause();
  }

  boolean canUndo() {
    return history.canUndo();
  }

  boolean canRedo() {
    return history.canRedo();
  }

  void undo() {
    history.undo();
  }

  void redo() {
    history.redo();
  }

  void open(Optional<Path> from, Shop shop) {
    history = new History<>(shop);
    saved = shop;
    file = from;
  }

  /** A shop that is nowhere in a file yet, such as one left over from last time. */
  void openUnsaved(Shop before, Shop shop) {
    history = new History<>(shop);
    saved = before;
    file = Optional.empty();
  }

  void saved(Path to, Shop shop) {
    saved = shop;
    file = Optional.of(to);
  }
}
