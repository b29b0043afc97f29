package org.shopclime.app;

/** Entry of the program. */
public final class Main {

  private Main() {}

  /**
   * Runs the program.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    System.out.println("Shopclime");
  }
}
