package fitworthy.book;

import fitworthy.book.Buying.Settled;
import fitworthy.figures.plan.Tables;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What must hold of the words of a card: what their placeholders stand for, and what the card refers to. */
final class CardWords {

    /** What follows a practice value's id in a placeholder where it is to be shown as so much of the limit. */
    private static final String OF_LIMIT = " of limit";

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]*)\\}");
    /** The name of one in round brackets, or a brace without its other. */
    private static final Pattern SLIP = Pattern.compile("\\((?:subject|value|enough|limit|margin|left|case)\\)|[{}]");

    private static final Set<String> GENERAL_PLACEHOLDERS =
            Set.of("subject", "value", "enough", "limit", "margin", "left", "case");
    /** Those that are worked out from what the judged measure is held against. */
    private static final Set<String> OF_WHAT_IT_IS_AGAINST = Set.of("limit", "margin", "left");

    /** Takes down a fault of a card. */
    interface Faults {
        void tell(String id, String problem, String mend, NodePath path);
    }

    private final BookParts parts;
    private final Map<String, Card> cards;
    private final Faults faults;

    CardWords(BookParts parts, Faults faults) {
        this.parts = parts;
        this.cards = parts.cards();
        this.faults = faults;
    }

    void check(String id, Card card) {
        card.mendedBy().forEach(answer -> mended(id, answer));
        card.with().forEach(head -> together(id, head));
        placeholders(id, card, NodePath.of("title"), card.title());
        placeholders(id, card, NodePath.of("met"), card.met());
        placeholders(id, card, NodePath.of("why"), card.why());
        placeholders(id, card, NodePath.of("remedy"), card.remedy());
        if (card.ask().isEmpty()) {
            faults.tell(
                    id, "asks nobody", "ask: [{party: builder}], or whoever else decides or acts", NodePath.of("ask"));
        }
        asked(id, card, NodePath.of("ask"), card.ask());
        buying(id, card);
        for (int i = 0; i < card.inRegion().size(); i++) {
            Card.Regional own = card.inRegion().get(i);
            NodePath path = NodePath.of("in-region").to(i + 1);
            if (parts.lackRegion(own.region())) {
                Set<String> regions = parts.regions().keySet();
                faults.tell(
                        id,
                        "'" + own.region() + "' is not a region" + Words.suggestion(own.region(), regions),
                        String.join(", ", regions),
                        path.to("region"));
            }
            placeholders(id, card, path.to("why"), own.why());
            placeholders(id, card, path.to("remedy"), own.remedy());
            asked(id, card, path.to("ask"), own.ask());
        }
    }

    private void asked(String id, Card card, NodePath path, List<Ask> asks) {
        for (int i = 0; i < asks.size(); i++) {
            Ask ask = asks.get(i);
            placeholders(id, card, path.to(i + 1).to("of"), ask.of());
            placeholders(id, card, path.to(i + 1).to("what"), ask.what());
            placeholders(id, card, path.to(i + 1).to("bring"), ask.bring());
        }
    }

    private void buying(String id, Card card) {
        NodePath path = NodePath.of("buying");
        placeholders(id, card, path.to("wait-for"), card.buying().waitFor());
        placeholders(id, card, path.to("instead"), card.buying().instead());
        idle(
                id,
                card,
                "wait-for",
                card.buying().waitFor(),
                EnumSet.of(Settled.ANSWER, Settled.CORRECTION, Settled.OTHER_PLACE));
        idle(id, card, "instead", card.buying().instead(), EnumSet.of(Settled.ANOTHER_CHOICE));
        kinds(id, "of", card.buying().of(), path);
        kinds(id, "holds", card.buying().holds(), path);
    }

    private void kinds(String id, String field, List<String> named, NodePath path) {
        Set<String> kinds = new TreeSet<>(ChoiceWords.of(Fitment.Kind.class));
        kinds.add(Tables.TANK);
        named.stream()
                .filter(kind -> !kinds.contains(kind))
                .forEach(kind -> faults.tell(
                        id,
                        "'" + kind + "' is no kind of part" + Words.suggestion(kind, kinds),
                        field + ": [springs]",
                        path.to(field)));
    }

    /** Words that nobody would ever read. */
    private void idle(String id, Card card, String field, String words, Set<Settled> settled) {
        if (!words.isEmpty() && card.severity().is(Severity.NOTE)) {
            faults.tell(
                    id,
                    "'" + field + "' is never said, as its severity is note, which nobody waits for",
                    "another severity; or, where it is a note, no '" + field + "'",
                    NodePath.of("buying").to(field));
        } else if (!words.isEmpty() && !settled.contains(card.settledBy())) {
            String settles = Words.hyphenated(card.settledBy().name());
            faults.tell(
                    id,
                    "'" + field + "' is never said, as " + settles + " settles it",
                    "settled-by: " + Words.hyphenated(settled.iterator().next().name()),
                    NodePath.of("buying").to(field));
        }
    }

    private void together(String id, String head) {
        boolean there = !parts.lackCard(head);
        if (!there || toldUnder(head, id, cards.size())) {
            faults.tell(
                    id,
                    "cannot be told under '" + head + "'"
                            + (there ? "" : new FormerIds(cards, Map.of()).suggestion(head, cards.keySet())),
                    "the id of another rule that is not told under this one",
                    NodePath.of("with"));
        }
    }

    /** Whether one is told under another, by way of others too. @param steps how far to look */
    private boolean toldUnder(String id, String other, int steps) {
        return id.equals(other)
                || steps > 0
                        && cards.containsKey(id)
                        && cards.get(id).with().stream().anyMatch(head -> toldUnder(head, other, steps - 1));
    }

    private void placeholders(String id, Card card, NodePath field, String text) {
        slip(id, field, text);
        Matcher placeholder = PLACEHOLDER.matcher(text);
        while (placeholder.find()) {
            String name = placeholder.group(1);
            String value = name.endsWith(OF_LIMIT) ? name.substring(0, name.length() - OF_LIMIT.length()) : name;
            if (!GENERAL_PLACEHOLDERS.contains(name)
                    && !card.about().contains(name)
                    && !card.practice().contains(value)
                    && !card.against().equals(value)) {
                faults.tell(
                        id,
                        "the placeholder {" + name + "} stands for nothing",
                        "one of " + available(card, card.against().isEmpty() ? OF_WHAT_IT_IS_AGAINST : Set.of()),
                        field);
            } else if (card.against().isEmpty() && OF_WHAT_IT_IS_AGAINST.contains(name)) {
                faults.tell(
                        id,
                        "the placeholder {" + name + "} is worked out from a limit, and the card is 'against' none",
                        "here one of " + available(card, OF_WHAT_IT_IS_AGAINST)
                                + "; or against: limit, or a practice value's id, for {limit}, {margin} and {left}",
                        field);
            }
        }
    }

    /** The placeholders that a card may have. @param without those that it may not */
    private static String available(Card card, Set<String> without) {
        return Stream.of(
                        GENERAL_PLACEHOLDERS.stream()
                                .filter(name -> !without.contains(name))
                                .sorted(),
                        card.about().stream(),
                        card.values().stream())
                .flatMap(names -> names)
                .map(name -> "{" + name + "}")
                .collect(Collectors.joining(", "));
    }

    /** What would be printed as it was typed. */
    private void slip(String id, NodePath field, String text) {
        Matcher slip = SLIP.matcher(PLACEHOLDER.matcher(text).replaceAll(""));
        if (slip.find()) {
            faults.tell(
                    id,
                    "'" + slip.group() + "' in its words would be printed as it stands",
                    "a placeholder with both its braces, such as {margin}",
                    field);
        }
    }

    private void mended(String id, Card.Mended mended) {
        List<FieldSchema> fields = RecordSchema.at(Sheet.class, mended.path("{name}"));
        Set<String> answers = new TreeSet<>();
        fields.stream()
                .filter(field -> field.content() == FieldSchema.Content.CHOICE)
                .forEach(field -> answers.addAll(ChoiceWords.of(field.type())));
        if (fields.isEmpty() || answers.isEmpty()) {
            faults.tell(
                    id,
                    "no field of a sheet that answers in a word stands at '" + mended.field() + "'",
                    "field: fitments.{subject}.lamps-visible",
                    NodePath.TOP);
        } else if (!answers.contains(mended.answer())) {
            faults.tell(
                    id,
                    "'" + mended.answer() + "' is no answer to " + mended.field()
                            + Words.suggestion(mended.answer(), answers),
                    "answer: one of " + String.join(", ", answers),
                    NodePath.TOP);
        }
    }
}
