package fitworthy.counter.side;

import fitworthy.advice.View;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.usual.Filling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts a thing at another place along the vehicle. What was measured stays so, with the tolerance that it had; what was a
 * guess, or not known, is what the writer guesses.
 *
 * @param path of its place, such as {@code fitments.Winch.at}
 * @param along behind the front axle, mm
 * @param hold another each time that it is taken hold of, so that one drag is undone in one step
 */
record Move(String path, int along, String hold) implements Change {

    private static final Pattern PLACE = Pattern.compile("(?:fitments|tanks|occupants|cargo)\\.(.+)\\.at");
    private static final Pattern TOLERANCE = Pattern.compile(QuantityText.TOLERANCE + ".*", Pattern.DOTALL);
    private static final Pattern TAPED =
            Pattern.compile("(.+?)\\s+(behind|ahead of|in front of)\\s+(.+)", Pattern.DOTALL);
    private static final String WHERE = "where";
    private static final String X = "x";

    @Override
    public String label() {
        Matcher place = PLACE.matcher(path);
        return "place of " + (place.matches() ? place.group(1) : path);
    }

    @Override
    public String joins() {
        return path + " " + hold;
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        View.Read read = now.read().orElseThrow(() -> new FaultsException(now.faults()));
        Node.Mapping tree = Filling.withItems(read.tree());
        NodePath at = PLACE.matcher(path).matches() ? NodePath.find(path, tree) : null;
        if (at == null) {
            throw new FaultsException(List.of(new Fault(
                    now.place(),
                    path,
                    "nothing on the sheet has this place",
                    "a part, tank, person or piece of cargo")));
        }
        return now.answered(answer(now, tree, at));
    }

    private FieldAnswer answer(Answer now, Node.Mapping tree, NodePath at) {
        Node.Mapping filled = Filling.filled(tree, now.view().book(), new ArrayList<>());
        Optional<Node.Scalar> stood = scalar(at.to(X).in(filled));
        Optional<Node.Scalar> own = scalar(at.to(X).in(tree));
        NodePath told = at.in(tree) instanceof Node.Scalar ? at : at.to(WHERE);
        Optional<String> taped = own.isEmpty() && stood.isPresent()
                ? scalar(told.in(tree)).flatMap(words -> taped(words.text(), stood.get()))
                : Optional.empty();
        return taped.map(words -> new FieldAnswer(now.place(), told.byNames(tree), words))
                .orElseGet(() -> new FieldAnswer(now.place(), at.to(X).byNames(tree), coordinate(stood, own)));
    }

    private static Optional<Node.Scalar> scalar(Node node) {
        return node instanceof Node.Scalar scalar ? Optional.of(scalar) : Optional.empty();
    }

    /** @param stood what counted so far @param own what the sheet or its shelf says in so many words */
    private String coordinate(Optional<Node.Scalar> stood, Optional<Node.Scalar> own) {
        boolean stated = stood.map(x -> Mark.read(x.text()))
                .filter(x -> x.mark() == Mark.STATED)
                .isPresent();
        return (stated ? "" : "about ") + along + " mm"
                + own.map(x -> tolerance(x.text())).orElse("");
    }

    private static String tolerance(String written) {
        Matcher tolerance = TOLERANCE.matcher(written);
        return tolerance.find() ? " " + tolerance.group() : "";
    }

    /** Words for a place that was measured from a point, from where it is now. @param stood the same as a coordinate */
    private Optional<String> taped(String words, Node.Scalar stood) {
        Mark.Marked marked = Mark.read(words);
        Matcher measured = TAPED.matcher(marked.text());
        if (!measured.matches()) {
            return Optional.empty();
        }
        try {
            double off = millimetres(measured.group(1));
            double was = millimetres(Mark.read(stood.text()).text());
            double behind = (measured.group(2).equals("behind") ? off : -off) + along - was;
            return Optional.of(marked.mark()
                    .before(QuantityText.shown(Math.abs(behind) / 1000, "mm")
                            + tolerance(measured.group(1))
                            + (behind < 0 ? " ahead of " : " behind ")
                            + measured.group(3)));
        } catch (QuantityText.Unreadable e) {
            return Optional.empty();
        }
    }

    private static double millimetres(String written) throws QuantityText.Unreadable {
        return QuantityText.parse(written, Dimension.LENGTH).value() * 1000;
    }
}
