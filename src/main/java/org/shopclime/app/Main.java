package org.shopclime.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Entry of the program. */
public final class Main {

  private Main() {}

  /**
   * Runs the program. Returns if all went well, so that a build tool that called it goes on.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    leave(Commands.run(args, utf8(FileDescriptor.out), utf8(FileDescriptor.err)));
  }

  private static void leave(int code) {
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Text goes out as UTF-8 whatever the locale, as the shop file comes in. */
  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), true);
  }
}
