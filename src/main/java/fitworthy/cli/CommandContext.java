package fitworthy.cli;

import fitworthy.engine.BookLoader;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Map;

/**
 * What a command finds around it.
 *
 * @param environment environment variables
 * @param shipped the rule book that is used where the command line names none
 */
record CommandContext(
        InputStream in, PrintWriter out, PrintWriter err, Map<String, String> environment, BookLoader shipped) {}
