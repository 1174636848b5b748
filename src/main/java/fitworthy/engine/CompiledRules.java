package fitworthy.engine;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

/** Compiled rules: classes and the list of models among them, by file name. */
record CompiledRules(Map<String, byte[]> files) {

    void write(DataOutputStream out) throws IOException {
        out.writeInt(files.size());
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            out.writeUTF(file.getKey());
            out.writeInt(file.getValue().length);
            out.write(file.getValue());
        }
    }

    static CompiledRules read(DataInputStream in) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            String name = in.readUTF();
            byte[] bytes = new byte[in.readInt()];
            in.readFully(bytes);
            files.put(name, bytes);
        }
        return new CompiledRules(files);
    }
}
