package fitworthy.counter.plan;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.counter.sheet.SheetPage.Changes;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.TextEdit;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The plan as a form. */
public final class PlanPane implements Pane {

    /** Puts a value into a field. */
    public static final Changes SET = new Changes() {
        @Override
        public String name() {
            return "set";
        }

        @Override
        public Change change(Context sent) {
            String path = Optional.ofNullable(sent.formParam("path")).orElse("");
            String value = Optional.ofNullable(sent.formParam("value")).orElse("");
            return new Set(path, value);
        }
    };

    private record Set(String path, String value) implements Change {
        @Override
        public String label() {
            return path;
        }

        @Override
        public String joins() {
            return path;
        }

        @Override
        public String in(Answer now) throws FaultsException {
            NodePath at = NodePath.find(path, now.tree());
            String text = TextEdit.with(now.text(), at, value).orElse(now.text());
            Answer after = new Answer(now.view(), now.place(), text);
            if (!after.faults().isEmpty()) {
                throw new FaultsException(after.faults());
            }
            return text;
        }
    }

    /** A value as the sheet writes it. */
    public record Value(String path, String text) {}

    @Override
    public String id() {
        return "plan";
    }

    @Override
    public String html(Seen seen) {
        List<Value> values = new ArrayList<>();
        collect(seen.now().tree(), NodePath.TOP, seen.now().tree(), values);
        return Pages.html(
                "plan/plan.jte",
                Map.of("values", values, "address", "/sheets/" + seen.sheet().name()));
    }

    @Override
    public boolean isNew(Seen seen) {
        return seen.asked("field").isEmpty();
    }

    private static void collect(Node node, NodePath path, Node root, List<Value> values) {
        if (node instanceof Node.Mapping group) {
            group.entries().forEach((name, field) -> collect(field.value(), path.to(name), root, values));
        } else if (node instanceof Node.Listing list) {
            for (int i = 0; i < list.items().size(); i++) {
                collect(list.items().get(i), path.to(i + 1), root, values);
            }
        } else if (node instanceof Node.Scalar word) {
            values.add(new Value(path.byNames(root), word.text()));
        }
    }
}
