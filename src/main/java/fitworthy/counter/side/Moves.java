package fitworthy.counter.side;

import fitworthy.counter.desk.Change;
import fitworthy.counter.page.Sent;
import fitworthy.counter.sheet.SheetPage.Changes;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;

/** Moves a thing along the vehicle. */
public final class Moves implements Changes {

    @Override
    public String name() {
        return "place";
    }

    /** Of {@code path}, {@code x} in mm and {@code hold}, which is another each time that a thing is taken hold of. */
    @Override
    public Change change(Context sent) {
        String path = Sent.form(sent, "path");
        try {
            return new Move(path, Integer.parseInt(Sent.form(sent, "x")), Sent.form(sent, "hold"));
        } catch (NumberFormatException e) {
            throw new BadRequestResponse("x is no whole number of mm");
        }
    }
}
