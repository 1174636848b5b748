package fitworthy.cli;

import fitworthy.printout.Imprint;
import picocli.CommandLine.IVersionProvider;

/** The version from the jar's manifest. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {Imprint.thisProgram()};
    }
}
