package fitworthy.advice;

import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.ReadText;
import fitworthy.source.Trees;
import fitworthy.source.WordField;
import fitworthy.usual.Filling;
import fitworthy.usual.PlacesInWords;
import java.util.ArrayList;
import java.util.List;

/**
 * The text of a sheet that gets answers. What the sheet takes from its shelf or leaves to the book is answered in the
 * sheet itself, beside the words that it says it in.
 *
 * @param own the text, and what it says
 * @param whole the same with what it takes from its shelf, as far as that can be used
 */
public record AnsweredText(View view, ReadText own, Node.Mapping whole) {

    /** What a sheet says in a word: what it takes from a shelf, and places. */
    private static final WordField WORDS = ((WordField) Shelves::wordField).or(PlacesInWords::wordField);

    /** An answer. @param whole the sheet that it is for @param path where its field stands there */
    private record Placed(FieldAnswer answer, Node.Mapping whole, NodePath path) {

        /** @param tree the sheet with what it takes from its shelf; null with a fault where it has no such item */
        static Placed of(FieldAnswer answer, Node.Mapping tree, List<Fault> faults) {
            Node.Mapping whole = Filling.withItems(tree);
            NodePath path = answer.path(whole, faults);
            if (path == null) {
                return null;
            }
            String top = path.steps().get(0).toString();
            return new Placed(answer, whole.get(top) == null ? tree : tree.with(top, whole.get(top)), path);
        }

        Node.Mapping answered() {
            return answer.in(whole, path, WORDS);
        }

        boolean isOfTrailer() {
            return path.steps().get(0).toString().equals("trailer");
        }
    }

    /**
     * A text that is still to be read.
     *
     * @param place its file, beside which its shelf lies
     * @throws FaultsException where it cannot be read or what it takes is not on its shelf, or something was wrong before
     */
    public static AnsweredText of(View view, Place place, String text, List<Fault> faults) throws FaultsException {
        Node.Mapping own = NodeReader.read(place, text, faults);
        Node.Mapping whole = view.shelves().expanded(own, faults);
        FaultsException.refuse(faults);
        return new AnsweredText(view, new ReadText(text, own), whole);
    }

    /**
     * The text with answers, all else as it was.
     *
     * @throws FaultsException where one of them is not what its field takes or can only be written by hand
     */
    public String with(List<FieldAnswer> answers, List<Fault> faults) throws FaultsException {
        Node.Mapping answered = whole;
        List<Placed> placed = new ArrayList<>();
        for (FieldAnswer answer : answers) {
            Placed at = Placed.of(answer, answered, faults);
            FaultsException.refuse(faults);
            placed.add(at);
            answered = at.answered();
        }
        view.read(answered, faults);
        return written(placed, faults).text();
    }

    /**
     * The text with one answer, whatever else is wrong with the sheet.
     *
     * @throws FaultsException where it can only be written by hand
     */
    public ReadText with(FieldAnswer answer) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Placed placed = Placed.of(answer, whole, faults);
        FaultsException.refuse(faults);
        return written(List.of(placed), faults);
    }

    private ReadText written(List<Placed> placed, List<Fault> faults) throws FaultsException {
        ReadText answered = own;
        for (Placed at : placed) {
            answered = at.answer().in(answered, at.whole(), at.path(), WORDS, faults);
            FaultsException.refuse(faults);
        }
        Node.Mapping wanted = placed.get(placed.size() - 1).answered();
        Node.Mapping written = expanded(answered.tree());
        // What hangs on a trailer's mass is taken from the shelf as a guess once the sheet says another.
        boolean trailer = placed.stream().anyMatch(Placed::isOfTrailer);
        if (!Trees.alike(expanded(wanted), written)
                && !(trailer && Trees.alike(expanded(answered(own.tree(), placed)), written))) {
            placed.forEach(at -> faults.add(at.answer().byHand(at.path())));
        }
        FaultsException.refuse(faults);
        return answered;
    }

    /** The sheet's own tree with the answers. */
    private static Node.Mapping answered(Node.Mapping own, List<Placed> placed) {
        Node.Mapping answered = own;
        for (Placed at : placed) {
            answered = at.answer().in(answered, at.path(), WORDS);
        }
        return answered;
    }

    /** With what it takes from its shelf, as far as that can be used. */
    private Node.Mapping expanded(Node.Mapping tree) {
        Node.Mapping whole = view.shelves().expanded(tree, new ArrayList<>());
        return whole == null ? tree : whole;
    }
}
