package rundlauf.files;

/** How much is read before it is refused. Our choices: many times what a bench needs by hand. */
final class Bounds {
  /** Bytes of a YAML file. */
  static final long YAML_BYTES = 1_000_000;

  /** Bytes of a CSV file. */
  static final long CSV_BYTES = 64_000_000;

  /** Bytes of one line of a CSV file. */
  static final int LINE_BYTES = 4_000;

  /** Columns of a table. */
  static final int COLUMNS = 40;

  /** Cells of a table. */
  static final int CELLS = 500_000;

  /** Parts within parts of a document. */
  static final int DEPTH = 16;

  /** Parts of a document: texts, lists and groups of fields. */
  static final int PARTS = 50_000;

  /** Characters of a field's name. */
  static final int NAME = 100;

  /** Files of a bench. */
  static final int FILES = 10_000;

  /** Bytes unpacked from one archive. */
  static final long UNPACKED_BYTES = 512_000_000;

  /** Bytes unpacked for one packed byte; readings pack to a tenth or so, bombs to a thousandth. */
  static final long PACKING_RATIO = 200;

  private Bounds() {}
}
