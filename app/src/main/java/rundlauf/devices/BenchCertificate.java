package rundlauf.devices;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.Sha256;
import rundlauf.usecase.TlsIdentity;

/**
 * The certificate of this machine's workbook, made here by Java's own {@code keytool} and signed by
 * nobody else. It is kept, so that a device need accept it once only, and made anew when it runs
 * out or this machine has an address that it does not name.
 */
public final class BenchCertificate {
  /** How long it is good: browsers take none of more than 398 days (common practice, no source). */
  private static final int DAYS = 397;

  private static final Duration LEAST_LEFT = Duration.ofDays(7);

  /** Guards nothing: the file is readable by its owner alone. PKCS #12 asks for one. */
  private static final String PASSWORD = "rundlauf";

  private static final String ALIAS = "rundlauf";

  private final Path file;
  private final Path keytool;

  /**
   * @param folder where it is kept
   */
  public BenchCertificate(Path folder) {
    this(folder, Path.of(System.getProperty("java.home"), "bin", "keytool"));
  }

  BenchCertificate(Path folder, Path keytool) {
    this.file = folder.resolve("rundlauf-tls.p12");
    this.keytool = keytool;
  }

  /**
   * The certificate that is kept, or a new one.
   *
   * @param names host names and addresses by which the workbook is reached
   * @throws Refused when the one that is kept cannot be read, or none can be made
   */
  public TlsIdentity identity(List<String> names, Instant now) {
    if (Files.exists(file)) {
      KeyStore kept = read(file);
      if (isGood(kept, names, now)) {
        return identity(kept);
      }
    }
    make(names);
    return identity(read(file));
  }

  private static boolean isGood(KeyStore keys, List<String> names, Instant now) {
    X509Certificate certificate = certificate(keys);
    boolean lasts = certificate.getNotAfter().toInstant().isAfter(now.plus(LEAST_LEFT));
    return lasts && named(certificate).containsAll(names.stream().map(Names::plain).toList());
  }

  private static Set<String> named(X509Certificate certificate) {
    Set<String> names = new LinkedHashSet<>();
    try {
      Collection<List<?>> all = certificate.getSubjectAlternativeNames();
      if (all != null) {
        all.forEach(one -> names.add(Names.plain(String.valueOf(one.get(1)))));
      }
    } catch (GeneralSecurityException unreadable) {
      return Set.of(); // so it is made anew
    }
    return names;
  }

  private KeyStore read(Path from) {
    try (InputStream content = Files.newInputStream(from)) {
      KeyStore keys = KeyStore.getInstance("PKCS12");
      keys.load(content, PASSWORD.toCharArray());
      if (keys.isKeyEntry(ALIAS)) {
        return keys;
      }
    } catch (IOException | GeneralSecurityException unreadable) {
      // the same as one without our key
    }
    throw Refused.at(Place.of(from.toString()), "tls-unreadable");
  }

  /** A whole file takes the place of the one before, or none does. */
  private void make(List<String> names) {
    Path next = file.resolveSibling(file.getFileName() + ".next");
    try {
      Files.deleteIfExists(next);
      Process made =
          new ProcessBuilder(command(next, names))
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (made.waitFor() != 0) {
        throw notMade();
      }
      OwnerOnly.of(next);
      Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException refused) {
      throw notMade();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw notMade();
    }
  }

  private Refused notMade() {
    return Refused.at(
        Place.NOWHERE, "tls-not-made", Arg.typed(keytool.toString()), Arg.typed(file.toString()));
  }

  private List<String> command(Path to, List<String> names) {
    String all = "SAN=" + String.join(",", names.stream().map(Names::said).toList());
    return List.of(
        keytool.toString(),
        "-genkeypair",
        "-alias",
        ALIAS,
        "-keyalg",
        "EC",
        "-groupname",
        "secp256r1",
        "-validity",
        Integer.toString(DAYS),
        "-dname",
        "CN=Rundlauf on this bench",
        "-ext",
        all,
        "-ext",
        "EKU=serverAuth",
        "-storetype",
        "PKCS12",
        "-keystore",
        to.toString(),
        "-storepass",
        PASSWORD);
  }

  private static TlsIdentity identity(KeyStore keys) {
    try {
      String digest = Sha256.hex(certificate(keys).getEncoded()).toUpperCase(Locale.ROOT);
      String pairs = digest.replaceAll("(..)(?!$)", "$1:");
      return new TlsIdentity(keys, PASSWORD, pairs);
    } catch (CertificateEncodingException e) {
      throw new IllegalStateException("it was read from its code", e);
    }
  }

  private static X509Certificate certificate(KeyStore keys) {
    try {
      return (X509Certificate) keys.getCertificate(ALIAS);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("it was loaded", e);
    }
  }
}
