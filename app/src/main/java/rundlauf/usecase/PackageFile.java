package rundlauf.usecase;

import java.util.List;
import java.util.Optional;

/**
 * A file of a package as its descriptor tells it.
 *
 * @param path within the package
 * @param bytes its size
 * @param hash {@code sha256:} and its digest in hexadecimal digits
 * @param table its columns, where it is a table
 */
public record PackageFile(String path, long bytes, String hash, Optional<Columns> table) {
  /**
   * The columns of a table.
   *
   * @param delimiter what parts its cells
   */
  public record Columns(String delimiter, List<Column> columns) {
    public Columns {
      columns = List.copyOf(columns);
    }
  }

  /**
   * A column.
   *
   * @param type integer, number or string (Table Schema)
   * @param unit as it stands in its name; empty text where it carries none
   * @param decimalComma whether its numbers have a comma
   */
  public record Column(String name, String type, String unit, boolean decimalComma) {}
}
