package fitworthy.counter.desk;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.AnsweredText;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Questions;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.View;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.schema.KnownGroups;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.ReadText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What there is to say of one text of a sheet. What costs time is worked out when somebody first asks for it, and once.
 */
public final class Answer {

    /** What is known of the text before this one, on which this one's can build. */
    private final Known before;

    private final View view;
    private final Place place;
    private final String text;
    private final String version;
    private final Node.Mapping tree;
    private final List<Fault> unreadable;
    private final Lazy<Expanded> whole = new Lazy<>();
    private final Lazy<Reading> reading = new Lazy<>();
    private final Lazy<Advice> advice = new Lazy<>();
    private final Lazy<Arrangement> arrangement = new Lazy<>();
    private final Lazy<RoomLeft> room = new Lazy<>();
    private final Lazy<String> loaded = new Lazy<>();
    private final Lazy<Questions> questions = new Lazy<>();

    /** @param advice null where nothing was advised yet */
    private record Known(Advice advice, KnownGroups groups) {

        static final Known NOTHING = new Known(null, KnownGroups.NONE);
    }

    /** @param tree with what is taken from the shelf; null where that cannot be used, as the faults say */
    private record Expanded(Node.Mapping tree, List<Fault> faults) {}

    /** @param read null where there are faults */
    private record Reading(View.Read read, List<Fault> faults) {}

    private static final class Lazy<T> {
        private volatile T value;

        synchronized <A> T of(A given, Function<A, T> worked) {
            if (value == null) {
                value = worked.apply(given);
            }
            return value;
        }

        /** Null where nobody asked for it yet. */
        T known() {
            return value;
        }
    }

    /** @param place the sheet's file, as faults name it and beside which its shelf lies */
    public Answer(View view, Place place, String text) {
        this(view, place, text, Known.NOTHING, new ArrayList<>());
    }

    /** What there is to say of a file that is no text. */
    Answer(View view, Place place, List<Fault> faults) {
        this(view, place, new ReadText("", null), Known.NOTHING, faults);
    }

    /** @param unreadable gets what cannot be read */
    private Answer(View view, Place place, String text, Known before, List<Fault> unreadable) {
        this(view, place, new ReadText(text, NodeReader.read(place, text, unreadable)), before, unreadable);
    }

    private Answer(View view, Place place, ReadText read, Known before, List<Fault> unreadable) {
        this.view = view;
        this.place = place;
        this.text = read.text();
        this.version = Digests.of(text);
        this.tree = read.tree();
        this.before = before;
        this.unreadable = unreadable;
    }

    /** The answer to another text of the same file. */
    public Answer to(String other) {
        return other.equals(text) ? this : new Answer(view, place, other, known(), new ArrayList<>());
    }

    private Known known() {
        Advice given = advice.known();
        Reading read = reading.known();
        return new Known(
                given == null ? before.advice() : given,
                read == null || read.read() == null
                        ? before.groups()
                        : read.read().groups());
    }

    /**
     * The answer to the text with a field answered.
     *
     * @throws FaultsException where that can only be written by hand, or the text cannot be read
     */
    public Answer answered(FieldAnswer field) throws FaultsException {
        FaultsException.refuse(unreadable);
        ReadText answered = new AnsweredText(view, new ReadText(text, tree), whole()).with(field);
        return answered.text().equals(text) ? this : new Answer(view, place, answered, known(), List.of());
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
        Node.Mapping expanded = expanded().tree();
        return expanded == null ? tree : expanded;
    }

    private Expanded expanded() {
        return whole.of(tree, own -> {
            List<Fault> faults = new ArrayList<>();
            return new Expanded(view.shelves().expanded(own, faults), faults);
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
        return reading.of(expanded(), taken -> {
            List<Fault> found = new ArrayList<>(unreadable);
            found.addAll(taken.faults());
            try {
                return new Reading(view.read(taken.tree(), found, before.groups()), List.of());
            } catch (FaultsException e) {
                return new Reading(null, e.faults());
            }
        });
    }

    /** Empty where the sheet has a fault. */
    public Optional<Advice> advice() {
        return read().map(sheet ->
                advice.of(sheet, given -> Adviser.advise(view.engine(), given.sheet(), before.advice())));
    }

    public Optional<Arrangement> arrangement() {
        return advice().map(given -> arrangement.of(given, Arrangement::of));
    }

    /** The same where the advice was worked out already; empty where not. */
    Optional<Arrangement> arranged() {
        return Optional.ofNullable(advice.known()).map(given -> arrangement.of(given, Arrangement::of));
    }

    public Optional<RoomLeft> room() {
        return advice().map(given -> room.of(given, RoomLeft::of));
    }

    /** How it stands against its ratings as it will be loaded, in a sentence. */
    public Optional<String> loaded() {
        return advice().map(given -> loaded.of(given, LoadedVerdict::loaded));
    }

    /** What is to be asked, by what it can turn. May take seconds where much is guessed. */
    public Optional<Questions> questions() {
        return advice().map(given -> questions.of(given, told -> Questions.of(view.engine(), told)));
    }
}
