package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Money;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.List;

/** Certificates and plates, who has been told, and how long a new vehicle and the quote take. */
public record Papers(
        @Field("certificates and approvals that are in the price") List<Certificate> certificates,
        @Field(value = "whether the insurer has been told of the plan", find = "the owner") Choice<YesNo> insurerTold,
        @Field(value = "whether the vehicle's maker was asked what the plan does to its warranty", find = "the owner")
                Choice<Warranty> warranty,
        @Field(value = "when the authority or its inspector sees the altered vehicle", find = "the plan")
                Choice<Inspection> inspection,
        @Field(value = "whether the plate that records the alterations is in the plan", find = "the quote")
                Choice<YesNo> plate,
        @Field(
                        value = "time until a new vehicle is delivered",
                        in = Dimension.TIME,
                        within = Plausible.TIME_TO_WAIT,
                        find = "the dealer",
                        example = "90 days")
                Figure delivery,
        @Field(
                        value = "how long the quoted prices hold",
                        in = Dimension.TIME,
                        within = Plausible.TIME_TO_WAIT,
                        find = "the quote",
                        example = "60 days")
                Figure offer) {

    /** A certificate or approval. */
    public record Certificate(
            @Field(value = "what to call it", needed = true, printed = true, example = "Engineer's certificate")
                    String name,
            @Field(value = "the alteration it covers", needed = true, find = "whoever issues it")
                    Choice<Alteration> covers,
            @Field(value = "its price; 0.00 where another one covers it", example = "850.00 AUD") Money price) {}

    /** Whether the certificate of what is done is in hand. */
    public enum Proof {
        HELD,
        NOT_HELD
    }

    /** Alterations that may have to be certified. */
    public enum Alteration {
        CHASSIS,
        BODY,
        RATINGS,
        SEATS,
        TYRES,
        RIDE_HEIGHT,
        FUEL_TANK
    }

    public enum Warranty {
        ASKED,
        NOT_ASKED,
        OVER
    }

    public enum Inspection {
        BEFORE_USE,
        AFTER_USE,
        NONE
    }
}
