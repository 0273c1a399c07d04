package rundlauf.usecase;

import java.util.List;
import rundlauf.maths.Draws;
import rundlauf.report.Outcome;

/** The two documents that a package has more than its bench. */
public interface PackageDocuments {
  /** Every derived figure with its method and version. */
  String figures(List<Outcome> outcomes, Draws draws);

  /** What {@link #figures} wrote. */
  PublishedFigures readFigures(String text, String name);

  /** What lies in the package, file by file. */
  String descriptor(String bench, List<PackageFile> files);

  /** Path, size and digest of every file, as {@link #descriptor} wrote them. */
  List<PackageFile> readDescriptor(String text, String name);
}
