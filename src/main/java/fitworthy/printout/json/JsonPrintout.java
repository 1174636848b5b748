package fitworthy.printout.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.HouseUse;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Waiving;
import fitworthy.book.Ask;
import fitworthy.book.Book;
import fitworthy.book.House;
import fitworthy.book.Severity;
import fitworthy.document.Json;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.MarginTable;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Waiver;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;

/** Advice as JSON, in the shape that docs/output.md describes; its records are written as they stand here. */
public final class JsonPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-advice/1";

    private JsonPrintout() {}

    /** Prints advice whose findings are no milder than {@code mildest}. */
    public static void print(PrintWriter out, Advice advice, Severity mildest) {
        Json.print(out, Written.of(advice, mildest));
    }

    /** @param house null where no shop set anything */
    private record Written(
            String shape,
            String title,
            String vehicle,
            String region,
            String asOf,
            WrittenBook book,
            WrittenHouse house,
            String caution,
            List<String> cases,
            String worst,
            JsonCounts.Checks counts,
            JsonCounts.Headings headings,
            @JsonInclude(JsonInclude.Include.NON_NULL) JsonUntilApproved untilApproved,
            List<JsonRoom> room,
            BuyJson.Buy buy,
            BuyJson.Cost cost,
            List<WrittenFinding> findings,
            List<WrittenMet> met,
            List<WrittenHeld> inOrderIfGuessesHold,
            @JsonUnwrapped QuestionsJson.Waiting waiting,
            List<WrittenNotAssessed> notAssessed,
            List<WrittenDoesNotApply> doesNotApply,
            List<WrittenWaiver> waivers) {

        static Written of(Advice advice, Severity mildest) {
            Book book = advice.book();
            Arrangement arrangement = Arrangement.of(advice);
            return new Written(
                    SHAPE,
                    advice.sheet().title(),
                    advice.sheet().vehicle().name(),
                    advice.sheet().region(),
                    advice.sheet().asOf().toString(),
                    new WrittenBook(book.cover().name(), book.cover().edition(), book.hash()),
                    WrittenHouse.of(advice),
                    book.cover().caution(),
                    MarginTable.loadings(advice),
                    advice.worstWord(),
                    JsonCounts.Checks.of(arrangement.counts()),
                    JsonCounts.Headings.of(arrangement.headings()),
                    JsonUntilApproved.of(advice),
                    JsonRoom.all(advice),
                    BuyJson.Buy.of(arrangement),
                    BuyJson.Cost.of(advice),
                    advice.findings().stream()
                            .filter(finding ->
                                    finding.judged().card().severity().value().compareTo(mildest) <= 0)
                            .map(finding ->
                                    WrittenFinding.of(finding, book.house(), JsonGuess.all(arrangement, finding)))
                            .toList(),
                    advice.met().stream().map(WrittenMet::of).toList(),
                    advice.held().stream()
                            .map(held -> WrittenHeld.of(held, JsonGuess.all(arrangement, held)))
                            .toList(),
                    QuestionsJson.Waiting.of(arrangement),
                    advice.notAssessed().stream().map(WrittenNotAssessed::of).toList(),
                    advice.doesNotApply().stream().map(WrittenDoesNotApply::of).toList(),
                    advice.waivers().stream().map(WrittenWaiver::of).toList());
        }
    }

    private record WrittenBook(String name, String edition, String content) {}

    private record WrittenHouse(
            String shop,
            String file,
            String content,
            List<JsonPractice> values,
            List<SetSeverity> severities,
            List<WithoutEffect> withoutEffect,
            List<HouseUse.Ended> retired,
            Map<String, String> renamed) {

        static WrittenHouse of(Advice advice) {
            House house = advice.book().house();
            if (house.isNone()) {
                return null;
            }
            HouseUse use = HouseUse.of(advice);
            return new WrittenHouse(
                    house.page().shop(),
                    house.file(),
                    house.content(),
                    use.values().stream().map(JsonPractice::of).toList(),
                    use.severities().stream().map(SetSeverity::of).toList(),
                    use.idle().stream()
                            .map(idle -> new WithoutEffect(idle.entry(), word(idle.why())))
                            .toList(),
                    use.ended(),
                    house.renamed());
        }
    }

    private record SetSeverity(String rule, @JsonUnwrapped HouseSeverity severity) {
        static SetSeverity of(House.SetSeverity set) {
            return new SetSeverity(set.set().rule(), HouseSeverity.of(set));
        }
    }

    private record HouseSeverity(String severity, String inPlaceOf, boolean milder, String reason, String name) {
        static HouseSeverity of(House.SetSeverity set) {
            return new HouseSeverity(
                    word(set.set().severity().value()),
                    word(set.recorded()),
                    set.milder(),
                    set.set().reason(),
                    set.set().name());
        }
    }

    private record WithoutEffect(String entry, String why) {}

    /** Which rule, on what, in which loading, and what was compared; figures are null where nothing was. */
    private record Head(
            String id,
            String rule,
            String subject,
            @JsonProperty("case") String loadCase,
            String measure,
            String unit,
            Double value,
            Double tolerance,
            Double limit,
            Double margin,
            Boolean toleranceCouldTurnIt,
            @JsonInclude(JsonInclude.Include.NON_NULL) Boolean atLeast) {

        static Head of(Outcome outcome) {
            Judged judged = outcome.judged();
            MeasureKind kind = judged.measure().kind();
            Comparison compared =
                    outcome instanceof Assessed assessed ? assessed.comparison().orElse(null) : null;
            return new Head(
                    judged.id(),
                    judged.rule().place().inBook(),
                    judged.subject(),
                    judged.loadCase(),
                    judged.measure().getName(),
                    compared == null ? null : kind.unit(),
                    compared == null ? null : Wording.exact(compared.value(), kind),
                    compared == null ? null : Wording.exact(compared.tolerance(), kind),
                    compared == null ? null : Wording.exact(compared.limit(), kind),
                    compared == null ? null : Wording.exact(compared.margin(), kind),
                    compared == null ? null : compared.uncertain(),
                    judged.measure().isAtLeast() ? true : null);
        }
    }

    /** @param houseSeverity null where the shop did not set it @param waiver null where nobody stands for it */
    private record WrittenFinding(
            String severity,
            HouseSeverity houseSeverity,
            Stands waiver,
            @JsonUnwrapped Head head,
            String title,
            @JsonInclude(JsonInclude.Include.NON_NULL) String tooClose,
            String remedy,
            String why,
            String ask,
            List<JsonAsk> asks,
            List<JsonGuess> guesses,
            List<Evidence> evidence,
            List<JsonPractice> practice,
            String basis,
            List<String> sources) {

        static WrittenFinding of(Finding finding, House house, List<JsonGuess> guesses) {
            Judged judged = finding.judged();
            House.SetSeverity set = house.severities().get(judged.id());
            return new WrittenFinding(
                    word(judged.card().severity().value()),
                    set == null ? null : HouseSeverity.of(set),
                    finding.waiver().map(Stands::of).orElse(null),
                    Head.of(finding),
                    Wording.fill(judged.card().title(), finding),
                    TooClose.sentence(finding, !guesses.isEmpty()).orElse(null),
                    Wording.remedy(finding),
                    Wording.fill(judged.card().why(), finding),
                    Wording.fill(Ask.words(judged.card().ask()), finding),
                    JsonAsk.all(judged.card().ask(), text -> Wording.part(text, finding)),
                    guesses,
                    finding.evidence().stream().map(Evidence::of).toList(),
                    finding.practice().stream().map(JsonPractice::of).toList(),
                    word(judged.card().basis().value()),
                    judged.card().sources());
        }
    }

    /** A measure that was looked at: a value with its unit, or a word. */
    private record Evidence(String measure, String subject, Double value, String unit, String word) {
        static Evidence of(Measure measure) {
            boolean number = measure.getWord().isEmpty();
            return new Evidence(
                    measure.getName(),
                    measure.getSubject(),
                    number && measure.isKnown() ? Wording.exact(measure.getValue(), measure.kind()) : null,
                    number ? measure.kind().unit() : null,
                    number ? null : measure.getWord());
        }
    }

    private record WrittenMet(@JsonUnwrapped Head head, String text, List<JsonPractice> practice) {
        static WrittenMet of(Met met) {
            return new WrittenMet(
                    Head.of(met),
                    Wording.fill(met.judged().card().met(), met),
                    met.practice().stream().map(JsonPractice::of).toList());
        }
    }

    /** @param arises whether there is anything to check; else there is not if the guesses hold */
    private record WrittenHeld(@JsonUnwrapped Head head, String text, boolean arises, List<JsonGuess> guesses) {
        static WrittenHeld of(Held held, List<JsonGuess> guesses) {
            return new WrittenHeld(Head.of(held), GuessWords.words(held), held.arises(), guesses);
        }
    }

    private record WrittenNotAssessed(@JsonUnwrapped Head head, List<WrittenMissing> missing) {
        static WrittenNotAssessed of(NotAssessed outcome) {
            return new WrittenNotAssessed(
                    Head.of(outcome),
                    outcome.missing().stream().map(WrittenMissing::of).toList());
        }
    }

    private record WrittenDoesNotApply(String id, String subject, @JsonProperty("case") String loadCase) {
        static WrittenDoesNotApply of(DoesNotApply outcome) {
            return new WrittenDoesNotApply(
                    outcome.judged().id(),
                    outcome.judged().subject(),
                    outcome.judged().loadCase());
        }
    }

    /** @param find null where the book does not hold it */
    private record WrittenMissing(String field, String meaning, String find, boolean asked) {
        static WrittenMissing of(Missing missing) {
            return new WrittenMissing(
                    missing.path(), missing.meaning(), missing.isInBook() ? null : missing.find(), missing.asked());
        }
    }

    /** @param formerly the id that the sheet has, where it is a former one, else null */
    private record WrittenWaiver(
            String rule,
            String formerly,
            String subject,
            @JsonProperty("case") String loadCase,
            @JsonUnwrapped Stands stands,
            String state) {

        static WrittenWaiver of(Waiving waiving) {
            Waiver waiver = waiving.waiver();
            return new WrittenWaiver(
                    waiving.rule(),
                    waiver.rule().equals(waiving.rule()) ? null : waiver.rule(),
                    waiver.subject(),
                    waiver.in(),
                    Stands.of(waiver),
                    word(waiving.state()));
        }
    }

    /** Who stands for a finding, until when, and why. */
    private record Stands(String reason, String by, String until) {
        static Stands of(Waiver waiver) {
            return new Stands(waiver.reason(), waiver.by(), waiver.until().toString());
        }
    }

    private static String word(Enum<?> constant) {
        return Words.hyphenated(constant.name());
    }
}
