package org.mensuration.log;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.Physical;

/**
 * The solid volume of several logs or sections, all measured over the same bark basis. Immutable
 * and thread-safe.
 *
 * @param volume the sum
 * @param bark whether the diameters included the bark
 * @param parts what was added
 */
public record LogTotal(Quantity<Volume> volume, BarkBasis bark, List<MeasuredVolume> parts) {
  /**
   * Checks that one bark basis holds for all.
   *
   * @param volume the sum
   * @param bark whether the diameters included the bark
   * @param parts what was added
   * @throws IllegalArgumentException if a part has another bark basis; the message names both
   */
  public LogTotal {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(bark, "bark");
    parts = List.copyOf(parts);
    for (int i = 0; i < parts.size(); i++) {
      BarkBasis other = parts.get(i).bark();
      if (other != bark) {
        throw new IllegalArgumentException(
            "cannot add volumes "
                + bark.words()
                + " and "
                + other.words()
                + ": log "
                + (i + 1)
                + " of "
                + parts.size()
                + " is "
                + other.words());
      }
    }
  }

  /**
   * What was odd about the logs.
   *
   * @return all warnings of the parts in their order
   */
  public List<LogWarning> warnings() {
    return parts.stream().flatMap(part -> part.warnings().stream()).collect(Collectors.toList());
  }

  /**
   * The rules that were used.
   *
   * @return each name once, in the order of the parts
   */
  public List<String> rules() {
    return parts.stream().map(MeasuredVolume::rule).distinct().collect(Collectors.toList());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LogTotal total
        && Physical.same(volume, total.volume)
        && bark == total.bark
        && parts.equals(total.parts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(volume), bark, parts);
  }
}
