package fitworthy.cli;

import fitworthy.advice.Waiving;
import fitworthy.book.Book;
import fitworthy.book.HouseReader;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which sheet, and which rule book, region and day it is held against. */
final class SheetOptions {

    @Parameters(index = "0", paramLabel = "SHEET", description = "The build sheet, YAML or JSON.")
    private Path sheetFile;

    @Mixin
    private BookOptions book;

    @Option(names = "--region", paramLabel = "REGION", description = "Use this region in place of the sheet's.")
    private String region;

    @Option(names = "--as-of", paramLabel = "DATE", description = "Use the practice of this day in place of the sheet's.")
    private String asOf;

    @Option(names = "--practice", paramLabel = "FILE",
            description = "Values and severities that your shop sets over the rule book.")
    private Path practice;

    /** A sheet that has been read. @param tree the text it was read from */
    record Read(Node.Mapping tree, Sheet sheet) {}

    /** The rule book, with what the shop sets over it; says on the error stream when it takes seconds. */
    Book book(Surroundings around) throws Fitworthy.BadBook, Fitworthy.BadHouse {
        Book shipped = book.book(around);
        try {
            return practice == null ? shipped : shipped.with(HouseReader.read(practice, shipped));
        } catch (FaultsException e) {
            throw new Fitworthy.BadHouse(e);
        }
    }

    /** The sheet, with the region and day asked for. @throws FaultsException with everything that is wrong with it */
    Read read(Book book) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read(sheetFile, faults);
        if (root != null && region != null) {
            root = root.with("region", new Node.Scalar(Place.of("--region"), region, false));
        }
        if (root != null && asOf != null) {
            root = root.with("as-of", new Node.Scalar(Place.of("--as-of"), asOf, false));
        }
        if (root != null) {
            Waiving.check(root, book, faults);
        }
        return new Read(root, SheetReader.sheet(root, book.regions().keySet(), faults));
    }

    /** The name of the sheet's file. */
    String fileName() {
        return sheetFile.getFileName().toString();
    }

    /** SHA-256 of the sheet's file, in hexadecimal. @throws FaultsException where it can no longer be read */
    String hash() throws FaultsException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(sheetFile)));
        } catch (IOException e) {
            throw new FaultsException(List.of(new Fault(Place.of(sheetFile.toString()), "", "the file is gone again",
                    "leave it where it is until the command is done")));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The load cases named, which the sheet has to have; an empty set stands for all of them. */
    static Set<String> chosen(Sheet sheet, List<String> names) throws FaultsException {
        Set<String> known = new LinkedHashSet<>();
        sheet.cases().forEach(each -> known.add(each.name()));
        List<Fault> faults = new ArrayList<>();
        for (String name : names) {
            if (!known.contains(name)) {
                faults.add(new Fault(Place.of("--case"), "", "the sheet has no load case '" + name + "'"
                        + Words.suggestion(name, known), known.isEmpty() ? "leave --case out" : String.join(", ", known)));
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return Set.copyOf(names);
    }
}
