package sopwell.log;

/**
 * Something that happened at the stand. Every slice has its own sealed family under this type.
 * Implementations are immutable records without behaviour; their written form is the codec's.
 */
public interface Event {}
