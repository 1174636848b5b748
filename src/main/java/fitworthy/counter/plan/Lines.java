package fitworthy.counter.plan;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a thing of the plan says while it is closed. */
final class Lines {

    private static final List<String> FACTS = List.of(
            "kind", "liquid", "covers", "mass", "capacity", "current", "at", "price", "take", "subject", "until");

    private final PlanSheet sheet;
    private final Set<String> leftOut;

    Lines(PlanSheet sheet) {
        this.sheet = sheet;
        this.leftOut = sheet.answer().read().map(read -> read.sheet().leftOut()).orElse(Set.of());
    }

    Line of(NodePath path) {
        String name = Stream.of("name", "rule")
                .flatMap(field -> sheet.text(path.to(field)).stream())
                .findFirst()
                .orElseGet(() -> sheet.field(path).map(Names::title).orElse(""));
        List<String> facts =
                FACTS.stream().flatMap(field -> fact(path.to(field)).stream()).toList();
        List<String> marks = new ArrayList<>();
        if (leftOut.contains(name)) {
            marks.add("left out");
        }
        if (sheet.isFromShelf(path)) {
            marks.add(Line.SHELF);
        }
        long asked = sheet.asked(path);
        if (asked > 0) {
            marks.add(asked == 1 ? "1 answer missing" : asked + " answers missing");
        }
        long guesses = sheet.guesses(path);
        if (guesses > 0) {
            marks.add(guesses == 1 ? "1 guess" : guesses + " guesses");
        }
        return new Line(name, facts, marks);
    }

    private Optional<String> fact(NodePath path) {
        Node node = sheet.at(path);
        if (node instanceof Node.Mapping place) {
            return sheet.text(path.to("where"))
                    .or(() -> sheet.text(path.to("x")).map(x -> "x " + x));
        }
        return sheet.text(path)
                .or(() -> sheet.filledText(path))
                .map(text -> Unit.rounded(text.replaceAll("\\s*(\\+/-|±).*", "")));
    }
}
