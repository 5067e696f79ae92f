package org.mensuration.internal.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.internal.catalogue.BoardFormulas;
import org.mensuration.internal.catalogue.LogFormulas;
import org.mensuration.internal.catalogue.PolynomialBoardFormulas;
import org.mensuration.log.Log;
import org.mensuration.log.SolidRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;

/** A rule reads and answers in the units of its formula. */
class RulesMadeAfreshTest {
  @Test
  void aRuleOfInchesGivesCubicFeet() {
    SolidRule sorenson = MeasuredRule.of(LogFormulas.SORENSON, Place.SMALL);
    assertThat(in(sorenson.volume(Log.of(inches(12), feet(16))), ForestUnits.CUBIC_FOOT))
        .isEqualTo(LogFormulas.SORENSON.value(12, 16));
    SolidRule huber = MeasuredRule.of(LogFormulas.HUBER, Place.MIDDLE);
    assertThat(in(huber.volume(Log.ofMiddle(centimetres(40), metres(9))), ForestUnits.CUBIC_METRE))
        .isEqualTo(LogFormulas.HUBER.value(40, 9));
  }

  @Test
  void aBoardRuleReadsTheSmallEnd() {
    LogScale scale =
        BoardRule.ofSmallEnd(BoardFormulas.DOYLE).scale(Log.of(inches(18), inches(12), feet(16)));
    assertThat(scale.amount()).isEqualTo(64);
  }

  @Test
  void aLengthThatIsNoneOrAbsurdIsLeftToTheFormula() {
    SectionRule rule = new SectionRule(PolynomialBoardFormulas.VERMONT_SECTIONS, 12);
    assertThatThrownBy(() -> rule.scale(Log.of(inches(12), feet(999999))))
        .hasMessageContaining("needs the diameter of the large end");
    // From a million feet on no list of sections is made.
    assertThatThrownBy(() -> rule.scale(Log.of(inches(12), feet(1e6))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("L = 1000000 ft");
    assertThatThrownBy(() -> rule.scale(Log.of(inches(12), feet(0))))
        .isInstanceOf(OutOfDomainException.class);
  }
}
