package rundlauf.usecase;

/**
 * How far long work is.
 *
 * @param of how many parts it has; 0 while that is not known yet
 */
public record Progress(int done, int of) {}
