package rundlauf.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Where a command writes: results to one stream, refusals and faults to the other, both UTF-8.
 *
 * @param debug whether the details of a fault of ours are printed too
 */
public final class Console {
  private final Writer out;
  private final PrintWriter err;
  private final boolean debug;

  public Console(OutputStream out, OutputStream err, boolean debug) {
    this.out = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    this.err = new PrintWriter(new OutputStreamWriter(err, StandardCharsets.UTF_8), true);
    this.debug = debug;
  }

  /** Writes a result, and makes sure that it has left us. */
  void result(String text) {
    try {
      out.write(text);
      out.flush();
    } catch (IOException e) {
      throw new OutputLost(e);
    }
  }

  /** Writes what is not a result. */
  void remark(String text) {
    err.println(text);
  }

  /** The stream of results, for help and version. */
  PrintWriter results() {
    return new PrintWriter(out, true);
  }

  /** The stream of remarks, for help after a wrong call. */
  PrintWriter remarks() {
    return err;
  }

  /** The details of a fault of ours, where they were asked for. */
  public void details(Throwable fault) {
    if (debug) {
      fault.printStackTrace(err);
    }
  }

  /** A result that could not be written. */
  static final class OutputLost extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OutputLost(IOException cause) {
      super(cause.getMessage(), cause);
    }

    /**
     * Whether the reader just stopped reading, as {@code head} does: nobody wants to hear of it.
     */
    boolean readerLeft() {
      return String.valueOf(getMessage()).toLowerCase(Locale.ROOT).contains("broken pipe");
    }
  }
}
