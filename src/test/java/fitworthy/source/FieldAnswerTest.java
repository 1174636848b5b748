package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An answer goes into the file that was named, whatever else its tree was put together from. */
class FieldAnswerTest {

    private static final String SHELF =
            """
            fitments:
              - {name: Front bar, kind: front-bar, mass: 60 kg}
              - {name: Winch, kind: winch}
            """;

    private final List<Fault> faults = new ArrayList<>();

    private Node.Mapping tree(String file, String text) {
        return NodeReader.read(file, text, faults);
    }

    private String answered(String own, Node.Mapping tree, String typed) {
        FieldAnswer answer = FieldAnswer.parse(Place.of("--answer"), typed, faults);
        ReadText text = new ReadText(own, tree("sheet.yaml", own));
        ReadText answered = answer.in(text, tree, answer.path(tree, faults), WordField.NONE, faults);
        return answered == null ? null : answered.text();
    }

    @Test
    void whatStandsInAnotherFileIsPutIntoThisOne() {
        String own = "fitments:\n  - name: Front bar  # from the shelf\n";
        Node.Mapping tree = Trees.merged(tree("shelf.yaml", SHELF), tree("sheet.yaml", own));
        assertEquals(own + "    mass: 58 kg\n", answered(own, tree, "fitments.Front bar.mass=58 kg"));
        assertEquals(List.of(), faults);
    }

    @Test
    void anItemMayHaveItsNameFromAnotherFile() {
        String own = "fitments:\n  - note: ours\n";
        Node.Mapping tree = tree("both", "fitments:\n  - {name: Front bar, note: ours, mass: 60 kg}\n");
        assertEquals(own + "    mass: 58 kg\n", answered(own, tree, "fitments.Front bar.mass = 58 kg"));
    }

    @Test
    void anItemOfAnotherFileIsLeftToItsAuthor() {
        String own = "fitments:\n  - name: Snorkel\n";
        Node.Mapping tree = Trees.merged(tree("shelf.yaml", SHELF), tree("sheet.yaml", own));
        for (String part : List.of("Front bar", "Winch")) {
            faults.clear();
            assertNull(answered(own, tree, "fitments." + part + ".mass=58 kg"));
            assertEquals(
                    List.of("this cannot be written into the file as it is laid out"),
                    faults.stream().map(Fault::problem).toList());
        }
    }

    @Test
    void anItemIsFoundByItsNameWhereTheFileHasItElsewhere() {
        String own = "fitments:\n  - name: Snorkel\n";
        Node.Mapping tree = Trees.merged(tree("shelf.yaml", SHELF), tree("sheet.yaml", own));
        assertEquals(own + "    mass: 4 kg\n", answered(own, tree, "fitments.Snorkel.mass=4 kg"));
    }

    @Test
    void anItemOfAListWithinAGroupIsNamed() {
        String own = "fitments:\n  - name: Snorkel\n";
        Node.Mapping tree = tree(
                "both",
                "fitments:\n  - {name: Snorkel, joints: [{name: head, z: 2 m}, {name: sill, z: 1 m}, {z: 3 m}]}\n");
        assertEquals(
                own + "    joints: [{name: sill, z: 900 mm}]\n",
                answered(own, tree, "fitments.Snorkel.joints.sill.z=900 mm"));
        assertNull(answered(own, tree, "fitments.Snorkel.joints.3.z=900 mm"), "without a name");
    }

    @Test
    void whatIsNoAnswerIsAFault() {
        for (String typed : List.of("", "=", "mass", "mass=", "=58 kg", " = ")) {
            faults.clear();
            assertNull(FieldAnswer.parse(Place.of("--answer"), typed, faults), typed);
            assertEquals(1, faults.size(), typed);
        }
        faults.clear();
        assertEquals(
                new FieldAnswer(Place.of("--answer"), "note", "a = b"),
                FieldAnswer.parse(Place.of("--answer"), "note=a = b", faults));
    }

    @Test
    void anItemIsFoundByItsNameOrItsPlace() {
        Node.Mapping tree = tree("sheet", "tanks: [{name: 2.5 L}, {note: b}]");
        for (String path : List.of("tanks.2.5 L.mass", "tanks.1.mass")) {
            assertEquals("tanks.1.mass", NodePath.find(path, tree).toString());
        }
        assertEquals("tanks.2.mass", NodePath.find("tanks.2.mass", tree).toString());
        assertNull(NodePath.find("tanks.4.mass", tree));
        assertEquals("trip.days", NodePath.find("trip.days", tree).toString(), "not there yet");
    }
}
