package fitworthy.source;

import java.nio.file.Path;

/**
 * A place in a text file.
 *
 * @param file the name of the file as the user gave it
 * @param line one-based line, 0 where only the file is known
 * @param column one-based column, 0 where only the line is known
 */
public record Place(String file, int line, int column) {

    public static Place of(String file) {
        return new Place(file, 0, 0);
    }

    public Place onLine(int otherLine) {
        return new Place(file, otherLine, 0);
    }

    /** The place of the character that would follow a text that begins here. */
    public Place after(String text) {
        return new Place(
                file,
                (int) text.chars().filter(letter -> letter == '\n').count() + Math.max(1, line),
                text.length() - text.lastIndexOf('\n'));
    }

    /** Topic folder, file and line, which are the same wherever a rule book lies. */
    public String inBook() {
        Path path = Path.of(file);
        return path.getParent().getFileName() + "/" + path.getFileName() + ":" + line;
    }

    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
