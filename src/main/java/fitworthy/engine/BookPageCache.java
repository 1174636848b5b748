package fitworthy.engine;

import fitworthy.source.Digests;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The pages of a rule book as they were read, kept between runs because reading YAML takes a third of a run. A page is
 * found by the digest of its text, so an edited one is read anew.
 */
final class BookPageCache {

    private static final String FILE = "pages.bin";

    private final CacheFolder folder;
    private final Map<String, ByteBuffer> kept = new HashMap<>();
    private final Map<String, byte[]> used = new LinkedHashMap<>();
    private final String reader;
    private boolean changed;

    BookPageCache(CacheFolder folder) {
        this.folder = folder;
        MessageDigest digest = Digests.sha256();
        CacheFolder.count(digest, List.of(Node.class, NodeReader.class, BookPageCache.class));
        this.reader = HexFormat.of().formatHex(digest.digest());
        folder.find(FILE).ifPresent(this::pages);
    }

    private void pages(ByteBuffer content) {
        try {
            if (!text(content).equals(reader)) {
                return;
            }
            for (int left = content.getInt(); left > 0; left--) {
                String digest = text(content);
                int length = content.getInt();
                kept.put(digest, content.slice(content.position(), length));
                content.position(content.position() + length);
            }
        } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException e) {
            kept.clear();
        }
    }

    /** The page whose text has this digest, or null. @param file the name its places are to carry */
    Node.Mapping find(String file, String digest) {
        ByteBuffer page = kept.get(digest);
        if (page == null) {
            return null;
        }
        byte[] bytes = new byte[page.remaining()];
        page.duplicate().get(bytes);
        used.put(digest, bytes);
        return (Node.Mapping) node(page, file);
    }

    /** Notes a page just read. */
    void add(String digest, Node.Mapping page) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            write(page, out);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        used.put(digest, bytes.toByteArray());
        changed = true;
    }

    /** Keeps the pages used, where any of them is new. */
    void keep() {
        if (!changed) {
            return;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            write(reader, out);
            out.writeInt(used.size());
            for (Map.Entry<String, byte[]> page : used.entrySet()) {
                write(page.getKey(), out);
                out.writeInt(page.getValue().length);
                out.write(page.getValue());
            }
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        folder.keep(FILE, bytes.toByteArray());
    }

    private static void write(Node node, DataOutputStream out) throws IOException {
        if (node instanceof Node.Scalar scalar) {
            out.writeByte(scalar.number() ? 'n' : 's');
            write(scalar.place(), out);
            write(scalar.text(), out);
        } else if (node instanceof Node.Listing listing) {
            out.writeByte('l');
            write(listing.place(), out);
            out.writeInt(listing.items().size());
            for (Node item : listing.items()) {
                write(item, out);
            }
        } else if (node instanceof Node.Blank blank) {
            out.writeByte(blank.faulted() ? 'q' : 'b');
            write(blank.place(), out);
        } else {
            Node.Mapping mapping = (Node.Mapping) node;
            out.writeByte('m');
            write(mapping.place(), out);
            out.writeInt(mapping.entries().size());
            for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
                write(entry.getKey(), out);
                write(entry.getValue().place(), out);
                write(entry.getValue().value(), out);
            }
        }
    }

    private static Node node(ByteBuffer in, String file) {
        byte sort = in.get();
        Place place = place(in, file);
        if (sort == 'n' || sort == 's') {
            return new Node.Scalar(place, text(in), sort == 'n');
        }
        if (sort == 'b' || sort == 'q') {
            return new Node.Blank(place, sort == 'q');
        }
        int count = in.getInt();
        if (sort == 'l') {
            List<Node> items = new ArrayList<>(count);
            for (int i = 0; i < count; i++) {
                items.add(node(in, file));
            }
            return new Node.Listing(place, items);
        }
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            String key = text(in);
            entries.put(key, new Node.Entry(place(in, file), node(in, file)));
        }
        return new Node.Mapping(place, entries);
    }

    private static void write(Place place, DataOutputStream out) throws IOException {
        out.writeInt(place.line());
        out.writeInt(place.column());
    }

    private static Place place(ByteBuffer in, String file) {
        return new Place(file, in.getInt(), in.getInt());
    }

    private static void write(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(ByteBuffer in) {
        int length = in.getInt();
        Objects.checkFromIndexSize(0, length, in.remaining());
        byte[] bytes = new byte[length];
        in.get(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
