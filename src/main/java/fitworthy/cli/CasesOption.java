package fitworthy.cli;

import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** Which load cases are looked at. */
final class CasesOption {

    @Option(
            names = "--case",
            paramLabel = "NAME",
            description = "Look at this load case only; may be given several times.")
    private List<String> cases = List.of();

    /** The load cases named, which the sheet has to have; an empty set stands for all of them. */
    Set<String> of(Sheet sheet) throws FaultsException {
        Set<String> known =
                sheet.cases().stream().map(LoadCase::name).collect(Collectors.toCollection(LinkedHashSet::new));
        Names.check(
                "--case",
                cases,
                known,
                "the sheet has no load case",
                known.isEmpty() ? "leave --case out" : String.join(", ", known));
        return Set.copyOf(cases);
    }
}
