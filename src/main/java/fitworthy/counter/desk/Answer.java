package fitworthy.counter.desk;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Questions;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.View;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What there is to say of one text of a sheet. What costs time is worked out when somebody first asks for it, and once.
 */
public final class Answer {

    /** What was advised on the text before this one, on which the advice can build; null where nothing was. */
    private final Advice before;

    private final View view;
    private final Place place;
    private final String text;
    private final String version;
    private final Node.Mapping tree;
    private final List<Fault> unreadable = new ArrayList<>();
    private final Lazy<Node.Mapping> whole = new Lazy<>();
    private final Lazy<Reading> reading = new Lazy<>();
    private final Lazy<Advice> advice = new Lazy<>();
    private final Lazy<Arrangement> arrangement = new Lazy<>();
    private final Lazy<RoomLeft> room = new Lazy<>();
    private final Lazy<Questions> questions = new Lazy<>();

    /** @param read null where there are faults */
    private record Reading(View.Read read, List<Fault> faults) {}

    private static final class Lazy<T> {
        private T value;

        synchronized <A> T of(A given, Function<A, T> worked) {
            if (value == null) {
                value = worked.apply(given);
            }
            return value;
        }

        /** Null where nobody asked for it yet. */
        synchronized T known() {
            return value;
        }
    }

    /** @param place the sheet's file, as faults name it and beside which its shelf lies */
    public Answer(View view, Place place, String text) {
        this(view, place, text, null);
    }

    private Answer(View view, Place place, String text, Advice before) {
        this.before = before;
        this.view = view;
        this.place = place;
        this.text = text;
        this.version = Digests.of(text);
        this.tree = NodeReader.read(place, text, unreadable);
    }

    /** What there is to say of a file that is no text. */
    Answer(View view, Place place, List<Fault> faults) {
        this.view = view;
        this.place = place;
        this.before = null;
        this.text = "";
        this.version = "";
        this.tree = null;
        this.unreadable.addAll(faults);
    }

    /** The answer to another text of the same file. */
    public Answer to(String other) {
        Advice known = advice.known();
        return other.equals(text) ? this : new Answer(view, place, other, known == null ? before : known);
    }

    public View view() {
        return view;
    }

    public Place place() {
        return place;
    }

    public String text() {
        return text;
    }

    /** What this text is known again by. */
    public String version() {
        return version;
    }

    /** What the file itself says; null where it is no tree. */
    public Node.Mapping tree() {
        return tree;
    }

    /** The same with what it takes from its shelf, as far as that can be used; null where it is no tree. */
    public Node.Mapping whole() {
        return whole.of(tree, own -> {
            Node.Mapping expanded = view.shelves().expanded(own, new ArrayList<>());
            return expanded == null ? own : expanded;
        });
    }

    /** What is wrong with it; while anything is there is no advice. */
    public List<Fault> faults() {
        return reading().faults();
    }

    /** The sheet with what it takes from its shelf and what it leaves to the book; empty where it has a fault. */
    public Optional<View.Read> read() {
        return Optional.ofNullable(reading().read());
    }

    private Reading reading() {
        return reading.of(tree, own -> {
            List<Fault> found = new ArrayList<>(unreadable);
            try {
                return new Reading(view.read(own, found), List.of());
            } catch (FaultsException e) {
                return new Reading(null, e.faults());
            }
        });
    }

    /** Empty where the sheet has a fault. */
    public Optional<Advice> advice() {
        return read().map(sheet -> advice.of(sheet, given -> Adviser.advise(view.engine(), given.sheet(), before)));
    }

    public Optional<Arrangement> arrangement() {
        return advice().map(given -> arrangement.of(given, Arrangement::of));
    }

    public Optional<RoomLeft> room() {
        return advice().map(given -> room.of(given, RoomLeft::of));
    }

    /** What is to be asked, by what it can turn. May take seconds where much is guessed. */
    public Optional<Questions> questions() {
        return advice().map(given -> questions.of(given, told -> Questions.of(view.engine(), told)));
    }
}
