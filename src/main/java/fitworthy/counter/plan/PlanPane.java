package fitworthy.counter.plan;

import fitworthy.book.Book;
import fitworthy.counter.page.FieldPath;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Lying;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.usual.TakenPlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The plan as forms. */
public final class PlanPane implements Pane {

    /** In which order a counter asks; what is not among them comes last. */
    private static final List<String> ORDER = List.of(
            "vehicle",
            "fitments",
            "tanks",
            "circuits",
            "cargo",
            "occupants",
            "trailer",
            "trip",
            "cases",
            "options",
            "jobs",
            "papers",
            "waivers");

    @Override
    public String id() {
        return "plan";
    }

    @Override
    public String html(Seen seen) {
        if (seen.now().tree() == null) {
            return "";
        }
        PlanSheet sheet = new PlanSheet(seen.now());
        Set<String> opened = Form.opened(seen.asked("opened"));
        return Pages.html(
                "plan/plan.jte",
                Map.of(
                        "sections", sections(sheet, new Form(sheet, opened)),
                        "doubled", Doubled.of(sheet),
                        "added", isAdded(seen) ? added(sheet, seen.asked("filter")) : List.of(),
                        "hints", Map.of("f-fitments", new OnShelf(sheet).lifts(), "f-tanks", shared(sheet)),
                        "unwired", Unwired.of(sheet),
                        "finder",
                                opened.contains(Finder.KEY)
                                        ? Optional.of(Finder.of(sheet, filter(seen)))
                                        : Optional.empty(),
                        "names", names(sheet),
                        "address", PlanSheet.address(seen.sheet().name()),
                        "opened", String.join("\n", opened)));
    }

    /** What is said of what was added in words. */
    private static List<String> added(PlanSheet sheet, String typed) {
        List<String> told = new ArrayList<>();
        Adding.reasons(sheet, typed).forEach(reason -> told.add("Added. Not kept, since no check reads it: " + reason));
        Adding.otherwise(sheet, typed).forEach(other -> told.add("Added. " + other + "."));
        List<Lying> lying = Adding.alike(sheet, typed);
        if (!lying.isEmpty()) {
            told.add("Added as it is usual, which counts as a guess. The shelf has, with figures of its own: "
                    + lying.stream().map(Lying::words).collect(Collectors.joining("; "))
                    + ". Undo, and take it from there, if it is that.");
        }
        return told;
    }

    /** What is typed to find something; nothing once it has been added in these words. */
    private static String filter(Seen seen) {
        return isAdded(seen) ? "" : seen.asked("filter");
    }

    private static boolean isAdded(Seen seen) {
        return seen.before().isPresent() && seen.asked("field").equals("finder-box");
    }

    /** Not while one types, unless the answer decides which fields there are. */
    @Override
    public boolean isNew(Seen seen) {
        return seen.asked("field").isEmpty()
                || !seen.asked("anew").isEmpty() && seen.before().isPresent();
    }

    /** What stands beside the field that was changed, and the line of the thing that it is of. */
    @Override
    public String beside(Seen seen) {
        return title(seen) + besideField(seen);
    }

    /** The title stands above all panes. */
    private static String title(Seen seen) {
        return Pages.html(
                "sheet/title.jte",
                Map.of("title", seen.title(), "name", seen.sheet().name(), "swapped", true));
    }

    private String besideField(Seen seen) {
        if (seen.asked("path").isEmpty() || seen.before().isEmpty() || isNew(seen)) {
            return "";
        }
        NodePath path = FieldPath.of(seen.asked("path"));
        PlanSheet sheet = new PlanSheet(seen.now());
        Form form = new Form(sheet, Set.of());
        return sheet.field(path)
                .map(field -> Pages.html(
                        "plan/beside.jte",
                        Map.of(
                                "entry", form.entry(field, path),
                                "row", !seen.asked("row").isEmpty(),
                                "thing", form.thing(path),
                                "address", PlanSheet.address(seen.sheet().name()))))
                .orElse("");
    }

    private static List<Section> sections(PlanSheet sheet, Form form) {
        List<Section> sections = sheet.fields(Sheet.class, NodePath.TOP).stream()
                .filter(field -> field.content() == Content.GROUP || field.content() == Content.GROUPS)
                .sorted(Comparator.comparingInt(field -> place(field.name())))
                .map(field -> section(field, form))
                .collect(Collectors.toList());
        sections.add(0, new Section("f-job", "Job", form.job()));
        return sections;
    }

    /** Of tanks that are in one place, since nobody has said where they sit. */
    private static List<String> shared(PlanSheet sheet) {
        return TakenPlace.shared(
                        TakenPlace.of(sheet.whole(), sheet.answer().view().book()))
                .stream()
                .map(TakenPlace::told)
                .toList();
    }

    private static int place(String name) {
        int place = ORDER.indexOf(name);
        return place < 0 ? ORDER.size() : place;
    }

    private static Section section(FieldSchema field, Form form) {
        NodePath path = NodePath.of(field.name());
        boolean list = field.content() == Content.GROUPS || form.isBegunWhole(field, path);
        return new Section(
                FieldPath.id(path),
                Names.title(field),
                list ? Group.ofItems(form.items(field, path)) : Group.ofFold(form.fold(path)));
    }

    private static List<String> names(PlanSheet sheet, String list) {
        return sheet.items(NodePath.of(list)).stream()
                .map(Node::name)
                .filter(Objects::nonNull)
                .toList();
    }

    /** Lists of names that fields may have, by their ids. */
    private static Map<String, List<String>> names(PlanSheet sheet) {
        Book book = sheet.answer().view().book();
        return Map.of(
                "names-parts", names(sheet, "fitments"),
                "names-shelf", List.copyOf(sheet.shelf().of(Kind.FITMENTS).keySet()),
                "names-loadings", names(sheet, "cases"),
                "names-regions", List.copyOf(book.regions().keySet()),
                "names-places", List.copyOf(book.usualPlaces().places().keySet()));
    }
}
