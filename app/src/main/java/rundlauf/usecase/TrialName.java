package rundlauf.usecase;

/**
 * Which trial is meant.
 *
 * @param bench the name of its bench
 * @param trial its own name in that bench, such as {@code heron-er11.yaml}
 */
public record TrialName(String bench, String trial) {}
