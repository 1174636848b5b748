package fitworthy.printout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.book.Severity;
import fitworthy.printout.Printed;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The answer on a page or two: short, and nothing that was found is left out. */
class ShortPrintoutTest {

    private static final int FIRST_SCREEN = 40;

    private static List<String> printed(Advice advice) {
        Arrangement arrangement = Arrangement.of(advice);
        // Which guess can turn what changes the order of the questions alone, and takes long to find out.
        Questions questions = new Questions(
                arrangement.figuresToBring().stream().map(Question::missing).toList(), arrangement.gapsOfTheBook());
        StringWriter text = new StringWriter();
        new ShortPrintout(new PrintWriter(text), TextPrintout.Painter.NONE).print(advice, questions, Severity.NOTE);
        return text.toString().lines().toList();
    }

    private static String flowing(List<String> lines) {
        return lines.stream().map(String::strip).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource({"touring, 120", "weekender, 40", "overloaded, 80"})
    void aScenarioIsShort(String scenario, int most) throws FaultsException {
        List<String> lines = printed(Printed.scenario(scenario).advice());
        assertTrue(lines.size() <= most, () -> lines.size() + " lines:\n" + String.join("\n", lines));
    }

    /** Head or listed under it, every rule that found something stands once where it is told, on each subject. */
    @Test
    void everyFindingStandsThereOnceInEightyColumns() throws FaultsException {
        List<Advice> all = new ArrayList<>();
        for (String scenario : Printed.SCENARIOS) {
            all.add(Printed.scenario(scenario).advice());
        }
        for (Cases.Case example : Books.cases()) {
            all.add(Adviser.advise(Books.engine().with(example.house()), example.sheet()));
        }
        int found = 0;
        for (Advice advice : all) {
            List<String> lines = printed(advice);
            lines.forEach(line -> assertTrue(line.length() <= 80, line));
            String text = flowing(lines);
            Map<String, Integer> wanted = new HashMap<>();
            Arrangement.of(advice).told().forEach(told -> told.all()
                    .map(group -> "[" + group.id() + "]")
                    .distinct()
                    .forEach(id -> wanted.merge(id, 1, Integer::sum)));
            wanted.forEach((id, times) ->
                    assertEquals(times, text.split(Pattern.quote(id), -1).length - 1, () -> id + " in " + text));
            for (Finding finding : advice.findings()) {
                assertTrue(
                        text.contains(finding.judged().subject())
                                || text.contains(
                                        Wording.fill(finding.judged().card().title(), finding)),
                        () -> finding.key() + " in " + text);
                found++;
            }
        }
        assertTrue(found > 500, "found " + found);
    }

    /** Is it legal, by how much is it over, how heavy may the van be, what comes first, what may be ordered? */
    @ParameterizedTest
    @ValueSource(strings = {"touring", "overloaded"})
    void fiveQuestionsAreAnsweredOnTheFirstScreen(String scenario) throws FaultsException {
        Advice advice = Printed.scenario(scenario).advice();
        String screen = flowing(printed(advice).stream().limit(FIRST_SCREEN).toList());
        Finding first = Arrangement.of(advice).told().get(0).head().worst();
        Stream.of(
                        LoadedVerdict.loaded(advice),
                        "MARGIN TO EACH LIMIT",
                        "heaviest trailer",
                        Wording.fill(first.judged().card().title(), first),
                        Wording.order(first),
                        "Order now")
                .forEach(answer -> assertTrue(screen.contains(answer), () -> answer + " in " + screen));
    }

    @Test
    void whatIsOverItsRatingsIsSaidWithHowMuch() throws FaultsException {
        assertEquals(
                "Loaded as planned it is over its ratings: GCM by 305 kg, GVM by 190 kg, rear axle limit by 143 kg"
                        + " (towing the van); roof limit by 16 kg (every loading).",
                LoadedVerdict.loaded(Printed.scenario("overloaded").advice()));
    }

    @Test
    void aRatingThatIsMissingIsNotKept() throws FaultsException {
        assertEquals(
                "Not known whether it is within its ratings loaded as planned: 1 of 5 not checked, information"
                        + " missing.",
                LoadedVerdict.loaded(
                        Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: ask}}"))));
    }

    /** A waived stop is over its rating as before; who stands for it is said. */
    @Test
    void aWaiverIsSeenAndChangesNoRating() throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                        vehicle: {ratings: {gvm: 2377 kg}}
                        waivers:
                          - {rule: mass.gvm-over, subject: vehicle, in: everything aboard, by: J. Okoro,
                             until: 2027-01-01, reason: weighed at the port}
                        """));
        String text = flowing(printed(advice));
        Stream.of(
                        "over its ratings: GVM by 143 kg (everything aboard)",
                        "Waived: Loaded mass is above the GVM [mass.gvm-over]",
                        "by J. Okoro until 2027-01-01: weighed at the port")
                .forEach(words -> assertTrue(text.contains(words), () -> words + " in " + text));
    }

    @Test
    void whatRestsOnGuessesNamesThemAndSaysHowManyChecksDo() throws FaultsException {
        String text = flowing(printed(Adviser.advise(
                Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: about 2500 kg +/- 60 kg}}"))));
        Stream.of(
                        "too close to call whether it is within its ratings: GVM over by about"
                                + " 20 kg +/- 60 kg (everything aboard). Settle it before you go ahead.",
                        "On guesses, too close to call whether it is so: Loaded mass is above the GVM",
                        "20 kg over (everything aboard); too close to call (+/- 60 kg). Weigh what is guessed (or the"
                                + " loaded vehicle) first; if it is over, take at least",
                        "Rests on guesses: gross vehicle mass",
                        "in order only if the guesses hold.")
                .forEach(words -> assertTrue(text.contains(words), () -> words + " in " + text));
    }
}
