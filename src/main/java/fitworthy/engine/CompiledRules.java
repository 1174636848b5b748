package fitworthy.engine;

import fitworthy.rules.RuleReferences;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Compiled rules and what they mention. */
record CompiledRules(List<RuleReferences> rules, Map<String, byte[]> files) {

    void write(DataOutputStream out) throws IOException {
        out.writeInt(rules.size());
        for (RuleReferences rule : rules) {
            out.writeUTF(rule.id());
            out.writeUTF(rule.file());
            out.writeInt(rule.line());
            out.writeUTF(String.join(" ", rule.measures()));
            out.writeUTF(String.join(" ", rule.practice()));
            out.writeUTF(String.join(" ", rule.earlier()));
            out.writeUTF(String.join(" ", rule.joined()));
        }
        out.writeInt(files.size());
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            out.writeUTF(file.getKey());
            out.writeInt(file.getValue().length);
            out.write(file.getValue());
        }
    }

    static CompiledRules read(DataInputStream in) throws IOException {
        int count = in.readInt();
        List<RuleReferences> rules = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rules.add(new RuleReferences(
                    in.readUTF(),
                    in.readUTF(),
                    in.readInt(),
                    words(in.readUTF()),
                    words(in.readUTF()),
                    words(in.readUTF()),
                    list(in.readUTF())));
        }
        Map<String, byte[]> files = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            String name = in.readUTF();
            byte[] bytes = new byte[in.readInt()];
            in.readFully(bytes);
            files.put(name, bytes);
        }
        return new CompiledRules(rules, files);
    }

    private static Set<String> words(String text) {
        return new TreeSet<>(list(text));
    }

    private static List<String> list(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }
}
