package fitworthy.counter.plan;

import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.AddItem;
import fitworthy.counter.edit.Rename;
import fitworthy.counter.edit.SetTyped;
import fitworthy.counter.edit.TakeOff;
import fitworthy.counter.edit.UnitBeside;
import fitworthy.counter.page.FieldPath;
import fitworthy.counter.page.Sent;
import fitworthy.counter.sheet.SheetPage.Changes;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the forms of a plan can change. */
public final class PlanChanges {

    private static final Place TYPED = Place.of("");

    private static final String ABOUT = "about";

    /** Marks of a value that is given. */
    private static final Set<String> VALUED = Set.of("stated", ABOUT);
    /** How many steps lead to the name of an item of the sheet. */
    private static final int NAME = 3;

    private PlanChanges() {}

    /** Every one, with the last part of its address. */
    public static List<Changes> all() {
        return List.of(
                made("set", sent -> set(Boxed.in(sent))),
                made("mark", sent -> mark(Boxed.in(sent))),
                made("add", sent -> add(path(sent), news(sent))),
                made(
                        "take",
                        sent -> Adding.take(Sent.form(sent, "kind"), Sent.form(sent, "name"), Sent.form(sent, "part"))),
                made("words", sent -> Adding.words(Sent.form(sent, "filter"))),
                made("instead", sent -> Adding.instead(Sent.form(sent, "part"), Sent.form(sent, "other"))),
                made("take-off", sent -> takeOff(path(sent))));
    }

    private static Changes made(String name, Function<Context, Change> change) {
        return new Changes() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Change change(Context sent) {
                try {
                    return change.apply(sent);
                } catch (IllegalArgumentException e) {
                    throw new BadRequestResponse("no such field");
                }
            }
        };
    }

    private static NodePath path(Context sent) {
        return FieldPath.of(Sent.form(sent, "path"));
    }

    private static Map<String, String> news(Context sent) {
        Map<String, String> news = new LinkedHashMap<>();
        sent.formParamMap().forEach((name, values) -> {
            if (name.startsWith("new-")) {
                news.put(name.substring("new-".length()), values.get(0).strip());
            }
        });
        return news;
    }

    /**
     * What stands in the box of a field.
     *
     * @param value with its unit
     * @param mark how sure it is, or why there is none
     * @param hold another each time that the box is gone into
     */
    private record Boxed(NodePath path, String value, String mark, String hold) {

        static Boxed in(Context sent) {
            return new Boxed(
                    PlanChanges.path(sent),
                    UnitBeside.of(Sent.form(sent, "unit"), Sent.form(sent, "value")),
                    Sent.form(sent, "mark"),
                    Sent.form(sent, "hold"));
        }

        /** The value as the sheet has it, a guess with its word. */
        String written() {
            boolean guess = mark.equals(ABOUT) && !value.isEmpty() && !value.startsWith(ABOUT + " ");
            return guess ? ABOUT + " " + value : value;
        }
    }

    private static Change set(Boxed box) {
        return new Edit(label(box.path), box.hold, sheet -> put(sheet, box.path, box.written()));
    }

    private static Change mark(Boxed box) {
        return new Edit(label(box.path), box.hold, sheet -> {
            boolean valued = VALUED.contains(box.mark);
            if (valued && box.value.isEmpty()) {
                throw Edit.refused(
                        sheet,
                        sheet.key(box.path),
                        "there is no value to mark",
                        "type it first, then say how sure it is");
            }
            return put(sheet, box.path, valued ? box.written() : box.mark);
        });
    }

    private static String label(NodePath path) {
        return String.valueOf(path.last()).replace('-', ' ');
    }

    /** @param value empty where the field is to be left out */
    private static Change put(PlanSheet sheet, NodePath path, String value) {
        Optional<FieldSchema> field = sheet.field(path);
        if (!value.isEmpty()
                && field.map(FieldSchema::content).filter(Content.TEXTS::equals).isPresent()) {
            return new PutWhole(label(path), sheet.key(path), words(value));
        }
        if (path.steps().size() == NAME && path.last().equals(new NodePath.Named("name"))) {
            return new Rename(sheet.key(path.above()), value);
        }
        boolean besideCoordinates = field.filter(Form::isGroup).isPresent() && sheet.own(path) instanceof Node.Mapping;
        return new SetTyped(sheet.key(besideCoordinates ? path.to("where") : path), value);
    }

    private static Node.Listing words(String value) {
        return new Node.Listing(
                TYPED,
                Stream.of(value.split(","))
                        .map(String::strip)
                        .filter(word -> !word.isEmpty())
                        .map(PlanChanges::word)
                        .toList());
    }

    private static Node word(String text) {
        return new Node.Scalar(TYPED, text, false);
    }

    private static Change takeOff(NodePath path) {
        return new Edit("taken off", "", sheet -> new TakeOff(sheet.key(path)));
    }

    /** What is typed of a new item; what is not is asked for, as far as nothing is usual of it. */
    private static Change add(NodePath list, Map<String, String> typed) {
        return new Edit("added", "", sheet -> {
            FieldSchema field = sheet.field(list)
                    .filter(found -> found.type() != null)
                    .orElseThrow(() -> new IllegalArgumentException("no list"));
            Entries entries = new Entries(sheet);
            NodePath path = entries.beginning(field, list);
            Node.Mapping item = new Node.Mapping(TYPED, Map.of());
            List<Entry> open = new ArrayList<>();
            for (Entry entry : entries.needed(field, list)) {
                String value = UnitBeside.of(entry.unit(), typed.getOrDefault(name(entry), ""));
                if (!value.isEmpty()) {
                    item = item.with(name(entry), word(value));
                } else if (!entry.marks().isEmpty()) {
                    open.add(entry);
                }
            }
            PlanSheet filled = new PlanSheet(begun(sheet, field, list, item).in(sheet.answer()));
            for (Entry entry : open) {
                boolean group =
                        sheet.field(path.to(name(entry))).filter(Form::isGroup).isPresent();
                if (!filled.isFilled(path.to(name(entry)))) {
                    item = item.with(
                            name(entry),
                            group ? new Node.Mapping(TYPED, Map.of()).with("x", word("ask")) : word("ask"));
                }
            }
            return begun(sheet, field, list, item);
        });
    }

    private static String name(Entry entry) {
        return entry.path().substring(entry.path().lastIndexOf('.') + 1);
    }

    private static Change begun(PlanSheet sheet, FieldSchema field, NodePath list, Node.Mapping item) {
        return field.content() == Content.GROUPS
                ? new AddItem(sheet.key(list), item)
                : new PutWhole(Names.title(field) + " added", sheet.key(list), item);
    }
}
