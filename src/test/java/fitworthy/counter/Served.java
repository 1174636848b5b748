package fitworthy.counter;

import fitworthy.Books;
import fitworthy.Folders;
import fitworthy.advice.View;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.shelf.Shelves;
import java.net.http.HttpResponse;
import java.nio.file.Path;

/** A counter on a copy of the shipped sheets, and a client that has opened its address. */
public final class Served implements AutoCloseable {

    private final Desk desk;
    private final Counter counter;
    private final Visitor visitor;

    private Served(Desk desk, Counter counter) throws Exception {
        this.desk = desk;
        this.counter = counter;
        this.visitor = new Visitor(counter.address());
    }

    /** @param folder gets the shipped sheets and their shelf */
    public static Served copyIn(Path folder) throws Exception {
        Folders.copy(Path.of("scenarios"), folder);
        return in(folder);
    }

    /** @param folder whose sheets are served as they are */
    public static Served in(Path folder) throws Exception {
        return in(folder, Serving.here(0, System.err::println));
    }

    static Served in(Path folder, Serving serving) throws Exception {
        View view = new View(Books.engine(), null, null, Shelves.beside());
        Desk desk = new Desk(new SheetFolder(folder), view, Books.RULES);
        return new Served(desk, new Counter(desk, serving));
    }

    OpenSheet sheet(String name) {
        return desk.sheet(name).orElseThrow();
    }

    /** The address that lets in. */
    public String address() {
        return counter.address();
    }

    int port() {
        return counter.port();
    }

    /** The cookie that the client was let in with, as it is sent; empty where it was not. */
    String cookie() {
        return visitor.cookie();
    }

    public String at(String path) {
        return visitor.at(path);
    }

    public HttpResponse<String> get(String path) throws Exception {
        return visitor.get(path);
    }

    /** What is no text. */
    public HttpResponse<byte[]> bytes(String path) throws Exception {
        return visitor.bytes(path);
    }

    /** A form as a page of the counter sends it. @param fields names and values in turn */
    public HttpResponse<String> post(String path, String... fields) throws Exception {
        return visitor.post(path, fields);
    }

    @Override
    public void close() {
        counter.close();
    }
}
