package fitworthy.counter.sheets;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Where the page of a sheet is. */
final class Sheets {

    private Sheets() {}

    /** Goes to the page of a sheet that was just made. */
    static void open(Context sent, Path sheet) {
        String name = URLEncoder.encode(sheet.getFileName().toString(), StandardCharsets.UTF_8);
        sent.redirect("/sheets/" + name.replace("+", "%20"), HttpStatus.SEE_OTHER);
    }
}
