package fitworthy.counter.sheets;

import fitworthy.counter.desk.SheetFolder;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What the file of a new sheet is called. */
final class FileName {

    private static final Pattern OTHERS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern ENDING = Pattern.compile("\\.(yaml|yml|json)$");
    private static final String YAML = ".yaml";
    /** Leaves room for a number behind it. */
    private static final int LONGEST = 80;

    private FileName() {}

    /** A free name made of words, such as {@code ines-and-tobias-varga.yaml}. */
    static String of(String words, SheetFolder folder) {
        String plain = OTHERS.matcher(
                        Normalizer.normalize(words, Normalizer.Form.NFC).toLowerCase(Locale.ROOT))
                .replaceAll("-")
                .replaceAll("^-|-$", "");
        String name = plain.isEmpty() ? "new-sheet" : cut(plain);
        return folder.find(name + YAML).isEmpty() ? name + YAML : numbered(name, YAML, folder);
    }

    /** A free name for the copy of a sheet, such as {@code touring (2).yaml}. */
    static String ofCopy(String sheet, SheetFolder folder) {
        String name = ENDING.matcher(sheet).replaceAll("");
        return numbered(cut(name), sheet.substring(name.length()), folder);
    }

    private static String numbered(String name, String ending, SheetFolder folder) {
        return IntStream.iterate(2, number -> number + 1)
                .mapToObj(number -> name + " (" + number + ")" + ending)
                .filter(free -> folder.find(free).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static String cut(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST));
    }

    /** Where a sheet of the name that was typed would stand; empty where none can be called so. */
    static Optional<Path> place(String typed, SheetFolder folder) {
        String name = typed.strip();
        return folder.place(ENDING.matcher(name).find() ? name : name + YAML);
    }

    /** What is wrong with a name that has no place. */
    static String refused(String typed) {
        return "'" + typed.strip() + "' is no name for a sheet. Letters, numbers, spaces and ( ) , + - _ . may stand in"
                + " it; it begins with a letter or number.";
    }

    /** What is wrong with a name that is taken. */
    static String taken(Path place) {
        return place.getFileName() + " is there already, and is not written over. Choose another name.";
    }
}
