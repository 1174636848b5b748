package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Radios and their aerials. */
public sealed interface RadioDetails extends Details {

    record Aerial(
            @Field(
                            value = "the frequency it is made for",
                            in = Dimension.FREQUENCY,
                            within = Plausible.FREQUENCY,
                            find = "its data sheet",
                            example = "477 MHz")
                    Figure frequency,
            @Field(
                            value =
                                    "its gain over an aerial that radiates evenly all round; 2.15 dB more than over a dipole",
                            in = Dimension.GAIN,
                            within = Plausible.GAIN,
                            find = "its data sheet",
                            example = "6.6 dBi")
                    Figure gain,
            @Field(
                            value = "height of its tip above the ground",
                            in = Dimension.LENGTH,
                            within = Plausible.TIP_HEIGHT,
                            find = "a tape",
                            example = "2000 mm")
                    Figure tip,
            @Field(value = "where its foot stands", find = "the plan") Choice<AerialPlace> place,
            @Field(value = "whether it folds down or is taken off under a low roof", find = "its data sheet")
                    Choice<YesNo> folds,
            @Field(value = "whether it needs metal below it as a ground plane", find = "its data sheet")
                    Choice<YesNo> needsGroundPlane,
            @Field(
                            value =
                                    "whether its foot stands on earthed sheet metal, a quarter of a wavelength or more all "
                                            + "round",
                            find = "the plan")
                    Choice<YesNo> onMetal)
            implements RadioDetails {}

    enum AerialPlace {
        BAR,
        GUARD,
        ROOF,
        REAR
    }

    record Radio(
            @Field(value = "the service it works in", find = "its data sheet") Choice<RadioService> service,
            @Field(
                            value = "its frequency",
                            in = Dimension.FREQUENCY,
                            within = Plausible.FREQUENCY,
                            find = "its data sheet",
                            example = "477 MHz")
                    Figure frequency,
            @Field(
                            value = "power of its transmitter",
                            in = Dimension.POWER,
                            within = Plausible.RADIO_POWER,
                            find = "its data sheet",
                            example = "5 W")
                    Figure power,
            @Field(
                            value = "the weakest signal that it understands, at a socket of 50 ohm",
                            in = Dimension.VOLTAGE,
                            within = Plausible.SENSITIVITY,
                            find = "its data sheet, at 12 dB SINAD",
                            example = "0.25 uV")
                    Figure sensitivity,
            @Field(value = "whether it is hidden behind a panel, in a console or under a seat", find = "the plan")
                    Choice<YesNo> hidden,
            @Field(value = "whether its display and keys are on a lead or in the microphone", find = "its data sheet")
                    Choice<YesNo> remoteHead,
            @Field(value = "whether air moves around it where it sits", find = "the fitter") Choice<YesNo> aired)
            implements RadioDetails {}

    enum RadioService {
        UHF_CB,
        OTHER
    }
}
