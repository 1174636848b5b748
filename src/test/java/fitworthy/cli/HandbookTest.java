package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.PracticeEntry;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookTest {

    @TempDir
    private static Path folder;

    @Test
    void theHandbookHoldsEveryRuleAndEveryValueWithItsGrade() throws FaultsException, IOException {
        Path markdown = folder.resolve("handbook.md");
        Path html = folder.resolve("handbook.html");
        Ran ran = Ran.of("handbook", "--markdown", markdown.toString(), "--html", html.toString());
        assertEquals(0, ran.code(), ran.err());
        String text = Files.readString(markdown).replace("\\", "");
        String page = Files.readString(html);
        Book book = Books.shipped();
        Set<String> absent = new TreeSet<>();
        book.cards().forEach((id, card) -> {
            if (!text.contains("### " + id + ": " + card.title()) || !page.contains(">" + id + ": ")) {
                absent.add(id);
            }
        });
        String confirm = text.substring(text.indexOf("## What to go and confirm"));
        String memory = confirm.substring(0, confirm.indexOf("### Known only as common practice"));
        book.practice().forEach((id, entry) -> {
            for (PracticeEntry.Value value : entry.values()) {
                String row = "| " + id + " | " + entry.meaning() + " | " + value.region() + " | " + value.from() + " | "
                        + value.value() + " | " + value.basis().value().words();
                if (!text.contains(row) || memory.contains(row) != value.basis().is(Basis.MEMORY)) {
                    absent.add(row);
                }
            }
        });
        assertEquals(Set.of(), absent);
    }

    @Test
    void thePageOfARuleTellsCasesThatFireItAndLookAlikesThatAreFine() {
        Ran ran = Ran.of("handbook", "mass.gvm-over");
        assertEquals(0, ran.code(), ran.err());
        ran.says("- One kilogram over the GVM");
        String fine = ran.out().substring(ran.out().indexOf("Look-alikes that are fine"));
        assertTrue(fine.contains("- Exactly at the GVM is allowed, with nothing to spare"), fine);
        Ran.of("handbook", "mass.gvm-ovr").refused(2, "no rule 'mass.gvm-ovr' (did you mean 'mass.gvm-over'?)");
    }
}
