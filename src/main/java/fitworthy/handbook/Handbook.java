package fitworthy.handbook;

import fitworthy.book.Ask;
import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.FormerIds;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.Links;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Subheading;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.Cases.Expected;
import fitworthy.proof.LookAlike;
import fitworthy.proof.References;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rule book arranged for reading: what each rule says and rests on, every practice value, and what is to be
 * confirmed.
 */
public final class Handbook {

    private final Book book;
    private final References references;
    private final LookAlike.Finder lookAlikes;
    private final Entries entries;

    private Handbook(RuleEngine engine, References references, boolean whole) {
        this.book = references.book();
        this.references = references;
        this.lookAlikes = new LookAlike.Finder(engine, references);
        this.entries = new Entries(references, whole);
    }

    /** The whole book. @throws FaultsException where a file of cases cannot be read */
    public static Report whole(Path folder, RuleEngine engine) throws FaultsException {
        Book book = engine.book();
        Handbook handbook = new Handbook(engine, References.of(folder, book), true);
        List<Section> sections = handbook.introduction();
        for (String topic : book.topics()) {
            List<Block> blocks = new ArrayList<>();
            handbook.references.rules(topic).forEach(id -> blocks.addAll(handbook.rule(id)));
            sections.add(new Section(topic, Words.capital(topic), blocks));
        }
        sections.addAll(handbook.chapters());
        return handbook.report(book.cover().name(), sections);
    }

    /** What stands before and behind the pages of the rules, without these. */
    public static List<Section> chapters(RuleEngine engine, References references) {
        Handbook handbook = new Handbook(engine, references, true);
        return Stream.concat(handbook.introduction().stream(), handbook.chapters().stream())
                .toList();
    }

    private List<Section> introduction() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("reading", "How to read it", reading()));
        sections.add(new Section("index", "Index of rules", index()));
        if (!book.formerIds().all().isEmpty()) {
            sections.add(new Section("former", "What is called otherwise now", former()));
        }
        return sections;
    }

    private List<Section> chapters() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("practice", "Every practice value", everyValue()));
        sections.add(new Section("words", "What parts are called", List.of(entries.shopWords())));
        if (!book.usualPlaces().places().isEmpty()) {
            sections.add(new Section("places", "Places in words", PlaceWords.blocks(book.usualPlaces())));
        }
        if (!book.usual().ids().isEmpty()) {
            sections.add(new Section("usual", "What is usual", UsualChapter.blocks(book)));
        }
        sections.add(new Section("confirm", "What to go and confirm", new Unconfirmed(references, entries).blocks()));
        sections.add(new Section("sources", "Sources", cited(book.sources().keySet())));
        return sections;
    }

    /** The page of one rule. @throws FaultsException where a file of cases cannot be read */
    public static Report page(Path folder, RuleEngine engine, String id) throws FaultsException {
        return page(engine, References.of(folder, engine.book()), id);
    }

    /** The same of a book whose cases have been read. */
    public static Report page(RuleEngine engine, References references, String id) {
        Book book = engine.book();
        Handbook handbook = new Handbook(engine, references, false);
        Set<String> sources = handbook.references.sources(Set.of(id));
        List<Section> sections = new ArrayList<>(List.of(new Section("rule", "The rule", handbook.rule(id))));
        if (!sources.isEmpty()) {
            sections.add(new Section("sources", "Sources", handbook.cited(sources)));
        }
        return handbook.report(book.cards().get(id).title(), sections);
    }

    private Report report(String title, List<Section> sections) {
        return new Report(
                "Handbook of a rule book",
                title,
                book.cover().name() + ", edition " + book.cover().edition(),
                book.cover().caution(),
                book.cards().size() + " rules in " + book.topics().size() + " topics, "
                        + book.practice().size() + " practice values, "
                        + references.cases().size() + " cases.",
                List.of(
                        new Particular("Edition", book.cover().edition()),
                        new Particular("Content", book.hash()),
                        new Particular(
                                "Regions",
                                book.regions().values().stream()
                                        .map(region -> region.name())
                                        .collect(Collectors.joining(", ")))),
                sections);
    }

    private List<Block> reading() {
        return List.of(
                new Paragraph("What a rule asks for:"),
                new Points(List.of(
                        "stop: as planned it breaks a rating or can hurt someone",
                        "change: it will not do its job, or spoils another part, until something in the plan changes",
                        "confirm: an engineer, authority, insurer or maker has to agree",
                        "note: worth knowing, nothing to decide")),
                new Paragraph("How a rule or a value is known, from the best down:"),
                new Points(Arrays.stream(Basis.values())
                        .filter(value -> value != Basis.HOUSE && value != Basis.ELSEWHERE)
                        .map(value -> Words.hyphenated(value.name()) + ": " + value.words())
                        .toList()),
                new Paragraph("A region without a value of its own goes by its parent's. Where none is recorded the "
                        + "check is not assessed."),
                new Paragraph("A look-alike is a case next to a rule's limit in which the rule is met; where a rule "
                        + "has no limit, one that is about little else."));
    }

    /** Every rule by topic, with its title. */
    private List<Block> index() {
        List<Block> blocks = new ArrayList<>();
        for (String topic : book.topics()) {
            List<String> rules = references.rules(topic);
            blocks.add(new Subheading(3, Words.capital(topic) + ", " + counted(rules.size(), "rule"), ""));
            blocks.add(new Links(
                    "",
                    rules.stream()
                            .map(id -> entries.link(
                                    id,
                                    ": " + book.cards().get(id).title() + " (" + entries.severity(id) + entries.ends(id)
                                            + ")"))
                            .toList(),
                    true));
        }
        return blocks;
    }

    /** Each former id, so that what leads to it is led on. */
    private List<Block> former() {
        List<Block> blocks = new ArrayList<>();
        book.formerIds().all().forEach((former, present) -> {
            blocks.add(new Subheading(3, FormerIds.now(former, present), "", former));
            blocks.add(new Links("See", List.of(entries.link(present, "")), false));
        });
        return blocks;
    }

    private List<Block> rule(String id) {
        Card card = book.cards().get(id);
        MeasureKind judged = Measures.kinds().get(card.judges());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Subheading(3, id + ": " + card.title(), entries.severity(id), id));
        blocks.add(new Paragraph(
                entries.severity(id) + "; " + book.rules().get(id).place().inBook() + ", card "
                        + references.place(id) + "; in the book since " + card.since() + entries.ends(id)
                        + "; " + card.basis().value().words()));
        card.formerly().forEach(former -> blocks.add(new Paragraph(FormerIds.now(former, id) + ".")));
        if (!card.sources().isEmpty()) {
            blocks.add(new Links("Sources:", Entries.sources(card.sources()), false));
        }
        blocks.add(new Paragraph("Judges " + judged.meaning()
                + (judged.limitMeaning().isEmpty() ? "" : " against " + judged.limitMeaning()) + " (" + judged.name()
                + "). It fires where:"));
        blocks.add(new Points(ConditionWords.lines(book.condition(id))));
        blocks.add(new Paragraph("Why: " + card.why()));
        blocks.add(new Paragraph("Do: " + card.remedy()));
        blocks.add(new Paragraph("Ask: " + Ask.words(card.ask())));
        card.inRegion().forEach(own -> {
            String where = " in " + book.regions().get(own.region()).name() + ": ";
            words("Why" + where, own.why(), blocks);
            words("Do" + where, own.remedy(), blocks);
            words("Ask" + where, Ask.words(own.ask()), blocks);
        });
        Set<String> practice = references.values(Set.of(id));
        if (!practice.isEmpty()) {
            blocks.add(new Subheading(4, "Practice values", ""));
            blocks.add(new Links(
                    "It compares with",
                    practice.stream()
                            .map(block -> entries.link(block, " (" + references.place(block) + ")"))
                            .toList(),
                    false));
            practice.forEach(value -> blocks.add(
                    entries.values(value + ": " + book.practice().get(value).meaning(), value)));
        }
        named(
                "It fires in these cases",
                "",
                references.firing(id).stream()
                        .map(example -> example.text().name() + figures(example, id))
                        .toList(),
                blocks);
        named(
                "Look-alikes that are fine",
                "It says '" + card.met() + "'.",
                lookAlikes.of(id).stream().map(LookAlike::words).toList(),
                blocks);
        named(
                "It cannot be assessed in these cases",
                "",
                references.notAssessed(id).stream()
                        .map(example -> example.text().name())
                        .toList(),
                blocks);
        return blocks;
    }

    private static void words(String before, String text, List<Block> blocks) {
        if (!text.isEmpty()) {
            blocks.add(new Paragraph(before + text));
        }
    }

    private static void named(String heading, String before, List<String> cases, List<Block> blocks) {
        if (!cases.isEmpty()) {
            blocks.add(new Subheading(4, heading, ""));
            if (!before.isEmpty()) {
                blocks.add(new Paragraph(before));
            }
            blocks.add(new Points(cases));
        }
    }

    /** What a case expects of a rule, as printed. */
    private static String figures(Case text, String id) {
        Expected expected = text.text().expect().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
        String figures = Stream.of(
                        expected.value(),
                        expected.limit().isEmpty() ? "" : "limit " + expected.limit(),
                        expected.margin().isEmpty() ? "" : "margin " + expected.margin())
                .filter(figure -> !figure.isEmpty())
                .collect(Collectors.joining(", "));
        return figures.isEmpty() ? "" : " (" + figures + ")";
    }

    /** Each practice value with the rules that use it. */
    private List<Block> everyValue() {
        List<Block> blocks = new ArrayList<>();
        book.practice().forEach((id, entry) -> {
            blocks.add(new Subheading(3, id + ": " + entry.meaning(), "", id));
            entry.formerly().forEach(former -> blocks.add(new Paragraph(FormerIds.now(former, id) + ".")));
            blocks.add(new Links(
                    references.place(id) + (entry.ends() == null ? "" : ", ending on " + entry.ends()) + ", used by",
                    book.users(id).stream().map(rule -> entries.link(rule, "")).toList(),
                    false));
            blocks.add(entries.values("Values of " + id, id));
        });
        return blocks;
    }

    private List<Block> cited(Collection<String> sources) {
        return sources.stream()
                .map(id -> (Block) new Cited(
                        id,
                        book.sources().get(id).title(),
                        book.sources().get(id).link(),
                        book.sources().get(id).account()))
                .toList();
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
