package fitworthy.sheet;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.Field;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import fitworthy.schema.Variant;
import fitworthy.source.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What docs/ says of sheets and measures, made of the code that reads and computes them. */
final class SheetDocs {

    /** The command that writes the files anew. */
    static final String REFRESH = "mvn -q -Dtest=SheetDocsTest -Dupdate.docs=true test";

    static final Path SCHEMA = Path.of("docs/sheet.schema.json");
    static final Path SHEET = Path.of("docs/sheet.md");
    static final Path MEASURES = Path.of("docs/measures.md");

    private static final String BEGIN =
            "<!-- Made from the code from here on. Do not edit; refresh with: " + REFRESH + " -->\n";

    private final StringBuilder page = new StringBuilder();

    private SheetDocs() {}

    /** The text that each file should have. The hand-written top of the sheet's page is kept. */
    static Map<Path, String> files() throws IOException {
        Map<Path, String> files = new LinkedHashMap<>();
        files.put(SCHEMA, schema());
        String page = Files.readString(SHEET);
        int begin = page.indexOf(BEGIN);
        if (begin < 0) {
            throw new IllegalStateException(SHEET + " lacks the line: " + BEGIN);
        }
        files.put(SHEET, page.substring(0, begin) + new SheetDocs().sheet());
        files.put(MEASURES, new SheetDocs().measures());
        return files;
    }

    private static String schema() throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
        return new ObjectMapper().writer(printer).writeValueAsString(SheetSchema.make()) + "\n";
    }

    private String sheet() {
        page.append(BEGIN).append("\n## Every field\n\n");
        paragraph("A field is *needed* where the sheet is refused without it; one inside a group is needed once the "
                + "group is given. `N` stands for a position in a list, counted from one, as in the messages. All "
                + "others may be left out: what then cannot be assessed is listed in the advice, with where to find "
                + "it. What is *printed only* stands on the printout and decides nothing. Beside the kind of quantity stands "
                + "between what it can lie, both ends included, and what is usual: a sheet is refused for what cannot be "
                + "and asked about what is unusual.");
        Map<Class<?>, List<String>> places = new LinkedHashMap<>();
        places(Sheet.class, "", places);
        places.forEach((type, paths) -> {
            if (Details.class.isAssignableFrom(type) && paths.stream().allMatch(SheetDocs::ofKind)) {
                return;
            }
            group(type.asSubclass(Record.class), paths);
        });
        kinds();
        units();
        return page.toString();
    }

    private static boolean ofKind(String path) {
        return path.contains(" ");
    }

    /** Every record with the paths at which it stands, in the order of the sheet. */
    private static void places(Class<? extends Record> type, String path, Map<Class<?>, List<String>> places) {
        places.computeIfAbsent(type, key -> new ArrayList<>()).add(path);
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            String inner = path.isEmpty() ? field.name() : path + "." + field.name();
            if (field.content() == FieldSchema.Content.GROUP) {
                places(field.type().asSubclass(Record.class), inner, places);
            } else if (field.content() == FieldSchema.Content.GROUPS) {
                places(field.type().asSubclass(Record.class), inner + ".N", places);
            } else if (field.tellsKind()) {
                for (Object kind : field.type().getEnumConstants()) {
                    Class<? extends Record> details = ((Variant) kind).details();
                    if (!RecordSchema.of(details).fields().isEmpty()) {
                        places(details, path + " of kind " + Words.hyphenated(((Enum<?>) kind).name()), places);
                    }
                }
            }
        }
    }

    private void group(Class<? extends Record> type, List<String> paths) {
        String first = paths.get(0);
        page.append("### ")
                .append(first.isEmpty() ? "The sheet" : "`" + first + "`")
                .append("\n\n");
        if (paths.size() > 1) {
            paragraph("The same fields stand in "
                    + paths.stream().skip(1).map(each -> "`" + each + "`").collect(Collectors.joining(", ")) + ".");
        }
        table(type, first.isEmpty() ? "" : first + ".");
    }

    private void table(Class<? extends Record> type, String prefix) {
        page.append("| Field | What it holds | Written as | Needed | Example | Where to find it |\n");
        page.append("| --- | --- | --- | --- | --- | --- |\n");
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            if (field.content() == FieldSchema.Content.FIELDS_OF_KIND) {
                continue;
            }
            boolean group =
                    field.content() == FieldSchema.Content.GROUP || field.content() == FieldSchema.Content.GROUPS;
            boolean found = field.content() == FieldSchema.Content.FIGURE
                    || field.content() == FieldSchema.Content.CHOICE
                    || !field.description().find().equals(anywhere());
            String example = group
                            || field.content() == FieldSchema.Content.CHOICE
                            || field.example().isEmpty()
                    ? ""
                    : "`" + field.name() + ": " + field.example() + "`";
            page.append("| `")
                    .append(prefix)
                    .append(field.name())
                    .append("` | ")
                    .append(field.description().value())
                    .append(field.description().printed() ? " *(printed only)*" : "")
                    .append(idle(field))
                    .append(" | ")
                    .append(writtenAs(field))
                    .append(type == Sheet.class && SheetSchema.ofShelf(field).isPresent() ? ", or from the shelf" : "")
                    .append(plausible(field))
                    .append(" | ")
                    .append(field.description().needed() ? "yes" : "")
                    .append(" | ")
                    .append(example)
                    .append(" | ")
                    .append(found ? field.description().find() : "")
                    .append(" |\n");
        }
        page.append('\n');
    }

    private static String idle(FieldSchema field) {
        List<String> idle = field.description().idle();
        return idle.isEmpty() ? "" : " *(`" + String.join("`, `", idle) + "` decides nothing here)*";
    }

    /** What a field's {@code find} says where its record does not. */
    private static String anywhere() {
        try {
            return (String) Field.class.getMethod("find").getDefaultValue();
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("@Field has lost its find", e);
        }
    }

    private static String writtenAs(FieldSchema field) {
        return switch (field.content()) {
            case TEXT -> "words";
            case FIGURE -> dimension(field) + (field.description().signed() ? ", may be negative" : "");
            case CHOICE -> quoted(ChoiceWords.of(field.type()));
            case DATE -> "year-month-day";
            case MONEY -> "amount and currency code";
            case GROUP -> field.description().inWords() ? "group, or a place in words" : "group";
            case TEXTS -> "list of names";
            case GROUPS -> "list of groups";
            case FIGURES -> "names, each with a " + dimension(field);
            case FIELDS_OF_KIND -> throw new IllegalStateException("the fields of a kind stand beside the others");
        };
    }

    /** Between what a figure or day can lie, and what is usual. */
    private static String plausible(FieldSchema field) {
        Plausible kind = field.description().within();
        return kind.isLimited()
                ? ", " + kind.least() + " to " + kind.most() + (kind.hasUsual() ? "; usually " + kind.usual() : "")
                : "";
    }

    private static String dimension(FieldSchema field) {
        return field.description().in() == Dimension.COUNT
                ? "plain number"
                : Words.hyphenated(field.description().in().name());
    }

    private void kinds() {
        page.append("## The kinds of fitment\n\n");
        List<String> plain = new ArrayList<>();
        for (Fitment.Kind kind : Fitment.Kind.values()) {
            if (RecordSchema.of(kind.details()).fields().isEmpty()) {
                plain.add("`" + Words.hyphenated(kind.name()) + "`");
            }
        }
        paragraph("Known by its mass and place alone: " + String.join(", ", plain)
                + ". The others may have these fields beside the common ones.");
        for (Fitment.Kind kind : Fitment.Kind.values()) {
            if (!RecordSchema.of(kind.details()).fields().isEmpty()) {
                page.append("### `kind: ").append(Words.hyphenated(kind.name())).append("`\n\n");
                table(kind.details(), "");
            }
        }
    }

    private void units() {
        page.append("## Units\n\n| Quantity | Units | Example |\n| --- | --- | --- |\n");
        for (Dimension dimension : Dimension.values()) {
            String units = dimension.units().keySet().stream()
                    .filter(each -> !each.isEmpty())
                    .map(each -> "`" + each + "`")
                    .collect(Collectors.joining(", "));
            page.append("| ")
                    .append(dimension == Dimension.COUNT ? "plain number" : Words.hyphenated(dimension.name()))
                    .append(" | ")
                    .append(units.isEmpty() ? "none" : units)
                    .append(" | `")
                    .append(dimension.example())
                    .append("` |\n");
        }
    }

    private String measures() {
        page.append("# The measures\n\n<!-- Made from the code. Do not edit; refresh with: ")
                .append(REFRESH)
                .append(" -->\n\n");
        paragraph(
                "A measure is a question that the figures answer: by a number in the unit given, or by one of the words "
                        + "listed, against which alone a rule may hold it. A number is never below zero unless it says so, and "
                        + "neither is then a practice value for it. Rules match on its name, cards say which one they are about. "
                        + "Where a measure has a limit of its own, a card may hold it `against: limit`.");
        String topic = "";
        for (MeasureKind kind : Measures.kinds().values()) {
            String own = kind.name().substring(0, kind.name().indexOf('.'));
            if (!own.equals(topic)) {
                page.append(topic.isEmpty() ? "" : "\n")
                        .append("## ")
                        .append(own)
                        .append(
                                "\n\n| Measure | Answered by | Unit | What it is | Its own limit | Asked of |\n| --- | --- | --- | --- | --- | --- |\n");
                topic = own;
            }
            page.append("| `")
                    .append(kind.name())
                    .append("` | ")
                    .append(answeredBy(kind))
                    .append(" | ")
                    .append(kind.unit())
                    .append(" | ")
                    .append(kind.meaning())
                    .append(" | ")
                    .append(kind.limitMeaning())
                    .append(" | ")
                    .append(kind.scope() == MeasureKind.Scope.LOADING ? "each load case" : "the plan")
                    .append(" |\n");
        }
        return page.toString();
    }

    private static String answeredBy(MeasureKind kind) {
        return kind.answer() instanceof MeasureKind.Answer.LookedUp
                ? "a word of a table"
                : kind.answer() instanceof MeasureKind.Answer.Word
                        ? quoted(kind.words()) + (kind.saysNothingElse() ? "" : ", or what there is in words")
                        : kind.isSigned() ? "a number, may be negative" : "a number";
    }

    private static String quoted(List<String> words) {
        return words.stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
    }

    private void paragraph(String text) {
        page.append(text).append("\n\n");
    }

    /** Writes the files that differ from what the code says. */
    static void refresh() throws IOException {
        for (Map.Entry<Path, String> file : files().entrySet()) {
            Files.write(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}
