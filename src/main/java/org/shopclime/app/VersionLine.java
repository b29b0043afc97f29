package org.shopclime.app;

import picocli.CommandLine.IVersionProvider;

/** The version, as in the build file. */
final class VersionLine implements IVersionProvider {

  /** Version of the build; a test compares it with the build file. */
  static final String VERSION = "0.1.0-SNAPSHOT";

  @Override
  public String[] getVersion() {
    return new String[] {"Shopclime " + VERSION};
  }
}
