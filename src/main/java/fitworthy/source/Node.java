package fitworthy.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value read from YAML or JSON that remembers where it stood. */
public sealed interface Node {

    Place place();

    /** What a person would call this kind of value. */
    String described();

    /** What it is called where it is an item of a list: the text of its {@code name}, or null. */
    default String name() {
        return null;
    }

    /**
     * A single value, as written.
     *
     * @param text the characters between the quotes, if there were any
     * @param number whether it was written as a bare number
     */
    record Scalar(Place place, String text, boolean number) implements Node {
        @Override
        public String described() {
            return "'" + Words.shortened(text, 60) + "'";
        }
    }

    /** Values in order. */
    record Listing(Place place, List<Node> items) implements Node {
        @Override
        public String described() {
            return "a list";
        }

        /** A copy with one more at its end. */
        public Listing and(Node item) {
            List<Node> more = new ArrayList<>(items);
            more.add(item);
            return new Listing(place, more);
        }
    }

    /** Named values in the order written. */
    record Mapping(Place place, Map<String, Entry> entries) implements Node {
        @Override
        public String described() {
            return "a group of fields";
        }

        @Override
        public String name() {
            return get("name") instanceof Scalar scalar ? scalar.text() : null;
        }

        public Node get(String key) {
            Entry entry = entries.get(key);
            return entry == null ? null : entry.value();
        }

        /** A copy in which {@code key} has another value. */
        public Mapping with(String key, Node value) {
            Map<String, Entry> copy = new LinkedHashMap<>(entries);
            copy.put(key, new Entry(value.place(), value));
            return new Mapping(place, copy);
        }

        /** A copy without {@code key}. */
        public Mapping without(String key) {
            Map<String, Entry> copy = new LinkedHashMap<>(entries);
            copy.remove(key);
            return new Mapping(place, copy);
        }
    }

    /** A field of a {@link Mapping}: where its name stood, and its value. */
    record Entry(Place place, Node value) {}

    /**
     * No value.
     *
     * @param faulted whether something stood here that a fault was already found with, so that nothing more is to be
     *     said
     * @param needs what it would be worked out of, where that is not given; else nothing
     */
    record Blank(Place place, boolean faulted, List<Needed> needs) implements Node {

        public Blank(Place place, boolean faulted) {
            this(place, faulted, List.of());
        }

        /** Whether nothing more is to be said of its being blank. */
        public boolean settled() {
            return faulted || !needs.isEmpty();
        }

        @Override
        public String described() {
            return "left empty";
        }
    }

    /**
     * A field that another would be worked out of.
     *
     * @param path as a person would write it
     * @param meaning what it is
     * @param find where a person finds it
     */
    record Needed(String path, String meaning, String find) {}
}
