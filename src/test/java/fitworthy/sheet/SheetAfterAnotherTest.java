package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.schema.Bound;
import fitworthy.schema.KnownGroups;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that is made of what another was made of is the one that is read by itself, with the same faults. */
class SheetAfterAnotherTest {

    private static final List<String> VALUES = List.of("ask", "about 77 kg", "no quantity", "12", "yes");
    private static final List<String> LISTS = List.of("fitments", "circuits", "cargo", "tanks", "loadings");
    private static final int EDITS = 400;

    private final Random random = new Random(4711);

    /** @param bound null where there are faults */
    private record Read(Bound<Sheet> bound, List<Fault> faults) {

        static Read of(Node.Mapping tree, KnownGroups before) throws FaultsException {
            try {
                return new Read(Filling.bound(tree, Books.shipped(), new ArrayList<>(), before), List.of());
            } catch (FaultsException e) {
                return new Read(null, e.faults());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"touring", "overloaded", "weekender"})
    void editedAtRandom(String name) throws FaultsException {
        Node.Mapping whole = Sheets.scenario(name);
        Node.Mapping tree = whole;
        Read before = Read.of(whole, KnownGroups.NONE);
        int kept = 0;
        int faulty = 0;
        for (int i = 0; i < EDITS; i++) {
            Node.Mapping edited = edited(i % 5 == 0 ? whole : tree);
            Read fresh = Read.of(edited, KnownGroups.NONE);
            Read after = Read.of(edited, before.bound().groups());
            assertEquals(fresh.faults(), after.faults());
            if (after.bound() == null) {
                faulty++;
                continue;
            }
            assertEquals(fresh.bound().record(), after.bound().record());
            assertEquals(
                    fresh.bound().record().toString(), after.bound().record().toString());
            kept += isKept(before.bound().record(), after.bound().record()) ? 1 : 0;
            before = after;
            tree = edited;
        }
        // Else nothing was held against anything.
        assertTrue(kept > EDITS / 4, kept + " kept");
        assertTrue(faulty > EDITS / 10, faulty + " with faults");
    }

    private static boolean isKept(Sheet before, Sheet after) {
        return !after.fitments().isEmpty()
                && !before.fitments().isEmpty()
                && before.fitments().get(0) == after.fitments().get(0);
    }

    /** Another value, an item gone, one twice, or the items of a list in another order. */
    private Node.Mapping edited(Node.Mapping tree) {
        NodePath list = NodePath.of(LISTS.get(random.nextInt(LISTS.size())));
        if (random.nextInt(3) > 0
                || !(list.in(tree) instanceof Node.Listing items)
                || items.items().isEmpty()) {
            List<NodePath> fields = Sheets.scalars(tree, NodePath.TOP);
            return Trees.with(
                    tree, fields.get(random.nextInt(fields.size())), VALUES.get(random.nextInt(VALUES.size())));
        }
        List<Node> other = new ArrayList<>(items.items());
        switch (random.nextInt(3)) {
            case 0 -> other.remove(random.nextInt(other.size()));
            case 1 -> other.add(random.nextInt(other.size()), other.get(random.nextInt(other.size())));
            default -> Collections.shuffle(other, random);
        }
        return Trees.with(tree, list, new Node.Listing(items.place(), other));
    }

    @Test
    void aGroupWithAFaultIsToldOfEachTime() throws FaultsException {
        Node.Mapping whole = Sheets.scenario("touring");
        NodePath mass = NodePath.of("fitments").to(1).to("mass");
        Node.Mapping wrong = Trees.with(whole, mass, "no mass");
        KnownGroups groups = Read.of(whole, KnownGroups.NONE).bound().groups();
        List<Fault> once = Read.of(wrong, groups).faults();
        assertEquals(1, once.size());
        assertEquals("fitments.1.mass", once.get(0).path());
        assertEquals(once, Read.of(wrong, groups).faults());
    }
}
