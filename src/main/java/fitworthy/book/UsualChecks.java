package fitworthy.book;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What must hold of the usual figures of a book. */
public final class UsualChecks {

    private final Collection<String> places;
    private final UsualFigures figures;
    private final List<Fault> faults;
    private final Grounds grounds;

    /** @param places every way to say a place in words */
    public UsualChecks(BookParts parts, Collection<String> places, List<Fault> faults) {
        this.places = places;
        this.figures = new UsualFigures(parts.usual());
        this.faults = faults;
        this.grounds = new Grounds(parts);
    }

    public void check() {
        figures.inOrder().forEach(this::entry);
    }

    private void entry(UsualFigures.Entry entry) {
        FieldSchema field = field(entry);
        if (entry.figure().values().isEmpty()) {
            fault(entry, "has no value", "values: with a region, a date and a value", NodePath.TOP);
        }
        List<String> circle = figures.circle(entry.id());
        if (!circle.isEmpty()) {
            fault(
                    entry,
                    "goes by itself in the end: " + String.join(", ", circle),
                    "what it goes by, without it",
                    NodePath.TOP);
        }
        Set<String> starts = new HashSet<>();
        for (int i = 0; i < entry.figure().values().size(); i++) {
            UsualFigure.Value value = entry.figure().values().get(i);
            NodePath path = UsualFigure.path(i);
            if (!starts.add(value.region() + value.from() + value.when())) {
                fault(
                        entry,
                        "two values begin in " + value.region() + " on " + value.from(),
                        "one value a region, day and 'when'",
                        path);
            }
            Grounds.Told told = (further, problem, mend) -> fault(entry, problem, mend, path.to(further));
            grounds.region(value.region(), told);
            grounds.sources(value.basis().value(), value.sources(), told);
            if (field != null) {
                value(entry, field, value, path);
            }
        }
    }

    /** The field that it is of; null with a fault where there is none, or none that may be usual. */
    private FieldSchema field(UsualFigures.Entry entry) {
        UsualField field = entry.field();
        if (field.path().isTop() || !UsualField.things().contains(field.thing())) {
            fault(
                    entry,
                    "'" + Words.shortened(field.thing(), 40) + "' is no kind of part and nothing else of a sheet"
                            + Words.suggestion(field.thing(), UsualField.things()),
                    "a kind of part and its field, such as bar.mass",
                    NodePath.TOP);
            return null;
        }
        Optional<FieldSchema> schema = field.schema();
        if (schema.isEmpty()) {
            fault(
                    entry,
                    "no field is called so"
                            + Words.suggestion(field.path().last().toString(), field.names()),
                    "one of " + String.join(", ", field.names()),
                    NodePath.TOP);
            return null;
        }
        String never = NeverUsual.because(field.path(), schema.get())
                .or(() -> guessable(schema.get()) ? Optional.empty() : Optional.of("a sheet holds no guess there"))
                .orElse("");
        if (!never.isEmpty()) {
            fault(entry, "is never usual: " + never, "take it out of the book", NodePath.TOP);
            return null;
        }
        return schema.get();
    }

    /** Whether a sheet may hold a guess there. */
    static boolean guessable(FieldSchema field) {
        return field.content() == Content.FIGURE
                || UsualField.isPlace(field)
                || field.content() == Content.CHOICE
                        && !field.tellsKind()
                        && !field.description().needed();
    }

    private void value(UsualFigures.Entry entry, FieldSchema field, UsualFigure.Value value, NodePath path) {
        if (!value.none()) {
            switch (field.content()) {
                case FIGURE -> figure(entry, field, value, path.to("value"));
                case CHOICE -> answer(entry, field, written(field, value), path.to("value"));
                default -> word(entry, places, value.value(), path.to("value"));
            }
        }
        if (!value.per().isEmpty()) {
            per(entry, field, value, path.to("per"));
        }
        Optional<List<UsualTerm>> terms = UsualTerm.when(value.when());
        if (terms.isEmpty()) {
            fault(
                    entry,
                    "'" + Words.shortened(value.when(), 60) + "' is no condition",
                    "a field and what it holds, such as 'chemistry is lithium'; one of is, has, under, is missing",
                    path.to("when"));
        }
        terms.orElse(List.of()).forEach(term -> term(entry, term, path.to("when")));
    }

    private void answer(UsualFigures.Entry entry, FieldSchema field, String answer, NodePath path) {
        word(entry, ChoiceWords.of(field.type()), answer, path);
        NeverUsual.because(entry.field().path(), answer)
                .ifPresent(why -> fault(entry, "'" + answer + "' is never usual: " + why, "take it out", path));
    }

    private static String written(FieldSchema field, UsualFigure.Value value) {
        return field.type() != YesNo.class
                ? value.value()
                : value.value().equals("true") ? "yes" : value.value().equals("false") ? "no" : value.value();
    }

    private void figure(UsualFigures.Entry entry, FieldSchema field, UsualFigure.Value value, NodePath path) {
        try {
            Figure figure =
                    QuantityText.parse(value.value(), field.description().in());
            if (!figure.hasTolerance()) {
                fault(entry, "has no tolerance", value.value() + " +/- and how far such things lie apart", path);
            }
            if (value.per().isEmpty()
                    && !(field.description().within().canBe(figure.value())
                            && field.description().within().isUsual(figure.value()))) {
                fault(
                        entry,
                        "is " + value.value() + ", which is not between "
                                + (field.description().within().hasUsual()
                                        ? field.description().within().usual()
                                        : field.description().within().limits()),
                        "value: " + field.example(),
                        path);
            }
            if (!field.description().signed() && figure.value() < 0) {
                fault(entry, "is negative", "value: " + field.example(), path);
            }
        } catch (QuantityText.Unreadable e) {
            fault(entry, e.getMessage(), "value: " + field.example(), path);
        }
    }

    private void word(UsualFigures.Entry entry, Collection<String> words, String word, NodePath path) {
        if (!words.contains(word)) {
            fault(
                    entry,
                    "'" + Words.shortened(word, 40) + "' is not one of the answers" + Words.suggestion(word, words),
                    "one of " + String.join(", ", words),
                    path);
        }
    }

    private void per(UsualFigures.Entry entry, FieldSchema field, UsualFigure.Value value, NodePath path) {
        Optional<UsualTerm> per = UsualTerm.per(value.per());
        if (per.isEmpty() || field.content() != Content.FIGURE) {
            fault(
                    entry,
                    "'" + Words.shortened(value.per(), 60) + "' is no amount of another figure",
                    "per: 100 Ah of capacity",
                    path);
        }
        per.ifPresent(term -> term(entry, term, path));
    }

    private void term(UsualFigures.Entry entry, UsualTerm term, NodePath path) {
        Optional<FieldSchema> field = entry.field().to(term.path());
        boolean fits = field.filter(holder -> switch (term.relation()) {
                    case IS ->
                        holder.content() == Content.TEXT
                                || holder.content() == Content.CHOICE
                                        && ChoiceWords.of(holder.type()).contains(term.word());
                    case HAS -> holder.content() == Content.TEXT;
                    case UNDER, PER ->
                        holder.content() == Content.FIGURE
                                && positive(term.word(), holder.description().in());
                    case MISSING -> true;
                })
                .isPresent();
        if (!fits) {
            fault(
                    entry,
                    field.isEmpty()
                            ? "no field is called '" + term.path() + "'"
                            : "'" + Words.shortened(term.word(), 40) + "' is nothing that " + term.path() + " can hold",
                    "a field of the thing or of the sheet, and a word or a quantity that it can hold",
                    path);
        }
    }

    private static boolean positive(String quantity, Dimension dimension) {
        try {
            return QuantityText.parse(quantity, dimension).value() > 0;
        } catch (QuantityText.Unreadable e) {
            return false;
        }
    }

    private void fault(UsualFigures.Entry entry, String problem, String mend, NodePath path) {
        faults.add(new Fault(figures.place(entry.id(), path), entry.id(), problem, mend));
    }
}
