package fitworthy.counter.output;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Sent;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** What goes out of a sheet is made of its advice, so that there is none while it has a fault. */
final class Output {

    private Output() {}

    /** Answers by what is made of a sheet; where it has a fault, with a page that says so. */
    static void of(Context sent, Desk desk, Consumer<Answer> made) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        Answer answer = sheet.now();
        if (answer.faults().isEmpty()) {
            made.accept(answer);
        } else {
            Map<String, Object> values = new HashMap<>(Map.of("name", sheet.name(), "faults", answer.faults()));
            values.put("tree", answer.whole());
            sent.html(Pages.html("output/faults.jte", values));
        }
    }
}
