package fitworthy.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The command line's entry. Everything below it takes its streams and returns its exit code. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        // Not the usual stream, which keeps it to itself when it cannot write.
        System.exit(run(System.in, new FileOutputStream(FileDescriptor.out), System.err, System.getenv(), args));
    }

    /** Runs one command. @return the exit code, which says so where the output could not be written */
    static int run(
            InputStream in, OutputStream output, OutputStream errors, Map<String, String> environment, String... args) {
        PrintWriter out = new PrintWriter(new OutputStreamWriter(output, StandardCharsets.UTF_8));
        PrintWriter err = new PrintWriter(new OutputStreamWriter(errors, StandardCharsets.UTF_8));
        int code = Fitworthy.run(in, out, err, environment, args);
        if (out.checkError() && code != ExitCodes.NOT_WRITTEN) {
            err.println("The output could not be written to its end; do not rely on what there is of it.");
            code = ExitCodes.NOT_WRITTEN;
        }
        err.flush();
        return code;
    }
}
