package org.shopclime.app;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.shopclime.quantity.Problem;
import org.shopclime.shop.Examples;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The verbs of the command line. */
public final class Commands {

  /** Names the folder of the report that is written where no verb is given. */
  static final String REPORTS = "shopclime.reports";

  private static final List<String> VERBS =
      List.of("size", "year", "airline", PlacesVerb.NAME, "example", "form", "tables", "compare");

  private static final int OWN_FAULT = 1;

  private Commands() {}

  /**
   * Runs one command line.
   *
   * @param args its words
   * @param out standard output
   * @param err standard error
   * @return 0, or 2 on bad input with one line for each problem on {@code err}, or 1 on a fault of
   *     the program itself
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return run(args, out, err, FormLauncher.window());
  }

  /**
   * Runs one command line.
   *
   * @param args its words
   * @param out standard output
   * @param err standard error
   * @param form opens the window
   * @return as {@link #run(String[], PrintWriter, PrintWriter)}
   */
  static int run(String[] args, PrintWriter out, PrintWriter err, FormLauncher form) {
    Session session = new Session(out, err, form);
    if (isPlainSize(args)) {
      return plainSize(args, session);
    }
    return parsed(args, session);
  }

  /**
   * Whether the words are the usual ones: {@code size}, at most one file, at most one {@code
   * --json}. They mean the same to the parser of the command line, which takes longer to load than
   * everything else before the answer.
   */
  static boolean isPlainSize(String[] args) {
    int files = 0;
    int json = 0;
    for (int i = 1; i < args.length; i++) {
      if (args[i].equals("--json")) {
        json++;
      } else if (args[i].isBlank() || "-@\"'".indexOf(args[i].charAt(0)) >= 0) {
        return false;
      } else {
        files++;
      }
    }
    return args.length > 0 && args[0].equals("size") && files <= 1 && json <= 1;
  }

  private static int plainSize(String[] args, Session session) {
    Path file = null;
    boolean json = false;
    try {
      for (int i = 1; i < args.length; i++) {
        if (args[i].equals("--json")) {
          json = true;
        } else {
          file = Path.of(args[i]);
        }
      }
    } catch (InvalidPathException notAFile) {
      return parsed(args, session); // which says what is wrong with it
    }
    int code;
    try {
      code =
          SizeVerb.answer(
              session, Optional.ofNullable(file), Optional.empty(), json, Optional.empty());
    } catch (RuntimeException | Error fault) {
      code = ownFault(session, fault);
    }
    session.out().flush();
    session.err().flush();
    return code;
  }

  /** Runs a command line that is read by its parser. */
  static int parsed(String[] args, Session session) {
    PrintWriter out = session.out();
    PrintWriter err = session.err();
    CommandLine line = new CommandLine(new NoVerb(session));
    verbs(args).forEach(verb -> line.addSubcommand(verb(verb, session)));
    line.getCommandSpec()
        .addOption(
            OptionSpec.builder("--version")
                .versionHelp(true)
                .description("Print the version and stop.")
                .build());
    addHelp(line);
    line.getSubcommands().values().forEach(Commands::addHelp);
    line.setOut(out);
    line.setErr(err);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setUnmatchedOptionsAllowedAsOptionParameters(false);
    line.setExpandAtFiles(false); // "@shop.json" is a file, not a list of words
    // A longitude west of Greenwich looks like an option.
    Optional.ofNullable(line.getSubcommands().get(PlacesVerb.NAME))
        .ifPresent(places -> places.setUnmatchedOptionsArePositionalParams(true));
    line.setParameterExceptionHandler((wrong, words) -> session.refuse(problem(wrong)));
    line.setExecutionExceptionHandler((fault, at, parsed) -> ownFault(session, fault));
    int code;
    try {
      code = line.execute(args);
    } catch (Error fault) { // picocli lets errors through
      code = ownFault(session, fault);
    }
    out.flush();
    err.flush();
    return code;
  }

  /** The verb asked for; reading the words of the others takes time. All where it is not clear. */
  private static List<String> verbs(String[] args) {
    return args.length > 0 && VERBS.contains(args[0]) ? List.of(args[0]) : VERBS;
  }

  private static Callable<Integer> verb(String name, Session session) {
    return switch (name) {
      case "size" -> new SizeVerb(session);
      case "year" -> new YearVerb(session);
      case "airline" -> new AirlineVerb(session);
      case PlacesVerb.NAME -> new PlacesVerb(session);
      case "example" -> new ExampleVerb(session);
      case "form" -> new FormVerb(session);
      case "tables" -> new TablesVerb(session);
      case "compare" -> new CompareVerb(session);
      default -> throw new IllegalArgumentException("no verb " + name);
    };
  }

  private static void addHelp(CommandLine line) {
    line.getCommandSpec()
        .addOption(
            OptionSpec.builder("--help")
                .usageHelp(true)
                .description("Print this help and stop.")
                .build());
  }

  private static int ownFault(Session session, Throwable fault) {
    session.err().println(Session.oneLine("Shopclime failed, which it should not: " + fault));
    return OWN_FAULT;
  }

  /** What is wrong with the words of a command line, and what is known. */
  private static Problem problem(ParameterException wrong) {
    CommandLine at = wrong.getCommandLine();
    boolean top = at.getParent() == null;
    String where = top ? "command line" : at.getCommandName();
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      List<String> words = unmatched.getUnmatched();
      String found = words.isEmpty() ? "too many words" : "\"" + words.get(0) + "\"";
      boolean option = !words.isEmpty() && words.get(0).startsWith("-");
      return new Problem(where, found, option || !top ? options(at) : verbs(at));
    }
    if (wrong instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return argument(where, missing.getMissing().get(0), "nothing");
    }
    if (wrong instanceof OverwrittenOptionException twice
        && twice.getOverwritten() instanceof OptionSpec option) {
      return new Problem(where + " " + option.longestName(), "it more than once", "it once");
    }
    if (wrong.getArgSpec() != null && wrong.getValue() != null) {
      return argument(where, wrong.getArgSpec(), "\"" + wrong.getValue() + "\"");
    }
    String message = String.valueOf(wrong.getMessage());
    return new Problem(where, Session.oneLine(message), options(at));
  }

  private static Problem argument(String where, ArgSpec argument, String found) {
    String name =
        argument instanceof OptionSpec option ? where + " " + option.longestName() : where;
    String takes =
        argument.type() == Integer.class ? PlacesVerb.TAKES_NUMBER : argument.paramLabel();
    return new Problem(name, found, takes);
  }

  private static String verbs(CommandLine at) {
    return "one of the verbs "
        + at.getSubcommands().entrySet().stream()
            .filter(verb -> !verb.getValue().getCommandSpec().usageMessage().hidden())
            .map(verb -> verb.getKey())
            .collect(Collectors.joining(", "));
  }

  private static String options(CommandLine at) {
    String known =
        at.getCommandSpec().options().stream()
            .filter(option -> !option.hidden())
            .map(OptionSpec::longestName)
            .collect(Collectors.joining(", "));
    String words =
        at.getCommandSpec().positionalParameters().stream()
            .map(word -> word.paramLabel())
            .collect(Collectors.joining(" "));
    return words.isEmpty() ? known : words + " and the options " + known;
  }

  /**
   * Without a verb: the window where there is a display, else the usual example with its report.
   */
  @Command(
      name = "shopclime",
      description = {
        "Is the cooling of a small workshop enough, and what would change it?",
        "Without a verb: the window where there is a display, otherwise the usual example with its"
            + " report."
      },
      versionProvider = VersionLine.class)
  private static final class NoVerb implements Callable<Integer> {

    private final Session session;

    NoVerb(Session session) {
      this.session = session;
    }

    @Override
    public Integer call() {
      if (session.form().hasDisplay()) {
        session.form().open(Optional.empty(), Examples.shop(Examples.USUAL));
        return Session.GOOD;
      }
      Path folder = Path.of(System.getProperty(REPORTS, "shopclime-report"));
      return SizeVerb.answer(
          session, Optional.empty(), Optional.of(folder), false, Optional.empty());
    }
  }
}
