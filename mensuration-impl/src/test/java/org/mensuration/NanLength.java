package org.mensuration;

import java.lang.reflect.Proxy;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.units.ForestUnits;

/** A length of another make that holds NaN. */
final class NanLength {
  private NanLength() {}

  @SuppressWarnings("unchecked") // the proxy answers for the kind of its unit
  static Quantity<Length> metres() {
    return (Quantity<Length>)
        Proxy.newProxyInstance(
            Quantity.class.getClassLoader(),
            new Class<?>[] {Quantity.class},
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "getValue" -> Double.NaN;
                  case "getUnit" -> ForestUnits.METRE;
                  default -> throw new IllegalStateException(method.getName());
                });
  }
}
