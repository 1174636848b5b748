package fitworthy.book;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Dimension;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** What must hold between the rules, cards, practice values and sources of a book. */
public final class BookChecks {

    private static final Pattern REGION = Pattern.compile("[A-Za-z0-9]+(-[A-Za-z0-9]+)*");
    private static final Pattern SOURCE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern LINK = Pattern.compile("https?://\\S+");
    private static final NodePath AGAINST = NodePath.of("against");

    /** In words: enough to hold a figure, and little enough to quote. */
    private static final int LONGEST_QUOTE = 25;

    private static final String NUMBER = "[0-9]{1,9}(\\.[0-9]{1,9})?";

    private final BookParts parts;
    private final List<Fault> faults;
    private final Map<String, MeasureKind> kinds = Measures.kinds();
    private final FormerIds former;
    private final Grounds grounds;

    public BookChecks(BookParts parts, List<Fault> faults) {
        this.parts = parts;
        this.faults = faults;
        this.former = new FormerIds(parts.cards(), parts.practice());
        this.grounds = new Grounds(parts);
    }

    public void check() {
        if (!parts.unread().mayBeIn(parts.cover())) {
            regions();
        }
        parts.sources().forEach(this::source);
        parts.rules().values().forEach(this::rule);
        parts.cards().forEach(this::card);
        parts.practice().forEach(this::practice);
        Set<String> used = new HashSet<>();
        parts.rules().values().forEach(rule -> used.addAll(rule.practice()));
        for (PracticeId asked : PracticeId.values()) {
            used.add(asked.id());
            asked(asked.id());
        }
        parts.practice().keySet().stream()
                .filter(id -> !used.contains(id) && !parts.unread().anyRules())
                .forEach(id -> fault(id, "no rule uses this practice value", "remove it, or use it in a rule"));
        new EndChecks(parts.cards(), parts.rules(), parts.practice(), this::fault).check();
        new FormerIdChecks(parts.cards(), parts.practice(), this::fault).check();
    }

    private void regions() {
        parts.regions().forEach((id, region) -> {
            if (!REGION.matcher(id).matches()) {
                region(
                        id,
                        "'" + Words.shortened(id, 40) + "' is no id of a region",
                        "letters, digits and hyphens, such as au-nsw");
            }
            if (!region.parent().isEmpty() && !parts.regions().containsKey(region.parent())) {
                region(
                        id,
                        "its parent '" + region.parent() + "' is not a region",
                        String.join(", ", parts.regions().keySet()));
            }
            country(id, region);
            region.askedInstead().stream()
                    .filter(instead -> instead.of().value() != null
                            && instead.of().value() == instead.ask().value())
                    .forEach(instead -> region(
                            id,
                            "asks somebody in place of himself",
                            "asked-instead: [{of: whom the region does not have, ask: who is asked there}]"));
            String each = id;
            for (int i = 0; each != null && parts.regions().containsKey(each); i++) {
                if (i > parts.regions().size()) {
                    region(id, "its parents form a circle", "a region's line of parents ends");
                    break;
                }
                each = parts.regions().get(each).parent();
            }
        });
    }

    /** A region below a country, such as us-ut, goes by that country's values alone. */
    private void country(String id, Region region) {
        String country = id.split("-")[0];
        if (!country.equals(id)
                && parts.regions().containsKey(country)
                && !region.parent().split("-")[0].equals(country)) {
            region(
                    id,
                    "its id begins with '" + country + "', and its parent is "
                            + (region.parent().isEmpty() ? "left out" : "'" + region.parent() + "'"),
                    "parent: " + country);
        }
    }

    private void region(String id, String problem, String mend) {
        String path = "regions." + id;
        faults.add(new Fault(parts.places().get(path).beginning(), path, problem, mend));
    }

    private void source(String id, Source source) {
        if (!SOURCE.matcher(id).matches()) {
            fault(
                    id,
                    "'" + Words.shortened(id, 40) + "' is no id of a source",
                    "small letters, digits and hyphens, such as sa-remote-travel");
        }
        if (!source.link().isEmpty() && !LINK.matcher(source.link()).matches()) {
            fault(
                    id,
                    "'" + Words.shortened(source.link(), 60) + "' is no link",
                    "link: https://example.org/leaflet; where there is none, no 'link', and under 'seen' where it lies",
                    NodePath.of("link"));
        }
        if (source.lacksEdition()) {
            fault(
                    id,
                    "is a " + Words.hyphenated(source.kind().value().name())
                            + " without an edition, and such are amended",
                    "edition: as amended to 1 July 2026; or edition: undated copy, where it shows none",
                    NodePath.of("kind"));
        }
    }

    private void rule(RuleText rule) {
        faults.addAll(RuleAnswers.faults(rule, kinds));
        faults.addAll(Contradictions.faults(rule, kinds));
        Place place = rule.place();
        Card card = parts.cards().get(rule.id());
        if (parts.lackCard(rule.id())) {
            faults.add(new Fault(
                    place,
                    rule.id(),
                    "this rule has no card"
                            + Words.suggestion(rule.id(), parts.cards().keySet()),
                    "an entry '" + rule.id() + ":' in cards.yaml"));
        }
        if (card != null) {
            same(place, rule.id(), "measures", rule.measures(), card.about());
            same(place, rule.id(), "practice values", rule.practice(), card.values());
        }
        for (String id : rule.practice()) {
            if (parts.lackPractice(id)) {
                faults.add(new Fault(
                        place,
                        rule.id(),
                        "uses the practice value '" + id + "', which is not in the book"
                                + former.suggestion(id, parts.practice().keySet()),
                        "an entry '" + id + ":' in practice.yaml"));
            }
        }
        RuleUnits.unlike(rule, kinds, parts.practice())
                .ifPresent(unlike -> faults.add(new Fault(
                        place, rule.id(), "compares " + unlike, "two quantities that can be told apart by size")));
        for (String id : rule.earlier()) {
            if (parts.lackCard(id)) {
                faults.add(new Fault(
                        place,
                        rule.id(),
                        "builds on '" + id + "', which is not in the book"
                                + former.suggestion(id, parts.cards().keySet()),
                        "the id of another rule"));
            }
        }
    }

    private void same(Place place, String id, String what, Collection<String> inRule, Collection<String> onCard) {
        if (!new TreeSet<>(inRule).equals(new TreeSet<>(onCard))) {
            faults.add(new Fault(
                    place,
                    id,
                    "the rule matches the " + what + " " + new TreeSet<>(inRule) + ", its card names "
                            + new TreeSet<>(onCard) + " ("
                            + parts.places().get(id).beginning() + ")",
                    "the same in both places"));
        }
    }

    private void card(String id, Card card) {
        if (parts.lackRule(id)) {
            fault(
                    id,
                    "this card has no rule" + Words.suggestion(id, parts.rules().keySet()),
                    "rule \"" + id + "\" in the topic's .drl");
        }
        MeasureKind judged = kinds.get(card.about().isEmpty() ? "" : card.judges());
        if (judged == null) {
            fault(
                    id,
                    "its first measure is not one there is",
                    "about: [mass.loaded]",
                    NodePath.of("about").to(1));
        } else if (card.againstLimit() && judged.limitMeaning().isEmpty()) {
            fault(id, judged.name() + " has no limit of its own", "against: the id of a practice value", AGAINST);
        } else if (card.againstPractice()
                && parts.practice().containsKey(card.against())
                && Dimension.ofUnit(judged.unit())
                        != Dimension.ofUnit(parts.practice().get(card.against()).unit())
                && Dimension.ofUnit(parts.practice().get(card.against()).unit()) != null) {
            fault(
                    id,
                    judged.name() + " is in " + judged.unit() + " but " + card.against() + " in "
                            + parts.practice().get(card.against()).unit(),
                    "a practice value of the same kind",
                    AGAINST);
        }
        sources(id, card.basis().value(), card.sources(), NodePath.TOP);
        new CardWords(parts, this::fault).check(id, card);
    }

    private void practice(String id, DatedLimit entry) {
        Dimension dimension = Dimension.ofUnit(entry.unit());
        if (dimension == null) {
            fault(
                    id,
                    "'" + entry.unit() + "' is not a unit" + Words.suggestion(entry.unit(), Dimension.allUnits()),
                    "the unit of the figure that is held against it, such as unit: kg",
                    NodePath.of("unit"));
            return;
        }
        if (entry.values().isEmpty()) {
            fault(id, "has no value", "values: with a region, a date and a value");
        }
        Set<String> starts = new HashSet<>();
        for (int i = 0; i < entry.values().size(); i++) {
            DatedLimit.Value value = entry.values().get(i);
            NodePath path = DatedLimit.path(i);
            grounds.region(value.region(), (field, problem, mend) -> fault(id, problem, mend, path.to(field)));
            if (!starts.add(value.region() + value.since())) {
                fault(
                        id,
                        "two values begin in " + value.region() + " on " + value.since(),
                        "one value a region and day",
                        path);
            }
            if (!value.none()) {
                value(id, value, dimension, path.to("value"));
            }
            sources(id, value.basis().value(), value.sources(), path);
            passage(id, value, path);
        }
    }

    private void passage(String id, DatedLimit.Value value, NodePath path) {
        if (value.clause().isEmpty() != value.quote().isEmpty()) {
            boolean quoted = value.clause().isEmpty();
            fault(
                    id,
                    quoted ? "has a quote without a clause" : "has a clause without a quote",
                    (quoted
                                    ? "clause: on water"
                                    : "quote: \"3-4 day reserve supply\", in quotes, as what stands behind a # is not read")
                            + "; neither of the two where the text was not read",
                    path.to(quoted ? "quote" : "clause"));
        }
        if (!value.quoted().isEmpty()
                && (value.quote().isEmpty() || !value.quoted().matches(NUMBER))) {
            fault(
                    id,
                    "'quoted' is not a number that a quote holds",
                    "quoted: \"3000\", beside a quote with 3000 in it",
                    path.to("quoted"));
        }
        if (value.quote().split("\\s+").length > LONGEST_QUOTE) {
            fault(id, "quotes more than " + LONGEST_QUOTE + " words", "the words around the figure", path.to("quote"));
        }
    }

    private void value(String id, DatedLimit.Value value, Dimension dimension, NodePath path) {
        LimitText.problem(id, value.value(), dimension, parts.rules().values())
                .ifPresent(problem -> fault(
                        id,
                        "the value " + problem,
                        "a number and its unit, such as " + dimension.example() + ", or none",
                        path));
    }

    /** @param path the way to what has the sources */
    private void sources(String id, Basis basis, List<String> cited, NodePath path) {
        grounds.sources(basis, cited, (field, problem, mend) -> fault(id, problem, mend, path.to(field)));
    }

    private void fault(String id, String problem, String mend) {
        fault(id, problem, mend, NodePath.TOP);
    }

    private void fault(String id, String problem, String mend, NodePath path) {
        faults.add(new Fault(parts.places().get(id).place(path), id, problem, mend));
    }

    /** The figures rest on practice values of their own; a book without any value of the topic answers it without. */
    private void asked(String id) {
        String topic = Book.topic(id);
        if (parts.lackPractice(id)
                && parts.practice().keySet().stream()
                        .anyMatch(other -> Book.topic(other).equals(topic))) {
            faults.add(new Fault(
                    Place.of(parts.folder()
                            .resolve(topic)
                            .resolve("practice.yaml")
                            .toString()),
                    id,
                    "the figures ask for the practice value '" + id + "', which is not in the book",
                    "an entry '" + id + ":' in this file"));
        }
    }
}
