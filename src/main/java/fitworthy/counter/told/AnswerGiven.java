package fitworthy.counter.told;

import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.SetTyped;
import fitworthy.counter.page.Sent;
import fitworthy.counter.sheet.SheetPage.Changes;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.regex.Pattern;

/** Writes the answer to a question into its field. A bare number gets the unit that stands beside its box. */
public final class AnswerGiven implements Changes {

    private static final Pattern BARE = Pattern.compile("[-\\u2212]?[0-9]+(?:[.,][0-9]+)?");

    @Override
    public String name() {
        return "answer";
    }

    @Override
    public Change change(Context sent) {
        String value = Sent.form(sent, "value").strip();
        String unit = Sent.form(sent, "unit");
        String path = Sent.form(sent, "path");
        if (path.isEmpty() || value.isEmpty()) {
            throw new BadRequestResponse("an answer has a path and a value");
        }
        return new SetTyped(path, BARE.matcher(value).matches() ? (value + " " + unit).strip() : value);
    }
}
