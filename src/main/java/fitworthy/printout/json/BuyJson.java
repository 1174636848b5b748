package fitworthy.printout.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.After;
import fitworthy.advice.BuyList.Found;
import fitworthy.advice.BuyList.HeldBy;
import fitworthy.advice.BuyList.Open;
import fitworthy.advice.BuyList.Part;
import fitworthy.advice.BuyList.Reason;
import fitworthy.advice.BuyList.TooHeavy;
import fitworthy.advice.BuyList.Unknown;
import fitworthy.advice.BuyList.Unruled;
import fitworthy.advice.Costs;
import fitworthy.advice.Costs.Sum;
import fitworthy.advice.Outcome.Judged;
import fitworthy.printout.words.BuyWords;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** What to buy and what it costs as JSON, in the shape that docs/output.md describes. */
public final class BuyJson {

    private BuyJson() {}

    /** @param readyBy null where the sheet has none */
    public record Buy(
            String readyBy,
            List<WrittenFirst> beforeAnything,
            List<String> notKnown,
            List<WrittenPart> orderNow,
            @JsonProperty("wait") List<WrittenPart> waiting,
            List<WrittenPart> notAsPlanned) {

        public static Buy of(Arrangement arrangement) {
            BuyList list = BuyList.of(arrangement);
            return new Buy(
                    list.wanted() == null ? null : list.wanted().toString(),
                    list.first().stream()
                            .map(finding -> new WrittenFirst(
                                    finding.id(), finding.worst().judged().subject(), BuyWords.title(finding)))
                            .toList(),
                    list.unknown().stream().map(Missing::path).toList(),
                    parts(list, BuyList.Decision.ORDER_NOW),
                    parts(list, BuyList.Decision.WAIT),
                    parts(list, BuyList.Decision.NOT_AS_PLANNED));
        }

        private static List<WrittenPart> parts(BuyList list, BuyList.Decision decision) {
            return list.parts(decision).stream().map(WrittenPart::of).toList();
        }
    }

    record WrittenFirst(String id, String subject, String title) {}

    /** @param price null where there is none @param leadDays null where not known @param lastDay likewise */
    record WrittenPart(String name, String price, Double leadDays, String lastDay, List<WrittenReason> reasons) {
        public static WrittenPart of(Part part) {
            return new WrittenPart(
                    part.name(),
                    part.price() == null ? null : part.price().toString(),
                    part.leadTime().known() ? part.leadTime().value() / Dimension.size("days") : null,
                    part.lastDay().map(Object::toString).orElse(null),
                    part.reasons().stream()
                            .map(reason -> WrittenReason.of(reason, part))
                            .toList());
        }
    }

    /** @param id null where no finding is the reason; those below likewise @param lighterBy kg */
    record WrittenReason(
            String asksFor,
            String words,
            String id,
            String subject,
            Double lighterBy,
            List<String> fields,
            String choice,
            List<String> after) {
        public static WrittenReason of(Reason reason, Part part) {
            Judged judged = reason instanceof Found found
                    ? found.finding().worst().judged()
                    : reason instanceof TooHeavy heavy
                            ? heavy.finding().worst().judged()
                            : reason instanceof HeldBy held
                                    ? held.finding().worst().judged()
                                    : null;
            List<Missing> fields = reason instanceof Found found
                    ? found.guesses()
                    : reason instanceof Unknown unknown
                            ? unknown.figures()
                            : reason instanceof Unruled unruled ? unruled.values() : List.of();
            return new WrittenReason(
                    Words.hyphenated(reason.asksFor().name()),
                    BuyWords.words(reason, part),
                    judged == null ? null : judged.id(),
                    judged == null ? null : judged.subject(),
                    reason instanceof TooHeavy heavy
                            ? Wording.exact(heavy.by(), judged.measure().kind())
                            : null,
                    fields.isEmpty() ? null : fields.stream().map(Missing::path).toList(),
                    reason instanceof Open open ? open.option().name() : null,
                    reason instanceof After after ? after.parts() : null);
        }
    }

    /** @param workingDays null where not all are known */
    record Cost(
            @JsonUnwrapped WrittenSum total,
            List<WrittenGroup> groups,
            List<WrittenCertificate> certificates,
            Double workingDays) {
        public static Cost of(Advice advice) {
            Costs costs = Costs.of(advice);
            return new Cost(
                    WrittenSum.of(costs.total()),
                    costs.groups().entrySet().stream()
                            .map(group -> new WrittenGroup(
                                    Words.hyphenated(group.getKey().name()), WrittenSum.of(group.getValue())))
                            .toList(),
                    costs.certificates().stream()
                            .map(paper -> new WrittenCertificate(
                                    paper.name(),
                                    paper.price() == null ? null : paper.price().toString()))
                            .toList(),
                    costs.work().known() ? costs.work().value() : null);
        }
    }

    record WrittenSum(Map<String, BigDecimal> sum, List<String> withoutPrice) {
        public static WrittenSum of(Sum sum) {
            return new WrittenSum(sum.sums(), sum.unpriced());
        }
    }

    record WrittenGroup(String group, @JsonUnwrapped WrittenSum total) {}

    /** @param price null where there is none */
    record WrittenCertificate(String name, String price) {}
}
