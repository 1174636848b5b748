package fitworthy.source;

import java.util.stream.Collectors;

/** Values as they are written on one line. @param quoted whether each word is put in quotes @param json also each name */
record OneLine(boolean quoted, boolean json) {

    String of(Node node) {
        if (node instanceof Node.Mapping group) {
            return group.entries().entrySet().stream()
                    .map(field -> named(field.getKey(), of(field.getValue().value())))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof Node.Listing list) {
            return list.items().stream().map(this::of).collect(Collectors.joining(", ", "[", "]"));
        }
        String word = node instanceof Node.Scalar scalar ? scalar.text() : "";
        return quoted || json ? inQuotes(word) : word;
    }

    String named(String name, String written) {
        return (json ? inQuotes(name) : name) + ": " + written;
    }

    static String inQuotes(String word) {
        return '"'
                + word.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }
}
