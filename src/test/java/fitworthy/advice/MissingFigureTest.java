package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.quantity.Missing;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MissingFigureTest {

    private static final String POINT = "{name: %s, kind: recovery-point, mass: 0 kg, end: %s}";

    private static List<MissingFigure> missing(String... points) throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                papers: {insurer-told: yes, warranty: asked}
                vehicle: {recovery: {rear: {made-for: recovery, limit: 5000 kg}}}
                fitments: [%s]
                """
                                .formatted(String.join(", ", points))));
        return Arrangement.of(advice).figuresToBring();
    }

    @Test
    void theSameFigureOfTwoPartsIsAskedForOnce() throws FaultsException {
        assertEquals(
                List.of("fitments: limit of Hook, Eye"),
                missing(POINT.formatted("Hook", "front"), POINT.formatted("Eye", "rear")).stream()
                        .map(MissingFigure::field)
                        .toList());
    }

    @Test
    void oneOfItsKindKeepsItsPathAndNamesTheRulesThatWait() throws FaultsException {
        MissingFigure only = missing(POINT.formatted("Hook", "front")).get(0);
        assertEquals("fitments.Hook.limit", only.field());
        assertEquals(Set.of("recovery.point-weak"), only.rules());
    }

    /** In every region, whatever topic: nobody is sent to find what the rule book does not record. */
    @Test
    void aGapOfTheBookIsNoFigureToBring() throws Exception {
        Node.Mapping touring = Sheets.scenario("touring");
        int gaps = 0;
        for (String region : Books.engine().book().regions().keySet()) {
            Arrangement found = Arrangement.of(Adviser.advise(
                    Books.engine(), Sheets.read(Trees.merged(touring, tree("region: " + region + "\nwaivers: []")))));
            gaps += found.gapsOfTheBook().size();
            found.gapsOfTheBook().forEach(gap -> assertEquals("", gap.missing().find()));
            found.figuresToBring().forEach(figure -> {
                assertFalse(figure.field().startsWith("practice value"), figure.field());
                assertFalse(figure.missing().find().isEmpty(), figure.field());
            });
        }
        assertTrue(gaps > 0);
    }

    private static Node.Mapping tree(String text) {
        return NodeReader.read("sheet", text, new ArrayList<>());
    }

    private static NotAssessed open(String rule, Missing... missing) {
        return new NotAssessed(new Judged(rule, null, null, null, ""), List.of(missing));
    }

    private static Missing lacks(String path) {
        return new Missing(path, "what it weighs", "a scale");
    }

    private static List<String> asked(NotAssessed... open) {
        return MissingFigure.of(List.of(open)).stream()
                .map(figure -> figure.field() + " for " + String.join(" ", figure.rules()))
                .toList();
    }

    @Test
    void aFigureIsAskedForWithEveryRuleThatWaitsForItInTheOrderOfTheirNames() {
        assertEquals(
                List.of("fitments.Bar.mass for mass.axle-over mass.gvm-over", "cargo.Bar.mass for mass.gvm-over"),
                asked(
                        open("mass.gvm-over", lacks("fitments.Bar.mass"), lacks("cargo.Bar.mass")),
                        open("mass.axle-over", lacks("fitments.Bar.mass")),
                        open("mass.axle-over", lacks("fitments.Bar.mass"))),
                "parts of two lists are not told together");
    }

    @Test
    void partsAreToldTogetherInTheirOrderWhateverIsInTheirPath() {
        assertEquals(
                List.of("fitments: mass of Winch, Bar, Tray.rear for mass.gvm-over"),
                asked(open(
                        "mass.gvm-over",
                        lacks("fitments.Winch.mass"),
                        lacks("fitments.Bar.mass"),
                        lacks("fitments.Tray.rear.mass"))));
    }

    @Test
    void whatDiffersIsAskedForByItself() {
        Missing bar = lacks("fitments.Bar.mass");
        for (Missing other : List.of(
                lacks("fitments.Winch.at"),
                new Missing("fitments.Winch.mass", "what it pulls", "a scale"),
                new Missing("fitments.Winch.mass", "what it weighs", "its maker"))) {
            assertEquals(
                    List.of("fitments.Bar.mass for mass.gvm-over", other.path() + " for mass.gvm-over"),
                    asked(open("mass.gvm-over", bar, other)));
        }
        assertEquals(
                List.of("fitments.Bar.mass for mass.gvm-over", "fitments.Winch.mass for front.winch-weak"),
                asked(open("mass.gvm-over", bar), open("front.winch-weak", lacks("fitments.Winch.mass"))),
                "other rules wait for it");
    }

    /** A field of the sheet itself, one of the trailer, and a practice value with the dot of its topic. */
    @Test
    void whatIsNoPartsKeepsItsPath() {
        assertEquals(
                List.of("region for mass.gvm-over", "trailer.mass for mass.gvm-over", "trailer.ball for mass.gvm-over"),
                asked(open("mass.gvm-over", lacks("region"), lacks("trailer.mass"), lacks("trailer.ball"))));
        assertEquals(
                List.of("practice value mass.light-most for mass.gvm-over"),
                asked(open("mass.gvm-over", lacks("practice value mass.light-most"))));
    }
}
