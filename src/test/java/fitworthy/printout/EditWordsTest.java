package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import org.junit.jupiter.api.Test;

class EditWordsTest {

    private static final NodePath SPRINGS = NodePath.of("fitments").to("Rear springs");

    private static Arrangement arranged(Node.Mapping tree) throws FaultsException {
        return Arrangement.of(Adviser.advise(Books.engine(), Sheets.read(tree)));
    }

    @Test
    void aPartThatIsOnlyCalledOtherwiseSettlesNothing() throws FaultsException {
        Node.Mapping touring = Sheets.scenario("touring");
        Node.Mapping called = Trees.with(touring, SPRINGS.to("name"), "Rear springs, heavier");
        assertEquals("Nothing in the advice changed but a name.", EditWords.of(arranged(touring), arranged(called)));
        assertEquals("Nothing in the advice changed.", EditWords.of(arranged(touring), arranged(touring)));
    }

    @Test
    void whatChangesBesideTheNameIsTold() throws FaultsException {
        Node.Mapping touring = Sheets.scenario("touring");
        Node.Mapping both = Trees.with(
                Trees.with(touring, SPRINGS.to("travel"), "ask"), SPRINGS.to("name"), "Rear springs, heavier");
        String told = EditWords.of(arranged(touring), arranged(both));
        assertTrue(told.contains("wait"), told);
    }
}
