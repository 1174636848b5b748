package fitworthy.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** The command line's entry. Everything below it takes its streams and returns its exit code. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8));
        PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8));
        int code = Fitworthy.run(System.in, out, err, System.getenv(), args);
        out.flush();
        err.flush();
        System.exit(code);
    }
}
