package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Ask;
import fitworthy.book.Card;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The advice on a sheet names no thing that is not on it, so that nobody looks for a trailer that he does not have. */
class WordsOfTheSheetTest {

    /** A thing by its words, and whether a sheet has one. */
    private record Thing(Pattern words, Predicate<Sheet> there) {
        static Thing of(String words, Predicate<Sheet> there) {
            return new Thing(Pattern.compile("(?i)\\b(" + words + ")\\b"), there);
        }

        /** Whether a sheet has it, if only under the name of a part or a circuit. */
        boolean isOn(Sheet sheet) {
            return there.test(sheet)
                    || Stream.concat(
                                    sheet.fitments().stream().map(Fitment::name),
                                    sheet.circuits().stream().map(circuit -> circuit.name()))
                            .anyMatch(name -> words.matcher(name).find());
        }
    }

    /** A phrase that may stand where there is no such thing. */
    private record Allowed(String rule, String phrase, String why) {}

    private static final List<Thing> THINGS = List.of(
            Thing.of("trailers?|campers?|caravans?|drawbar", sheet -> sheet.trailer()
                    .isPresent()),
            Thing.of("tow bars?", sheet -> sheet.trailer().isPresent() || has(sheet, Kind.TOW_BAR)),
            Thing.of(
                    "turbochargers?|turbo",
                    sheet -> sheet.vehicle().engine().boost().value() > 0),
            Thing.of("winch(es)?", sheet -> has(sheet, Kind.WINCH)),
            Thing.of("pulley block|block in a doubled line", sheet -> has(sheet, Kind.PULLEY_BLOCK)),
            Thing.of("tray or canopy", sheet -> has(sheet, Kind.TRAY, Kind.CANOPY)),
            Thing.of("canopy|canopies", sheet -> has(sheet, Kind.CANOPY)),
            Thing.of("trays?", sheet -> has(sheet, Kind.TRAY)),
            Thing.of("second battery", sheet -> has(sheet, Kind.BATTERY)),
            Thing.of("snorkels?", sheet -> has(sheet, Kind.SNORKEL)),
            Thing.of("pre-cleaners?", sheet -> has(sheet, Kind.PRE_CLEANER, Kind.SNORKEL)),
            Thing.of("solar panels?", sheet -> has(sheet, Kind.SOLAR_PANEL)),
            Thing.of("chargers?", sheet -> has(sheet, Kind.CHARGER)),
            Thing.of("cameras?", sheet -> has(sheet, Kind.REAR_CAMERA, Kind.MIRRORS)),
            Thing.of("this bar|bull bar", sheet -> has(sheet, Kind.BAR)),
            Thing.of("racks?", sheet -> has(sheet, Kind.ROOF_RACK)),
            Thing.of("kit", sheet -> has(sheet, Kind.RATING_UPGRADE, Kind.BREATHER_KIT, Kind.RECOVERY_KIT)),
            Thing.of("second tank", sheet -> sheet.tanks().size() > 1));

    private static final List<Allowed> ALLOWED = List.of(
            new Allowed("mass.raised-gvm-gcm-left", "trailer", "the rating for any trailer is what it is about"),
            new Allowed("towing.trailer-over", "A rating kit", "what might raise the rating"),
            new Allowed("mass.roof-over", "a rack", "named as what counts too, if there is one"),
            new Allowed("recovery.no-point", "a tow bar's receiver", "a way to have a point"),
            new Allowed("electrical.no-fuse", "a winch cable", "the cable that is known to go without"),
            new Allowed("electrical.battery-loose", "a tray or frame of its own", "the tray of a battery"),
            new Allowed("electrical.charge-short", "solar panels", "a way to more charge"),
            new Allowed("electrical.charge-short", "a charger", "the same"),
            new Allowed("electrical.charge-short", "A charger gives no more", "what can be hoped of one"),
            new Allowed("front.assistance-left", "set camera and radar again", "what the vehicle came with"),
            new Allowed("front.assistance-left", "sets camera, radar", "the same"),
            new Allowed("front.assistance-left", "Camera and radar", "the same"),
            new Allowed("intake.no-pre-cleaner", "a pre-cleaner", "it is missed"),
            new Allowed("intake.too-deep", "A snorkel counts", "a way to a higher intake"),
            new Allowed("fuel.crankcase-open-air", "a turbocharger where there is one", "it says so"));

    private static boolean has(Sheet sheet, Kind... kinds) {
        return sheet.fitments().stream()
                .anyMatch(fitment -> Arrays.asList(kinds).contains(fitment.kind()));
    }

    @Test
    void adviceNamesNoThingThatIsNotOnTheSheet() throws FaultsException {
        Set<String> told = new TreeSet<>();
        for (Cases.Case made : Books.cases()) {
            Advice advice = Adviser.advise(Books.engine(), made.sheet());
            advice.findings().forEach(finding -> texts(finding).forEach(text -> check(finding, text, made, told)));
            advice.met()
                    .forEach(met -> check(met, Wording.fill(met.judged().card().met(), met), made, told));
        }
        assertEquals("", String.join("\n", told));
    }

    @Test
    void whatIsAllowedStillStandsOnItsCard() throws FaultsException {
        for (Allowed allowed : ALLOWED) {
            Card card = Books.shipped().cards().get(allowed.rule());
            String all = String.join(" ", card.title(), card.why(), card.remedy(), Ask.words(card.ask()), card.met());
            assertTrue(all.contains(allowed.phrase()), allowed::toString);
        }
    }

    private static void check(Outcome outcome, String text, Cases.Case made, Set<String> told) {
        String rule = outcome.judged().id();
        String left = text;
        for (Allowed allowed : ALLOWED) {
            left = allowed.rule().equals(rule) ? left.replace(allowed.phrase(), "") : left;
        }
        for (Thing thing : THINGS) {
            if (thing.isOn(made.sheet())) {
                left = thing.words().matcher(left).replaceAll("");
            } else if (thing.words().matcher(left).find()) {
                told.add(rule + " speaks of " + thing.words() + ": " + text);
            }
        }
    }

    private static Stream<String> texts(Outcome.Finding finding) {
        Card card = finding.judged().card();
        return Stream.of(card.title(), card.why(), card.remedy(), Ask.words(card.ask()))
                .map(text -> Wording.fill(text, finding));
    }
}
