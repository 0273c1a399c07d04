package rundlauf.web;

import java.util.function.Consumer;
import rundlauf.usecase.KeptResults;
import rundlauf.usecase.MakeBench;
import rundlauf.usecase.Shelf;

/**
 * Everything that the pages can ask of the program.
 *
 * @param faults what is told of a fault of ours, beside the sentence that the user sees
 */
public record Cases(
    Consumer<Throwable> faults, Shelf shelf, MakeBench makeBench, KeptResults results) {}
