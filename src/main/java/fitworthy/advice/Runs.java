package fitworthy.advice;

import fitworthy.sheet.Sheet;
import java.util.Map;
import java.util.Objects;

/**
 * What an advice was made of, so that the next, on a sheet not much unlike it, need not run every rule again.
 *
 * @param sheet the sheet
 * @param alike what came of the rules that the loading makes no difference to
 * @param byCase what came of the others, by load case
 */
record Runs(Sheet sheet, RuleRun alike, Map<String, RuleRun> byCase) {

    /** As far as another sheet may build on it: one of the same region and day, of a vehicle as old. */
    Runs under(Sheet other) {
        return sheet.region().equals(other.region())
                        && sheet.asOf().equals(other.asOf())
                        && Objects.equals(
                                sheet.vehicle().registered(), other.vehicle().registered())
                ? this
                : none(other);
    }

    static Runs none(Sheet sheet) {
        return new Runs(sheet, RuleRun.NOTHING, Map.of());
    }

    RuleRun in(String loadCase) {
        return byCase.getOrDefault(loadCase, RuleRun.NOTHING);
    }
}
