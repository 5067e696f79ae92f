package org.mensuration;

import java.util.List;
import org.mensuration.diameter.BreastHeight;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.units.Measures;

/**
 * Breast heights by country. On slopes they are measured from the uphill side. Stateless and
 * thread-safe.
 */
public final class BreastHeights {
  private BreastHeights() {}

  /**
   * 1.30 m, as in Europe, the United Kingdom and Australia.
   *
   * @return the breast height
   */
  public static BreastHeight europe() {
    return new BreastHeight(
        Measures.metres(1.3),
        "Europe, United Kingdom, Australia",
        Citation.published(
            Role.DEFINES, OpticsWorks.CODE99_211, "section 2.1.1 diameter, breast height"));
  }

  /**
   * 4.5 ft, which is 1.3716 m and not 1.37 m, as in the United States.
   *
   * @return the breast height
   */
  public static BreastHeight unitedStates() {
    return new BreastHeight(
        Measures.feet(4.5),
        "United States",
        Citation.published(Role.DEFINES, OpticsWorks.BH_GLOSS, "list of 4 ft 6 in"));
  }

  /**
   * 1.37 m, as 4 ft 6 in are written in India, Burma, South Africa and Malaya.
   *
   * @return the breast height
   */
  public static BreastHeight india() {
    return new BreastHeight(
        Measures.metres(1.37),
        "India, Burma, South Africa, Malaya",
        Citation.published(Role.DEFINES, OpticsWorks.BH_GLOSS, "list of 4 ft 6 in (1.37 m)"));
  }

  /**
   * 1.4 m, as in New Zealand.
   *
   * @return the breast height
   */
  public static BreastHeight newZealand() {
    return new BreastHeight(
        Measures.metres(1.4),
        "New Zealand",
        Citation.published(
            Role.DEFINES, OpticsWorks.CODE99_211, "section 2.1.1 diameter, breast height"));
  }

  /**
   * 1.2 m, as in Japan and Korea; from memory.
   *
   * @return the breast height
   */
  public static BreastHeight japan() {
    return new BreastHeight(
        Measures.metres(1.2),
        "Japan, Korea",
        Citation.fromMemory("breast height of 1.2 m in Japan and Korea"));
  }

  /**
   * 1.50 m, at which French private forests measure girth; diameters there at 1.30 m.
   *
   * @return the height
   */
  public static BreastHeight frenchGirth() {
    return new BreastHeight(
        Measures.metres(1.5),
        "girth in French private forests",
        Citation.published(
            Role.DEFINES, OpticsWorks.CRPF, "1.30 m for diameter, 1.50 m for girth"));
  }

  /**
   * All heights at which a diameter is taken; {@link #frenchGirth} is one of girths.
   *
   * @return from the lowest on
   */
  public static List<BreastHeight> all() {
    return List.of(japan(), europe(), india(), unitedStates(), newZealand());
  }
}
