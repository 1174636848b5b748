package fitworthy.sheet;

import fitworthy.Books;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.util.ArrayList;
import java.util.List;

/** A sheet with nothing wrong, to be spoilt, and what the reader then says. */
final class BadSheet {

    static final String GOOD =
            """
            title: Touring wagon
            region: au
            as-of: 2026-11-25
            vehicle:
              name: Tarrangower wagon
              stability-control: yes
              size: {wheelbase: 2850 mm}
              mass:
                kerb: 2340 kg
                front-axle: 1290 kg
                rear-axle: 1050 kg
                kerb-fuel: 90 %
                kerb-driver: 0 kg
              ratings:
                gvm: 3100 kg
            fitments:
              - name: Canopy
                kind: canopy
                mass: 90 kg
                at: {x: 2950 mm, y: 0 mm, z: 1300 mm}
                removable: yes
              - {name: Bar, kind: bar, mass: 60 kg, at: {x: -700 mm}}
            tanks:
              - {name: Main v1.2, liquid: diesel, capacity: 80 L, fill: 100 %, at: {x: 2400 mm}, stock: yes}
            occupants:
              - {name: Driver, mass: 80 kg, at: {x: 1500 mm}}
            cargo:
              - {name: Fridge, mass: 40 kg, at: {x: 2900 mm}}
            trailer: {name: Camper, mass: 1400 kg}
            cases:
              - name: canopy off
                aboard: [Driver]
                carrying: [Fridge]
                off: [Canopy]
                filled: {Main v1.2: 50 %}
                towing: yes
            """;

    private BadSheet() {}

    /** The good sheet with {@code old} replaced, which has to stand in it. */
    static String with(String... oldAndNew) {
        String text = GOOD;
        for (int i = 0; i < oldAndNew.length; i += 2) {
            if (!text.contains(oldAndNew[i])) {
                throw new IllegalArgumentException("the good sheet has no '" + oldAndNew[i] + "'");
            }
            text = text.replace(oldAndNew[i], oldAndNew[i + 1]);
        }
        return text;
    }

    /** Each fault as {@code line:column path: problem -> mend}, in reading order; none where the sheet is good. */
    static List<String> faults(String text) throws FaultsException {
        try {
            read(text);
            return List.of();
        } catch (FaultsException e) {
            return e.faults().stream().map(BadSheet::shown).toList();
        }
    }

    static Sheet read(String text) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        return SheetReader.sheet(
                NodeReader.read("sheet.yaml", text, faults),
                Books.shipped().regions().keySet(),
                faults);
    }

    private static String shown(Fault fault) {
        return fault.place().line() + ":" + fault.place().column() + " " + fault.path() + ": " + fault.problem()
                + " -> "
                + fault.mend();
    }
}
