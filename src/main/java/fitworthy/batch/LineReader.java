package fitworthy.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;

/** Reads lines as bytes; of one that is too long it keeps no more than it takes to see that. */
public final class LineReader implements Closeable {

    private final InputStream in;
    private final int most;
    private int number;
    private long at;
    private boolean ended;

    /** @param most how many bytes of a line are kept; one more than a line may have */
    public LineReader(InputStream in, int most) {
        this.in = new BufferedInputStream(in, 1 << 16);
        this.most = most;
    }

    /** The next line without its end, or null after the last. */
    public byte[] next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int each = in.read();
        if (each < 0) {
            return null;
        }
        number++;
        while (each >= 0 && each != '\n') {
            if (line.size() < most) {
                line.write(each);
            }
            at++;
            each = in.read();
        }
        ended = each == '\n';
        at += ended ? 1 : 0;
        return line.toByteArray();
    }

    /** The number of the line last read, counted from one. */
    int number() {
        return number;
    }

    /** How many bytes have been read: where the next line begins. */
    public long at() {
        return at;
    }

    /** Whether the line last read was whole, that is, had its end. */
    public boolean ended() {
        return ended;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
