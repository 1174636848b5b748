package fitworthy.printout;

import static fitworthy.document.Report.Column.text;
import static fitworthy.document.Report.Column.whole;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.advice.Ratings;
import fitworthy.advice.TrailerRoom;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.printout.picture.Pictures;
import fitworthy.printout.words.Addressees;
import fitworthy.printout.words.Asked;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.FindingBrief;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HeaviestTrailer;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.LevelledWords;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.Payload;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.TripAnswers;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The first page: what is asked first, what to do first, the margin to each limit, and what it costs. */
final class AnswerPage {

    static final String HEADING = "In short";

    /** Figures of ratings that are named. */
    private static final int MOST_UNKNOWN = 4;

    private final Arrangement arrangement;
    private final FindingBlocks findings;
    private final Addressees addressees;
    private final RoomTable room;
    private final Readers readers;

    AnswerPage(Arrangement arrangement, FindingBlocks findings, Readers readers) {
        this.arrangement = arrangement;
        this.findings = findings;
        this.readers = readers;
        this.addressees = new Addressees(
                arrangement.advice().sheet().planned(),
                arrangement.advice().book().tables().shopWords());
        this.room = RoomTable.of(arrangement.advice());
    }

    /**
     * @param heads the findings, worst first
     * @param told how many of them are told with what to do
     * @param brief whether to tell the first sentence of that alone
     * @param withRoom whether the table of the room left stands here
     */
    List<Block> blocks(List<Ranked> heads, int told, boolean brief, boolean withRoom) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(answers(heads)));
        blocks.addAll(worst(heads.subList(0, told), brief).unlessEmpty());
        Pictures.margins(arrangement.advice()).map(AnnexPages::drawing).ifPresent(blocks::add);
        if (withRoom) {
            blocks.addAll(room.blocks());
        }
        String beside = (MarginTable.waiting(arrangement.advice()) + " "
                        + LevelledWords.sum(arrangement.advice().loadings()))
                .strip();
        if (!beside.isEmpty()) {
            blocks.add(new Paragraph(beside));
        }
        if (!HouseWords.looser(arrangement.advice()).isEmpty()) {
            blocks.add(new Paragraph("As decided by "
                    + arrangement.advice().book().house().page().shop() + ", "
                    + HouseWords.looser(arrangement.advice()).size()
                    + " limits or severities are looser than the book's. "
                    + Words.capital(readers.whole()) + " lists them."));
        }
        blocks.add(new Paragraph(
                (CostTable.inShort(arrangement.advice()) + " " + GuessWords.restsOn(arrangement)).strip()));
        return blocks;
    }

    /** The table of the room left. */
    List<Block> room() {
        return room.blocks();
    }

    private List<Particular> answers(List<Ranked> heads) {
        List<Particular> answers = new ArrayList<>();
        answers.add(new Particular(
                "Within its ratings?",
                LoadedVerdict.loaded(arrangement.advice()) + LoadedVerdict.keptElsewhere(arrangement.advice())
                        + " Payload " + Payload.inShort(arrangement.advice())));
        Advice advice = arrangement.advice();
        BallLoad.of(advice.sheet())
                .map(load -> new HeaviestTrailer(room.room(), load.filledIn()))
                .ifPresent(heaviest -> answers.add(new Particular(
                        "Heaviest trailer?",
                        heaviest.sentences() + (heaviest.isOverAlone() ? LoadedVerdict.overWithTrailer(advice) : ""))));
        String trip = TripAnswers.of(arrangement.advice());
        if (!trip.isEmpty()) {
            answers.add(new Particular("The trip?", trip));
        }
        answers.add(new Particular("What first?", first(heads)));
        BuyTable.now(arrangement).ifPresent(now -> answers.add(new Particular("Order today?", now)));
        return answers;
    }

    /** What no other change helps against comes first: a rating that nobody knows, a trailer that is too heavy empty. */
    private String first(List<Ranked> heads) {
        List<Missing> missing = Ratings.of(arrangement.advice()).missing();
        if (!missing.isEmpty()
                && arrangement
                        .advice()
                        .worst()
                        .filter(worst -> worst == Severity.STOP)
                        .isEmpty()) {
            return "Find out " + unknown(missing) + ". Until then nothing says that the plan is within its ratings.";
        }
        List<Missing> leading = Verdict.leading(arrangement);
        if (!leading.isEmpty()) {
            return "Find out " + unknown(leading) + ". It could stop this plan.";
        }
        return TrailerRoom.of(arrangement.advice())
                        // Figures that are nearer first, where these cannot tell.
                        .filter(room -> room.isTooHeavyEmpty() && !room.isTooCloseEmpty())
                        .map(room -> room.trailer().name()
                                + (room.isTooHeavyEmptyAlways()
                                        ? " cannot be towed as planned, even empty: "
                                        : " is too heavy even empty for the vehicle as it is loaded then ("
                                                + room.loading() + "): ")
                                + kilograms(room.trailer().lightest()) + " at its lightest, "
                                + kilograms(room.heaviest()) + " allowed (" + room.governs()
                                + "). " + (room.isByTyres() ? "Tyres that carry more, less" : "Less")
                                + " on the vehicle, or another trailer. ")
                        .orElse("")
                + found(heads);
    }

    /** The first few, each with where one finds it; those found in the same place together. */
    private static String unknown(List<Missing> missing) {
        Map<String, List<String>> byPlace = new LinkedHashMap<>();
        missing.stream().limit(MOST_UNKNOWN).forEach(figure -> byPlace.computeIfAbsent(
                        figure.find(), none -> new ArrayList<>())
                .add(FieldWords.of(figure)));
        int others = missing.size() - MOST_UNKNOWN;
        return byPlace.entrySet().stream()
                        .map(place -> String.join(", ", place.getValue()) + " (from " + place.getKey() + ")")
                        .collect(Collectors.joining(", "))
                + (others > 0 ? " and " + others + " more" : "");
    }

    private static String kilograms(Figure mass) {
        return Digits.quantity(mass.value(), RoomMeasures.TRAILER);
    }

    private String found(List<Ranked> heads) {
        if (heads.isEmpty()) {
            return "Nothing was found that has to be done.";
        }
        Ranked first = heads.get(0);
        return order(first).replaceFirst("\\.$", "") + FindingBrief.loading(first.group()) + ". " + acts(first) + ".";
    }

    private Table worst(List<Ranked> worst, boolean brief) {
        return new Table(
                "The worst findings, and what to do",
                List.of(
                        text("No.", 4),
                        whole("Asks for", 8),
                        text("Finding", 30),
                        text("What to do", 43),
                        text("Who acts", 15)),
                worst.stream().map(one -> row(one, brief)).toList());
    }

    private Row row(Ranked one, boolean brief) {
        return new Row(
                List.of(
                        one.number(),
                        FindingBlocks.word(one.group().severity()),
                        findings.title(one.group()) + by(one) + OthersPage.under(one),
                        brief || one.open()
                                ? order(one)
                                : settled(one, Wording.remedy(one.group().worst())),
                        acts(one)),
                FindingBlocks.link(one),
                false);
    }

    /** What to do first: where guesses decide, to find these out. */
    private String order(Ranked one) {
        return one.open()
                ? GuessWords.toMeasure(arrangement, one.group())
                : settled(one, Wording.order(one.group().worst()));
    }

    private String settled(Ranked one, String order) {
        return TooClose.first(one.group(), arrangement.isGuessed(one.group()), order);
    }

    /** By how much and in which loadings, behind a title; nothing where nothing is compared. */
    private static String by(Ranked one) {
        String margin = FindingBlocks.margin(one);
        return margin.equals("-") ? "" : ": " + margin + FindingBrief.loading(one.group());
    }

    private String acts(Ranked one) {
        return Asked.acts(addressees, one.group());
    }
}
