package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Book;
import fitworthy.book.BookLoader;
import fitworthy.book.Severity;
import fitworthy.printout.JsonPrintout;
import fitworthy.printout.TextPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks one sheet. */
@Command(name = "check", mixinStandardHelpOptions = true, usageHelpWidth = 80,
        description = "Checks a build sheet and prints what to do about it.",
        footer = {"", "Example:", "  fitworthy check scenarios/touring.yaml --case towing --least change"})
final class Check implements Callable<Integer> {

    /** The shapes that advice can be printed in. */
    enum Format { text, json }

    /** Severities as typed. */
    enum Least { stop, change, confirm, note }

    private final PrintWriter out;
    private final PrintWriter err;
    private final Map<String, String> environment;
    private final BookLoader shipped;

    @Parameters(paramLabel = "SHEET", description = "The build sheet, YAML or JSON.")
    private Path sheetFile;

    @Option(names = "--rules", paramLabel = "FOLDER", description = "The rule book; by default the one shipped.")
    private Path rules;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
            description = "${COMPLETION-CANDIDATES}; text by default.")
    private Format format;

    @Option(names = "--least", paramLabel = "SEVERITY", defaultValue = "note",
            description = "Leave out findings milder than this: ${COMPLETION-CANDIDATES}. The exit code still counts"
                    + " them.")
    private Least least;

    @Option(names = "--all", description = "List everything that was met, with its margin.")
    private boolean all;

    @Option(names = "--case", paramLabel = "NAME",
            description = "Look at this load case only; may be given several times.")
    private List<String> cases = List.of();

    @Option(names = "--region", paramLabel = "REGION", description = "Use this region in place of the sheet's.")
    private String region;

    @Option(names = "--as-of", paramLabel = "DATE", description = "Use the practice of this day in place of the sheet's.")
    private String asOf;

    Check(PrintWriter out, PrintWriter err, Map<String, String> environment, BookLoader shipped) {
        this.out = out;
        this.err = err;
        this.environment = environment;
        this.shipped = shipped;
    }

    @Override
    public Integer call() throws FaultsException, Fitworthy.BadBook {
        Book book = book();
        Sheet sheet = sheet(book);
        Advice advice = Adviser.advise(book, sheet, chosenCases(sheet));
        Severity mildest = Severity.valueOf(least.name().toUpperCase(Locale.ROOT));
        if (format == Format.json) {
            JsonPrintout.print(out, advice, mildest);
        } else {
            new TextPrintout(out, System.console() != null && !environment.containsKey("NO_COLOR"), all)
                    .print(advice, mildest);
        }
        return advice.asksForAction() ? Fitworthy.SOMETHING_TO_DO : 0;
    }

    private Book book() throws Fitworthy.BadBook {
        try {
            BookLoader loader = rules == null ? shipped : BookLoader.begin(rules, Folders.cache(environment));
            return loader.finish(sentence -> {
                err.println(sentence);
                err.flush();
            });
        } catch (FaultsException e) {
            throw new Fitworthy.BadBook(e);
        }
    }

    private Sheet sheet(Book book) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read(sheetFile, faults);
        if (root != null && region != null) {
            root = root.with("region", new Node.Scalar(Place.of("--region"), region, false));
        }
        if (root != null && asOf != null) {
            root = root.with("as-of", new Node.Scalar(Place.of("--as-of"), asOf, false));
        }
        return SheetReader.sheet(root, book.regions().keySet(), faults);
    }

    /** The load cases asked for; all of them where none was. */
    private Set<String> chosenCases(Sheet sheet) throws FaultsException {
        Set<String> known = new LinkedHashSet<>();
        sheet.cases().forEach(each -> known.add(each.name()));
        List<Fault> faults = new ArrayList<>();
        for (String name : cases) {
            if (!known.contains(name)) {
                faults.add(new Fault(Place.of("--case"), "", "the sheet has no load case '" + name + "'"
                        + Words.suggestion(name, known), known.isEmpty() ? "leave --case out" : String.join(", ", known)));
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return Set.copyOf(cases);
    }
}
