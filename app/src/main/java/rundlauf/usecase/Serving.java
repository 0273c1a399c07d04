package rundlauf.usecase;

import java.util.Optional;

/** Serves the workbook. */
public interface Serving {
  /**
   * Where it is to be served.
   *
   * @param store a file or a database's address; empty: the user's own
   * @param host the address to listen on
   * @param port to listen on; 0: any that is free
   * @param tls whether over TLS, with a certificate of this machine's own
   */
  record Call(Optional<String> store, String host, int port, boolean tls) {}

  /**
   * Starts serving and returns at once.
   *
   * @throws rundlauf.quantity.Refused when the store cannot be opened or the port is taken
   */
  Running serve(Call call);

  /**
   * A workbook that is being served.
   *
   * @param address what a browser opens
   * @param wide whether other devices can reach it
   * @param store where readings are kept, as it is shown to the user
   * @param fingerprint of its certificate, where it is served over TLS
   * @param stop ends it; what was acknowledged is kept
   */
  record Running(
      String address, boolean wide, String store, Optional<String> fingerprint, Runnable stop) {}
}
