package rundlauf.render.methods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Formulas of the method pages as MathML. */
class FormulaTest {
  private static final String THIN = "<mspace width=\"0.17em\"></mspace>";

  /** What stands between the outer row's tags, gaps written as a middle dot's width: ~. */
  private static String set(String formula) {
    return Formula.mathMl(formula, false)
        .replaceFirst("^<math alttext=\"[^\"]*\"><mrow>", "")
        .replaceFirst("</mrow></math>$", "")
        .replace(THIN, "~")
        .replace(" stretchy=\"false\"", "");
  }

  // source: W3C MathML Core (2025): elements and their order of children, written out by hand
  @ParameterizedTest
  @CsvSource(
      delimiter = '\t',
      quoteCharacter = '§',
      textBlock =
"""
E = a1 + i b1	<mi>E</mi><mo>=</mo><msub><mi>a</mi><mn>1</mn></msub><mo>+</mo><mi>i</mi>~<msub><mi>b</mi><mn>1</mn></msub>
1/η	<mn>1</mn><mo lspace="0" rspace="0">/</mo><mi>η</mi>
m_j = x_j β	<msub><mi>m</mi><mrow><mi>j</mi></mrow></msub><mo>=</mo><msub><mi>x</mi><mrow><mi>j</mi></mrow></msub>~<mi>β</mi>
m e ω²	<mi>m</mi>~<mi>e</mi>~<msup><mi>ω</mi><mrow><mn>2</mn></mrow></msup>
|E|	<mrow><mo form="prefix">|</mo><mrow><mi>E</mi></mrow><mo form="postfix">|</mo></mrow>
32 M / (π d³)	<mfrac><mrow><mn>32</mn>~<mi>M</mi></mrow><mrow><mi>π</mi>~<msup><mi>d</mi><mrow><mn>3</mn></mrow></msup></mrow></mfrac>
h^−mc	<msup><mi>h</mi><mrow><mo form="prefix">−</mo><msub><mi>m</mi><mi>c</mi></msub></mrow></msup>
τ_j²	<msubsup><mi>τ</mi><mrow><mi>j</mi></mrow><mrow><mn>2</mn></mrow></msubsup>
c_sθ ≥ 0	<msub><mi>c</mi><mrow><mi>s</mi><mi>θ</mi></mrow></msub><mo>≥</mo><mn>0</mn>
√(1 + 1/c)	<msqrt><mrow><mn>1</mn><mo>+</mo><mn>1</mn><mo lspace="0" rspace="0">/</mo><mi>c</mi></mrow></msqrt>
Σ_k a_k	<munder><mo>∑</mo><mrow><mi>k</mi></mrow></munder>~<msub><mi>a</mi><mrow><mi>k</mi></mrow></msub>
R_(k−m)	<msub><mi>R</mi><mrow><mi>k</mi><mo>−</mo><mi>m</mi></mrow></msub>
min over m of h	<munder><mo>min</mo><mrow><mi>m</mi></mrow></munder>~<mi>h</mi>
∫w dz	<mo>∫</mo><mi>w</mi>~<mi mathvariant="normal">d</mi><mi>z</mi>
(XᴴX)⁻¹	<msup><mrow><mo form="prefix">(</mo><mrow><msup><mi>X</mi><mrow><mi>H</mi></mrow></msup><mi>X</mi></mrow><mo form="postfix">)</mo></mrow><mrow><mo>−</mo><mn>1</mn></mrow></msup>
clock_part,j	<msub><mi>clock</mi><mrow><mi>part</mi><mo>,</mo><mi>j</mi></mrow></msub>
cos θ + sin²	<mi>cos</mi>~<mi>θ</mi><mo>+</mo><msup><mi>sin</mi><mrow><mn>2</mn></mrow></msup>
""")
  void isSetAsWrittenOutByHand(String formula, String mathMl) {
    assertThat(set(formula)).isEqualTo(mathMl);
  }

  @Test
  void aFractionHasWhatIsMultipliedAndNotWhatIsAdded() {
    assertThat(set("k − 2 z tan β / D"))
        .isEqualTo(
            "<mi>k</mi><mo>−</mo><mfrac><mrow><mn>2</mn>~<mi>z</mi>~<mi>tan</mi>~<mi>β</mi></mrow>"
                + "<mrow><mi>D</mi></mrow></mfrac>");
  }

  @Test
  void bracketsGrowWithTheirFractionAndFallAwayOverOne() {
    assertThat(Formula.mathMl("f((a + b) / c)", false))
        .contains("<mo form=\"prefix\">(</mo><mrow><mfrac><mrow><mi>a</mi>")
        .doesNotContain("stretchy");
  }

  @Test
  void itsSourceStandsBesideIt() {
    assertThat(Formula.mathMl(" a = b ", true))
        .startsWith("<math display=\"block\" alttext=\"a = b\">");
    assertThat(Formula.escaped("<\"&>")).isEqualTo("&lt;&quot;&amp;&gt;");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a = (b", "a = b)", "a $ b", "a_ = 2", "a = <b>", "|a", "√"})
  void whatHasNoMeaningIsRefused(String formula) {
    assertThatThrownBy(() -> Formula.mathMl(formula, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not understood at")
        .hasMessageEndingWith(formula);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "axis.tip", "collet+bearings", "cases/metrology/circle_*.csv", "rotor-mass", "c",
        "conditions: {warm-up: …}", "380 ± 20 g", "moved: 0 ± 2 um", "contact_mm", "kc11"
      })
  void whatAFileHasIsNoFormula(String code) {
    assertThat(Formula.is(code)).isEqualTo(code.equals("c"));
  }
}
