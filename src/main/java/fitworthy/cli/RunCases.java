package fitworthy.cli;

import fitworthy.book.FormerIds;
import fitworthy.engine.RuleEngine;
import fitworthy.proof.Cases;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.Proof;
import fitworthy.proof.ProofPrintout;
import fitworthy.source.FaultsException;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs cases of a rule book. */
@Command(
        name = "cases",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Runs the cases of the rule book, all or some. Names every comparison of their topics' rules, or of"
                        + " the rules named, that none of them turns.",
        footer = {"", "Example:", "  fitworthy cases --topic mass --region au-nsw"})
final class RunCases implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private BookOptions options = new BookOptions();

    @Option(
            names = "--topic",
            paramLabel = "TOPIC",
            description = "Run the cases of this topic; may be given several" + " times.")
    private List<String> topics = List.of();

    @Option(
            names = "--rule",
            paramLabel = "ID",
            description = "Run the cases that name this rule; may be given several" + " times.")
    private List<String> rules = List.of();

    @Option(
            names = "--region",
            paramLabel = "REGION",
            description = "Run the cases of this region; may be given several" + " times.")
    private List<String> regions = List.of();

    @Mixin
    private FormatOption format = new FormatOption();

    RunCases(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        RuleEngine engine = options.engine(around);
        known("--topic", topics, Cases.topics(engine.book()));
        FormerIds former = engine.book().formerIds();
        rules.stream().map(former::said).filter(said -> !said.isEmpty()).forEach(around.err()::println);
        rules = rules.stream().map(former::present).toList();
        known("--rule", rules, engine.book().cards().keySet());
        known("--region", regions, engine.book().regions().keySet());
        try (StatusLine line = StatusLine.of(around.err())) {
            Proof proof = Proof.of(
                    options.folder(around),
                    engine,
                    this::chosen,
                    id -> rules.isEmpty() || rules.contains(id),
                    run -> line.show(run + " cases run"));
            line.close();
            if (format.isJson()) {
                ProofPrintout.json(around.out(), proof);
            } else {
                ProofPrintout.text(around.out(), proof);
            }
            return proof.faults().isEmpty() ? ExitCodes.IN_ORDER : ExitCodes.BAD_BOOK;
        } catch (FaultsException e) {
            throw new BadBook(e);
        }
    }

    private boolean chosen(Case each) {
        return (topics.isEmpty() || topics.contains(each.topic()))
                && (regions.isEmpty() || regions.contains(each.sheet().region()))
                && (rules.isEmpty() || rules.stream().anyMatch(each.text()::names));
    }

    private static void known(String option, List<String> given, Collection<String> all) throws FaultsException {
        Names.check(
                option,
                given,
                all,
                "the rule book has no",
                all.size() > 20 ? "an id as printed under a finding, such as mass.gvm-over" : String.join(", ", all));
    }
}
