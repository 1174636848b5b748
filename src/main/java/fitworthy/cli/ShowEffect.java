package fitworthy.cli;

import fitworthy.batch.Inputs;
import fitworthy.effect.EffectPrintout;
import fitworthy.effect.Effects;
import fitworthy.effect.JournalNotWritten;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows what a change of practice does to many sheets. */
@Command(
        name = "effect",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Shows what a change does to sheets, before anyone's quote changes. It may be of the rule book, of what"
                        + " a shop sets over it, of the day or of a shelf. Each '--with' option says what is different after the change.",
        footer = {
            "",
            "Examples:",
            "  fitworthy effect quotes --with-rules edited/rules",
            "  fitworthy effect quotes --with-house house.yaml",
            "  fitworthy effect quotes --as-of 2026-12-31 --with-as-of 2027-01-01",
            "  fitworthy effect quotes --with-shelf edited/shelf",
            "",
            "Exit code 0 where every sheet stays as it is, 1 where one comes out otherwise,",
            "2 where one cannot be used."
        })
final class ShowEffect implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private SheetsOption sheets = new SheetsOption();

    @Mixin
    private PracticeOptions options = new PracticeOptions();

    @Option(names = "--with-rules", paramLabel = "FOLDER", description = "The rule book after the change.")
    private Path rules;

    @Option(names = "--with-house", paramLabel = "FILE", description = "What your shop sets over it after the change.")
    private Path house;

    @Option(names = "--with-region", paramLabel = "REGION", description = "The region after the change.")
    private String region;

    @Option(names = "--with-as-of", paramLabel = "DATE", description = "The day after the change.")
    private String asOf;

    @Option(
            names = "--with-shelf",
            paramLabel = "FOLDER",
            description = "The shelf that all sheets take from after the change.")
    private Path shelf;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description = "Keep a journal of finished sheets here, and go on where"
                    + " an earlier run was ended. A sheet that has changed since is done again, and so are all where the "
                    + "practice has.")
    private Path journal;

    @Mixin
    private FormatOption format = new FormatOption();

    @Mixin
    private JobsOption jobs = new JobsOption();

    ShowEffect(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, IOException, NotWritten {
        if (rules == null && house == null && region == null && asOf == null && shelf == null) {
            throw new FaultsException(List.of(new Fault(
                    Place.of("--with"),
                    "",
                    "nothing is different after the change",
                    "one or more of --with-rules, --with-house, --with-region, --with-as-of and --with-shelf")));
        }
        try (Inputs inputs = Inputs.of(sheets.given(), around.in())) {
            List<Path> read = new ArrayList<>(inputs.files());
            read.add(house);
            if (shelf != null) {
                read.addAll(Shelves.in(shelf).files(inputs.files()));
            }
            options.outputs(around, read, rules).take("--resume", journal);
            PracticeOptions.Views views = options.views(around, rules, house, region, asOf, shelf);
            try (StatusLine line = StatusLine.of(around.err());
                    Effects effects = Effects.of(
                            views.before(),
                            views.after(),
                            inputs,
                            journal,
                            jobs.jobs(),
                            done -> line.show(done, inputs.count()))) {
                line.close();
                if (format.isJson()) {
                    EffectPrintout.json(around.out(), effects);
                } else {
                    EffectPrintout.text(around.out(), effects);
                }
                return code(effects);
            } catch (JournalNotWritten e) {
                throw notWritten(e.getCause());
            } catch (IOException e) {
                throw notWritten(e);
            }
        }
    }

    private static int code(Effects effects) {
        if (effects.oursAtFault()) {
            return ExitCodes.OUR_FAULT;
        }
        if (effects.bad() > 0) {
            return ExitCodes.BAD_INPUT;
        }
        return effects.changed() > 0 ? ExitCodes.SOMETHING_TO_DO : ExitCodes.IN_ORDER;
    }

    private NotWritten notWritten(IOException cause) {
        return new NotWritten(journal == null ? Path.of(System.getProperty("java.io.tmpdir")) : journal, cause);
    }
}
