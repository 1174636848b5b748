package fitworthy.counter.desk;

import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import fitworthy.source.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The file of a sheet, which others may write too. */
final class SheetFile {

    private static final String MARK_OF_UTF_8 = "\uFEFF";

    private final Path path;

    /** What a file held. @param text null where it was no text, as the faults say */
    record Content(byte[] bytes, String text, List<Fault> faults) {}

    SheetFile(Path path) {
        this.path = path;
    }

    Content read() {
        List<Fault> faults = new ArrayList<>();
        byte[] bytes = InputFile.bytes(path, faults);
        return new Content(bytes, InputFile.text(bytes, Place.of(path.toString()), faults), faults);
    }

    /** Puts a text in place of what was read; false where another hand has written meanwhile, whose text then stands. */
    boolean write(String text, Content read) throws IOException {
        boolean marked = new String(read.bytes(), 0, Math.min(3, read.bytes().length), StandardCharsets.UTF_8)
                .startsWith(MARK_OF_UTF_8);
        return WholeFile.exchange(
                path, read.bytes(), ((marked ? MARK_OF_UTF_8 : "") + text).getBytes(StandardCharsets.UTF_8));
    }
}
