package fitworthy.proof;

import static fitworthy.printout.Report.Column.text;

import fitworthy.advice.Cases;
import fitworthy.advice.Cases.Case;
import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.Condition;
import fitworthy.book.PracticeEntry;
import fitworthy.book.Severity;
import fitworthy.figures.MeasureKind;
import fitworthy.figures.Measures;
import fitworthy.printout.Report;
import fitworthy.printout.Report.Block;
import fitworthy.printout.Report.Cited;
import fitworthy.printout.Report.Paragraph;
import fitworthy.printout.Report.Particular;
import fitworthy.printout.Report.Points;
import fitworthy.printout.Report.Row;
import fitworthy.printout.Report.Section;
import fitworthy.printout.Report.Subheading;
import fitworthy.printout.Report.Table;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A rule book arranged for reading: what each rule says and rests on, every practice value, and what is to be confirmed. */
public final class Handbook {

    private final Book book;
    private final List<Case> cases;

    private Handbook(Path folder, Book book) throws FaultsException {
        this.book = book;
        this.cases = Cases.read(folder, book);
    }

    /** The whole book. @throws FaultsException where a file of cases cannot be read */
    public static Report whole(Path folder, Book book) throws FaultsException {
        Handbook handbook = new Handbook(folder, book);
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("reading", "How to read it", handbook.reading()));
        for (String topic : book.topics()) {
            List<Block> blocks = new ArrayList<>();
            handbook.ids(topic).forEach(id -> blocks.addAll(handbook.rule(id)));
            sections.add(new Section(topic, topic.substring(0, 1).toUpperCase(Locale.ROOT) + topic.substring(1),
                    blocks));
        }
        sections.add(new Section("practice", "Every practice value",
                List.of(handbook.values("By region and the day it begins", book.practice().keySet(), value -> true))));
        sections.add(new Section("confirm", "What to go and confirm", handbook.unconfirmed()));
        sections.add(new Section("sources", "Sources", book.sources().entrySet().stream().map(each -> (Block) new Cited(
                each.getKey(), each.getValue().title(), each.getValue().link(), each.getValue().seen())).toList()));
        return handbook.report(book.cover().name(), sections);
    }

    /** The page of one rule. @throws FaultsException where a file of cases cannot be read */
    public static Report page(Path folder, Book book, String id) throws FaultsException {
        Handbook handbook = new Handbook(folder, book);
        return handbook.report(book.cards().get(id).title(), List.of(new Section("rule", id, handbook.rule(id))));
    }

    private Report report(String title, List<Section> sections) {
        return new Report("Handbook of a rule book", title, book.cover().name() + ", edition " + book.cover().edition(),
                book.cover().caution(), book.cards().size() + " rules in " + book.topics().size() + " topics, "
                + book.practice().size() + " practice values, " + cases.size() + " cases.",
                List.of(new Particular("Edition", book.cover().edition()), new Particular("Content", book.hash()),
                        new Particular("Regions", book.regions().values().stream().map(each -> each.name())
                                .collect(Collectors.joining(", ")))), sections);
    }

    private List<Block> reading() {
        return List.of(
                new Paragraph("What a rule asks for:"),
                new Points(List.of("stop: as planned it breaks a rating or can hurt someone",
                        "change: it will not do its job, or spoils another part, until something in the plan changes",
                        "confirm: an engineer, authority, insurer or maker has to agree",
                        "note: worth knowing, nothing to decide")),
                new Paragraph("How a rule or a value is known, from the best down:"),
                new Points(Arrays.stream(Basis.values()).filter(each -> each != Basis.HOUSE).map(each ->
                        Words.hyphenated(each.name()) + ": " + each.words()).toList()),
                new Paragraph("A region without a value of its own goes by its parent's. Where none is recorded the check is"
                        + " not assessed."));
    }

    private List<String> ids(String topic) {
        return book.cards().keySet().stream().filter(id -> id.startsWith(topic + ".")).toList();
    }

    private List<Block> rule(String id) {
        Card card = book.cards().get(id);
        MeasureKind judged = Measures.kinds().get(card.judges());
        String severity = Words.hyphenated(card.severity().value().name());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Subheading(3, id + ": " + card.title(), severity));
        blocks.add(new Paragraph(severity + "; " + book.rules().get(id).place() + "; in the book since " + card.since()
                + "; " + known(card.basis().value(), card.sources())));
        blocks.add(new Paragraph("Judges " + judged.meaning() + (judged.limitMeaning().isEmpty() ? ""
                : " against " + judged.limitMeaning()) + " (" + judged.name() + "). It fires where:"));
        blocks.add(new Points(lines(book.condition(id), "")));
        blocks.add(new Paragraph("Why: " + card.why()));
        blocks.add(new Paragraph("Do: " + card.remedy()));
        blocks.add(new Paragraph("Ask: " + card.ask()));
        if (!book.rules().get(id).practice().isEmpty()) {
            blocks.add(values("Practice values of " + id, book.rules().get(id).practice(), value -> true));
        }
        named("It fires in these cases:", text -> text.expect().stream().anyMatch(each -> each.id().equals(id)), blocks);
        named("Look-alikes that are fine, where it says '" + card.met() + "':", text -> text.met().contains(id), blocks);
        named("It cannot be assessed in these cases:", text -> text.notAssessed().stream().anyMatch(
                each -> each.id().equals(id)), blocks);
        return blocks;
    }

    private void named(String heading, Predicate<Cases.Text> wanted, List<Block> blocks) {
        List<String> names = cases.stream().filter(each -> wanted.test(each.text())).map(each -> each.text().name()).toList();
        if (!names.isEmpty()) {
            blocks.add(new Paragraph(heading));
            blocks.add(new Points(names));
        }
    }

    /** A condition, a line a pattern. */
    private static List<String> lines(Condition condition, String before) {
        if (condition instanceof Condition.All all) {
            return all.parts().stream().flatMap(each -> lines(each, before).stream()).toList();
        }
        if (condition instanceof Condition.Any any) {
            return any.parts().stream().flatMap(each -> lines(each, before + "or: ").stream()).toList();
        }
        if (condition instanceof Condition.None none) {
            return lines(none.part(), before + "none: ");
        }
        if (condition instanceof Condition.Some some) {
            return lines(some.part(), before + "some: ");
        }
        Condition.Match match = (Condition.Match) condition;
        String name = match.binding() == null ? "" : match.binding() + " is ";
        String what = switch (match.fact()) {
            case "Measure" -> match.key() + ", " + Measures.kinds().get(match.key()).meaning();
            case "Practice" -> "the practice value " + match.key();
            default -> "the advice " + match.key();
        };
        return List.of(before + name + what
                + (match.comparisons().isEmpty() ? "" : ", with " + String.join(" and ", match.comparisons())));
    }

    private Table values(String caption, Collection<String> ids, Predicate<PracticeEntry.Value> wanted) {
        List<Row> rows = new ArrayList<>();
        ids.forEach(id -> book.practice().get(id).values().stream().filter(wanted).forEach(value -> rows.add(Row.of(id,
                book.practice().get(id).meaning(), value.region(), value.from().toString(), value.value(),
                known(value.basis().value(), value.sources())
                        + (value.review() == null ? "" : "; to be looked at again by " + value.review())
                        + (value.note().isEmpty() ? "" : ". " + value.note())))));
        return new Table(caption, List.of(text("Value", 19), text("What it is", 23), text("Region", 8), text("From", 10),
                text("Is", 9), text("How it is known", 31)), rows);
    }

    private static String known(Basis basis, List<String> sources) {
        return basis.words() + (sources.isEmpty() ? "" : " [" + String.join(", ", sources) + "]");
    }

    private List<Block> unconfirmed() {
        List<Block> blocks = new ArrayList<>();
        for (Basis basis : List.of(Basis.MEMORY, Basis.COMMON_PRACTICE, Basis.PUBLISHED_SECONDHAND)) {
            blocks.add(new Subheading(3, "Known only as " + Words.hyphenated(basis.name()).replace('-', ' '), ""));
            blocks.add(values("Practice values, " + basis.words(), book.practice().keySet(),
                    value -> value.basis().is(basis)));
            List<String> rules = book.cards().entrySet().stream().filter(each -> each.getValue().basis().is(basis))
                    .map(Map.Entry::getKey).toList();
            if (!rules.isEmpty()) {
                blocks.add(new Paragraph("Rules: " + String.join(", ", rules) + "."));
            }
        }
        return blocks;
    }
}
