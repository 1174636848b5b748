package fitworthy.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How many sheets are worked on at once. */
final class JobsOption {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private int jobs = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--jobs",
            paramLabel = "N",
            description = "How many sheets to work on at once; by default one for each" + " processor.")
    private void setJobs(int given) {
        if (given < 1 || given > 256) {
            throw new ParameterException(spec.commandLine(), "--jobs takes a number from 1 to 256, not " + given);
        }
        jobs = given;
    }

    int jobs() {
        return jobs;
    }
}
