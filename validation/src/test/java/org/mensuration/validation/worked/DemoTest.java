package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The print of the invented notes. After a wanted change, the golden files are what the command
 * prints.
 */
@Tag("locale")
class DemoTest {

  @ParameterizedTest
  @CsvSource({"metric", "us"})
  void printsWhatIsKept(String units) throws IOException {
    assertThat(print(units)).isEqualTo(golden(units));
  }

  @ParameterizedTest
  @CsvSource({"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
  void theLocaleChangesNoByte(String tag) throws IOException {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(print("metric")).isEqualTo(golden("metric"));
      assertThat(print("us")).isEqualTo(golden("us"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void figuresAgreeWithAWorkingByHand() {
    var lines = Folder.run(List.of()).words();

    assertThat(lines)
        // Counts 8 + 7 + 9 + 7 + 10 + 5 + 12 + 8 + 9 = 75 at 9 points: 75 · 4/9 = 33.3.
        .anyMatch(l -> l.startsWith("Terrace basal area m²/ha 33.3 "))
        // 6 + 4.5 + 8 + 0 + 7 + 2 = 27.5 at 6 points: 27.5 · 4/6 = 18.3; t with 5 df 2.571.
        .contains("Slope basal area m²/ha 18.3 5.0 27.4 5.4 31.2 5")
        // (9.6 · 33.33 + 6.2 · 18.33)/15.8 = 27.4.
        .anyMatch(l -> l.startsWith("Demo stand basal area m²/ha 27.4 "))
        // 38/9.5 = 4; 8.8 · 4 = 35.2; (38² + 35.2²)/2 · pi/40000 = 0.1054 m² over 2.74 m.
        .contains("ST1 3 21.0 38.0 9.50 4.000 compensated")
        .contains("section 1.3 4.0 38.0 - 35.2 0.289 8.80 div at ST1")
        // (43² + 38²)/2 · pi/40000 · 0.9 = 0.116.
        .contains("section 0.4 1.3 43.0 - 38.0 0.116 by hand")
        // The tip is a cone of 12.4 cm from 22.1 to 27.3 m: 27.3 - 5.2 · 7/12.4 = 24.4 m, and
        // above it pi/12 · 0.07² · 2.9 = 0.004 m³ of the whole 1.355.
        .contains("profile 0.3 27.3 - - - 1.355 a smooth curve through the readings")
        .contains("to top 0.3 24.4 - - 7.0 1.351 of that, up to the top diameter")
        // 5.2 · 5.0 · cos(-0.5°)/cos 30.5° = 26 · 0.99996/0.86163 = 30.2, where 26 ignores it.
        .contains("section 12.9 16.9 36.3 - 30.2 0.351 5.00 div at ST4, +30.5°")
        // The fork: 1.509 + 0.217 = 1.726; 46 cm has 0.16619 m²: 10.39.
        .contains("point 10 tree 2 E1 + E2 46.0 1.726 10.39")
        // Mean of 12.03, 12.47, 10.61, 13.27, 10.39, 10.96 is 11.62; 27.447 · 11.62 = 319.
        .contains("volume m³/ha 319 32 10.1 236 402 5");
  }

  @Test
  void theNotesSayThatTheyAreInvented() throws IOException {
    for (String file : List.of("stand.csv", "stations.csv", "stems.csv", "points.csv")) {
      try (InputStream stream = Notes.demo().open(file)) {
        assertThat(new String(stream.readAllBytes(), StandardCharsets.UTF_8)).contains("INVENTED");
      }
    }
  }

  private static String print(String units) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    assertThat(Main.run(List.of("--units", units), out, err)).isZero();
    assertThat(err.size()).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String golden(String units) throws IOException {
    try (InputStream stream = DemoTest.class.getResourceAsStream("demo-" + units + ".txt")) {
      return new String(
          Objects.requireNonNull(stream, "golden file").readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
