package org.shopclime.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shopclime.quantity.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "form",
    description = "Opens the window in which a shop is described and answered as you type.")
final class FormVerb implements Callable<Integer> {

  private final Session session;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "Shop file (JSON); without it the usual example.")
  private Path file;

  FormVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (!session.form().hasDisplay()) {
      return session.refuse(
          new Problem("form", "no display", "a display to open a window on; size needs none"));
    }
    Optional<Path> given = Optional.ofNullable(file);
    Optional<Session.Loaded> loaded = session.load(given);
    if (loaded.isEmpty()) {
      return Session.BAD_INPUT;
    }
    session.form().open(given, loaded.get().shop().shop());
    return Session.GOOD;
  }
}
