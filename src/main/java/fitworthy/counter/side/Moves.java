package fitworthy.counter.side;

import fitworthy.counter.desk.Change;
import fitworthy.counter.sheet.SheetPage.Changes;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.Optional;

/** Moves a thing along the vehicle. */
public final class Moves implements Changes {

    @Override
    public String name() {
        return "place";
    }

    /** Of {@code path}, {@code x} in mm and {@code hold}, which is another each time that a thing is taken hold of. */
    @Override
    public Change change(Context sent) {
        String path = sent(sent, "path");
        try {
            return new Move(path, Integer.parseInt(sent(sent, "x")), sent(sent, "hold"));
        } catch (NumberFormatException e) {
            throw new BadRequestResponse("x is no whole number of mm");
        }
    }

    private static String sent(Context sent, String name) {
        return Optional.ofNullable(sent.formParam(name)).orElse("");
    }
}
