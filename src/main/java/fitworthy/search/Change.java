package fitworthy.search;

import fitworthy.book.Book;
import fitworthy.figures.plan.BallLoad;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
import fitworthy.usual.PlacesInWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** One change to a plan, made on the tree of its sheet so that everything else stays as written. */
public sealed interface Change {

    NodePath TRAILER = NodePath.of("trailer");

    /** The changed tree. @param sheet the sheet that {@code root} was read into */
    Node.Mapping applied(Node.Mapping root, Sheet sheet);

    /** The change in words that follow "to pass:". */
    String words();

    /**
     * The sheet with all of these changes.
     *
     * @param root the tree that {@code sheet} was read from
     * @param book what the sheet leaves to it is filled in anew
     * @param groups what {@code sheet} was made of
     * @throws FaultsException where they make no sheet
     */
    static Sheet sheet(List<? extends Change> changes, Node.Mapping root, Sheet sheet, Book book, KnownGroups groups)
            throws FaultsException {
        Node.Mapping changed = root;
        for (Change change : changes) {
            changed = change.applied(changed, sheet);
        }
        return Filling.bound(changed, book, new ArrayList<>(), groups).record();
    }

    /** What a sheet was made of. @param root its tree, in which nothing is wrong */
    static KnownGroups groups(Node.Mapping root, Book book) {
        try {
            return Filling.bound(root, book, new ArrayList<>(), KnownGroups.NONE)
                    .groups();
        } catch (FaultsException e) {
            throw new IllegalArgumentException("the tree of no sheet", e);
        }
    }

    /**
     * A planned part is not fitted, nor what goes with it (see {@link Resting}), nor the circuits of all these.
     *
     * @param contents parts, tanks and cargo that go with it
     * @param kept what the vehicle then keeps in its place, such as its tyres; empty where it has nothing there
     * @param staying what sits there by the words of the sheet and stays aboard
     */
    record Drop(String fitment, List<String> contents, String kept, List<String> staying) implements Change {

        /** Of a part that nothing has to stand in the place of, and in which nothing sits. */
        public Drop(String fitment, List<String> contents) {
            this(fitment, contents, "", List.of());
        }

        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            Resting resting = new Resting(sheet.planned());
            Set<String> gone = sheet.withContents(resting.with(List.of(fitment)));
            Node.Mapping changed = root;
            for (String part : gone) {
                changed = without(part, changed, sheet);
            }
            for (String left : resting.cargo(sheet.cargo(), gone)) {
                changed = new LeaveBehind(left).applied(changed, sheet);
            }
            return changed;
        }

        private static Node.Mapping without(String gone, Node.Mapping root, Sheet sheet) {
            Node.Mapping changed = Trees.without(root, NodePath.of("fitments", gone));
            changed = Trees.without(changed, NodePath.of("tanks", gone));
            for (LoadCase loadCase : sheet.cases()) {
                changed = Trees.without(changed, NodePath.of("cases", loadCase.name(), "off", gone));
                changed = Trees.without(changed, NodePath.of("cases", loadCase.name(), "filled", gone));
            }
            for (Sheet.Option option : sheet.options()) {
                for (Sheet.Alternative choice : option.choices()) {
                    changed = Trees.without(
                            changed, NodePath.of("options", option.name(), "choices", choice.name(), "parts", gone));
                }
            }
            for (Circuit circuit : sheet.circuits()) {
                if (Stream.concat(Stream.of(circuit), circuit.above(sheet.circuits()))
                        .anyMatch(each -> each.part().equals(gone))) {
                    changed = Trees.without(changed, NodePath.of("circuits", circuit.name()));
                }
            }
            return withoutTent(gone, changed, sheet);
        }

        @Override
        public String words() {
            return briefly(Integer.MAX_VALUE);
        }

        /** The same, with no more than so many of what goes with it or stays by name. */
        public String briefly(int most) {
            return (kept.isEmpty() ? "" : "keep the " + kept + " it has, and ")
                    + "do without '" + fitment + "'"
                    + (contents.isEmpty()
                            ? ""
                            : contents.size() > most
                                    ? " and " + contents.size() + " things that go with it"
                                    : " and what goes with it: '" + String.join("', '", contents) + "'")
                    + (staying.isEmpty()
                            ? ""
                            : staying.size() > most
                                    ? " (the " + staying.size() + " things in it stay aboard)"
                                    : " ('" + String.join("', '", staying)
                                            + (staying.size() == 1 ? "' stays aboard)" : "' stay aboard)"));
        }
    }

    /** Nobody sleeps in what is not there. */
    private static Node.Mapping withoutTent(String gone, Node.Mapping root, Sheet sheet) {
        return sheet.trip().roofTent().equals(gone)
                ? Trees.without(
                        Trees.without(root, NodePath.of("trip", "roof-tent")), NodePath.of("trip", "roof-sleepers"))
                : root;
    }

    /** A piece of cargo stays at home. */
    record LeaveBehind(String cargo) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            Node.Mapping changed = Trees.without(root, NodePath.of("cargo", cargo));
            for (LoadCase each : sheet.cases()) {
                changed = Trees.without(changed, NodePath.of("cases", each.name(), "carrying", cargo));
            }
            return withoutTent(cargo, changed, sheet);
        }

        @Override
        public String words() {
            return "leave '" + cargo + "' behind";
        }
    }

    /** A tank is empty while the trailer is on. */
    record TowEmpty(String tank) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            Node.Mapping changed = root;
            for (LoadCase each : towing(sheet)) {
                NodePath loading = NodePath.of("cases", each.name());
                changed = Trees.making(
                        changed, loading.to("filled").to(tank), new Node.Scalar(root.place(), "0 %", false));
            }
            return changed;
        }

        @Override
        public String words() {
            return "tow with '" + tank + "' empty, where there is water at the next stop";
        }
    }

    /**
     * A piece of cargo rides in the trailer wherever that is on. The trailer weighs so much more, and the load on its ball grows
     * in proportion.
     *
     * @param kilograms of the cargo
     * @param otherwise whether it rides in the vehicle in a loading without the trailer
     */
    record IntoTrailer(String cargo, double kilograms, boolean otherwise) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            Node.Mapping changed = root;
            for (LoadCase each : towing(sheet)) {
                List<Node> others = sheet.planned().cargo().stream()
                        .map(Sheet.Load::name)
                        .filter(name -> each.carries(name) && !name.equals(cargo))
                        .<Node>map(name -> new Node.Scalar(root.place(), name, false))
                        .toList();
                changed = Trees.with(
                        changed, NodePath.of("cases", each.name(), "carrying"), new Node.Listing(root.place(), others));
            }
            return weighing(changed, sheet, sheet.trailer().orElseThrow().mass().value() + kilograms);
        }

        @Override
        public String words() {
            return "carry '" + cargo + "' in the trailer" + (otherwise ? " when towing, otherwise as planned" : "");
        }
    }

    /**
     * The trailer at another mass, the load on its ball in proportion. What is used up on the way stays listed, for it is used
     * up all the same. What else was listed counts as if it belonged to the bare trailer: what of it goes, or where more
     * stands, nobody says.
     */
    private static Node.Mapping weighing(Node.Mapping root, Sheet sheet, double mass) {
        Trailer trailer = sheet.trailer().orElseThrow();
        BallLoad load = BallLoad.of(sheet).orElseThrow();
        Figure ball = trailer.ball().or(load.filledIn().ball());
        double more = mass - trailer.mass().value();
        Node.Mapping changed =
                Trees.with(Trees.without(root, TRAILER.to("stowed")), TRAILER.to("mass"), asSure(trailer.mass(), mass));
        if (!ball.known()) {
            return changed;
        }
        double moreOnBall = ball.value() * more / trailer.mass().value();
        changed = Trees.with(changed, TRAILER.to("ball"), asSure(ball, ball.value() + moreOnBall));
        BallLoad.Left rest = load.withoutSupplies();
        if (trailer.supplies().isEmpty()
                || !trailer.bare().mass().known()
                || !rest.ball().known()) {
            return changed;
        }
        NodePath bare = TRAILER.to("bare");
        return rest.mass().value() + more <= 0
                ? Trees.without(changed, TRAILER.to("supplies"))
                : Trees.with(
                        Trees.with(
                                changed,
                                bare.to("mass"),
                                asSure(rest.mass(), rest.mass().value() + more)),
                        bare.to("ball"),
                        asSure(rest.ball(), rest.ball().value() + moreOnBall));
    }

    /** The loadings that have the trailer on. */
    private static List<LoadCase> towing(Sheet sheet) {
        return sheet.cases().stream()
                .filter(each -> each.towing().is(YesNo.YES))
                .toList();
    }

    /** Another mass in the place of one, as sure as that and a guess where that is one. */
    private static String asSure(Figure old, double mass) {
        return (old.guess().isPresent() ? "about " : "")
                + String.format(Locale.ROOT, "%.3f kg", mass)
                + (old.hasTolerance() ? String.format(Locale.ROOT, " +/- %.3f kg", old.tolerance()) : "");
    }

    /**
     * A part or a piece of cargo sits elsewhere.
     *
     * @param list fitments or cargo
     * @param name which
     * @param from its planned place behind the front axle, m; a guess stays one
     * @param metres how far further back; negative is forward
     */
    record Move(String list, String name, Figure from, double metres) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            NodePath at = NodePath.of(list, name, "at");
            Node.Mapping apart = PlacesInWords.apart(root, at);
            return Trees.with(apart, at.to("x"), place());
        }

        private String place() {
            return (from.guess().isPresent() ? "about " : "")
                    + millimetres(from.value() + metres)
                    + (from.hasTolerance() ? " +/- " + millimetres(from.tolerance()) : "");
        }

        @Override
        public String words() {
            return "move '" + name + "' " + millimetres(Math.abs(metres)) + (metres < 0 ? " forward" : " back");
        }

        private static String millimetres(double metres) {
            return Math.round(metres * 1000) + " mm";
        }
    }

    /**
     * A tank is filled no further than this in any load case.
     *
     * @param share 0 to 1
     * @param litres what is left out when full
     */
    record FillTo(String tank, double share, double litres) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            String text = percent();
            Node.Mapping changed = Trees.with(root, NodePath.of("tanks", tank, "fill"), text);
            for (LoadCase each : sheet.cases()) {
                if (each.filled().containsKey(tank) && each.filled().get(tank).value() > share) {
                    changed = Trees.with(changed, NodePath.of("cases", each.name(), "filled", tank), text);
                }
            }
            return changed;
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "fill '%s' to %s, %.0f L less", tank, percent(), litres);
        }

        private String percent() {
            return Math.round(share * 100) + " %";
        }
    }

    /**
     * The trailer is loaded to no more than this; the load on the ball falls in proportion.
     *
     * @param can whether it is known to weigh no more at its lightest
     */
    record LightenTrailer(double kilograms, boolean can) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            return weighing(root, sheet, kilograms);
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "load the trailer to %.0f kg at most, its ball in proportion", kilograms)
                    + (can ? "" : " (if it weighs less empty: nobody has said)");
        }
    }

    /**
     * What a finding asks for is done, so that one field of the sheet has another answer.
     *
     * @param subject what the finding is about
     * @param path the way to the field
     * @param answer the field's answer once it is done
     * @param by what is done
     */
    record PutRight(String subject, NodePath path, String answer, String by) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            return Trees.with(root, path, answer);
        }

        @Override
        public String words() {
            return by + " (" + subject + ")";
        }
    }

    /**
     * A part that lies on the shelf is fitted in place of another. It keeps the name, so that whatever names the part
     * still does, and sits where that sat.
     *
     * @param part the part on the sheet
     * @param other what the shelf calls the one in its place
     * @param fields the fields of that one
     * @param made whether such a part is made for one vehicle, so that it has to be asked whether it fits
     */
    record Swap(String part, String other, Node.Mapping fields, boolean made) implements Change {

        /** What the sheet says of the place and the fitting of a part rather than of the part. */
        private static final List<String> OF_THE_PLACE =
                List.of("name", "at", "in", "removable", "roof", "keep", "may-move", "removes", "work");

        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            NodePath path = NodePath.of("fitments", part);
            Node.Mapping old = (Node.Mapping) path.in(root);
            Node.Mapping fitted = fields;
            for (String field : OF_THE_PLACE) {
                if (old.get(field) != null) {
                    fitted = fitted.with(field, old.get(field));
                }
            }
            return Trees.with(root, path, fitted);
        }

        @Override
        public String words() {
            return "fit '" + other + "' from the shelf in place of '" + part + "'"
                    + (made ? ", if its maker says that it fits" : "");
        }
    }

    /**
     * Tyres or wheels of a higher rating are chosen.
     *
     * @param path the way to the rating on the sheet
     * @param rating what it has to be at least
     * @param words what to choose
     */
    record Rate(NodePath path, String rating, String words) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            return Trees.with(root, path, rating);
        }
    }

    /**
     * A point rated for recovery is fitted where the vehicle has none.
     *
     * @param end front or rear, as on the sheet
     * @param kilograms what it is rated for at least
     */
    record RatedPoint(String end, double kilograms) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            NodePath point = NodePath.of("vehicle", "recovery", end);
            Node.Mapping fitted = Trees.making(root, point.to("made-for"), scalar(root, "recovery"));
            return Trees.making(fitted, point.to("limit"), scalar(root, rating()));
        }

        private static Node scalar(Node.Mapping root, String text) {
            return new Node.Scalar(root.place(), text, false);
        }

        private String rating() {
            return String.format(Locale.ROOT, "%.0f kg", Math.ceil(kilograms - 1e-6));
        }

        @Override
        public String words() {
            return "fit a recovery point rated for " + rating() + " or more at the " + end;
        }
    }

    /** Another of an option's choices is taken. */
    record Choose(String option, String choice) implements Change {
        @Override
        public Node.Mapping applied(Node.Mapping root, Sheet sheet) {
            return Trees.with(root, NodePath.of("options", option, "take"), choice);
        }

        @Override
        public String words() {
            return "take '" + choice + "' for '" + option + "'";
        }
    }
}
