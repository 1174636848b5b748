package fitworthy;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import java.io.FileOutputStream;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The order of the house: which room may know which, and what is done in one place alone. */
class ArchitectureTest {

    /** The rooms in their order; each knows those before it. A topic stands for every package of a topic. */
    private static final List<String> ROOMS = List.of(
            "source",
            "quantity",
            "schema",
            "sheet",
            "shelf",
            "figures.measure",
            "figures.plan",
            "figures.(topic)",
            "figures",
            "rules",
            "book",
            "engine",
            "usual",
            "advice",
            "search",
            "document",
            "printout.words",
            "printout.picture",
            "printout",
            "printout.json",
            "printout.letter",
            "printout.explain",
            "printout.screen",
            "proof",
            "handbook",
            "changes",
            "batch",
            "learn",
            "effect",
            "counter.desk",
            "counter.edit",
            "counter.page",
            "counter.search",
            "counter.sheet",
            "counter.(view)",
            "counter",
            "cli");

    /** Rooms of the counter that are no view of it. */
    private static final Set<String> NO_VIEW = Set.of(
            "fitworthy.counter",
            "fitworthy.counter.desk",
            "fitworthy.counter.edit",
            "fitworthy.counter.page",
            "fitworthy.counter.search",
            "fitworthy.counter.sheet",
            "fitworthy.counter.template");

    /** Rooms inside figures that are no topic. */
    private static final Set<String> NO_TOPIC =
            Set.of("fitworthy.figures", "fitworthy.figures.measure", "fitworthy.figures.plan");

    private static final Set<String> WRITERS = Set.of(
            "fitworthy.source.WholeFile",
            "fitworthy.source.Leftovers",
            "fitworthy.effect.Journal",
            "fitworthy.counter.desk.Journal",
            "fitworthy.engine.Adding",
            "fitworthy.engine.CacheFolder",
            "fitworthy.engine.ShippedRulesBuild");

    private static final Set<String> READERS = Set.of("fitworthy.source.InputFile", "fitworthy.engine.CacheFolder");

    /** What the packaging compiles of the shipped rule files is made, not written, and may lie beside the others. */
    private static final Pattern MADE = Pattern.compile(".*/fitworthy/compiled/.*");

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(location -> !location.matches(MADE))
            .importPath("target/classes/fitworthy");

    @Test
    void eachRoomKnowsThoseBeforeIt() {
        inOrder(ROOMS)
                .as("each room knows those before it")
                .because(
                        "data moves one way, so what stands early can be read, tested and changed without what comes later")
                .check(CODE);
    }

    @Test
    void noTopicKnowsAnother() {
        slices().assignedFrom(slicedBy("topic", type -> isTopic(type) ? type.getPackageName() : null))
                .should()
                .notDependOnEachOther()
                .because(
                        "a topic is added, read and taken out by itself; what two of them need belongs to figures.plan")
                .check(CODE);
    }

    @Test
    void noViewOfTheCounterKnowsAnother() {
        slices().assignedFrom(slicedBy("view", type -> isView(type) ? type.getPackageName() : null))
                .should()
                .notDependOnEachOther()
                .because("a view of the counter's page is added, changed and taken out by itself")
                .check(CODE);
    }

    @Test
    void noCircleOfClasses() {
        slices().assignedFrom(slicedBy("family", ArchitectureTest::family))
                .should()
                .beFreeOfCycles()
                .because(
                        "classes in a circle can only be understood all at once; a sealed type and its kinds are one thing")
                .check(CODE);
    }

    @Test
    void pagesAreMadeOfTheDocumentAlone() {
        noClasses()
                .that()
                .resideInAPackage("fitworthy.document..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("fitworthy..")
                        .and(resideOutsideOfPackages("fitworthy.document..", "fitworthy.source")))
                .because("a document lays words out and must not be able to decide anything about a vehicle")
                .check(CODE);
    }

    @Test
    void theEngineAloneRunsRules() {
        noClasses()
                .that()
                .resideOutsideOfPackage("fitworthy.engine")
                .should()
                .dependOnClassesThat(resideInAnyPackage("org.drools..", "org.kie..")
                        .and(resideOutsideOfPackages("org.drools.drl..")))
                .because("the rule engine can only be replaced, or doubted, where one room knows it")
                .check(CODE);
    }

    @Test
    void rulesAloneReadTheirSyntax() {
        noClasses()
                .that()
                .resideOutsideOfPackages("fitworthy.engine", "fitworthy.rules")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.drools.drl..")
                .because("rules hands on conditions of its own, which hold no more than a rule file may say")
                .check(CODE);
    }

    @Test
    void commandsAloneKnowTheCommandLine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("fitworthy.cli")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .because("everything but the thin commands has to serve a program as it serves a terminal")
                .check(CODE);
    }

    @Test
    void theCounterAloneServes() {
        noClasses()
                .that()
                .resideOutsideOfPackages("fitworthy.counter..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta..")
                .because("no other command finds these libraries on its path")
                .check(CODE);
        noClasses()
                .that()
                .resideInAPackage("fitworthy.counter.desk")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta..")
                .because("what becomes of a sheet is decided and tried without a server")
                .check(CODE);
    }

    @Test
    void mainAloneEndsTheProgram() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("fitworthy.cli.Main")
                .should()
                .callMethod(System.class, "exit", int.class)
                .because(
                        "a command that returns its exit code can be run inside a test, and a batch outlives a bad sheet")
                .check(CODE);
    }

    @Test
    void topicsGetPlacesFromThePlan() {
        noClasses()
                .that(describe("belong to a topic", ArchitectureTest::isTopic))
                .should()
                .accessTargetWhere(handsOutAPlaceAsWritten())
                .because("a place on a sheet is not exact, and Places alone says how sure it is")
                .check(CODE);
    }

    private static DescribedPredicate<JavaAccess<?>> handsOutAPlaceAsWritten() {
        Set<String> places = Set.of(Point.class.getName(), Space.class.getName());
        return describe("hands out a place as the sheet writes it", access -> {
            JavaClass owner = access.getTargetOwner();
            return owner.getPackageName().equals("fitworthy.sheet")
                    && !places.contains(owner.getName())
                    && access.getTarget() instanceof CodeUnitAccessTarget target
                    && target.resolveMember().stream()
                            .flatMap(member -> member.getReturnType().getAllInvolvedRawTypes().stream())
                            .anyMatch(type -> places.contains(type.getName()));
        });
    }

    @Test
    void fewWriteFiles() {
        WRITERS.forEach(name -> assertTrue(CODE.contain(name), name));
        noClasses()
                .that(describe("are no writers of files", type -> !WRITERS.contains(type.getName())))
                .should()
                .callCodeUnitWhere(writesAFile())
                .because(
                        "a file is printed whole or not at all (WholeFile, and Leftovers of killed runs), journals only"
                                + " grow, a cache may be lost, and the build writes its own classes: nothing else may leave half"
                                + " a file")
                .check(CODE);
    }

    @Test
    void fewReadFiles() {
        READERS.forEach(name -> assertTrue(CODE.contain(name), name));
        Pattern ways = Pattern.compile("read(AllBytes|AllLines|String)|lines|newBufferedReader|newInputStream");
        noClasses()
                .that(describe("are no readers of files", type -> !READERS.contains(type.getName())))
                .should()
                .callMethodWhere(describe(
                        "reads a file",
                        call -> call.getTarget().getOwner().isEquivalentTo(Files.class)
                                && ways.matcher(call.getTarget().getName()).matches()))
                .because(
                        "a pipe is waited for without end and a link may lead anywhere: what is opened is looked at first"
                                + " (InputFile), and a cache looks for itself")
                .check(CODE);
    }

    private static LayeredArchitecture inOrder(List<String> rooms) {
        LayeredArchitecture house = layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String room : rooms) {
            house = house.layer(room).definedBy(in(room));
        }
        for (int i = 0; i < rooms.size(); i++) {
            String[] before = rooms.subList(0, i).toArray(String[]::new);
            house = before.length == 0
                    ? house.whereLayer(rooms.get(i)).mayNotAccessAnyLayer()
                    : house.whereLayer(rooms.get(i)).mayOnlyAccessLayers(before);
        }
        return house.ensureAllClassesAreContainedInArchitectureIgnoring(
                resideInAnyPackage("fitworthy.document.template", "fitworthy.counter.template.."));
    }

    private static DescribedPredicate<JavaClass> in(String room) {
        return switch (room) {
            case "figures.(topic)" -> describe("the packages of topics", ArchitectureTest::isTopic);
            case "counter.(view)" -> describe("the packages of views", ArchitectureTest::isView);
            default -> resideInAnyPackage("fitworthy." + room);
        };
    }

    private static boolean isView(JavaClass type) {
        return type.getPackageName().startsWith("fitworthy.counter.")
                && !type.getPackageName().startsWith("fitworthy.counter.template")
                && !NO_VIEW.contains(type.getPackageName());
    }

    private static boolean isTopic(JavaClass type) {
        return type.getPackageName().startsWith("fitworthy.figures") && !NO_TOPIC.contains(type.getPackageName());
    }

    /** The outermost class around one; for a kind of a sealed type, that around the sealed type. */
    private static String family(JavaClass type) {
        JavaClass outermost = type;
        while (outermost.getEnclosingClass().isPresent()) {
            outermost = outermost.getEnclosingClass().get();
        }
        JavaClass kind = outermost;
        return Stream.concat(kind.getRawInterfaces().stream(), kind.getRawSuperclass().stream())
                .filter(above -> above.getPackageName().startsWith("fitworthy")
                        && above.reflect().isSealed())
                .findFirst()
                .map(ArchitectureTest::family)
                .orElse(kind.getName());
    }

    private static DescribedPredicate<JavaCall<?>> writesAFile() {
        Set<Class<?>> writers = Set.of(FileWriter.class, RandomAccessFile.class);
        Pattern ways =
                Pattern.compile("write.*|newBufferedWriter|newOutputStream|newByteChannel|copy|move|create.*|delete.*");
        return describe("writes, moves or deletes a file", call -> {
            CodeUnitCallTarget target = call.getTarget();
            JavaClass owner = target.getOwner();
            boolean opensByName = owner.isEquivalentTo(FileOutputStream.class)
                    && !target.getRawParameterTypes().get(0).getSimpleName().equals("FileDescriptor");
            return opensByName
                    || writers.stream().anyMatch(owner::isEquivalentTo)
                    || (owner.isEquivalentTo(FileChannel.class)
                            && target.getName().equals("open"))
                    || (owner.isEquivalentTo(Files.class)
                            && ways.matcher(target.getName()).matches());
        });
    }

    /** Classes in slices by the name that is given to each, or in none where that is null. */
    private static SliceAssignment slicedBy(String what, Function<JavaClass, String> name) {
        return new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass type) {
                String slice = name.apply(type);
                return slice == null ? SliceIdentifier.ignore() : SliceIdentifier.of(slice);
            }

            @Override
            public String getDescription() {
                return "classes by " + what;
            }
        };
    }
}
