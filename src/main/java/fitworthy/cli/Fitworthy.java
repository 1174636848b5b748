package fitworthy.cli;

import fitworthy.engine.BookLoader;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Map;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The top command. */
@Command(
        name = Fitworthy.NAME,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            Check.class,
            AskQuestions.class,
            Explain.class,
            Mend.class,
            Compare.class,
            Print.class,
            WriteLetters.class,
            OpenCounter.class,
            Batch.class,
            ShowShelf.class,
            ShowEffect.class,
            Learn.class,
            ShowChanges.class,
            ShowDue.class,
            Prove.class,
            RunCases.class,
            WriteHandbook.class,
            Begin.class
        },
        synopsisSubcommandLabel = "COMMAND",
        usageHelpWidth = 80,
        description = "Advice on planned vehicle modifications, before anything is bought. It is advice, not"
                + " certification.",
        footer = {
            "",
            "Example:",
            "  fitworthy check scenarios/touring.yaml",
            "",
            "Exit codes:",
            "  0  nothing worse than a note",
            "  1  something to act on, or a figure to bring",
            "  2  the sheet, the house file or the command line is wrong",
            "  3  the rule book is wrong",
            "  70 a fault of ours",
            "  74 a file, or the output, could not be written"
        })
public final class Fitworthy implements Runnable {

    static final String NAME = "fitworthy";

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(),
                "Say which command: " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** Runs one command that has nothing on its standard input. @return the exit code */
    public static int run(PrintWriter out, PrintWriter err, Map<String, String> environment, String... args) {
        return run(InputStream.nullInputStream(), out, err, environment, args);
    }

    /**
     * Runs one command.
     *
     * @param environment environment variables
     * @return the exit code
     */
    public static int run(
            InputStream in, PrintWriter out, PrintWriter err, Map<String, String> environment, String... args) {
        CommandContext around = new CommandContext(
                in,
                out,
                err,
                environment,
                BookLoader.begin(DefaultFolders.rules(environment), DefaultFolders.cache(environment)));
        CommandLine line = line(new CommandFactory(around), args);
        line.setOut(out).setErr(err);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setExecutionExceptionHandler(new Failures());
        return ended(err, () -> line.execute(args));
    }

    /** What is beyond the machine ends with a sentence too. */
    static int ended(PrintWriter err, IntSupplier command) {
        try {
            return command.getAsInt();
        } catch (StackOverflowError e) {
            err.println("What was read is nested more deeply than the program can follow. No advice was given.");
        } catch (OutOfMemoryError e) {
            err.println("The memory did not suffice, and no advice was given. Give the program more, such as by");
            err.println("JAVA_TOOL_OPTIONS=-Xmx512m.");
        } catch (NoClassDefFoundError e) {
            err.println("A library of the program was not found: " + e.getMessage() + ".");
            err.println("Start it by bin/fitworthy, which knows where its libraries are.");
        }
        return ExitCodes.OUR_FAULT;
    }

    /**
     * Where a command is named it alone is there, without the options of all others: to read them takes 6 % of the
     * processor time of a cold check.
     */
    private static CommandLine line(IFactory commands, String... args) {
        for (Class<?> command : Fitworthy.class.getAnnotation(Command.class).subcommands()) {
            if (args.length > 0 && command.getAnnotation(Command.class).name().equals(args[0])) {
                return new CommandLine(CommandSpec.create().name(NAME), commands).addSubcommand(command);
            }
        }
        return new CommandLine(new Fitworthy(), commands);
    }
}
