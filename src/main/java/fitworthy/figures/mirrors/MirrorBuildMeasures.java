package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MirrorDetails;
import fitworthy.sheet.MirrorDetails.Mirrors;
import java.util.List;

/** How far the planned mirrors stand out, what becomes of them without the trailer, and what is built into them. */
final class MirrorBuildMeasures implements Topic {
    private static final MeasureKind BEYOND_TRAILER = number(
                    "mirrors.beyond-trailer",
                    "mm",
                    0,
                    "how far the mirror sticks out past the wider of trailer and vehicle")
            .signed()
            .byLoading();
    private static final MeasureKind BEYOND_VEHICLE = number(
                    "mirrors.beyond-vehicle",
                    "mm",
                    0,
                    "how far the mirror sticks out past the vehicle without a trailer")
            .signed()
            .byLoading();
    private static final MeasureKind BEYOND_STAYING = rated(
                    "mirrors.beyond-staying",
                    "mm",
                    0,
                    "how far the mirror sticks out past the widest part that does not come off",
                    "how far it may stick out")
            .signed()
            .byLoading();
    private static final MeasureKind STOW = word(
                    "mirrors.stow", "what becomes of the towing mirrors without the trailer", MirrorDetails.Stow.class)
            .byLoading();
    private static final MeasureKind INDICATORS =
            yesNo("mirrors.indicators", "whether the planned mirrors keep the direction indicators");
    private static final MeasureKind CAMERAS = yesNo("mirrors.cameras", "whether the planned mirrors keep the cameras");
    private static final MeasureKind BLIND_SPOT =
            yesNo("mirrors.blind-spot", "whether the planned mirrors keep the blind-spot lamps");
    private static final MeasureKind CAMERA_APPROVED =
            yesNo("mirrors.camera-approved", "whether the camera is approved to replace a mirror");

    private static final MeasureKind DRIVER_GLASS =
            word("mirrors.driver-glass", "glass of the planned mirror on the driver's side", MirrorDetails.Curve.class);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                BEYOND_TRAILER,
                BEYOND_VEHICLE,
                BEYOND_STAYING,
                STOW,
                INDICATORS,
                CAMERAS,
                BLIND_SPOT,
                CAMERA_APPROVED,
                DRIVER_GLASS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Mirrors made = plan.vehicle().view().mirrors();
        plan.planned(Mirrors.class).ifPresent(planned -> {
            kept(INDICATORS, made.indicators(), planned.indicators(), measures);
            kept(CAMERAS, made.cameras(), planned.cameras(), measures);
            kept(BLIND_SPOT, made.blindSpotLamps(), planned.blindSpotLamps(), measures);
            Figure eye = plan.places().eye().y();
            Side.both(planned).stream()
                    .filter(side -> !eye.known() || eye.value() * side.sign() > 0)
                    .findFirst()
                    .ifPresent(side -> measures.add(Measure.of(
                            DRIVER_GLASS,
                            eye.known() ? side.name() : "driver's mirror",
                            eye.known()
                                    ? side.mirror().curve()
                                    : Choice.missing(eye.missing().get(0)))));
        });
        plan.sheet().fitments().forEach(fitment -> {
            if (fitment.details() instanceof MirrorDetails.RearCamera camera
                    && !camera.insteadOfMirror().is(YesNo.NO)) {
                measures.add(Measure.of(
                        CAMERA_APPROVED,
                        fitment.name(),
                        camera.insteadOfMirror().known() ? camera.approvedAsMirror() : camera.insteadOfMirror()));
            }
        });
    }

    /** Only what the old mirrors hold can be lost with them. */
    private static void kept(MeasureKind kind, Choice<YesNo> made, Choice<YesNo> planned, List<Measure> measures) {
        if (!made.is(YesNo.NO)) {
            measures.add(Measure.of(kind, "planned mirrors", made.known() ? planned : made));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Mirrors mirrors = loading.mirrors();
        boolean planned = loading.plannedMirrors().isPresent();
        for (Side side : Side.both(mirrors)) {
            if (planned) {
                standsOut(loading, side, measures);
            }
            boolean leftOut = Standing.of(loading, side).leftOut();
            if (planned || leftOut) {
                pastWhatStays(
                        loading,
                        side,
                        loading.trailer().isPresent() || leftOut
                                ? side.mirror().edge()
                                : side.mirror().edgeStowed(),
                        measures);
            }
        }
        if (loading.plan().trailer().isPresent() && !loading.towing()) {
            loading.mirrorsAboard()
                    .ifPresent(aboard -> measures.add(Measure.of(STOW, "towing mirrors", aboard.stow())));
        }
    }

    private static void standsOut(Loading loading, Side side, List<Measure> measures) {
        boolean towed = loading.trailer().isPresent();
        Figure edge = towed ? side.mirror().edge() : side.mirror().edgeStowed();
        Figure most = allowed(loading);
        Flanks flanks = Flanks.of(loading);
        measures.add(Measure.of(towed ? BEYOND_TRAILER : BEYOND_VEHICLE, side.name(), flanks.beyond(edge, most))
                .worked(flanks.working(edge, most)));
    }

    private static Figure allowed(Loading loading) {
        return loading.plan()
                .practice(
                        loading.trailer().isPresent()
                                ? PracticeId.MIRRORS_BEYOND_TRAILER_MOST
                                : PracticeId.MIRRORS_BEYOND_VEHICLE_MOST);
    }

    /** Asked where a tray or canopy that comes off may be the widest. Whether it does is asked where that decides. */
    private static void pastWhatStays(Loading loading, Side side, Figure edge, List<Measure> measures) {
        Flanks stay = Flanks.thatStay(loading);
        List<Choice<YesNo>> comingOff = loading.bodies().stream()
                .filter(body -> Flanks.mayComeOff(body) && !stay.hide(body))
                .map(Fitment::removable)
                .toList();
        if (comingOff.isEmpty()) {
            return;
        }
        Figure most = allowed(loading);
        Measure past = Measure.of(BEYOND_STAYING, side.name(), stay.beyond(edge, most), most)
                .worked(stay.working(edge, most));
        measures.add(
                past.getHeadroom() < 0 && comingOff.stream().noneMatch(each -> each.is(YesNo.YES))
                        ? past.given(comingOff.get(0))
                        : past);
    }
}
