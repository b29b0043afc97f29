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
      description = "Which one; without it " + Examples.USUAL + ".")
  private String name;

  @Option(names = "--list", description = "Only the names, one on each line.")
  private boolean list;

  ExampleVerb(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    String wanted = name == null ? Examples.USUAL : name;
    if (list && name != null) {
      return session.refuse(
          new Problem("example --list", "\"" + name + "\"", "no name: it lists all of them"));
    }
    if (list) {
      Examples.names().forEach(session.out()::println);
    } else if (Examples.names().contains(wanted)) {
      session.out().print(Examples.text(wanted));
      session.out().flush();
    } else {
      String known =
          Examples.names().stream()
              .map(each -> "\"" + each + "\"")
              .collect(Collectors.joining(", "));
      return session.refuse(new Problem("example", "\"" + wanted + "\"", "one of " + known));
    }
    return Session.GOOD;
  }
}
