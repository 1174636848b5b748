package fitworthy.cli;

import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.printout.screen.QuestionsPrintout;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Asks a person the questions of a sheet one by one, and writes each answer as it comes. */
final class Asking {

    private static final Place ANSWER = Place.of("--ask");

    private final BufferedReader in;
    private final PrintWriter out;
    private final AnsweredSheet sheet;
    private final Set<String> passed = new HashSet<>();

    /** A field that is asked for, with the question it belongs to. */
    private record Asked(Question question, String field) {}

    Asking(BufferedReader in, PrintWriter out, AnsweredSheet sheet) {
        this.in = in;
        this.out = out;
        this.sheet = sheet;
    }

    /** Asks until none is left or somebody ends it. */
    void run() throws IOException, NotWritten {
        QuestionsPrintout page = new QuestionsPrintout(out);
        page.howToAnswer();
        Questions questions = sheet.questions();
        Optional<Asked> next = next(questions);
        while (next.isPresent()) {
            page.question(next.get().question());
            String typed = typed(next.get().field());
            if (typed == null || typed.equals("q")) {
                return;
            }
            if (typed.isEmpty()) {
                passed.add(next.get().field());
            } else if (written(next.get().field(), typed, page)) {
                questions = sheet.questions();
            }
            next = next(questions);
        }
        page.nothingMore(passed.size());
    }

    /** The most worth of those that nobody passed over. */
    private Optional<Asked> next(Questions questions) {
        return questions.questions().stream()
                .flatMap(question -> question.paths().stream().map(field -> new Asked(question, field)))
                .filter(asked ->
                        !passed.contains(asked.field()) && field(asked.field()).isPresent())
                .findFirst();
    }

    private String typed(String field) throws IOException {
        out.print(Words.seen(field) + ", such as " + field(field).orElseThrow().example() + ": ");
        out.flush();
        String line = in.readLine();
        return line == null ? null : line.strip();
    }

    /** The field of a path; nothing where no single value belongs there, but a part or a group. */
    private Optional<FieldSchema> field(String path) {
        return Optional.ofNullable(sheet.path(path)).stream()
                .flatMap(found -> RecordSchema.at(Sheet.class, found).stream())
                .filter(field -> !field.example().isEmpty())
                .findFirst();
    }

    /** Whether the answer could be written; else it says why not, and the question stays. */
    private boolean written(String field, String typed, QuestionsPrintout page) throws NotWritten {
        try {
            FieldAnswer answer = new FieldAnswer(ANSWER, field, typed);
            page.settled(List.of(answer), sheet.write(List.of(answer)));
            return true;
        } catch (FaultsException e) {
            out.println("Not written:");
            FaultPrintout.print(out, e.faults());
            return false;
        }
    }
}
