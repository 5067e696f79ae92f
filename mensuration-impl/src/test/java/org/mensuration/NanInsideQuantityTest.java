package org.mensuration;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.metres;

import java.lang.reflect.Proxy;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.units.ForestUnits;
import tech.units.indriya.unit.Units;

/** Another implementation of quantities may hold NaN or an infinity; no call lets it through. */
class NanInsideQuantityTest {
  private static final List<Unit<Length>> LENGTHS =
      List.of(
          ForestUnits.METRE,
          ForestUnits.CENTIMETRE,
          ForestUnits.INCH,
          ForestUnits.FOOT,
          MetricPrefix.CENTI(Units.METRE),
          MetricPrefix.KILO(Units.METRE));

  @SuppressWarnings("unchecked") // the proxy answers for the kind of its unit
  private static <Q extends Quantity<Q>> Quantity<Q> holding(double value, Unit<Q> unit) {
    return (Quantity<Q>)
        Proxy.newProxyInstance(
            Quantity.class.getClassLoader(),
            new Class<?>[] {Quantity.class},
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "getValue" -> value;
                  case "getUnit" -> unit;
                  default -> throw new IllegalStateException(method.getName());
                });
  }

  private static void refused(ThrowingCallable call) {
    assertThatThrownBy(call).isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void lengthsOfEveryUnit() {
    for (Unit<Length> unit : LENGTHS) {
      for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
        Quantity<Length> length = holding(bad, unit);
        refused(() -> LogRules.smalian().volume(Log.of(length, centimetres(30), metres(5))));
        refused(() -> LogRules.smalian().volume(Log.of(centimetres(30), centimetres(20), length)));
        refused(() -> LogRules.doyle().scale(Log.of(length, metres(5))));
        refused(() -> OpticalScales.calibratedOnStem(length, 6));
        refused(() -> OpticalScales.ofRatio(0.02).diameter(4, length));
        refused(() -> Heights.tangent(length, degrees(40), degrees(-5)));
      }
    }
  }

  @Test
  void anglesOfBothUnits() {
    for (Unit<Angle> unit : List.of(ForestUnits.DEGREE, ForestUnits.RADIAN)) {
      Quantity<Angle> angle = holding(Double.NaN, unit);
      refused(() -> Heights.tangent(metres(20), angle, degrees(-5)));
      refused(() -> OpticalScales.uncompensatedOnStem(centimetres(42), 6, angle));
    }
  }
}
