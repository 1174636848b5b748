package fitworthy.cli;

import fitworthy.engine.BookLoader;
import fitworthy.engine.FolderReview;
import fitworthy.engine.RuleEngine;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Which rule book. */
final class BookOptions {

    @Option(names = "--rules", paramLabel = "FOLDER", description = "The rule book; by default the one shipped.")
    private Path rules;

    /** Its folder. */
    Path folder(CommandContext around) {
        return rules == null ? DefaultFolders.rules(around.environment()) : rules;
    }

    /** The rule book; says on the error stream when it takes seconds, and what lies in it that nothing reads. */
    RuleEngine engine(CommandContext around) throws FaultsException {
        RuleEngine engine = toProve(around);
        if (rules != null) {
            List<Fault> strays = new ArrayList<>();
            FolderReview.look(rules, strays);
            strays.forEach(stray -> around.err().println(stray.place() + ": " + stray.problem()));
            around.err().flush();
        }
        return engine;
    }

    /** The same for the command that tells as faults what nothing reads. */
    RuleEngine toProve(CommandContext around) throws FaultsException {
        return rules == null ? finished(around.shipped(), around) : engine(rules, around);
    }

    /** The rule book of a folder. */
    static RuleEngine engine(Path folder, CommandContext around) throws FaultsException {
        return finished(BookLoader.begin(folder, DefaultFolders.cache(around.environment())), around);
    }

    private static RuleEngine finished(BookLoader loader, CommandContext around) throws FaultsException {
        try {
            return loader.finish(sentence -> {
                around.err().println(sentence);
                around.err().flush();
            });
        } catch (FaultsException e) {
            throw new BadBook(e);
        }
    }
}
