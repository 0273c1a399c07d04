package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rundlauf.maths.Circle;
import rundlauf.maths.Samples;

class FormCirclesCaseTest {
  private static final int N = 120;

  // source: by hand: three lobes of 2 µm about 1.5 mm are even about their centre
  @Test
  void threeLobesHaveAllTheirCirclesAboutOneCentre() {
    Samples profile = Samples.generate(N, p -> 2e-6 * Math.cos(3 * FormCircles.angle(p, N)));
    FormCircles form = FormCircles.of(profile, 1.5e-3);
    assertThat(form.leastSquaresRadius()).isCloseTo(1.5e-3, within(1e-8));
    assertThat(form.circumscribed().outer()).isCloseTo(1.502e-3, within(1e-10));
    assertThat(form.inscribed().inner()).isCloseTo(1.498e-3, within(1e-10));
    assertThat(form.minimumZone().width()).isCloseTo(4e-6, within(1e-10));
    assertThat(Math.hypot(form.minimumZone().x(), form.minimumZone().y())).isLessThan(1e-10);
  }

  // source: by hand: a circle of 13 about (5, 0) seen from the middle: 18, 12 and 8
  @Test
  void aCircleAboutAnotherCentreIsSeenFromTheMiddle() {
    FormCircles form = FormCircles.of(Samples.generate(N, p -> 0), 10);
    Circle about = new Circle(5, 0, 13, 13);
    assertThat(form.height(about, 13, 0)).isCloseTo(8, within(1e-12));
    assertThat(form.height(about, 13, Math.PI / 2)).isCloseTo(2, within(1e-12));
    assertThat(form.height(about, 13, Math.PI)).isCloseTo(-2, within(1e-12));
  }

  // source: ISO 12181-1: the circles touch the profile from outside and from inside
  @Test
  void seenFromTheMiddleTheCirclesTouchAndDoNotCut() {
    Samples profile =
        Samples.generate(
            N,
            p ->
                5e-6 * Math.cos(3 * FormCircles.angle(p, N))
                    + 3e-6 * Math.sin(2 * FormCircles.angle(p, N)));
    FormCircles form = FormCircles.of(profile, 1.5e-3);
    Circle mcc = form.circumscribed();
    Circle mic = form.inscribed();
    assertThat(gaps(form, mcc, mcc.outer()).min()).isCloseTo(0, within(1e-9));
    assertThat(gaps(form, mic, mic.inner()).max()).isCloseTo(0, within(1e-9));
    assertThat(gaps(form, mcc, mcc.outer()).max()).isGreaterThan(5e-6);
  }

  private static Samples gaps(FormCircles form, Circle about, double of) {
    return Samples.generate(
        N, p -> form.height(about, of, FormCircles.angle(p, N)) - form.profile().get(p));
  }
}
