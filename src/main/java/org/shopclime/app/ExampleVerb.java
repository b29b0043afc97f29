package org.shopclime.app;

import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.shopclime.quantity.Problem;
import org.shopclime.shop.Examples;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "example",
    description = {
      "Prints a shop file to start from, and nothing else.",
      "Keep it with: example > my-shop.json"
    })
final class ExampleVerb implements Callable<Integer> {

  private final Session session;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      defaultValue = Examples.USUAL,
      description = "Which one; without it ${DEFAULT-VALUE}.")
  private String name;

  @Option(names = "--list", description = "Only the names, one on each line.")
  private boolean list;

  ExampleVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (list) {
      Examples.names().forEach(session.out()::println);
    } else if (Examples.names().contains(name)) {
      session.out().print(Examples.text(name));
      session.out().flush();
    } else {
      String known =
          Examples.names().stream()
              .map(each -> "\"" + each + "\"")
              .collect(Collectors.joining(", "));
      return session.refuse(new Problem("example", "\"" + name + "\"", "one of " + known));
    }
    return Session.GOOD;
  }
}
