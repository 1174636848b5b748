package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which way a value of the shipped book is stricter, by the rules, held against what its name says. */
class StricterTest {

    @Test
    void aMostIsStricterLowerAndALeastIsStricterHigher() throws FaultsException {
        Book book = Books.shipped();
        int told = 0;
        Set<String> untold = new TreeSet<>();
        for (String id : book.practice().keySet()) {
            Stricter stricter = Stricter.of(book.rules().values(), id);
            if (stricter == Stricter.UNTOLD) {
                untold.add(id);
            } else if (id.endsWith("-most") || id.endsWith("-least")) {
                assertEquals(id.endsWith("-most") ? Stricter.LOWER : Stricter.HIGHER, stricter, id);
                told++;
            }
        }
        assertTrue(told > 50, "told " + told);
        // Compared by two rules in different ways, or by none: the distances at which a mirror's field is worked out,
        // the share from which a figure is asked, how panels rise in the cold, how far above its middle a top may be,
        // how many straps there is room for, from what share of its limit a roof, from what height a part and from what
        // age an
        // alternator is asked about, whether a kit is refused or its approval asked, what chains a fifth wheel
        // needs, and the mass from which no camper's own limit counts any more.
        assertEquals(
                Set.of(
                        "across.reach-most",
                        "body.canopy-heavy",
                        "body.part-low-most",
                        "body.roof-untied-most",
                        "body.said-loose-most",
                        "body.straps-most",
                        "body.under-floor-most",
                        "electrical.alternator-steady",
                        "electrical.cable-share",
                        "electrical.charge-lead-sure",
                        "electrical.charge-lithium-sure",
                        "electrical.discharge-lithium-sure",
                        "electrical.feed-share",
                        "electrical.firewall",
                        "electrical.inverter-lowest",
                        "electrical.panel-rise",
                        "fuel.exhaust-gap-floor",
                        "intake.velocity-most",
                        "mass.rerating-refused",
                        "mass.roof-asked",
                        "mirrors.far-distance",
                        "mirrors.near-distance",
                        "recovery.winch-factor",
                        "suspension.lift-certified-most",
                        "towing.fifth-wheel-chains",
                        "towing.fifth-wheel-chains-alone",
                        "towing.levelling-share-most",
                        "towing.no-breakaway-mass-most",
                        "towing.nose-up-far-most",
                        "towing.unbraked-mass-most",
                        "tyres.passenger-divisor"),
                untold);
    }

    /** A value compared inside the pattern that matches it, and one on the left of another rule's comparison. */
    @Test
    void itIsToldOnWhicheverSideTheValueStands() throws FaultsException {
        assertEquals(Stricter.HIGHER, Stricter.of(Books.shipped().rules().values(), "body.chassis-approval-needed"));
        assertEquals(Stricter.HIGHER, Stricter.of(Books.shipped().rules().values(), "mass.gvm-reserve"));
    }

    /** Of rules in which the value is $p, and another one $q. */
    private static Stricter told(String... conditions) {
        List<RuleText> rules = new ArrayList<>();
        for (String condition : conditions) {
            List<Fault> faults = new ArrayList<>();
            rules.addAll(RuleParser.parse(
                    "a/a.drl",
                    "rule \"mass.a\" when $p : Practice(id == \"mass.most\") $q : Practice(id == \"mass.other\") "
                            + condition + " then advice.give(\"mass.a\", $p); end",
                    Set.of("mass.loaded"),
                    faults));
            assertEquals(List.of(), faults);
        }
        return Stricter.of(rules, "mass.most");
    }

    private static String loaded(String comparison) {
        return "Measure(name == \"mass.loaded\", known, " + comparison + ")";
    }

    @Test
    void raisingTheSmallerSideMakesItComeTrueLater() {
        for (String higher :
                List.of("headroom < $p.value", "headroom <= $p.value", "$p.value > excess", "$p.value >= excess")) {
            assertEquals(Stricter.HIGHER, told(loaded(higher)), higher);
            assertEquals(Stricter.LOWER, told(loaded("!(" + higher + ")")), higher);
            assertEquals(Stricter.HIGHER, told(loaded("!(!(" + higher + "))")), higher);
            assertEquals(Stricter.HIGHER, told("exists " + loaded(higher)), higher);
        }
        for (String lower :
                List.of("excess > $p.value", "excess >= $p.value", "$p.value < excess", "$p.value <= excess")) {
            assertEquals(Stricter.LOWER, told(loaded(lower)), lower);
            assertEquals(Stricter.HIGHER, told(loaded("!(" + lower + ")")), lower);
        }
    }

    @Test
    void eachPartOfAComparisonTellsAndAllHaveToTellTheSame() {
        String higher = "headroom < $p.value";
        String lower = "excess > $p.value";
        for (String joint : List.of(" && ", " || ")) {
            assertEquals(Stricter.HIGHER, told(loaded("value > 0" + joint + higher)));
            assertEquals(Stricter.LOWER, told(loaded(lower + joint + "value > 0")));
            assertEquals(Stricter.UNTOLD, told(loaded(lower + joint + higher)));
        }
        assertEquals(Stricter.HIGHER, told(loaded(higher), loaded(higher)));
        assertEquals(Stricter.UNTOLD, told(loaded(higher), loaded(lower)), "two rules");
        assertEquals(Stricter.LOWER, told(loaded(lower), loaded("value > 0")), "one that does not compare it");
    }

    @Test
    void whatIsHeldAgainstItselfOrForEqualTellsNothing() {
        assertEquals(Stricter.UNTOLD, told(loaded("value > 0")));
        assertEquals(Stricter.UNTOLD, told(loaded("value == $p.value")));
        assertEquals(Stricter.UNTOLD, told(loaded("$p.value != value")));
        assertEquals(Stricter.UNTOLD, told(loaded("$p.value > $p.value")));
        assertEquals(Stricter.UNTOLD, told(loaded("$q.value > value")), "another practice value");
        assertEquals(Stricter.HIGHER, told(loaded("$p.value > $q.value")));
        assertEquals(Stricter.UNTOLD, told(loaded("word == \"a\"")));
    }

    /** There it has no name, and nor has that of another pattern. */
    @Test
    void itIsToldInsideItsOwnPattern() {
        assertEquals(Stricter.HIGHER, told("Practice(id == \"mass.most\", value > 0)"));
        assertEquals(Stricter.LOWER, told("not Practice(id == \"mass.most\", value > 0)"));
        assertEquals(Stricter.HIGHER, told("not (not Practice(id == \"mass.most\", value > 0))"));
        assertEquals(Stricter.UNTOLD, told("Practice(id == \"mass.most\") Practice(id == \"mass.other\", value > 0)"));
        assertEquals(Stricter.UNTOLD, told("Practice(id == \"mass.most\") " + loaded("value > 0")));
    }
}
