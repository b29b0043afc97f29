package org.shopclime.app;

import java.io.PrintWriter;
import org.shopclime.plan.Progress;

/** Progress in one line that is written over, and wiped when all is done. */
final class ToldProgress implements Progress {

  private static final int WIDTH = 48;

  private final PrintWriter terminal;

  ToldProgress(PrintWriter terminal) {
    this.terminal = terminal;
  }

  /** How far a long answer has come, on a terminal only. */
  @SuppressWarnings("SystemConsoleNull") // from Java 22 on, a line of progress in a log is no harm
  static Progress onTerminal(PrintWriter terminal) {
    return System.console() == null ? Progress.silent() : new ToldProgress(terminal);
  }

  @Override
  public synchronized void at(String part, double done) {
    String line = done < 1 ? Math.round(100 * done) + " %  " + part : "";
    terminal.print("\r" + line + " ".repeat(Math.max(0, WIDTH - line.length())) + "\r");
    terminal.flush();
  }

  @Override
  public boolean isCancelled() {
    return false;
  }
}
