package fitworthy.printout;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import fitworthy.advice.Advice;
import fitworthy.advice.HouseUse;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Waiving;
import fitworthy.book.Book;
import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Waiver;
import fitworthy.source.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Advice as JSON, in the shape that docs/output.md describes. */
public final class JsonPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-advice/1";

    private final JsonGenerator json;

    private JsonPrintout(JsonGenerator json) {
        this.json = json;
    }

    /** Prints advice whose findings are no milder than {@code mildest}. */
    public static void print(PrintWriter out, Advice advice, Severity mildest) {
        try (JsonGenerator json =
                new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            new JsonPrintout(json).advice(advice, mildest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.println();
        out.flush();
    }

    private void advice(Advice advice, Severity mildest) throws IOException {
        json.writeStartObject();
        json.writeStringField("shape", SHAPE);
        json.writeStringField("title", advice.sheet().title());
        json.writeStringField("vehicle", advice.sheet().vehicle().name());
        json.writeStringField("region", advice.sheet().region());
        json.writeStringField("as-of", advice.sheet().asOf().toString());
        json.writeObjectFieldStart("book");
        json.writeStringField("name", advice.book().cover().name());
        json.writeStringField("edition", advice.book().cover().edition());
        json.writeStringField("content", advice.book().hash());
        json.writeEndObject();
        house(advice);
        json.writeStringField("caution", advice.book().cover().caution());
        texts(
                "cases",
                advice.loadings().stream().map(each -> each.loadCase().name()).toList());
        Optional<Severity> worst = advice.worst();
        json.writeStringField(
                "worst", worst.map(each -> Words.hyphenated(each.name())).orElse("none"));
        json.writeArrayFieldStart("findings");
        for (Finding finding : advice.findings()) {
            if (finding.judged().card().severity().value().compareTo(mildest) <= 0) {
                finding(advice, finding);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("met");
        for (Met met : advice.met()) {
            json.writeStartObject();
            head(met.judged(), met.comparison());
            json.writeStringField(
                    "text",
                    Wording.fill(
                            met.judged().card().met(), met.judged(), met.comparison(), met.evidence(), met.practice()));
            json.writeArrayFieldStart("practice");
            for (Practice practice : met.practice()) {
                practice(practice);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("not-assessed");
        for (NotAssessed each : advice.notAssessed()) {
            json.writeStartObject();
            head(each.judged(), Optional.empty());
            json.writeArrayFieldStart("missing");
            for (Missing missing : each.missing()) {
                json.writeStartObject();
                json.writeStringField("field", missing.path());
                json.writeStringField("meaning", missing.meaning());
                json.writeStringField("find", missing.find());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("waivers");
        for (Waiving each : advice.waivers()) {
            json.writeStartObject();
            json.writeStringField("rule", each.waiver().rule());
            json.writeStringField("subject", each.waiver().subject());
            json.writeStringField("case", each.waiver().in());
            waiver(each.waiver());
            json.writeStringField("state", Words.hyphenated(each.state().name()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void waiver(Waiver waiver) throws IOException {
        json.writeStringField("reason", waiver.reason());
        json.writeStringField("by", waiver.by());
        json.writeStringField("until", waiver.until().toString());
    }

    private void house(Advice advice) throws IOException {
        if (advice.book().house().isNone()) {
            return;
        }
        HouseUse use = HouseUse.of(advice);
        json.writeObjectFieldStart("house");
        json.writeStringField("shop", advice.book().house().page().shop());
        json.writeStringField("file", advice.book().house().file());
        json.writeStringField("content", advice.book().house().content());
        json.writeArrayFieldStart("values");
        for (Practice each : use.values()) {
            practice(each);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("severities");
        for (House.SetSeverity each : use.severities()) {
            json.writeStartObject();
            json.writeStringField("rule", each.set().rule());
            severity(each);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("without-effect");
        for (HouseUse.Idle each : use.idle()) {
            json.writeStartObject();
            json.writeStringField("entry", each.entry());
            json.writeStringField("why", Words.hyphenated(each.why().name()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void severity(House.SetSeverity set) throws IOException {
        json.writeStringField(
                "severity", Words.hyphenated(set.set().severity().value().name()));
        json.writeStringField("in-place-of", Words.hyphenated(set.recorded().name()));
        json.writeBooleanField("milder", set.milder());
        json.writeStringField("reason", set.set().reason());
        json.writeStringField("name", set.set().name());
    }

    private void finding(Advice advice, Finding finding) throws IOException {
        Judged judged = finding.judged();
        json.writeStartObject();
        json.writeStringField(
                "severity", Words.hyphenated(judged.card().severity().value().name()));
        if (advice.book().house().severities().containsKey(judged.id())) {
            json.writeObjectFieldStart("house-severity");
            severity(advice.book().house().severities().get(judged.id()));
            json.writeEndObject();
        }
        if (finding.waiver().isPresent()) {
            json.writeObjectFieldStart("waiver");
            waiver(finding.waiver().get());
            json.writeEndObject();
        }
        head(judged, finding.comparison());
        UnaryOperator<String> filled =
                text -> Wording.fill(text, judged, finding.comparison(), finding.evidence(), finding.practice());
        json.writeStringField("title", filled.apply(judged.card().title()));
        json.writeStringField("remedy", Wording.remedy(finding));
        json.writeStringField("why", filled.apply(judged.card().why()));
        json.writeStringField("ask", filled.apply(judged.card().ask()));
        json.writeArrayFieldStart("evidence");
        for (Measure measure : finding.evidence()) {
            json.writeStartObject();
            json.writeStringField("measure", measure.getName());
            json.writeStringField("subject", measure.getSubject());
            if (measure.getWord().isEmpty()) {
                number("value", measure.getValue(), measure.kind());
                json.writeStringField("unit", measure.kind().unit());
            } else {
                json.writeStringField("word", measure.getWord());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("practice");
        for (Practice practice : finding.practice()) {
            practice(practice);
        }
        json.writeEndArray();
        json.writeStringField(
                "basis", Words.hyphenated(judged.card().basis().value().name()));
        texts("sources", judged.card().sources());
        json.writeEndObject();
    }

    private void head(Judged judged, Optional<Comparison> comparison) throws IOException {
        json.writeStringField("id", judged.id());
        json.writeStringField("rule", judged.rule().place().inBook());
        json.writeStringField("subject", judged.subject());
        json.writeStringField("case", judged.loadCase());
        json.writeStringField("measure", judged.measure().getName());
        if (comparison.isPresent()) {
            Comparison compared = comparison.get();
            MeasureKind kind = judged.measure().kind();
            json.writeStringField("unit", kind.unit());
            number("value", compared.value(), kind);
            number("tolerance", compared.tolerance(), kind);
            number("limit", compared.limit(), kind);
            number("margin", compared.margin(), kind);
            json.writeBooleanField("tolerance-could-turn-it", compared.uncertain());
        }
    }

    private void practice(Practice practice) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", practice.id());
        json.writeStringField("value", Wording.value(practice));
        json.writeStringField("region", practice.entry().region());
        json.writeStringField("from", practice.entry().from().toString());
        json.writeStringField(
                "basis", Words.hyphenated(practice.entry().basis().value().name()));
        texts("sources", practice.entry().sources());
        json.writeStringField("note", practice.entry().note());
        if (practice.house().isPresent()) {
            House.Use use = practice.house().get();
            json.writeObjectFieldStart("house");
            json.writeBooleanField("looser", use.looser());
            json.writeStringField("reason", use.set().reason());
            json.writeStringField("name", use.set().name());
            if (use.recorded() instanceof Book.Lookup.Found found) {
                json.writeFieldName("in-place-of");
                practice(found.practice());
            } else {
                json.writeStringField(
                        "in-place-of", use.recorded() instanceof Book.Lookup.NoneApplies ? "none" : "not-recorded");
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void number(String name, double value, MeasureKind kind) throws IOException {
        json.writeNumberField(name, Wording.exact(value, kind));
    }

    private void texts(String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
