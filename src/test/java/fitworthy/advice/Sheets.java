package fitworthy.advice;

import fitworthy.Books;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;

/** Sheets for tests: the plain one with changes written as YAML. */
public final class Sheets {

    private Sheets() {}

    public static Sheet plainWith(String changes) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        return SheetReader.sheet(Trees.merged(NodeReader.read(Books.RULES.resolve("plain-sheet.yaml"), faults),
                NodeReader.read("changes", changes, faults)), Books.shipped().regions().keySet(), faults);
    }
}
