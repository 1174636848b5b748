package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.source.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.modelcompiler.CanonicalKieModule;
import org.junit.jupiter.api.Test;

/** What the parser passes and the compiler refuses, which is told at its rule as far as that is known. */
class RuleCompilerTest {

    private static final String GOOD = rule("a.good", "$m :");
    private static final String BAD = rule("a.bad", "not $m :");

    private static String rule(String id, String before) {
        return "rule \"%s\"\nwhen\n    %s Measure(name == \"mass.loaded\")\nthen\n    advice.give(\"%s\", $m);\nend\n"
                .formatted(id, before, id);
    }

    private static List<String> told(Map<String, String> run, Map<String, String> texts) {
        List<Fault> faults = new ArrayList<>();
        Map<String, byte[]> compiled = run.equals(texts)
                ? RuleCompiler.compile(texts, faults)
                : RuleCompiler.compileAsWritten(run, texts, faults);
        assertEquals(faults.isEmpty(), !compiled.isEmpty(), "nothing is made of what is refused");
        for (Fault fault : faults) {
            assertTrue(fault.problem().startsWith("does not compile: "), fault::problem);
            assertTrue(fault.problem().length() > "does not compile: ".length());
        }
        return faults.stream().map(fault -> fault.place().toString()).toList();
    }

    @Test
    void aFaultIsToldAtItsRuleAndOfNoOtherFile() {
        Map<String, String> texts = Map.of("a/a.drl", GOOD + BAD, "b/b.drl", rule("b.good", "$m :"));
        assertEquals(List.of("a/a.drl:7"), told(texts, texts));
    }

    @Test
    void whatNoRuleAloneHasWrongIsToldOfTheFile() {
        Map<String, String> texts = Map.of("a/a.drl", GOOD + GOOD);
        assertEquals(List.of("a/a.drl"), told(texts, texts));
    }

    @Test
    void whatNoFileAloneHasWrongIsToldOfTheRules() {
        assertEquals(List.of("rules"), told(Map.of("a/a.drl", BAD), Map.of("a/a.drl", GOOD)));
        assertEquals(List.of("rules"), told(Map.of("a/a.drl", BAD), Map.of()));
    }

    @Test
    void whatIsNotWhatWasCompiledIsNotLoaded() throws IOException {
        List<Fault> faults = new ArrayList<>();
        Map<String, byte[]> compiled = RuleCompiler.compile(Map.of("a/a.drl", GOOD), faults);
        assertEquals(List.of(), faults);
        RuleCompiler.load(compiled).newKieSession().dispose();

        Map<String, byte[]> noList = new HashMap<>(compiled);
        noList.keySet().removeIf(file -> !file.endsWith(".class"));
        refused("there is no list of rule models", noList);

        Map<String, byte[]> noClasses = new HashMap<>(compiled);
        noClasses.keySet().removeIf(file -> file.endsWith(".class"));
        // Under a name that no packaging has left among the classes of the program either.
        noClasses.replaceAll((file, list) -> new String(list, StandardCharsets.UTF_8)
                .replace("fitworthy.compiled", "fitworthy.nowhere")
                .getBytes(StandardCharsets.UTF_8));
        refused("the rule model cannot be loaded", noClasses);

        Map<String, byte[]> noneListed = new HashMap<>(compiled);
        noneListed.put(
                CanonicalKieModule.MODEL_FILE_NAME,
                (CanonicalKieModule.MODEL_VERSION + "1\n").getBytes(StandardCharsets.UTF_8));
        noneListed
                .keySet()
                .removeIf(file -> file.endsWith(CanonicalKieModule.MODEL_FILE_NAME)
                        && !file.equals(CanonicalKieModule.MODEL_FILE_NAME));
        refused("no rule model is listed", noneListed);
    }

    private static void refused(String message, Map<String, byte[]> compiled) {
        assertEquals(
                message,
                assertThrows(IOException.class, () -> RuleCompiler.load(compiled))
                        .getMessage());
    }
}
