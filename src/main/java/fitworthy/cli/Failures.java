package fitworthy.cli;

import fitworthy.engine.BudgetExceeded;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * Says on the error stream why a command ended without what it was asked for, and with which code. Not a lambda, for whose
 * sake the archive of classes would leave out its interface and all that builds on it.
 */
final class Failures implements IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception exception, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (exception instanceof BadBook book) {
            return told(err, "The rule book cannot be used, so no advice is given:", book.faults(), ExitCodes.BAD_BOOK);
        }
        if (exception instanceof BadHouse house) {
            return told(
                    err, "The house file cannot be used, so no advice is given:", house.faults(), ExitCodes.BAD_INPUT);
        }
        if (exception instanceof BadShelf shelf) {
            return told(err, "The shelf cannot be used:", shelf.faults(), ExitCodes.BAD_INPUT);
        }
        if (exception instanceof FaultsException input) {
            return told(
                    err,
                    isTyped(input) ? "The command line cannot be used:" : "The sheet cannot be used:",
                    input.faults(),
                    ExitCodes.BAD_INPUT);
        }
        if (exception instanceof BudgetExceeded runaway) {
            return told(
                    err, "A rule was stopped, so no advice is given:", List.of(runaway.fault()), ExitCodes.BAD_BOOK);
        }
        if (exception instanceof NotWritten) {
            err.println("The printout cannot be written; what stood there before is untouched:");
            err.println(exception.getMessage());
            return ExitCodes.NOT_WRITTEN;
        }
        if (exception instanceof UncheckedIOException io) {
            err.println("A file cannot be read: " + io.getCause().getMessage());
            return ExitCodes.BAD_INPUT;
        }
        err.println("A fault of ours, not of your sheet: " + exception);
        err.println("Please report it with the sheet. No advice was given.");
        return ExitCodes.OUR_FAULT;
    }

    /** Whether the faults are of the command line, and not of a file. */
    static boolean isTyped(FaultsException exception) {
        return exception.faults().stream()
                .allMatch(fault -> fault.place().file().matches("--.*|ID|RULE|FOLDER"));
    }

    private static int told(PrintWriter err, String what, List<Fault> faults, int code) {
        err.println(what);
        FaultPrintout.print(err, faults);
        return code;
    }
}
