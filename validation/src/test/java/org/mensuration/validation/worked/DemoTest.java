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
  private static final List<String> FILES =
      List.of("stand.csv", "stations.csv", "stems.csv", "points.csv", "plots.csv", "lines.csv");

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
        // 6 + 4.5 + 8 + 0 + 7 + 2 · 2 + 1 · 4 = 33.5 at 7 points: 33.5 · 4/7 = 19.14; squares of
        // 24, 18, 32, 0, 28, 16, 16 about it 654.9, over 6 109.1 = 10.45²: error 10.45/sqrt 7 =
        // 3.95; t with 6 df 2.447.
        .contains("Slope basal area m²/ha 19.1 3.9 20.6 9.5 28.8 6")
        // (9.6 · 33.33 + 6.2 · 19.14)/15.8 = 27.8.
        .anyMatch(l -> l.startsWith("Demo stand basal area m²/ha 27.8 "))
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
        // Mean of 12.03, 12.47, 10.61, 13.27, 10.39, 10.96 is 11.62; 27.764 · 11.62 = 323.
        .contains("volume m³/ha 323 29 9.0 248 398 5");
  }

  /** Sums over the notes were made beside the library; what follows from them is worked here. */
  @Test
  void otherSamplesAgreeWithAWorkingByHand() {
    var lines = Folder.run(List.of()).words();

    assertThat(lines)
        // 24 ratios, mean 11.091 and s 1.5407: error 0.3145 or 2.836 %; count 8.000 %. First order
        // sqrt(64 + 8.04) = 8.49; exact 8.49² - (8 · 2.836/100)² = 8.48². (64 + 8.04)²/(64²/8 +
        // 8.04²/23) = 10.1.
        .contains("Measured 24 trees, those in by the larger factor 16.000 m²/ha")
        .contains(
            "Ratio 11.09 m³/m², std. error 2.8 %, df 23: mean of volume over basal area, a tree")
        // 33.333 · 11.091 = 369.7; t with 10.1 df is near 2.228: 369.7 · 0.0849 · 2.226 = 69.9.
        .contains("Volume 370 m³/ha, bark as in the notes")
        .contains("Error 8.49 % combined to first order (sampling/combined-error),")
        .contains("8.48 % by the exact variance of a product (sampling/product-variance)")
        .contains("Interval 300 to 440 m³/ha with 95 %: first order, df 10.1 effective")
        // Points 10, 12 and 16: (226.83 + 329.84 + 149.59)/(24 + 32 + 16) = 9.809.
        .anyMatch(l -> l.startsWith("Ratio 9.81 m³/m², "))
        .contains("Volume 188 m³/ha, bark as in the notes")
        // Heights 66, 30.25, 80, 0, 58, 9 and 22 with their weights, times 4: mean 151.6.
        .contains("volume m³/ha 152 46 30.3 39 264 6")
        // F3 has 3 trees of 100 and 2 of 33.3 a hectare; F5 (2 · 100 + 3 · 33.3)/cos 25° = 331.
        .contains("F3 level 0.0 5.64 9.77 1.000 5 17.2 367 149")
        .contains("F5 uncorrected 25.0 5.64 9.77 1.103 5 25.2 331 231")
        // 333.3, 200, 366.7, 166.7, 331.0, 266.7: mean 277.4, s 80.42, error 80.42 · sqrt((1 -
        // 6/620)/6) = 32.67; t with 5 df 2.571.
        .contains("stems 1/ha 277 33 11.8 193 361 5")
        // (20 · 289.8 + 20 · 431.9 + 25 · 269.9 + 20 · 264.0)/85 = 311.3.
        .contains("stems 1/ha 311 38 12.3 189 433 3")
        // (293.5 + 425.9 + 237.5)/3 = 319.0.
        .contains("stems 1/ha 319 56 17.5 79 559 2");
  }

  @Test
  void theNotesSayThatTheyAreInvented() throws IOException {
    for (String file : FILES) {
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
