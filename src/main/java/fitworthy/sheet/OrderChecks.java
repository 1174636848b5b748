package fitworthy.sheet;

import fitworthy.quantity.Figure;
import fitworthy.source.NodePath;

/** Figures of which one cannot be above the other: where it is, one of them is misread or stands in the wrong field. */
final class OrderChecks {

    private static final String TOGETHER = "the figures that belong together";
    private static final String LENGTH = "the length of the trailer";
    private static final NodePath VEHICLE = NodePath.of("vehicle");

    private final Sheet sheet;
    private final SheetFaults faults;

    OrderChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
    }

    void run() {
        vehicle(sheet.vehicle());
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            details(
                    sheet.fitments().get(i - 1).details(),
                    NodePath.of("fitments").to(i));
        }
        sheet.trailer().ifPresent(trailer -> trailer(trailer, NodePath.of("trailer")));
        for (int i = 1; i <= sheet.circuits().size(); i++) {
            circuit(sheet.circuits().get(i - 1), NodePath.of("circuits").to(i));
        }
    }

    private void vehicle(Vehicle vehicle) {
        Vehicle.Ratings ratings = vehicle.ratings();
        NodePath rated = VEHICLE.to("ratings");
        notAbove(ratings.gvm(), rated.to("gvm"), ratings.gcm(), "the GCM");
        notAbove(ratings.towingUnbraked(), rated.to("towing-unbraked"), ratings.towing(), "the braked trailer's");
        notAbove(
                vehicle.engine().consumption(),
                VEHICLE.to("engine").to("consumption"),
                vehicle.engine().consumptionTowing(),
                "what it burns with a trailer");
        tyres(vehicle.tyres(), VEHICLE.to("tyres"));
        mirrors(vehicle.view().mirrors(), VEHICLE.to("view").to("mirrors"));
    }

    private void details(Details details, NodePath path) {
        if (details instanceof TyreDetails.Tyres tyres) {
            tyres(tyres, path);
        } else if (details instanceof MirrorDetails.Mirrors mirrors) {
            mirrors(mirrors, path);
        } else if (details instanceof SuspensionDetails.Springs springs) {
            notAbove(springs.loadLeast(), path.to("load-least"), springs.loadMost(), "load-most");
            notAbove(springs.bumpTravel(), path.to("bump-travel"), springs.travel(), "the whole travel");
        } else if (details instanceof ElectricalDetails.Inverter inverter) {
            notAbove(
                    inverter.continuous(),
                    path.to("continuous"),
                    inverter.surge(),
                    "surge, what it gives for a moment");
        } else if (details instanceof ElectricalDetails.SolarPanel panel) {
            notAbove(
                    panel.power(),
                    path.to("power"),
                    panel.openCircuit().times(panel.shortCircuit()),
                    "what one panel can give, open-circuit x short-circuit");
        }
    }

    private void tyres(TyreDetails.Tyres tyres, NodePath path) {
        notAbove(
                tyres.dualLoadIndex(),
                path.to("dual-load-index"),
                tyres.loadIndex(),
                "the load index for single fitting, which stands first on the sidewall");
        notAbove(tyres.rimLeast(), path.to("rim-least"), tyres.rimMost(), "rim-most");
        notAbove(
                tyres.referencePressure(),
                path.to("reference-pressure"),
                tyres.mostPressure(),
                "most-pressure, the greatest that the sidewall allows");
    }

    private void mirrors(MirrorDetails.Mirrors mirrors, NodePath path) {
        mirror(mirrors.left(), path.to("left"));
        mirror(mirrors.right(), path.to("right"));
    }

    private void mirror(MirrorDetails.Mirror mirror, NodePath path) {
        notAbove(mirror.reach(), path.to("reach"), mirror.edge(), "the edge of its housing");
        notAbove(mirror.edgeStowed(), path.to("edge-stowed"), mirror.edge(), "the edge when it stands out");
    }

    private void trailer(Trailer trailer, NodePath path) {
        ofTrailer(trailer.ball(), path.to("ball"), trailer.mass(), path.to("mass"), "the mass of the trailer");
        ofTrailer(
                trailer.bare().ball(),
                path.to("bare").to("ball"),
                trailer.bare().mass(),
                path.to("bare").to("mass"),
                "the mass of the bare trailer");
        ofTrailer(trailer.gtm(), path.to("gtm"), trailer.rated(), path.to("rated"), "the most it may weigh");
        ofTrailer(trailer.lightest(), path.to("lightest"), trailer.mass(), path.to("mass"), "its mass when loaded");
        ofTrailer(trailer.drawbar(), path.to("drawbar"), trailer.length(), path.to("length"), LENGTH);
        ofTrailer(trailer.axle(), path.to("axle"), trailer.length(), path.to("length"), LENGTH);
    }

    private void circuit(Circuit circuit, NodePath path) {
        standby(circuit, path.to("standby"));
        Figure cable = circuit.cable().length();
        notAbove(circuit.fuse().distance(), path.to("fuse").to("distance"), cable, "the length of its cable");
        notAbove(circuit.farFuse().distance(), path.to("far-fuse").to("distance"), cable, "the length of its cable");
    }

    /** At the battery the inverter's own draw is in it, so that only what was read at the load contradicts its current. */
    private void standby(Circuit circuit, NodePath path) {
        boolean alike = circuit.isMains()
                ? circuit.standbyAt().is(Circuit.Read.LOAD)
                : circuit.voltage().known();
        if (alike) {
            notAbove(circuit.standby(), path, circuit.current(), "what it draws at full load");
        }
    }

    /** @param most what the figure is at most; nothing is told where their tolerances could make both right */
    private void notAbove(Figure figure, NodePath path, Figure most, String called) {
        if (isAbove(figure, most) && !faults.foundWhenReading(path)) {
            faults.tell("is above " + called, TOGETHER, path);
        }
    }

    /** The same of a trailer, which may have one of the two from a shelf: the sheet's own line is the one to look at. */
    private void ofTrailer(Figure figure, NodePath path, Figure most, NodePath mostPath, String called) {
        if (faults.areOfOneFile(path, mostPath)) {
            notAbove(figure, path, most, called);
            return;
        }
        // That the shelf's figure may be a guess for this trailer is no reason not to tell that the two disagree.
        boolean isOfShelf = faults.isInSheet(mostPath);
        if (!(isOfShelf ? isAbove(figure.exact(), most) : isAbove(figure, most.exact()))
                || faults.foundWhenReading(path)
                || faults.foundWhenReading(mostPath)) {
            return;
        }
        if (isOfShelf) {
            faults.tell(
                    "is below " + faults.written(path) + ", which the shelf gives as " + path + " ("
                            + faults.place(path) + ")",
                    hereToo(path),
                    mostPath);
        } else {
            faults.tell(
                    "is above " + called + ", which the shelf gives as " + faults.written(mostPath) + " ("
                            + faults.place(mostPath) + ")",
                    hereToo(mostPath),
                    path);
        }
    }

    private static String hereToo(NodePath path) {
        String field = path.steps().get(1).toString();
        return TOGETHER + ": beside 'from' " + field + " too, as it is for this trailer, or " + field + ": ask";
    }

    /** Whether it is more than another, however far both may be off. */
    static boolean isAbove(Figure figure, Figure most) {
        return figure.value() - figure.tolerance() > most.value() + most.tolerance() && figure.isAbove(most);
    }
}
