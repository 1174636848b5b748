package fitworthy.proof;

import fitworthy.document.Json;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.source.Fault;
import java.io.PrintWriter;
import java.util.List;

/** The proof of a book as text or JSON. */
public final class ProofPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-proof/1";

    /** What is null is not known of a book that cannot be used. */
    private record Written(
            String shape,
            String book,
            String edition,
            String content,
            int cases,
            Long failed,
            List<WrittenFault> faults,
            List<WrittenFault> reminders) {}

    private record WrittenFault(String file, int line, int column, String about, String problem, String right) {
        static List<WrittenFault> all(List<Fault> faults) {
            return faults.stream()
                    .map(fault -> new WrittenFault(
                            fault.place().file(),
                            fault.place().line(),
                            fault.place().column(),
                            fault.path(),
                            fault.problem(),
                            fault.mend()))
                    .toList();
        }
    }

    private ProofPrintout() {}

    public static void text(PrintWriter out, Proof proof) {
        out.println(proof.book().cover().name() + ", edition "
                + proof.book().cover().edition() + ", content " + proof.book().hash());
        out.println(proof.trials().size() + " cases run, " + proof.failed() + " come out other than they say; "
                + proof.faults().size() + " faults, " + proof.reminders().size() + " reminders");
        part(out, "FAULTS: the book must not go out with these", proof.faults());
        part(out, "REMINDERS: worth a look", proof.reminders());
        out.flush();
    }

    private static void part(PrintWriter out, String title, List<Fault> faults) {
        if (!faults.isEmpty()) {
            out.println();
            out.println(title);
            FaultPrintout.print(out, faults);
        }
    }

    public static void json(PrintWriter out, Proof proof) {
        Json.print(
                out,
                new Written(
                        SHAPE,
                        proof.book().cover().name(),
                        proof.book().cover().edition(),
                        proof.book().hash(),
                        proof.trials().size(),
                        proof.failed(),
                        WrittenFault.all(proof.faults()),
                        WrittenFault.all(proof.reminders())));
    }

    /** The faults of a book that cannot be used, so that none of its cases was run. */
    public static void json(PrintWriter out, List<Fault> faults) {
        Json.print(out, new Written(SHAPE, null, null, null, 0, null, WrittenFault.all(faults), null));
    }
}
