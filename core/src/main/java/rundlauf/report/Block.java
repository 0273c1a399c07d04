package rundlauf.report;

/** A piece of a section. */
public sealed interface Block permits Remarks, Table, Chart, Card {}
