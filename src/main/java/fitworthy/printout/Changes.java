package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ratings;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.ClearedWords;
import fitworthy.printout.words.OwnRemedies;
import fitworthy.printout.words.TermsWords;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Mender.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Changes that would clear the stops, and open choices side by side. */
public final class Changes {

    /** Ways that the first pages show, as many as offers are looked for. */
    private static final int MOST_WAYS = 3;
    /** Combinations that the first pages show. */
    private static final int MOST_CHOICES = 4;

    /** What takes off less than this share of what is over is no way to the ratings: more than ten such would be needed. */
    private static final double NOTICEABLE = 0.1;

    private Changes() {}

    static List<Block> offered(Arrangement planned, Mending mending) {
        List<Block> blocks = new ArrayList<>();
        Advice advice = planned.advice();
        boolean stops = planned.finds(Severity.STOP);
        if (!stops && mending.ways().isEmpty() && mending.best().isEmpty()) {
            return blocks;
        }
        if (!mending.complete()) {
            blocks.add(new Paragraph(ChangeWords.effort(mending)));
        }
        List<String> own = OwnRemedies.inFull(advice, mending);
        if (!own.isEmpty()) {
            blocks.add(new Paragraph(
                    "What the stop itself asks for clears it; not tried here, so check the plan with it:"));
            blocks.add(new Points(own));
        }
        best(advice, mending).unlessEmpty().forEach(blocks::add);
        if (stops && mending.offers().isEmpty()) {
            blocks.add(new Paragraph(ChangeWords.noOffer(advice, mending)));
        }
        plans("Offer", advice, mending.offers(), blocks);
        plans("Lighter plan", advice, mending.lighter(), blocks);
        List<String> others = ChangeWords.withoutWay(advice, mending);
        if (!others.isEmpty()) {
            blocks.add(new Paragraph("Stops that no single change clears, and what each needs:"));
            blocks.add(new Points(others));
        }
        ways(mending).unlessEmpty().forEach(blocks::add);
        if (mending.complete()) {
            blocks.add(new Paragraph(ChangeWords.effort(mending)));
        }
        return blocks;
    }

    private static void plans(String name, Advice planned, List<Offer> offers, List<Block> blocks) {
        for (int i = 0; i < offers.size(); i++) {
            Offer offer = offers.get(i);
            blocks.add(new Subheading(3, name + " " + (i + 1), ""));
            blocks.add(new Points(offer.changes().stream().map(Change::words).toList()));
            ChangeWords.terms(planned, offer).forEach(term -> blocks.add(new Paragraph(term)));
        }
    }

    private static Table best(Advice planned, Mending mending) {
        return new Table(
                "What helps most, one change at a time",
                List.of(text("Change", 40), text("What it clears", 30), text("What it saves and loses", 30)),
                mending.best().stream()
                        .map(offer -> Row.of(
                                ChangeWords.brief(offer),
                                ClearedWords.cleared(planned, offer, true),
                                ChangeWords.effects(planned, offer)))
                        .toList());
    }

    /**
     * The best few ways to clear the stops, and what each then leaves of the limits that are passed, a line each. Where
     * none clears every stop, those that take most off the ratings, and what the stops that these leave ask for themselves.
     */
    static List<Block> ways(Advice planned, Mending mending) {
        boolean overloaded = !Ratings.of(planned).passed().isEmpty();
        List<Offer> ways = mending.offers().isEmpty() && overloaded ? nearer(planned, mending) : mending.offers();
        // What gets within the ratings is searched for; of what else stops the plan, what it asks for goes before what
        // gives up.
        List<String> asked =
                overloaded && !mending.offers().isEmpty() ? List.of() : OwnRemedies.briefly(planned, mending);
        List<String> own = overloaded ? List.of() : asked;
        List<String> beside = overloaded ? asked : List.of();
        if (ways.isEmpty() && own.isEmpty()) {
            return List.of();
        }
        String heading = mending.offers().isEmpty() && own.isEmpty()
                ? "What comes nearest to the ratings"
                : overloaded ? "Ways to get within the ratings" : "Ways to clear the stops";
        List<Block> blocks = new ArrayList<>(List.of(
                new Subheading(3, heading, ""),
                new Points(Stream.of(
                                own.stream().limit(MOST_WAYS),
                                ways.stream().map(offer -> ChangeWords.way(planned, offer)),
                                beside.stream().limit(MOST_WAYS))
                        .flatMap(lines -> lines)
                        .toList())));
        String searched = (mending.offers().isEmpty() && own.isEmpty() ? ChangeWords.noWay(planned, mending) : "")
                + (mending.complete() ? "" : " Not all could be tried in time; there may be better ways.");
        if (!searched.isEmpty()) {
            blocks.add(new Paragraph(searched.strip()));
        }
        return blocks;
    }

    private static List<Offer> nearer(Advice planned, Mending mending) {
        double over = over(planned);
        List<List<Change>> joined =
                mending.lighter().stream().map(Offer::changes).toList();
        return Stream.concat(
                        mending.lighter().stream(),
                        mending.best().stream().filter(offer -> !joined.contains(offer.changes())))
                .filter(offer -> over(offer.advice()) <= (1 - NOTICEABLE) * over)
                .sorted(Comparator.comparingDouble(offer -> over(offer.advice())))
                .limit(MOST_WAYS)
                .toList();
    }

    /** By how much all ratings together are passed, kg. */
    private static double over(Advice advice) {
        return -Ratings.of(advice).passed().stream()
                .mapToDouble(rating -> rating.comparison().orElseThrow().margin())
                .sum();
    }

    /** What each combination of the open choices comes to, the first few of them, in a sentence. */
    static Paragraph choices(Alternatives<ComparedPlan> alternatives) {
        List<String> told = new ArrayList<>();
        int all = alternatives.plans().size();
        List<String> open = alternatives.plans().stream()
                .map(plan -> CombinationWords.open(plan.kept()))
                .distinct()
                .toList();
        // What is open in all of them alike is said once.
        boolean alike = open.size() == 1;
        for (int i = 0; i < Math.min(MOST_CHOICES, all); i++) {
            Alternative<ComparedPlan> plan = alternatives.plans().get(i);
            told.add(CombinationWords.choices(plan, i).replace("; ", ", ") + " ("
                    + (alike ? CombinationWords.found(plan.kept()) : CombinationWords.counts(plan.kept())) + ")");
        }
        return new Paragraph("Open choices: " + String.join("; ", told)
                + (all > MOST_CHOICES ? "; and " + (all - MOST_CHOICES) + " more" : "") + "."
                + (alike && !open.get(0).isEmpty() ? " Each" + open.get(0).replaceFirst("^ and", " with") + "." : ""));
    }

    private static Table ways(Mending mending) {
        Map<String, Set<String>> byFinding = new LinkedHashMap<>();
        for (Way way : mending.ways()) {
            byFinding
                    .computeIfAbsent(ChangeWords.heading(way.finding()), key -> new LinkedHashSet<>())
                    .add(way.change().words());
        }
        List<Row> rows = new ArrayList<>();
        byFinding.forEach((finding, changes) -> rows.add(Row.of(finding, String.join("; or ", changes))));
        return new Table(
                "What would just pass, one thing at a time", List.of(text("Finding", 50), text("Change", 50)), rows);
    }

    static List<Block> compared(Alternatives<ComparedPlan> alternatives) {
        List<ComparedPlan> plans =
                alternatives.plans().stream().map(Alternative::kept).toList();
        Set<String> limits = new LinkedHashSet<>();
        plans.forEach(plan -> limits.addAll(plan.left().keySet()));
        List<Row> counts = new ArrayList<>();
        List<Row> left = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            ComparedPlan plan = plans.get(i);
            String number = String.valueOf(i + 1);
            List<String> cells = new ArrayList<>(List.of(
                    number, CombinationWords.choices(alternatives.plans().get(i), i) + CombinationWords.leftOut(plan)));
            for (Severity severity : Severity.values()) {
                cells.add(String.valueOf(plan.found(severity)));
            }
            cells.add(String.valueOf(plan.headings().under()));
            cells.add(String.valueOf(plan.counts().notAssessed()));
            cells.add(String.valueOf(plan.counts().figuresMissing()));
            cells.add(TermsWords.range(plan.terms()));
            cells.add(TermsWords.water(plan.terms()));
            cells.add(TermsWords.price(plan.terms()));
            cells.add(TermsWords.leadTime(plan.terms()));
            counts.add(Row.of(cells.toArray(String[]::new)));
            left.add(Row.of(Stream.concat(Stream.of(number), limits.stream().map(plan::left))
                    .toArray(String[]::new)));
        }
        List<Column> leftColumns = new ArrayList<>(List.of(text("Plan", 8)));
        limits.forEach(limit -> leftColumns.add(figure(limit, 92 / limits.size())));
        List<Block> blocks = new ArrayList<>();
        CombinationWords.cutShort(alternatives)
                .ifPresent(cut -> blocks.add(new Paragraph(cut + " 'compare' shows more.")));
        blocks.add(new Table(
                (alternatives.complete() ? "Every combination" : "The combinations that were looked at")
                        + ", each run through the whole rule book",
                List.of(
                        text("Plan", 6),
                        text("Choices", 16),
                        figure("Stop", 6),
                        figure("Change", 8),
                        figure("Confirm", 8),
                        figure("Note", 6),
                        figure("Listed under them", 7),
                        figure("Checks not made", 8),
                        figure("Figures missing", 8),
                        figure("Range", 7),
                        figure("Water lasts", 7),
                        figure("Price", 7),
                        figure("Lead time", 6)),
                counts));
        Map<String, String> stops = new TreeMap<>();
        plans.forEach(plan -> stops.putAll(plan.stops()));
        if (!stops.isEmpty()) {
            blocks.add(new Table(
                    "Stops that remain",
                    List.of(text("Stop", 75), text("In", 25)),
                    stops.entrySet().stream()
                            .map(stop -> Row.of(stop.getValue(), CombinationWords.plansWith(stop.getKey(), plans)))
                            .toList()));
        }
        if (!limits.isEmpty()) {
            blocks.add(new Table("Margin to each limit in the loading that leaves least", leftColumns, left));
        }
        return blocks;
    }
}
