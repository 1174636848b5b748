package fitworthy.effect;

import com.fasterxml.jackson.annotation.JsonProperty;
import fitworthy.advice.Advice;
import fitworthy.advice.View;
import fitworthy.batch.Refusal;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.List;

/**
 * What a change of practice does to one sheet, or why that cannot be told.
 *
 * @param region by which it was looked at before, where its own is new to the book; else null
 * @param sheet its file, with its line where the file holds many
 * @param differences what comes out otherwise; null where the sheet cannot be used
 * @param faults why it cannot be used; null where it can
 */
public record SheetEffect(
        String sheet,
        String title,
        @JsonProperty("before-region") String region,
        Worst worst,
        List<Difference> differences,
        List<Refusal> faults) {

    /** The worst finding that is not waived, or {@code none}, on both sides. */
    public record Worst(String before, String after) {
        boolean changes() {
            return !before.equals(after);
        }
    }

    /** Looks at a sheet from both sides. @param faults what was found wrong so far */
    static SheetEffect of(View before, View after, String sheet, Node.Mapping root, List<Fault> faults) {
        List<Fault> wasWrong = new ArrayList<>(faults);
        List<Fault> isWrong = new ArrayList<>(faults);
        View known = known(before, after, root);
        Advice old = advice(known, root, wasWrong);
        Advice now = advice(after, root, isWrong);
        if (old == null || now == null) {
            // What is wrong on both sides is told once.
            return refused(
                    sheet,
                    old == null ? Refusal.of(wasWrong, now == null ? "" : "before: ") : Refusal.of(isWrong, "after: "));
        }
        return new SheetEffect(
                sheet,
                now.sheet().title(),
                known == before ? null : known.region(),
                new Worst(old.worstWord(), now.worstWord()),
                Difference.between(old, now),
                null);
    }

    /**
     * How a sheet is looked at before the change: where the book has its region only afterwards, by the nearest of those
     * above it, which is where whoever is there had to look until then.
     */
    private static View known(View before, View after, Node.Mapping root) {
        String region = after.region() != null
                ? after.region()
                : root != null && root.get("region") instanceof Node.Scalar written ? written.text() : null;
        boolean isNew = after.book().regions().containsKey(region)
                && !before.book().regions().containsKey(region)
                && (before.region() == null || before.region().equals(region));
        return !isNew
                ? before
                : after.book().lineage(region).stream()
                        .filter(before.book().regions()::containsKey)
                        .findFirst()
                        .map(nearest -> new View(before.engine(), nearest, before.asOf(), before.shelves()))
                        .orElse(before);
    }

    static SheetEffect refused(String sheet, List<Refusal> faults) {
        return new SheetEffect(sheet, null, null, null, null, faults);
    }

    private static Advice advice(View view, Node.Mapping root, List<Fault> faults) {
        try {
            return view.advise(root, faults);
        } catch (FaultsException e) {
            return null;
        }
    }

    boolean isBad() {
        return faults != null;
    }

    /** The same under another name, since a journal knows a sheet by what it says. */
    SheetEffect named(String name) {
        return new SheetEffect(name, title, region, worst, differences, faults);
    }
}
