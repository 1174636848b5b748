package fitworthy.cli;

import picocli.CommandLine.Option;

/** In which shape something is printed. */
final class FormatOption {

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES}; text by default.")
    private Format format;

    boolean isJson() {
        return format == Format.json;
    }
}
