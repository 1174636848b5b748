package fitworthy.source;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What has to stand where in a file, so that what is read from it with all that it draws on from elsewhere has a value
 * in one of its fields.
 *
 * @param path in the file's own tree
 * @param value a single one, or a group or list that holds it
 */
record Insertion(NodePath path, Node value) {

    /**
     * The one for a field of the whole tree; nothing where the file has no room for it.
     *
     * @param own what the file itself holds
     * @param whole the same with all that it draws on from elsewhere
     * @param path in the whole tree
     * @param words where a word makes room for fields beside it
     */
    static Optional<Insertion> of(Node own, Node whole, NodePath path, Node.Scalar value, WordField words) {
        return new Search(value, words).in(own, whole, NodePath.TOP, NodePath.TOP, path.steps());
    }

    private record Search(Node.Scalar value, WordField words) {

        /** @param here the way so far in the whole tree @param there the same in the file's own */
        Optional<Insertion> in(Node own, Node whole, NodePath here, NodePath there, List<NodePath.Step> steps) {
            if (steps.isEmpty()) {
                return Optional.of(new Insertion(there, value));
            }
            if (!(own instanceof Node.Mapping || own instanceof Node.Listing)) {
                return holding(own, whole, here, steps).map(holder -> new Insertion(there, holder));
            }
            NodePath.Step step = steps.get(0);
            return own(own, whole, step)
                    .flatMap(ownStep -> in(
                            below(own, ownStep),
                            below(whole, step),
                            new NodePath(here, step),
                            new NodePath(there, ownStep),
                            steps.subList(1, steps.size())));
        }

        /** What the file has, or gets, in place of a word or of nothing. */
        private Optional<Node> holding(Node own, Node whole, NodePath here, List<NodePath.Step> steps) {
            if (steps.isEmpty()) {
                return Optional.of(value);
            }
            boolean isWord = own instanceof Node.Scalar;
            if (!isWord && whole instanceof Node.Listing list) {
                return list(list, here, steps);
            }
            Node word = isWord ? own : whole instanceof Node.Scalar ? whole : null;
            Optional<String> field = word == null ? Optional.empty() : words.at(here);
            if (word != null && field.isEmpty()) {
                return Optional.empty();
            }
            Node.Mapping nothing = new Node.Mapping(value.place(), Map.of());
            Node.Mapping group = field.map(name -> nothing.with(name, word)).orElse(nothing);
            return further(whole, here, steps)
                    .map(held -> group.with(steps.get(0).toString(), held));
        }

        private Optional<Node> further(Node whole, NodePath here, List<NodePath.Step> steps) {
            NodePath.Step step = steps.get(0);
            return holding(null, below(whole, step), new NodePath(here, step), steps.subList(1, steps.size()));
        }

        /**
         * A list that the file leaves to others: at its top the whole of it, since one there takes the place of theirs;
         * within a group, where lists are merged by name, the one item.
         */
        private Optional<Node> list(Node.Listing list, NodePath here, List<NodePath.Step> steps) {
            if (here.above().isTop()) {
                NodePath within = NodePath.TOP;
                for (NodePath.Step step : steps) {
                    within = new NodePath(within, step);
                }
                Node.Mapping holder = new Node.Mapping(list.place(), Map.of()).with("list", list);
                return Optional.of(Trees.making(holder, NodePath.of("list").to(within), value)
                        .get("list"));
            }
            if (!(below(list, steps.get(0)) instanceof Node.Mapping item) || item.name() == null || steps.size() < 2) {
                return Optional.empty();
            }
            Node.Mapping named = new Node.Mapping(value.place(), Map.of()).with("name", item.get("name"));
            return further(list, here, steps)
                    .map(held -> new Node.Listing(value.place(), List.of(Trees.merged(named, (Node.Mapping) held))));
        }
    }

    /** The step of a file's own tree that leads to what one of the whole tree does. */
    private static Optional<NodePath.Step> own(Node own, Node whole, NodePath.Step step) {
        if (!(own instanceof Node.Listing list)) {
            return Optional.of(step);
        }
        Node item = below(whole, step);
        String name = item == null ? null : item.name();
        List<Integer> named = IntStream.rangeClosed(1, list.items().size())
                .filter(i -> name != null && name.equals(list.items().get(i - 1).name()))
                .boxed()
                .toList();
        if (named.size() == 1) {
            return Optional.of(new NodePath.Item(named.get(0)));
        }
        Node same = below(list, step);
        return same == null || same.name() != null && !same.name().equals(name) ? Optional.empty() : Optional.of(step);
    }

    private static Node below(Node node, NodePath.Step step) {
        return new NodePath(NodePath.TOP, step).in(node);
    }
}
