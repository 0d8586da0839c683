package org.stoutwork.report.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest states. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"stoutwork " + number()};
  }

  /** The version alone. */
  static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "(not packaged)" : version;
  }
}
