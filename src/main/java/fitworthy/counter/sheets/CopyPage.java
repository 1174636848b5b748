package fitworthy.counter.sheets;

import fitworthy.counter.desk.SheetFolder;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Copies a sheet to a new file, letter by letter. */
public final class CopyPage implements Routes {

    private final SheetFolder folder;

    public CopyPage(SheetFolder folder) {
        this.folder = folder;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/sheets/{sheet}/copy",
                sent -> ask(sent, FileName.ofCopy(sheet(sent).getFileName().toString(), folder), ""));
        routes.post("/sheets/{sheet}/copy", this::copy);
    }

    private Path sheet(Context sent) {
        return folder.find(sent.pathParam("sheet")).orElseThrow(() -> new NotFoundResponse("no such sheet"));
    }

    private static void ask(Context sent, String to, String fault) {
        sent.status(fault.isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT)
                .html(Pages.html(
                        "sheets/copy.jte", Map.of("sheet", sent.pathParam("sheet"), "to", to, "fault", fault)));
    }

    private void copy(Context sent) {
        Path from = sheet(sent);
        String to = Sent.form(sent, "to");
        Optional<Path> place = FileName.place(to, folder);
        if (place.isEmpty()) {
            ask(sent, to, FileName.refused(to));
        } else if (!folder.add(place.get(), content(from))) {
            ask(sent, to, FileName.taken(place.get()));
        } else {
            Sheets.open(sent, place.get());
        }
    }

    private static byte[] content(Path sheet) {
        List<Fault> faults = new ArrayList<>();
        byte[] content = InputFile.bytes(sheet, faults);
        if (content == null || content.length > InputFile.LARGEST_BYTES) {
            throw new ConflictResponse("The sheet cannot be read, so that it cannot be copied either.");
        }
        return content;
    }
}
