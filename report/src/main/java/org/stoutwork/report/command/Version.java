package org.stoutwork.report.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest states. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"stoutwork " + (version == null ? "(not packaged)" : version)};
  }
}
