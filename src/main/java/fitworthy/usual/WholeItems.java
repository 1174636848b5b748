package fitworthy.usual;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.sheet.SheetDraft;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What every vehicle on a trip has aboard and a sheet may leave out whole: who sits in it, and the tank it came with. */
final class WholeItems {

    private static final int MOST_PEOPLE = 9;

    private WholeItems() {}

    /** The sheet with them, their figures left out. */
    static Node.Mapping added(Node.Mapping sheet) {
        Node.Mapping tree = sheet;
        if (tree.get("occupants") == null) {
            tree = tree.with("occupants", people(tree));
        }
        String fuel = text(NodePath.parse("vehicle.engine.fuel").in(tree));
        if (tree.get("tanks") == null && fuel.matches("diesel|petrol")) {
            tree = tree.with(
                    "tanks", list(tree.place(), List.of(Map.of("name", "Main tank", "liquid", fuel, "stock", "yes"))));
        }
        return tree;
    }

    /** The driver, and as many more as travel. */
    private static Node people(Node.Mapping sheet) {
        List<Map<String, String>> people = new ArrayList<>();
        people.add(Map.of("name", SheetDraft.person(1)));
        for (int i = 2; i <= count(text(NodePath.parse("trip.people").in(sheet))); i++) {
            people.add(Map.of("name", SheetDraft.person(i)));
        }
        return list(sheet.place(), people);
    }

    private static int count(String people) {
        try {
            Figure count = QuantityText.parse(Mark.read(people).text(), Dimension.COUNT);
            return (int) Math.min(MOST_PEOPLE, count.value());
        } catch (QuantityText.Unreadable e) {
            return 1;
        }
    }

    private static Node list(Place place, List<Map<String, String>> items) {
        return new Node.Listing(
                place,
                items.stream()
                        .<Node>map(item -> {
                            Map<String, Node.Entry> fields = new LinkedHashMap<>();
                            Stream.of("name", "liquid", "stock")
                                    .filter(item::containsKey)
                                    .forEach(name -> fields.put(
                                            name,
                                            new Node.Entry(place, new Node.Scalar(place, item.get(name), false))));
                            return new Node.Mapping(place, fields);
                        })
                        .toList());
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }
}
