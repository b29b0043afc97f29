package org.shopclime.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shopclime.climate.TableMaker;
import org.shopclime.quantity.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "tables",
    hidden = true,
    description =
        "Makes the tables of stations and typical years anew from a folder of hourly weather files.")
final class TablesVerb implements Callable<Integer> {

  private final Session session;

  @Parameters(index = "0", paramLabel = "WEATHERFOLDER", description = "Hourly weather files.")
  private Path weather;

  @Parameters(index = "1", paramLabel = "OUTFOLDER", description = "Where the tables go.")
  private Path out;

  TablesVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    try {
      TableMaker.make(
          weather,
          out,
          (read, all, name, refused, notes) -> {
            session
                .err()
                .println(
                    read
                        + "/"
                        + all
                        + " "
                        + name
                        + refused.map(problem -> ": " + problem.sentence()).orElse(""));
            notes.forEach(note -> session.err().println(name + ": " + note));
          });
      return Session.GOOD;
    } catch (IOException e) {
      return session.refuse(
          new Problem(
              "tables",
              Session.oneLine(String.valueOf(e.getMessage())),
              "a folder of hourly weather files and a folder to write to"));
    }
  }
}
