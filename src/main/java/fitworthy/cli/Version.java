package fitworthy.cli;

import picocli.CommandLine.IVersionProvider;

/** The version from the jar's manifest. */
final class Version implements IVersionProvider {

    /** Name and version of the program. */
    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return "fitworthy " + (version == null ? "(not packaged)" : version);
    }

    @Override
    public String[] getVersion() {
        return new String[] {text()};
    }
}
