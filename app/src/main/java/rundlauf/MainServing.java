package rundlauf;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Consumer;
import rundlauf.cli.CommandLines;
import rundlauf.devices.BenchCertificate;
import rundlauf.devices.Processors;
import rundlauf.files.DiskContents;
import rundlauf.files.TypedDocuments;
import rundlauf.render.HtmlReport;
import rundlauf.render.Sentences;
import rundlauf.store.Store;
import rundlauf.store.UserStore;
import rundlauf.usecase.AttachPhoto;
import rundlauf.usecase.AttachmentStore;
import rundlauf.usecase.BackUpStore;
import rundlauf.usecase.BenchOutput;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.Documents;
import rundlauf.usecase.ImportBench;
import rundlauf.usecase.KeptResults;
import rundlauf.usecase.MakeBench;
import rundlauf.usecase.PutPart;
import rundlauf.usecase.RemovePart;
import rundlauf.usecase.RestoreEdition;
import rundlauf.usecase.SayConditions;
import rundlauf.usecase.SayHead;
import rundlauf.usecase.Serving;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.ShowKit;
import rundlauf.usecase.ShowSheet;
import rundlauf.usecase.ShowTrial;
import rundlauf.usecase.SpindleStanding;
import rundlauf.usecase.StartTrial;
import rundlauf.usecase.StoredBench;
import rundlauf.usecase.StrikeReading;
import rundlauf.usecase.TakeReading;
import rundlauf.usecase.TlsIdentity;
import rundlauf.usecase.TrialDocument;
import rundlauf.web.Cases;
import rundlauf.web.Workbook;
import rundlauf.wire.ResultDocument;

/** Puts the workbook together and serves it. */
public final class MainServing implements Serving {
  private final Consumer<Throwable> faults;

  /**
   * @param faults what is told of a fault of ours
   */
  public MainServing(Consumer<Throwable> faults) {
    this.faults = faults;
  }

  @Override
  public Running serve(Call call) {
    Store store = MainStore.open(call.store());
    boolean served = false;
    try {
      Cases cases = cases(store);
      Optional<TlsIdentity> identity = identity(call);
      Workbook workbook = Workbook.start(cases, call.host(), call.port(), identity);
      served = true;
      return running(store, cases, workbook, identity.map(TlsIdentity::fingerprint));
    } finally {
      if (!served) {
        store.close();
      }
    }
  }

  private static Optional<TlsIdentity> identity(Call call) {
    return call.tls()
        ? Optional.of(
            new BenchCertificate(UserStore.folder())
                .identity(Workbook.names(call.host()), Instant.now()))
        : Optional.empty();
  }

  /** What can be asked of a store. */
  public Cases cases(Store store) {
    BenchStore benches = store.benches();
    AttachmentStore attachments = store.attachments();
    Documents documents = new TypedDocuments();
    var stored = new StoredBench(benches, attachments, documents);
    var results = new KeptResults(stored, documents, new Processors());
    var standing = new SpindleStanding(benches, stored, documents, results);
    return new Cases(
        faults,
        () -> LocalDate.now(ZoneId.systemDefault()).toString(),
        new Shelf(benches),
        new MakeBench(benches, documents),
        results,
        standing,
        new ShowTrial(benches, attachments, stored, results),
        new TrialDocument(
            stored,
            results,
            store.figures(),
            reduced -> ResultDocument.of(reduced, Sentences::text),
            CommandLines.VERSION),
        new StartTrial(benches, stored, documents, results),
        new ShowSheet(benches, attachments, stored, documents, results, standing),
        new TakeReading(benches, stored, InstantSource.system()),
        new StrikeReading(benches),
        new SayConditions(benches, stored, documents, results),
        new AttachPhoto(benches, attachments, stored, documents),
        new ShowKit(benches, documents, results),
        new PutPart(benches, stored, documents),
        new RemovePart(benches, stored, documents),
        new SayHead(benches, stored, documents),
        new RestoreEdition(benches, stored, documents),
        new BenchOutput(results, MainStore.export(store), HtmlReport::write),
        new ImportBench(new DiskContents(), MainStore.keep(store)),
        new BackUpStore(benches));
  }

  private static Running running(
      Store store, Cases cases, Workbook workbook, Optional<String> fingerprint) {
    return new Running(
        workbook.address(),
        workbook.isWide(),
        store.address(),
        fingerprint,
        () -> {
          cases.results().stop();
          workbook.stop();
          store.close();
        });
  }
}
