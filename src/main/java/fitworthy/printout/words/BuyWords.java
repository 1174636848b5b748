package fitworthy.printout.words;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.BuyList.After;
import fitworthy.advice.BuyList.Decision;
import fitworthy.advice.BuyList.Found;
import fitworthy.advice.BuyList.HeldBy;
import fitworthy.advice.BuyList.Open;
import fitworthy.advice.BuyList.Part;
import fitworthy.advice.BuyList.Reason;
import fitworthy.advice.BuyList.TooHeavy;
import fitworthy.advice.BuyList.Unknown;
import fitworthy.advice.BuyList.Unruled;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Buying;
import fitworthy.book.Buying.Settled;
import fitworthy.book.Card;
import fitworthy.book.Party;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a part is not ordered now, in words. */
public final class BuyWords {

    /** How many fields or parts are named; the others are counted. */
    private static final int NAMED = 3;

    private static final String ON_GUESSES = " on guesses";

    /** What begins the meaning of a limit that parts of the axle set: {@code what its tyres carry}. */
    private static final String OF_ITS = "what its ";

    private BuyWords() {}

    /** What is decided of a part, as a heading. */
    public static String heading(Decision decision) {
        return switch (decision) {
            case ORDER_NOW -> "Order now";
            case WAIT -> "Wait";
            case NOT_AS_PLANNED -> "Do not buy as planned";
        };
    }

    /**
     * The first reason of those that decide, and the second where there is no third, else how many others there are; of a
     * limit of the vehicle, every such limit is one.
     */
    public static String brief(Part part) {
        List<Reason> deciding = part.reasons().stream()
                .filter(reason -> reason.asksFor() == part.decision())
                .toList();
        boolean load = isLoad(deciding.get(0));
        List<String> others = deciding.stream()
                .skip(1)
                .filter(reason -> !load || !isLoad(reason))
                .map(reason -> words(reason, part))
                .distinct()
                .toList();
        return (load ? loads(List.of(part)) : words(deciding.get(0), part))
                + (others.isEmpty()
                        ? ""
                        : "; and " + (others.size() == 1 ? others.get(0) : others.size() + " other reasons"));
    }

    /** Whether it is not ordered because the vehicle is too heavy. */
    public static boolean waitsForLoad(Part part) {
        return part.reasons().stream().anyMatch(BuyWords::isLoad);
    }

    /** Whether it waits for something else too. */
    public static boolean waitsForMore(Part part) {
        return !part.reasons().stream().allMatch(BuyWords::isLoad);
    }

    /** Whether it waits, for one thing, for what the rule book does not record. */
    public static boolean waitsForBook(Part part) {
        return part.decision() == Decision.WAIT && part.reasons().stream().anyMatch(Unruled.class::isInstance);
    }

    /** Who is asked what the rule book does not record of that which some parts wait for, and what that is. */
    public static String unruled(List<Part> parts) {
        return unruled(parts.stream()
                .flatMap(part -> part.reasons().stream())
                .filter(Unruled.class::isInstance)
                .map(Unruled.class::cast));
    }

    private static String unruled(Stream<Unruled> reasons) {
        Map<Party, List<String>> asked = new TreeMap<>();
        reasons.forEach(reason -> reason.values()
                .forEach(value -> asked.computeIfAbsent(reason.whom(), none -> new ArrayList<>())
                        .add(Words.small(FieldWords.what(value)))));
        return asked.entrySet().stream()
                .map(one ->
                        one.getKey().words() + ", as the rule book does not say it here: " + figures(one.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Every limit of the vehicle that some parts wait for, each once: as it is in the loading and state that leaves least. */
    public static String loads(List<Part> parts) {
        List<Found> worst = worst(parts.stream().flatMap(part -> part.reasons().stream()));
        boolean guessed = worst.stream().noneMatch(found -> found.guesses().isEmpty());
        Map<String, List<String>> byLoading = new LinkedHashMap<>();
        worst.forEach(found -> byLoading
                .computeIfAbsent(when(found.finding()), none -> new ArrayList<>())
                .add(loadOrTitle(found.finding()) + (guessed || found.guesses().isEmpty() ? "" : ON_GUESSES)));
        return (guessed ? "on guesses, " : "")
                + byLoading.entrySet().stream()
                        .map(in -> (in.getKey().isEmpty() ? "" : in.getKey() + ": ") + String.join(", ", in.getValue()))
                        .collect(Collectors.joining("; "));
    }

    /** Of all that speaks of a limit of the vehicle, for each limit what leaves least of it. */
    private static List<Found> worst(Stream<Reason> reasons) {
        Map<String, Found> worst = new LinkedHashMap<>();
        reasons.filter(BuyWords::isLoad)
                .map(Found.class::cast)
                .forEach(found -> worst.merge(
                        limit(found.finding().worst()),
                        found,
                        BinaryOperator.minBy(Comparator.comparingDouble(
                                        (Found each) -> margin(each.finding().worst()))
                                // So that of two in which it is the same always one is told.
                                .thenComparing(each -> when(each.finding())))));
        return List.copyOf(worst.values());
    }

    /** What is left of the limit; where nothing says how much, it is too close to all that does. */
    private static double margin(Finding finding) {
        return finding.comparison().map(Comparison::margin).orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean isLoad(Reason reason) {
        return reason instanceof Found found && found.finding().card().settledBy() == Settled.LESS_LOAD;
    }

    /** All reasons, those that decide first. */
    public static String full(Part part) {
        List<Found> worst = worst(part.reasons().stream());
        return part.reasons().stream()
                .filter(reason -> !isLoad(reason) || worst.contains(reason))
                .filter(reason -> !(reason instanceof TooHeavy heavy) || isHeaviest(heavy, part))
                .sorted((one, other) -> other.asksFor().compareTo(one.asksFor()))
                .map(reason -> words(reason, part))
                .distinct()
                .map(words -> Words.capital(words).replaceFirst("\\.$", ""))
                .collect(Collectors.joining(". "));
    }

    /** Whether no other state or rating of the same limit asks for a lighter part still. */
    private static boolean isHeaviest(TooHeavy heavy, Part part) {
        return part.reasons().stream()
                .filter(TooHeavy.class::isInstance)
                .map(TooHeavy.class::cast)
                .filter(other -> limit(other.finding().worst())
                        .equals(limit(heavy.finding().worst())))
                .allMatch(other -> other.by() <= heavy.by());
    }

    /** What one reason asks for of a part. */
    public static String words(Reason reason, Part part) {
        if (reason instanceof TooHeavy heavy) {
            return tooHeavy(heavy);
        }
        if (reason instanceof Found found) {
            return found(found, part);
        }
        if (reason instanceof HeldBy held) {
            return "settle first: " + Words.small(title(held.finding()));
        }
        if (reason instanceof Unknown unknown) {
            return fields(unknown.figures(), part);
        }
        if (reason instanceof Unruled unruled) {
            return "to be asked of " + unruled(Stream.of(unruled));
        }
        return reason instanceof Open open
                ? "the choice of " + open.option().name()
                : "once these can be ordered: " + figures(((After) reason).parts());
    }

    private static String tooHeavy(TooHeavy heavy) {
        Finding worst = heavy.finding().worst();
        return "one lighter by at least "
                + Wording.over(-heavy.by(), 0, worst.judged().measure().kind())
                + ", or none: even alone it passes " + limit(worst);
    }

    private static String found(Found found, Part part) {
        Finding worst = found.finding().worst();
        if (!found.guesses().isEmpty()) {
            return isLoad(found)
                    ? loadAndWhen(found.finding()) + ON_GUESSES
                    : "a figure in place of a guess: " + fields(found.guesses(), part);
        }
        Buying buying = found.finding().card().buying();
        return switch (found.finding().card().settledBy()) {
            case ANOTHER_CHOICE ->
                found.finding().isTooClose()
                        ? "a closer figure: " + worst.judged().measure().kind().meaning() + " ("
                                + worst.judged().subject() + ")"
                        : filled(buying.instead(), card -> firstSentence(card.remedy()), worst);
            case ANSWER, CORRECTION, OTHER_PLACE -> filled(buying.waitFor(), Card::title, worst);
            case LESS_LOAD -> loadAndWhen(found.finding());
            case WORK -> filled("", Card::title, worst);
        };
    }

    private static String loadAndWhen(Group<Finding> finding) {
        String when = when(finding);
        return loadOrTitle(finding) + (when.isEmpty() ? "" : " (" + when + ")");
    }

    private static String loadOrTitle(Group<Finding> finding) {
        return finding.worst().comparison().isPresent()
                ? load(finding.worst())
                : filled("", Card::title, finding.worst());
    }

    /** As a part of a sentence. */
    private static String filled(String words, Function<Card, String> otherwise, Finding finding) {
        return Wording.part(
                words.isEmpty() ? Words.small(otherwise.apply(finding.judged().card())) : words, finding);
    }

    /**
     * What has to be done before anything is ordered, or where that does not say of what, what was found; of a limit of the
     * vehicle by how much.
     */
    public static String toSettle(Group<Finding> finding) {
        return finding.card().settledBy() == Settled.LESS_LOAD || !Wording.isOrderOfSubject(finding.worst())
                ? title(finding)
                : firstSentence(Wording.remedy(finding.worst()));
    }

    /** The title of a finding; of a limit of the vehicle by how much. */
    public static String title(Group<Finding> finding) {
        return finding.card().settledBy() == Settled.LESS_LOAD
                        && finding.worst().comparison().isPresent()
                ? Words.capital(load(finding.worst()))
                : Wording.fill(finding.card().title(), finding.worst());
    }

    /** By how much a limit of the vehicle is passed, or what is left of it, in the loading that leaves least. */
    private static String load(Finding finding) {
        Judged judged = finding.judged();
        Comparison comparison = finding.comparison().orElseThrow();
        String by = Wording.amount(judged, comparison);
        return (comparison.margin() < 0 ? by + " over " : "only " + by + " below ")
                + limit(finding)
                + (comparison.margin() < 0 ? "" : ", too little to be sure");
    }

    /** What a limit of the vehicle is called. */
    private static String limit(Finding finding) {
        String limit = finding.judged().measure().kind().limitMeaning();
        if (!limit.isEmpty() && limit.equals(limit.toUpperCase(Locale.ROOT))) {
            return "the " + limit;
        }
        String subject = finding.judged().subject();
        return limit.startsWith(OF_ITS)
                ? "what the " + limit.substring(OF_ITS.length()).replaceFirst(" ", " of the " + subject + " ")
                : "the limit of the " + subject;
    }

    /**
     * In which loading, of several that leave alike the first by name, and in which state of it where that is not as planned;
     * empty where it hangs on neither.
     */
    private static String when(Group<Finding> finding) {
        Finding worst = finding.worst();
        String loading = finding.outcomes().stream()
                .filter(one -> margin(one) == margin(worst))
                .map(one -> one.judged().loadCase())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return Stream.of(loading, worst.judged().measure().kind().state().words())
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** What figures are, and whose where that is not the part itself. */
    private static String fields(List<Missing> figures, Part part) {
        return figures(figures.stream()
                // What is the part's own stands without its name, which it would lose behind another's.
                .sorted(Comparator.comparing(
                        field -> !FieldWords.thing(field.path()).equals(part.name())))
                .map(field -> FieldWords.of(field, part.name()))
                .toList());
    }

    /** The first few names, and how many others there are. */
    public static String figures(List<String> names) {
        List<String> different = names.stream().distinct().toList();
        // To name one more takes no more room than to count it.
        int named = different.size() == NAMED + 1 ? NAMED + 1 : Math.min(NAMED, different.size());
        int others = different.size() - named;
        return String.join(", ", different.subList(0, named)) + (others > 0 ? " and " + others + " others" : "");
    }

    private static String firstSentence(String text) {
        return text.replaceFirst("(?s)(?<=[a-z)]{2})[.;] .*", "").replaceFirst("\\.$", "");
    }
}
