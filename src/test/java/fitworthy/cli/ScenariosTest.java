package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The shipped scenarios say what a builder would say of them. */
class ScenariosTest {

    private static Node.Mapping tree(String name) {
        return Sheets.scenario(name);
    }

    private static Sheet sheet(Node.Mapping tree) throws FaultsException {
        return SheetReader.sheet(tree, Books.shipped().regions().keySet(), new ArrayList<>());
    }

    private static Set<String> found(Advice advice, Severity severity) {
        Set<String> ids = new TreeSet<>();
        advice.findings().stream()
                .filter(each -> each.judged().card().severity().is(severity))
                .forEach(each -> ids.add(each.judged().id()));
        return ids;
    }

    @Test
    void theWeekenderIsInOrderAndWhollyAssessed() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), sheet(tree("weekender")));
        assertEquals(0, advice.findings().size());
        assertEquals(0, advice.notAssessed().size());
        assertTrue(advice.met().size() > 30, "met " + advice.met().size());
    }

    @Test
    void theOverloadedUtilityBreaksFourLimitsAndAnOfferedChangeClearsThem() throws FaultsException {
        RuleEngine engine = Books.engine();
        Node.Mapping tree = tree("overloaded");
        Advice advice = Adviser.advise(engine, sheet(tree));
        assertEquals(
                Set.of("mass.axle-over", "mass.gcm-over", "mass.gvm-over", "mass.roof-over"),
                found(advice, Severity.STOP));
        assertTrue(found(advice, Severity.CHANGE).contains("mass.ball-takes-payload"));
        Mending mending = Mender.mend(engine, tree, sheet(tree), () -> false, tried -> {});
        assertTrue(mending.offers().size() > 0);
        mending.offers().forEach(offer -> assertEquals(Set.of(), found(offer.advice(), Severity.STOP)));
    }

    @Test
    void theTouringWagonShowsTheClassicTraps() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), sheet(tree("touring")));
        Set<String> all = new TreeSet<>();
        advice.findings().forEach(each -> all.add(each.judged().id()));
        Set<String> traps = Set.of(
                "front.airbag-unstated",
                "body.plate-gone",
                "front.plate-hidden",
                "fuel.alarm-unnoticed",
                "intake.lid-open",
                "intake.known-leak-kept",
                "mirrors.indicator-lost",
                "mass.raised-gvm-gcm-left",
                "mass.raised-after-registration",
                "tyres.wheel-weaker-than-tyre",
                "body.chassis-unapproved",
                "suspension.lamp-aim-left-out",
                "paperwork.certificate-unpriced",
                "towing.nose-up",
                "order.booked-early",
                "order.certified-unweighed",
                "across.no-plate");
        Set<String> absent = new TreeSet<>(traps);
        absent.removeAll(all);
        assertEquals(Set.of(), absent);
        Set<String> topics = new TreeSet<>();
        all.forEach(id -> topics.add(id.substring(0, id.indexOf('.'))));
        assertEquals(Books.shipped().topics(), topics);
    }
}
