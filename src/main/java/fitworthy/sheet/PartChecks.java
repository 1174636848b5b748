package fitworthy.sheet;

import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What must hold of the parts and tanks. */
final class PartChecks {

    private final Sheet sheet;
    private final SheetFaults faults;
    private final Contents contents;
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> toBeDone = new HashSet<>();

    private final List<String> stretches;

    PartChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        this.contents = new Contents(sheet.fitments(), sheet.tanks());
        for (Fitment fitment : sheet.fitments()) {
            names.add(fitment.name());
            if (!fitment.isDone()) {
                toBeDone.add(fitment.name());
            }
        }
        this.stretches = sheet.planned().fitments().stream()
                .filter(fitment -> !fitment.isDone()
                        && fitment.details() instanceof MassDetails.ChassisExtension extension
                        && extension.wheelbaseAdded().value() > 0)
                .map(Fitment::name)
                .toList();
    }

    void run() {
        NodePath fitments = NodePath.of("fitments");
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            fitment(sheet.fitments().get(i - 1), fitments.to(i));
        }
        joints(fitments);
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            Tank tank = sheet.tanks().get(i - 1);
            NodePath path = NodePath.of("tanks").to(i);
            carrier(tank.name(), tank.in(), path.to("in"));
            done(tank.isDone(), tank.certificate().known(), tank.in(), path);
            tank.removes().ifPresent(gone -> replaced(tank, gone, path.to("removes")));
        }
        for (int i = 1; i <= sheet.cargo().size(); i++) {
            Sheet.Load load = sheet.cargo().get(i - 1);
            NodePath path = NodePath.of("cargo").to(i);
            known(load.in(), path.to("in"));
            if (load.lashing().isPresent() && load.tied().isPresent()) {
                faults.tell(
                        "has straps over it as well, and what both hold together is not worked out",
                        "either 'tied' or 'lashing'",
                        path.to("tied"));
            }
        }
    }

    private void fitment(Fitment fitment, NodePath path) {
        Fitment.Kind kind = fitment.kind() == null ? Fitment.Kind.OTHER : fitment.kind();
        boolean staysOn = fitment.isDone() && !fitment.removable().is(YesNo.YES);
        if (fitment.mass().value() > 0 && fitment.at().isEmpty() && !staysOn && faults.complete("at", path)) {
            faults.tell("has a mass but no place", "at: {" + kind.examples().get("at") + "}", path.to("at"));
        }
        carrier(fitment.name(), fitment.in(), path.to("in"));
        done(fitment.isDone(), fitment.certificate().known(), fitment.in(), path);
        if (fitment.details() instanceof ElectricalDetails.Charger charger) {
            charger(charger, path);
        }
        if (fitment.details() instanceof ElectricalDetails.SolarPanel panel) {
            connected(panel.charger(), path.to("charger"));
        }
        if (fitment.details() instanceof FrontDetails.Winch winch) {
            winch(winch, path);
        }
        if (kind == Fitment.Kind.BAR) {
            bar(fitment, path);
        }
        if (fitment.details() instanceof MassDetails.ChassisExtension extension) {
            if (stretches.indexOf(fitment.name()) > 0) {
                faults.tell(
                        "makes the wheelbase longer a second time, and what two cuts move is not worked out",
                        "wheelbase-added: 0 mm here, and all that is added at " + stretches.get(0),
                        path.to("wheelbase-added"));
            }
            cut(extension, path);
        }
        if (fitment.details() instanceof BodyDetails.Body body) {
            if (body.tubStays().is(YesNo.YES)) {
                tub(fitment, path);
            }
            NodePath holdDown = path.to("hold-down");
            onItsBase(body.holdDown().cogBehind(), body.length(), "900 mm", "cog-behind", holdDown);
            onItsBase(body.holdDown().downBehind(), body.length(), "1000 mm", "down-behind", holdDown);
        }
        if (fitment.details() instanceof TyreDetails.Tyres tyres) {
            TyreChecks.check(tyres, path, faults);
        }
    }

    /** A tank of the maker's that goes under another name would be counted beside the one that takes its place. */
    private void replaced(Tank tank, Fitment.Removed gone, NodePath removes) {
        List<String> names = sheet.tanks().stream().map(Tank::name).toList();
        List<String> left = sheet.tanks().stream()
                .filter(made -> made.stock().is(YesNo.YES)
                        && made.liquid().known()
                        && tank.liquid().is(made.liquid().value())
                        && sheet.tanks().stream().noneMatch(other -> other.replaces(made)))
                .map(Tank::name)
                .toList();
        if (!left.isEmpty()
                && !names.contains(gone.name())
                && faults.settled("tanks", "name")
                && !faults.foundWithin(removes)) {
            faults.tell(
                    "'" + Words.shortened(gone.name(), 60) + "' is no tank of the sheet, and "
                            + String.join(" and ", left) + " would be counted beside this one"
                            + Words.suggestion(gone.name(), left),
                    "name: " + String.join(" or ", left) + "; what else is taken off, in the 'removes' of a part",
                    removes.to("name"));
        }
    }

    /** A charger that takes something and gives nothing is a relay, or misread. */
    private void charger(ElectricalDetails.Charger charger, NodePath path) {
        if (charger.output().isZero()
                && charger.input().value() > 0
                && !charger.isolator().is(YesNo.YES)) {
            faults.tell(
                    "gives nothing, though it takes "
                            + QuantityText.shown(charger.input().value(), "A") + " at its input",
                    "the output on its data sheet, or isolator: yes where it only joins the batteries",
                    path.to("output"));
        }
    }

    /** One at the rear would be asked for its airbags and lamps, and count as a second bar for the same job. */
    private void bar(Fitment bar, NodePath path) {
        Figure middle = sheet.vehicle().size().wheelbase().times(0.5);
        if (bar.at().filter(at -> at.x().isAbove(middle)).isPresent()) {
            faults.tell(
                    "is the protection bar at the front, and this one stands behind the middle of the vehicle",
                    "kind: other for a bar at the rear",
                    path.to("kind"));
        }
    }

    /** What a panel is connected to is a charger. */
    private void connected(String charger, NodePath path) {
        List<String> chargers = sheet.fitments().stream()
                .filter(fitment -> fitment.kind() == Fitment.Kind.CHARGER)
                .map(Fitment::name)
                .toList();
        if (!charger.isEmpty() && faults.settled("fitments", "kind")) {
            faults.listed(charger, "chargers", chargers, path);
        }
    }

    /** A winch hangs on one battery: where both its name and a capacity are given they have to be of the same. */
    private void winch(FrontDetails.Winch winch, NodePath path) {
        Figure named = winch.fedBy().is(FrontDetails.Winch.FedBy.STARTER)
                ? sheet.vehicle().engine().starterBattery()
                : sheet.fitments().stream()
                        .map(Fitment::details)
                        .filter(ElectricalDetails.Battery.class::isInstance)
                        .map(battery -> ((ElectricalDetails.Battery) battery).capacity())
                        .reduce(Figure::plus)
                        .orElse(winch.battery());
        if (winch.fedBy().known()
                && (winch.battery().isAbove(named) || winch.battery().isBelow(named))) {
            faults.tell(
                    "is not the capacity of the battery that fed-by names, " + QuantityText.shown(named.value(), "Ah"),
                    "leave it out, or leave out fed-by where the winch has a battery of its own",
                    path.to("battery"));
        }
    }

    private void known(String carrier, NodePath path) {
        if (!carrier.isEmpty()) {
            faults.name(carrier, "fitments", names, path);
        }
    }

    /** What a part stands in or on is another part, and not in the end the part itself. */
    private void carrier(String part, String carrier, NodePath path) {
        known(carrier, path);
        if (!carrier.isEmpty() && contents.with(List.of(part)).contains(carrier)) {
            faults.tell("stands in or on itself, by way of what it carries", "leave it out at one of them", path);
        }
    }

    /** A certificate is held for what is done, and what is done stands in or on what is there already. */
    private void done(boolean done, boolean certificate, String carrier, NodePath path) {
        if (!done && certificate && faults.complete("done", path)) {
            faults.tell(
                    "is said of a part that is not done",
                    "done: yes where it is on the vehicle already; else list it under papers.certificates",
                    path.to("certificate"));
        }
        if (done && toBeDone.contains(carrier)) {
            faults.tell(
                    "what is done cannot stand in or on what is only planned",
                    "done: yes for '" + carrier + "' too, or a planned part with what it 'removes' where this is moved",
                    path.to("in"));
        }
    }

    /** A tub that stays on does not come off too. */
    private void tub(Fitment body, NodePath path) {
        boolean gone = body.removes()
                .filter(removed -> ShopWords.plain(removed.name()).matches("(.* )?tub"))
                .isPresent();
        if (gone) {
            faults.tell(
                    "says that the tub stays on, and 'removes' says that it comes off",
                    "one of the two",
                    path.to(TubFate.TUB_STAYS));
        }
    }

    /** What is told from the front edge of its base is not further back than it is long. */
    private void onItsBase(Figure behind, Figure length, String example, String field, NodePath holdDown) {
        if (OrderChecks.isAbove(behind, length)) {
            faults.tell(
                    "is more than its length, " + QuantityText.shown(length.value(), "mm"),
                    field + ": " + example + ", from the front edge of its base and not from the axle or the bumper",
                    holdDown.to(field));
        }
    }

    /** A frame is cut between the axles, and leaves something on both sides. */
    private void cut(MassDetails.ChassisExtension extension, NodePath path) {
        Figure wheelbase = sheet.vehicle().size().wheelbase();
        if (extension.cut().value() <= 0 || extension.cut().value() >= wheelbase.value()) {
            faults.tell("is not between the axles of the vehicle as made", "cut: 2290 mm", path.to("cut"));
        }
        if (extension.behindCut().value() >= sheet.vehicle().mass().kerb().value()) {
            faults.tell("is not less than the kerb mass", "behind-cut: 980 kg", path.to("behind-cut"));
        }
        sheet.vehicle().rails().ifPresent(rails -> behind(extension, rails, path));
        if (extension.shaft().wall().times(2).isAtLeast(extension.shaft().diameter())) {
            faults.tell(
                    "leaves nothing hollow in the tube",
                    "wall: 2 mm",
                    path.to("shaft").to("wall"));
        }
    }

    /** At the cut the sheet says the same of the rails; further ahead there is no less behind, further back no more. */
    private void behind(MassDetails.ChassisExtension extension, Rails rails, NodePath path) {
        Figure more = rails.behind().minus(extension.behindCut());
        double unsure = rails.behind().tolerance() + extension.behindCut().tolerance();
        boolean ahead = !rails.at().isAtLeast(extension.cut());
        boolean after = !rails.at().isAtMost(extension.cut().plus(extension.wheelbaseAdded()));
        if (extension.cut().known() && (!after && more.value() < -unsure || !ahead && more.value() > unsure)) {
            faults.tell(
                    "does not agree with what vehicle.rails.behind says of a place "
                            + (ahead ? "ahead of the cut" : after ? "behind the cut" : "at the cut"),
                    "one figure in both where the rails are looked at where they are cut",
                    path.to("behind-cut"));
        }
    }

    /** Joints of all snorkels together: the advice tells them apart by name. */
    private void joints(NodePath fitments) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            if (sheet.fitments().get(i - 1).details() instanceof IntakeDetails.Snorkel snorkel) {
                for (int j = 1; j <= snorkel.joints().size(); j++) {
                    faults.uniqueName(
                            snorkel.joints().get(j - 1).name(),
                            seen,
                            fitments.to(i).to("joints").to(j));
                }
            }
        }
    }
}
