package fitworthy.engine;

import fitworthy.figures.Measures;
import fitworthy.rules.RuleParser;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.CanonicalKieModule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.runtime.KieSessionsPool;

/** Turns rule text into classes, and classes into sessions that run them. */
final class RuleCompiler {

    /** Put before the first rule of every file. */
    private static final String PREAMBLE = "package fitworthy.compiled; import fitworthy.figures.measure.Measure;"
            + " import fitworthy.book.Practice; import fitworthy.rules.Advised;"
            + " global fitworthy.engine.RuleAction advice; ";

    private static final String CLASS = ".class";
    private static final String MODELS = CanonicalKieModule.MODEL_FILE_NAME;

    /**
     * In bytes. The shipped rules compile in 96 MiB and not in 64. Where memory ends meanwhile, a thread of the compiler's
     * own may die of it and leave the rest waiting for it without end, as was seen with 32 MiB.
     */
    private static final long LEAST_MEMORY = 80L << 20;

    private RuleCompiler() {}

    /**
     * Compiles rule files that {@link RuleParser} has passed.
     *
     * @param texts rule text by file name
     * @param faults gets what the compiler finds wrong
     * @return the classes and the list of models among them, by file name
     */
    static Map<String, byte[]> compile(Map<String, String> texts, List<Fault> faults) {
        Map<String, String> run = new TreeMap<>();
        texts.forEach((file, text) -> run.put(file, asRun(file, text)));
        return compileAsWritten(run, texts, faults);
    }

    /** Compiles text that no parser has passed. @param texts what faults are told of */
    static Map<String, byte[]> compileAsWritten(
            Map<String, String> run, Map<String, String> texts, List<Fault> faults) {
        KieBuilder builder = built(run);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            int before = faults.size();
            texts.forEach((file, text) -> tell(file, text, faults));
            if (faults.size() == before) {
                faults.add(fault(Place.of("rules"), errors));
            }
            return Map.of();
        }
        Map<String, byte[]> compiled = new TreeMap<>();
        InternalKieModule module = (InternalKieModule) builder.getKieModule();
        module.getFileNames().stream()
                .filter(file -> file.endsWith(CLASS) || file.endsWith(MODELS))
                .forEach(file -> compiled.put(file, module.getBytes(file)));
        return compiled;
    }

    /** A rule file as it is run, which asks more than it says: whether what its rules compare is known. */
    private static String asRun(String file, String text) {
        return RuleParser.parse(file, text, Measures.kinds().keySet(), new ArrayList<>()).stream()
                .map(rule -> rule.asRun().toString())
                .collect(Collectors.joining("\n"));
    }

    private static KieBuilder built(Map<String, String> texts) {
        if (Runtime.getRuntime().maxMemory() < LEAST_MEMORY) {
            throw new OutOfMemoryError("rules are compiled in " + LEAST_MEMORY + " bytes or more");
        }
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        texts.forEach((file, text) -> files.write(
                "src/main/resources/fitworthy/compiled/" + baseName(file),
                services.getResources().newByteArrayResource((PREAMBLE + text).getBytes(StandardCharsets.UTF_8))));
        return services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    }

    /**
     * The compiler's own lines are often those of code that it made, so that each rule of a file at fault is tried
     * alone.
     */
    private static void tell(String file, String text, List<Fault> faults) {
        List<Message> whole = errors(file, asRun(file, text));
        if (whole.isEmpty()) {
            return;
        }
        int before = faults.size();
        for (RuleText rule : RuleParser.parse(file, text, Measures.kinds().keySet(), new ArrayList<>())) {
            List<Message> errors = errors(file, rule.asRun().toString());
            if (!errors.isEmpty()) {
                faults.add(fault(rule.place(), errors));
            }
        }
        if (faults.size() == before) {
            faults.add(fault(Place.of(file), whole));
        }
    }

    private static List<Message> errors(String file, String text) {
        return built(Map.of(file, text)).getResults().getMessages(Message.Level.ERROR);
    }

    /** The shortest message says it best: the longer ones hold the code that the compiler made. */
    private static Fault fault(Place place, List<Message> errors) {
        String shortest = errors.stream()
                .map(Message::getText)
                .min(Comparator.comparingInt(String::length))
                .orElseThrow();
        return new Fault(
                place,
                "",
                "does not compile: " + Words.shortened(shortest, 300),
                "see DEVELOPERS.md, how to add a rule");
    }

    private static String baseName(String file) {
        return file.substring(file.lastIndexOf('/') + 1);
    }

    /**
     * Loads compiled rules.
     *
     * @param compiled files by name
     * @return sessions over them; one that is disposed of is emptied and used again, since a new one builds its memory
     *     anew
     * @throws IOException where they are not what {@link #compile} made
     */
    static KieSessionsPool load(Map<String, byte[]> compiled) throws IOException {
        Map<String, byte[]> classes = new HashMap<>();
        String modelNames = null;
        for (Map.Entry<String, byte[]> file : compiled.entrySet()) {
            String name = file.getKey();
            if (name.endsWith(CLASS)) {
                classes.put(name.substring(0, name.length() - CLASS.length()).replace('/', '.'), file.getValue());
            } else {
                modelNames = new String(file.getValue(), StandardCharsets.UTF_8);
            }
        }
        if (modelNames == null) {
            throw new IOException("there is no list of rule models");
        }
        ClassLoader loader = new MemoryLoader(classes);
        List<Model> models = new ArrayList<>();
        try {
            for (String name : modelNames
                    .lines()
                    .filter(line -> !line.startsWith(CanonicalKieModule.MODEL_VERSION))
                    .toList()) {
                models.add(
                        (Model) loader.loadClass(name).getDeclaredConstructor().newInstance());
            }
        } catch (ReflectiveOperationException | LinkageError | ClassCastException e) {
            throw new IOException("the rule model cannot be loaded", e);
        }
        if (models.isEmpty()) {
            throw new IOException("no rule model is listed");
        }
        return KieBaseBuilder.createKieBaseFromModel(models).newKieSessionsPool(1);
    }

    /** Defines classes held in memory. */
    private static final class MemoryLoader extends ClassLoader {
        private final Map<String, byte[]> classes;

        MemoryLoader(Map<String, byte[]> classes) {
            super("rules", RuleCompiler.class.getClassLoader());
            this.classes = classes;
        }

        /** Before its parent, whose shipped rules may have classes of the same names. */
        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            byte[] bytes = classes.get(name);
            if (bytes == null) {
                return super.loadClass(name, resolve);
            }
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
            }
        }
    }
}
