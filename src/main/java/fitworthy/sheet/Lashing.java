package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Straps laid over a load, each with a ratchet at one side. */
public record Lashing(
        @Field(
                        value = "how many straps go over it",
                        needed = true,
                        find = "the plan",
                        example = "2",
                        within = Plausible.COUNT)
                Figure straps,
        @Field(
                        value = "what the ratchet pulls each of them to; 10 daN are about 10 kg",
                        in = Dimension.MASS,
                        within = Plausible.STRAP_TENSION,
                        needed = true,
                        find = "STF on the strap's label",
                        example = "250 kg")
                Figure tension,
        @Field(
                        value =
                                "how steeply they rise from their anchors to the top of the load; straight up is 90 deg",
                        in = Dimension.ANGLE,
                        within = Plausible.STRAP_ANGLE,
                        needed = true,
                        find = "a protractor",
                        example = "60 deg")
                Figure angle,
        @Field(
                        value = "grip of what it stands on, as a share of its weight",
                        in = Dimension.SHARE,
                        within = Plausible.GRIP,
                        needed = true,
                        find = "a load restraint guide: of smooth steel about 20 %, of wood 40 %, of a rubber mat 60 %",
                        example = "40 %")
                Figure grip,
        @Field(
                        value = "whether it stands against a wall that keeps it from sliding forward",
                        needed = true,
                        find = "the plan")
                Choice<YesNo> stopped) {}
