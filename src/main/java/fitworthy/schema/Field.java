package fitworthy.schema;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a sheet's reader, its JSON Schema and its handbook page say about one field. */
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
public @interface Field {

    /** What the field holds, in a few words. */
    String value();

    /** The kind of quantity, for a field of type {@link Figure}. */
    Dimension in() default Dimension.COUNT;

    /** What a figure or a day is, and so between what it can lie. */
    Plausible within() default Plausible.ANYTHING;

    /** Whether a sheet without it is refused. */
    boolean needed() default false;

    /** Whether the figure may be below zero. */
    boolean signed() default false;

    /** Where a person finds the answer. */
    String find() default "the maker's data sheet";

    /** Whether it is only printed, so that nothing is judged by it. */
    boolean printed() default false;

    /** Fields of this group that decide nothing where it stands here, though they do where it stands elsewhere. */
    String[] idle() default {};

    /** Whether this group, a place, may be told in words. */
    boolean inWords() default false;

    /** A value as a sheet would write it; a figure's default is its dimension's example. */
    String example() default "";
}
