package fitworthy.source;

/**
 * Where the values of a record stand in the text that it was read from.
 *
 * @param beginning where the whole begins: at its name, where it is an entry of a page
 * @param node what was read
 */
public record Located(Place beginning, Node node) {

    public static Located of(Node node) {
        return new Located(node.place(), node);
    }

    /** The place of the value that a path leads to, or of the last that there is on the way. */
    public Place place(NodePath path) {
        Node nearest = path.nearestIn(node);
        return nearest == node ? beginning : nearest.place();
    }
}
