package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.rules.Guards;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.source.NodePath;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The words of a rule, and what it is about. Its id is the key it stands under. */
public record Card(
        @Field(value = "the fault in a few words", needed = true, example = "Loaded mass is above the GVM")
                String title,
        @Field(value = "what it asks for", needed = true) Choice<Severity> severity,
        @Field(
                        "what comes of it if it is left so, by which findings of one severity are sorted; where left out injury for"
                                + " a stop, breaks-down for a change, formal for a confirm and spoils for a note")
                Choice<Consequence> consequence,
        @Field(value = "findings under which it is told where one of them is found too", example = "[across.no-plate]")
                List<String> with,
        @Field(value = "the measures it is about, the one it judges first", needed = true, example = "[mass.loaded]")
                List<String> about,
        @Field(
                        value =
                                "what the first measure is held against: 'limit' for its own limit, or a practice value's id",
                        example = "limit")
                String against,
        @Field(value = "which side is allowed; at-most where left out") Choice<Sense> allowed,
        @Field(value = "further practice values that its condition uses", example = "[mass.gvm-reserve]")
                List<String> practice,
        @Field(
                        value = "what to say when it was assessed and nothing is wrong",
                        needed = true,
                        example = "Loaded mass is within the GVM")
                String met,
        @Field(value = "why it matters", needed = true, example = "The GVM is the maker's limit.") String why,
        @Field(
                        value = "what to do, with {placeholders} for figures",
                        needed = true,
                        example = "Leave out at least {margin}.")
                String remedy,
        @Field(value = "whom to ask, what, and what to bring; who comes first is asked first", needed = true)
                List<Ask> ask,
        @Field("what is said otherwise in a region and those below it; the nearest region counts")
                List<Regional> inRegion,
        @Field("what would put it right where another answer on the sheet says that it was done; the first whose "
                        + "field the sheet gives is tried, else the first whose field it could give")
                List<Mended> mendedBy,
        @Field("what it means for the buying of the parts that it is about; a note means nothing for it") Buying buying,
        @Field(value = "how good the evidence for the rule is", needed = true) Choice<Basis> basis,
        @Field(value = "ids of rules/sources.yaml", example = "[sa-mass-rerating]") List<String> sources,
        @Field(value = "the day it came into the book", needed = true, example = "2026-11-25", within = Plausible.DAY)
                LocalDate since,
        @Field(value = "the first day on which it is checked no more", example = "2027-03-01", within = Plausible.DAY)
                LocalDate ends,
        @Field(value = "what it was called before", example = "[mass.over-gvm]") List<String> formerly) {

    /**
     * A way to put a fault right that the sheet would show as another answer in one field.
     *
     * @param field the path of that field; {@code {subject}} stands for the name of what the finding is about
     */
    public record Mended(
            @Field(
                            value = "the path of the field in a sheet",
                            needed = true,
                            example = "fitments.{subject}.lamps-visible")
                    String field,
            @Field(value = "its answer once that is done", needed = true, example = "yes") String answer,
            @Field(
                            value = "what is done, as an order to the workshop",
                            needed = true,
                            example = "move the lamps into view")
                    String by) {

        /** The way to the field for one subject. */
        public NodePath path(String subject) {
            return NodePath.parse(field).renamed(SUBJECT, subject);
        }
    }

    /** Words that hold in one region in place of the card's own; a text that is left out stays as it is. */
    public record Regional(
            @Field(value = "the region", needed = true, example = "au-nsw") String region,
            @Field("why it matters there") String why,
            @Field("what to do there") String remedy,
            @Field("whom to ask there, in place of all others") List<Ask> ask) {}

    /** In the path of a field the name of what a finding is about. */
    static final String SUBJECT = "{subject}";

    /** Who is asked what the book does not hold for it where the sheet belongs. */
    public Party whoKnowsRules() {
        return Party.ofRules(ask.stream().map(one -> one.party().value()));
    }

    /** The same card with another severity. */
    Card with(Severity other) {
        return with(Choice.of(other), new Regional("", "", "", List.of()));
    }

    /** The same card with the words of the nearest of these regions that has its own. */
    Card in(List<String> lineage) {
        Optional<Regional> own = lineage.stream()
                .flatMap(region ->
                        inRegion.stream().filter(words -> words.region().equals(region)))
                .findFirst();
        return own.isEmpty() ? this : with(severity, own.get());
    }

    /** The same card asking others. */
    Card asking(List<Ask> others) {
        return with(severity, new Regional("", "", "", others));
    }

    /** The same card on other evidence. */
    Card resting(Basis other, List<String> kept) {
        return with(severity, new Regional("", "", "", List.of()), Choice.of(other), kept);
    }

    private Card with(Choice<Severity> other, Regional own) {
        return with(other, own, basis, sources);
    }

    private Card with(Choice<Severity> other, Regional own, Choice<Basis> known, List<String> texts) {
        return new Card(
                title,
                other,
                Choice.of(follows()),
                with,
                about,
                against,
                allowed,
                practice,
                met,
                own.why().isEmpty() ? why : own.why(),
                own.remedy().isEmpty() ? remedy : own.remedy(),
                own.ask().isEmpty() ? ask : own.ask(),
                inRegion,
                mendedBy,
                buying,
                known,
                texts,
                since,
                ends,
                formerly);
    }

    /** Everything that it says to people, by the field that says it. */
    public Map<NodePath, String> texts() {
        Map<NodePath, String> texts = new LinkedHashMap<>();
        texts.put(NodePath.of("title"), title);
        texts.put(NodePath.of("met"), met);
        texts.put(NodePath.of("why"), why);
        texts.put(NodePath.of("remedy"), remedy);
        asked(NodePath.of("ask"), ask, texts);
        for (int i = 0; i < inRegion.size(); i++) {
            Regional own = inRegion.get(i);
            NodePath path = NodePath.of("in-region").to(i + 1);
            texts.put(path.to("why"), own.why());
            texts.put(path.to("remedy"), own.remedy());
            asked(path.to("ask"), own.ask(), texts);
        }
        return texts;
    }

    private static void asked(NodePath path, List<Ask> asks, Map<NodePath, String> texts) {
        for (int i = 0; i < asks.size(); i++) {
            texts.put(path.to(i + 1), asks.get(i).words());
        }
    }

    /** What settles it for those who buy the parts; a note is nothing that they have to wait for. */
    public Buying.Settled settledBy() {
        return severity.is(Severity.NOTE)
                ? Buying.Settled.WORK
                : buying.settledBy().known()
                        ? buying.settledBy().value()
                        : severity.is(Severity.CONFIRM) ? Buying.Settled.ANSWER : Buying.Settled.ANOTHER_CHOICE;
    }

    /** Which side of a value is allowed. */
    public enum Sense {
        AT_MOST,
        AT_LEAST
    }

    /** What comes of the fault if it is left so; another severity that a house sets changes nothing in that. */
    public Consequence follows() {
        return consequence.known() ? consequence.value() : Consequence.usual(severity.value());
    }

    /** The measure it judges. */
    public String judges() {
        return about.get(0);
    }

    public boolean againstLimit() {
        return against.equals("limit");
    }

    public boolean againstPractice() {
        return !against.isEmpty() && !againstLimit();
    }

    /** The practice values that its condition uses. */
    public Set<String> values() {
        Set<String> values = new TreeSet<>(practice);
        if (againstPractice()) {
            values.add(against);
        }
        return values;
    }

    public boolean atLeast() {
        return allowed.is(Sense.AT_LEAST);
    }

    /** On which side the judged figure gets worse; untold where it is held against nothing. */
    public Guards.Worse worse() {
        return against.isEmpty() ? Guards.Worse.UNTOLD : atLeast() ? Guards.Worse.LOWER : Guards.Worse.HIGHER;
    }
}
