package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.OutputType;

/**
 * Every view of the counter, wide and as on a phone: nothing is in the way of a reader who cannot see, and nothing runs
 * out of the side. With {@code -Dupdate.pictures=true} it draws the pictures of docs/counter.md too.
 */
class EveryViewTest {

    private static final String TOURING = "/sheets/touring.yaml";
    /** Each view, and what it holds once it is whole. */
    private static final List<List<String>> VIEWS = List.of(
            List.of("/", "#sheets .by-stop"),
            List.of("/new", "#customer"),
            List.of(TOURING, "#asks .answer"),
            List.of(TOURING + "/buy", "main table"),
            List.of(TOURING + "/letters", "main h1"),
            List.of(TOURING + "/work", "main table"),
            List.of(TOURING + "/print?for=customer", ".print-frame"),
            List.of(TOURING + "/copy", "main form"),
            List.of("/book?q=axle", "#found a"),
            List.of("/book/rules/mass.axle-over", "main h1"),
            List.of("/book/chapters/mass", "main h1"));

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    private static void show(List<String> view) {
        page.show(view.get(0));
        page.untilThere(view.get(1));
    }

    private static void click(String id) {
        page.script("document.getElementById(arguments[0]).click()", id);
    }

    private static List<String> foundIn(int width, int height) throws IOException {
        Chrome.screen(page.window(), width, height);
        List<String> found = new ArrayList<>();
        for (List<String> view : VIEWS) {
            show(view);
            if (view.get(0).equals(TOURING)) {
                click("f-fitments_6-fold-line");
                page.untilThere("#f-fitments_6_mass");
                click("finder-line");
                page.untilThere("#finder-box");
                click("look-for-offers");
                page.untilThere("[id^=try-]");
            }
            Chrome.inTheWay(page.window()).forEach(fault -> found.add(view.get(0) + " " + fault));
            Object wider =
                    page.script("return document.documentElement.scrollWidth > document.documentElement.clientWidth");
            if (Boolean.TRUE.equals(wider)) {
                found.add(view.get(0) + " runs out of the side");
            }
        }
        return found;
    }

    @Test
    void onAWideScreen() throws Exception {
        assertEquals(List.of(), foundIn(1280, 800));
        picture(VIEWS.get(0), "sheets", 1280);
        picture(VIEWS.get(2), "sheet", 1280);
    }

    @Test
    void onAPhone() throws Exception {
        assertEquals(List.of(), foundIn(360, 740));
        picture(VIEWS.get(2), "phone", 360);
    }

    private static void picture(List<String> view, String name, int width) throws IOException {
        if (Boolean.getBoolean("update.pictures")) {
            show(view);
            byte[] drawn = page.window().getScreenshotAs(OutputType.BYTES);
            assertEquals(width, ImageIO.read(new ByteArrayInputStream(drawn)).getWidth(), "px wide");
            Files.createDirectories(Path.of("docs/counter"));
            Files.write(Path.of("docs/counter", name + ".png"), drawn);
        }
    }
}
