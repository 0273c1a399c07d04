package rundlauf.usecase;

import java.security.KeyStore;

/**
 * What a workbook shows of itself over TLS.
 *
 * @param keys its key and certificate
 * @param password of the key
 * @param fingerprint of the certificate: SHA-256, as a browser shows it
 */
public record TlsIdentity(KeyStore keys, String password, String fingerprint) {}
