package fitworthy.source;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * What stands at a path. Only files are read and replaced: a pipe waits for somebody at its other end, and a device may
 * have no end or be gone once it is replaced.
 */
public enum Standing {
    NOTHING("there is no such file"),
    FILE("this is a file"),
    FOLDER("this is a folder"),
    LINK("this is a link"),
    NO_FILE("this is a pipe, a device or a socket, not a file");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** What stands at a path. @param links how a link is looked at: followed, unless told otherwise */
    public static Standing at(Path path, LinkOption... links) throws IOException {
        try {
            BasicFileAttributes found = Files.readAttributes(path, BasicFileAttributes.class, links);
            if (found.isSymbolicLink()) {
                return LINK;
            }
            return found.isRegularFile() ? FILE : found.isDirectory() ? FOLDER : NO_FILE;
        } catch (NoSuchFileException e) {
            return NOTHING;
        }
    }

    /** Refuses to write where something stands that is no file. @throws FileSystemException which says what it is */
    public static void checkWritable(Path path) throws IOException {
        Standing standing = at(path);
        if (standing != NOTHING && standing != FILE) {
            throw new FileSystemException(path.toString(), null, standing.words);
        }
    }

    /** What stands there, as a sentence. */
    public String words() {
        return words;
    }
}
