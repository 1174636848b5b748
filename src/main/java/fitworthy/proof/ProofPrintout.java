package fitworthy.proof;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import fitworthy.printout.FaultPrintout;
import fitworthy.source.Fault;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** The proof of a book as text or JSON. */
public final class ProofPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-proof/1";

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
        write(out, SHAPE, json -> {
            json.writeStringField("book", proof.book().cover().name());
            json.writeStringField("edition", proof.book().cover().edition());
            json.writeStringField("content", proof.book().hash());
            json.writeNumberField("cases", proof.trials().size());
            json.writeNumberField("failed", proof.failed());
            faults(json, "faults", proof.faults());
            faults(json, "reminders", proof.reminders());
        });
    }

    /** The faults of a book that cannot be used, so that none of its cases was run. */
    public static void json(PrintWriter out, List<Fault> faults) {
        write(out, SHAPE, json -> {
            json.writeNumberField("cases", 0);
            faults(json, "faults", faults);
        });
    }

    /** The fields of an object. */
    public interface Fields {
        public void write(JsonGenerator json) throws IOException;
    }

    /** Writes one object with the name of its shape first. */
    public static void write(PrintWriter out, String shape, Fields fields) {
        try (JsonGenerator json =
                new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            json.writeStringField("shape", shape);
            fields.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.println();
        out.flush();
    }

    private static void faults(JsonGenerator json, String name, List<Fault> faults) throws IOException {
        json.writeArrayFieldStart(name);
        for (Fault fault : faults) {
            json.writeStartObject();
            json.writeStringField("file", fault.place().file());
            json.writeNumberField("line", fault.place().line());
            json.writeNumberField("column", fault.place().column());
            json.writeStringField("about", fault.path());
            json.writeStringField("problem", fault.problem());
            json.writeStringField("right", fault.mend());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
