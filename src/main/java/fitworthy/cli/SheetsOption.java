package fitworthy.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Parameters;

/** Which sheets, where there may be many. */
final class SheetsOption {

    @Parameters(
            arity = "1..*",
            paramLabel = "SHEETS",
            description = "Sheets, folders of sheets, or files with a sheet in JSON"
                    + " on each line; - for the standard input.")
    private List<Path> given;

    List<Path> given() {
        return given;
    }
}
