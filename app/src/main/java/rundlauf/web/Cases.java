package rundlauf.web;

import java.util.function.Consumer;
import java.util.function.Supplier;
import rundlauf.usecase.AttachPhoto;
import rundlauf.usecase.BackUpStore;
import rundlauf.usecase.BenchOutput;
import rundlauf.usecase.ImportBench;
import rundlauf.usecase.KeptResults;
import rundlauf.usecase.MakeBench;
import rundlauf.usecase.PutPart;
import rundlauf.usecase.RemovePart;
import rundlauf.usecase.RestoreEdition;
import rundlauf.usecase.SayConditions;
import rundlauf.usecase.SayHead;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.ShowKit;
import rundlauf.usecase.ShowSheet;
import rundlauf.usecase.ShowTrial;
import rundlauf.usecase.SpindleStanding;
import rundlauf.usecase.StartTrial;
import rundlauf.usecase.StrikeReading;
import rundlauf.usecase.TakeReading;
import rundlauf.usecase.TrialDocument;

/**
 * Everything that the pages can ask of the program.
 *
 * @param faults what is told of a fault of ours, beside the sentence that the user sees
 * @param today the date, as it is typed
 */
public record Cases(
    Consumer<Throwable> faults,
    Supplier<String> today,
    Shelf shelf,
    MakeBench makeBench,
    KeptResults results,
    SpindleStanding standing,
    ShowTrial showTrial,
    TrialDocument trialDocument,
    StartTrial startTrial,
    ShowSheet showSheet,
    TakeReading takeReading,
    StrikeReading strikeReading,
    SayConditions sayConditions,
    AttachPhoto attachPhoto,
    ShowKit showKit,
    PutPart putPart,
    RemovePart removePart,
    SayHead sayHead,
    RestoreEdition restoreEdition,
    BenchOutput benchOutput,
    ImportBench importBench,
    BackUpStore backUpStore) {}
