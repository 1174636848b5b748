package fitworthy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Folders that tests copy, and look into. */
public final class Folders {

    private Folders() {}

    /** Copies a folder with all that is in it, over what is there. */
    public static void copy(Path from, Path to) throws IOException {
        copy(from, to, inside -> true);
    }

    /** Those of its files alone whose way from the folder is wanted. */
    public static void copy(Path from, Path to, Predicate<Path> wanted) throws IOException {
        for (Path file : files(from)) {
            Path inside = from.relativize(file);
            if (wanted.test(inside)) {
                Path copy = to.resolve(inside.toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** What its files hold, by their way from it. */
    public static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : files(folder)) {
            texts.put(folder.relativize(file).toString(), Files.readString(file));
        }
        return texts;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }
}
