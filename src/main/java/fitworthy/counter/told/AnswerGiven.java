package fitworthy.counter.told;

import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.SetTyped;
import fitworthy.counter.edit.UnitBeside;
import fitworthy.counter.page.Sent;
import fitworthy.counter.sheet.SheetPage.Changes;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;

/** Writes the answer to a question into its field, understood as the plan's own fields are: the unit beside its box counts. */
public final class AnswerGiven implements Changes {

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
        return new SetTyped(path, UnitBeside.of(unit, value));
    }
}
