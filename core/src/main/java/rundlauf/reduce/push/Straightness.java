package rundlauf.reduce.push;

/** F of lack of fit against a straight line, and its tail probability. */
public record Straightness(double f, double p) {}
