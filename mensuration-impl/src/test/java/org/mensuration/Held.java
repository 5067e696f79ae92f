package org.mensuration;

import java.lang.reflect.Proxy;
import javax.measure.Quantity;
import javax.measure.Unit;

/** Quantities of another implementation, which may hold NaN or an infinity. */
final class Held {
  private Held() {}

  @SuppressWarnings("unchecked") // the proxy answers for the kind of its unit
  static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
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
}
