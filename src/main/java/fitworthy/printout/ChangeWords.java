package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Key;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.words.ClearedWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.LostWords;
import fitworthy.printout.words.OwnRemedies;
import fitworthy.printout.words.RatingWords;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.StopNeeds;
import fitworthy.printout.words.TermsWords;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Terms;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said of changed plans, on a screen and on paper. */
public final class ChangeWords {

    /** Things that go with a part, of which each is named where a plan is told in few lines. */
    private static final int MOST_NAMED = 2;

    /** The share by which something has to be passed further before that is told. */
    private static final double LEAST_WORSE = 0.01;

    /** Before the verdict on a changed plan. */
    public static final String THEN = "Then: ";

    private ChangeWords() {}

    /** How far the search went; told before what it found where that is not all. */
    public static String effort(Mending mending) {
        return mending.tried() + " changed plans were run through the whole rule book."
                + (mending.complete()
                        ? ""
                        : " Time ran out, or there were too many combinations, before all were tried; there may be smaller "
                                + "changes.");
    }

    /** That there is nothing to clear, as far as that is known. */
    public static String noStop(Counts counts) {
        long open = counts.notAssessed();
        return open == 0
                ? "The plan has no stop to clear."
                : "No stop is known; " + open + (open == 1 ? " check is" : " checks are") + " open.";
    }

    /** That no change helps, as far as the search went, and what is shown in place of one. */
    public static String noOffer(Advice planned, Mending mending) {
        return noWay(planned, mending)
                + (mending.lighter().isEmpty()
                        ? ""
                        : " The plans below are lighter, but leave the stops that are named with them.");
    }

    /** That no change helps, as far as the search went. */
    static String noWay(Advice planned, Mending mending) {
        return mending.complete() && OwnRemedies.stops(planned, mending).isEmpty()
                ? "No change of up to four clears every stop and keeps what is in order."
                : "None of the changes that were tried clears every stop and keeps what is in order.";
    }

    /** What to do, how many stops that leaves, and what is left of the limits then. */
    static String way(Advice planned, Offer offer) {
        int stops = ClearedWords.heads(Severity.STOP, offer.advice()).size();
        return Words.capital(brief(offer)) + ": "
                + (stops == 0 ? "no stop remains" : stops + (stops == 1 ? " stop remains" : " stops remain")) + ". "
                + Stream.concat(left(planned, offer).stream(), moreToChange(planned, offer).stream())
                        .collect(Collectors.joining(" "));
    }

    /** What has to be changed then that did not before. */
    private static Optional<String> moreToChange(Advice planned, Offer offer) {
        List<String> fresh = fresh(planned, offer)
                .filter(group -> group.severity().compareTo(Severity.CHANGE) <= 0)
                .map(ClearedWords::title)
                .distinct()
                .toList();
        return fresh.isEmpty()
                ? Optional.empty()
                : Optional.of("Then to be changed: " + String.join("; ", fresh) + ".");
    }

    /** What an offer saves and loses, what the book says of the plan then, and what each stop needs that remains. */
    public static List<String> terms(Advice planned, Offer offer) {
        List<String> terms = new ArrayList<>();
        terms.add(sentence(effects(planned, offer, TermsWords.all(Terms.of(planned), offer.terms()), true)));
        left(planned, offer).ifPresent(terms::add);
        terms.add(THEN + Verdict.of(Arrangement.of(offer.advice())));
        ClearedWords.heads(Severity.STOP, offer.advice())
                .forEach(told -> terms.add("Stop that remains: "
                        + String.join(
                                " ", StopNeeds.needs(ClearedWords.alike(told).toList()))));
        return terms;
    }

    /** What is left of each limit that the plan passes, in the loading that leaves least. */
    private static Optional<String> left(Advice planned, Offer offer) {
        List<String> left = StopNeeds.stops(planned).stream()
                .filter(stop -> stop.worst().comparison().isPresent())
                .flatMap(stop -> least(offer.advice(), stop.worst().check()).stream())
                .toList();
        return left.isEmpty() ? Optional.empty() : Optional.of("Left then: " + String.join(", ", left) + ".");
    }

    /** Not known where it is not in any loading, whatever the others leave. */
    private static Optional<String> least(Advice advice, Check check) {
        List<Outcome> all = advice.outcomes()
                .filter(outcome -> outcome.check().equals(check))
                .toList();
        Optional<String> open = all.stream()
                .filter(NotAssessed.class::isInstance)
                .findFirst()
                .map(outcome -> name(outcome) + " not known" + RatingWords.in(outcome));
        return open.or(() -> all.stream()
                .filter(Assessed.class::isInstance)
                .map(Assessed.class::cast)
                .filter(outcome -> outcome.comparison().isPresent())
                .min(Comparator.comparingDouble(
                        outcome -> outcome.comparison().orElseThrow().margin()))
                .map(outcome -> name(outcome) + " " + spareOrOver(advice, outcome) + RatingWords.in(outcome)));
    }

    /** What is limited, for what has no limit of its own by what is measured. */
    private static String name(Outcome outcome) {
        Judged judged = outcome.judged();
        return judged.measure().kind().limitMeaning().isEmpty()
                ? judged.subject() + " (" + judged.measure().kind().meaning() + ")"
                : RatingWords.name(outcome);
    }

    private static String spareOrOver(Advice advice, Assessed outcome) {
        Comparison compared = outcome.comparison().orElseThrow();
        return (Wording.isNothing(outcome)
                        ? Wording.NOTHING
                        : (advice.isGuessed(outcome) ? "about " : "")
                                + Wording.spareOrOver(outcome)
                                + (compared.margin() < 0 ? "" : " spare"))
                + (compared.uncertain() ? ", " + TooClose.WORDS : "");
    }

    /** What to do, without the names of all that goes with a part where these are many. */
    public static String brief(Offer offer) {
        return offer.changes().stream()
                .map(change -> change instanceof Change.Drop drop ? drop.briefly(MOST_NAMED) : change.words())
                .collect(Collectors.joining("; "));
    }

    /** What a single change clears, and what it saves and loses, in so many lines. */
    public static List<String> help(Advice planned, Offer offer, int lines, int width) {
        List<String> terms = TermsWords.changed(Terms.of(planned), offer.terms());
        List<List<String>> ways = Stream.of(true, false)
                .map(told -> sentence(effects(planned, offer, terms, told)))
                .flatMap(effects -> Stream.of(true, false)
                        .map(named -> ClearedWords.cleared(planned, offer, named))
                        .flatMap(cleared -> Stream.of(
                                Stream.of(cleared, effects)
                                        .filter(part -> !part.isEmpty())
                                        .flatMap(part -> Page.lines(part, width).stream())
                                        .toList(),
                                Page.lines(cleared + " " + effects, width))))
                .toList();
        return ways.stream().filter(told -> told.size() <= lines).findFirst().orElse(ways.get(ways.size() - 1));
    }

    /** What a single change saves and loses. */
    public static String effects(Advice planned, Offer offer) {
        return sentence(effects(planned, offer, TermsWords.changed(Terms.of(planned), offer.terms()), true));
    }

    /** @param confirms whether what is new to confirm is told, or counted */
    private static List<String> effects(Advice planned, Offer offer, List<String> terms, boolean confirms) {
        List<String> effects = new ArrayList<>(terms);
        String words = offer.changes().stream().map(Change::words).collect(Collectors.joining());
        Set<String> before = aboard(planned.sheet());
        Set<String> after = aboard(offer.advice().sheet());
        TermsWords.without("without", before, after, words).ifPresent(effects::add);
        TermsWords.without("with", after, before, words).ifPresent(effects::add);
        effects.addAll(LostWords.of(planned.sheet(), offer.changes()));
        List<String> fresh = fresh(planned, offer, confirms);
        if (!fresh.isEmpty()) {
            effects.add(String.join(", ", fresh));
        }
        List<String> worse = worse(planned, offer);
        if (!worse.isEmpty()) {
            effects.add("worse: " + String.join(", ", worse));
        }
        if (offer.changes().stream()
                .anyMatch(change -> change instanceof Change.PutRight
                        || change instanceof Change.Rate
                        || change instanceof Change.RatedPoint)) {
            effects.add("what is put right has no price on the sheet");
        }
        return effects;
    }

    /**
     * What is found that the plan did not have, each rule once.
     *
     * @param confirms whether what is to confirm is told, or counted
     */
    private static List<String> fresh(Advice planned, Offer offer, boolean confirms) {
        Map<Boolean, List<List<Group<Finding>>>> byRule = fresh(planned, offer)
                .collect(Collectors.groupingBy(Group::id, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .collect(Collectors.partitioningBy(
                        ofARule -> confirms || ofARule.get(0).severity() != Severity.CONFIRM));
        List<String> fresh = new ArrayList<>(
                byRule.get(true).stream().map(ChangeWords::fresh).toList());
        int counted = byRule.get(false).stream().mapToInt(List::size).sum();
        if (counted > 0) {
            fresh.add(counted + " new to confirm");
        }
        return fresh;
    }

    /** What one rule finds, the worst by its title and the others by their names. */
    private static String fresh(List<Group<Finding>> ofARule) {
        Group<Finding> worst = ofARule.get(0);
        String others = ofARule.stream()
                .skip(1)
                .map(group -> group.worst().judged().subject())
                .collect(Collectors.joining(", "));
        return "new " + SeverityWords.behind(1, worst.severity()) + ": " + ClearedWords.title(worst)
                + (others.isEmpty() ? "" : " (also " + others + ")");
    }

    /** What is found that the plan did not have. */
    private static Stream<Group<Finding>> fresh(Advice planned, Offer offer) {
        Set<Check> before = planned.findings().stream().map(Outcome::check).collect(Collectors.toSet());
        return Arrangement.of(offer.advice()).findings().stream()
                .filter(group -> !before.contains(group.worst().check()));
    }

    /** What was passed and is passed further. */
    private static List<String> worse(Advice planned, Offer offer) {
        Map<Key, Finding> before = compared(planned);
        return compared(offer.advice()).entrySet().stream()
                .filter(entry -> before.containsKey(entry.getKey())
                        && margin(entry.getValue()) < margin(before.get(entry.getKey())) * (1 + LEAST_WORSE))
                .map(entry -> inShort(entry.getValue()))
                .distinct()
                .toList();
    }

    /** What is limited; for what has no limit of its own the topic. */
    private static String inShort(Finding finding) {
        Judged judged = finding.judged();
        return judged.measure().kind().limitMeaning().isEmpty()
                ? judged.subject() + " (" + Book.topic(judged.id()) + ")"
                : RatingWords.name(finding);
    }

    private static double margin(Finding finding) {
        return finding.comparison().orElseThrow().margin();
    }

    private static Map<Key, Finding> compared(Advice advice) {
        Map<Key, Finding> compared = new LinkedHashMap<>();
        advice.findings().stream()
                .filter(finding -> finding.judged().card().severity().value().compareTo(Severity.CHANGE) <= 0
                        && finding.comparison().isPresent())
                .forEach(finding -> compared.put(finding.key(), finding));
        return compared;
    }

    private static Set<String> aboard(Sheet sheet) {
        Sheet planned = sheet.planned();
        Set<String> aboard = new TreeSet<>();
        planned.fitments().forEach(part -> aboard.add(part.name()));
        planned.tanks().forEach(tank -> aboard.add(tank.name()));
        planned.cargo().forEach(load -> aboard.add(load.name()));
        return aboard;
    }

    private static String sentence(List<String> parts) {
        return parts.isEmpty() ? "" : Words.capital(String.join("; ", parts)) + ".";
    }

    /** A finding in one line. */
    public static String heading(Finding finding) {
        String loading = finding.judged().loadCase();
        return finding.judged().id() + " [" + finding.judged().subject() + "]"
                + (loading.isEmpty() ? "" : ", " + loading)
                + ": "
                + Wording.comparison(finding.judged(), finding.comparison().orElseThrow())
                + finding.waiver()
                        .map(waiver -> "; waived "
                                + HouseWords.waiver(waiver, finding.judged().id()))
                        .orElse("");
    }

    /** The stops that no single change clears, nor what they ask for themselves, each once over the loadings, and what each needs. */
    public static List<String> withoutWay(Advice planned, Mending mending) {
        Set<Check> cleared = Stream.concat(
                        mending.ways().stream().map(way -> way.finding().check()),
                        mending.best().stream()
                                .flatMap(offer -> ClearedWords.gone(StopNeeds.stops(planned), offer).stream()
                                        .map(group -> group.worst().check())))
                .collect(Collectors.toCollection(HashSet::new));
        OwnRemedies.stops(planned, mending)
                .forEach(own -> cleared.add(own.worst().check()));
        return StopNeeds.needs(StopNeeds.stops(planned).stream()
                .filter(group -> !cleared.contains(group.worst().check()))
                .toList());
    }
}
