package fitworthy.engine;

import fitworthy.figures.Measures;
import fitworthy.rules.RuleParser;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The step of the build that makes what {@link ShippedRules} looks up. */
public final class ShippedRulesBuild {

    private ShippedRulesBuild() {}

    /**
     * Compiles a rule book and checks its contract.
     *
     * @param args the rules folder, the folder of the program's classes, and one for what is kept between runs
     * @throws FaultsException where the rule book is wrong
     */
    public static void main(String[] args) throws IOException, FaultsException {
        List<Fault> faults = new ArrayList<>();
        Map<String, String> texts = BookLoader.texts(Path.of(args[0]), faults);
        texts.forEach(
                (file, text) -> RuleParser.parse(file, text, Measures.kinds().keySet(), faults));
        if (faults.isEmpty()) {
            write(RuleCache.key(texts), new CompiledRules(RuleCompiler.compile(texts, faults)), Path.of(args[1]));
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        RuleEngine engine = BookLoader.load(Path.of(args[0]), Path.of(args[2]), sentence -> {});
        Files.writeString(
                Path.of(args[1]).resolve(ShippedRules.PASSED), engine.book().hash());
    }

    private static void write(String key, CompiledRules compiled, Path classes) throws IOException {
        Map<String, byte[]> rest = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : compiled.files().entrySet()) {
            if (file.getKey().endsWith(".class")) {
                Path path = classes.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            } else {
                rest.put(file.getKey(), file.getValue());
            }
        }
        Path index = classes.resolve(ShippedRules.INDEX);
        Files.createDirectories(index.getParent());
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(index))) {
            out.writeUTF(key);
            new CompiledRules(rest).write(out);
        }
    }
}
