package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the texts at the top of the repository quote must be what stands in the code. */
class ReadmeTest {
  private static final Path TOP = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern QUOTED =
      Pattern.compile("<!-- UserGuideTest: ([a-z-]+) -->\\n+```java\\n(.*?)```", Pattern.DOTALL);
  private static final Pattern REGION =
      Pattern.compile(" *// begin ([a-z-]+)\\n(.*?) *// end \\1\\n", Pattern.DOTALL);
  private static final Pattern PATH =
      Pattern.compile("`((?:mensuration-api|mensuration-impl|validation|benchmarks)/src/[^`<]+)`");

  @Test
  void examplesAreTheCompiledOnes() throws IOException {
    Map<String, String> compiled = new TreeMap<>();
    Matcher region =
        REGION.matcher(
            text(TOP.resolve("mensuration-impl/src/test/java/org/mensuration/UserGuideTest.java")));
    while (region.find()) {
      compiled.put(region.group(1), region.group(2).stripTrailing().stripIndent() + "\n");
    }
    Map<String, String> quoted = new TreeMap<>();
    Matcher block = QUOTED.matcher(text(TOP.resolve("README.md")));
    while (block.find()) {
      quoted.put(block.group(1), block.group(2));
    }
    assertThat(compiled).isNotEmpty();
    assertThat(quoted).isEqualTo(compiled);
  }

  @Test
  void examplesAreAsShortAsPromised() throws IOException {
    Map<String, Integer> promised =
        Map.ofEntries(
            Map.entry("first-volume", 5),
            Map.entry("stand", 10),
            Map.entry("stand-in-total", 10),
            Map.entry("edges-and-heights", 10),
            Map.entry("three-rules", 9),
            Map.entry("sections", 9),
            Map.entry("out-of-reach", 10),
            Map.entry("uncertainty", 10),
            Map.entry("stem", 10));
    Matcher block = QUOTED.matcher(text(TOP.resolve("README.md")));
    while (block.find()) {
      assertThat(block.group(2).lines().filter(line -> !line.isBlank()))
          .hasSizeLessThanOrEqualTo(promised.getOrDefault(block.group(1), 0));
    }
  }

  @Test
  void continuousBuildRunsTheSecondCommand() throws IOException {
    List<String> commands =
        text(TOP.resolve("README.md")).lines().filter(line -> line.startsWith("mvn ")).toList();
    assertThat(commands).hasSizeGreaterThanOrEqualTo(2);
    assertThat(text(TOP.resolve(".ci/run")).lines()).contains("run " + commands.get(1));
  }

  @Test
  void filesThatTheTextsNameExist() throws IOException {
    for (String name : List.of("README.md", "DEVELOPERS.md")) {
      Matcher path = PATH.matcher(text(TOP.resolve(name)));
      while (path.find()) {
        assertThat(TOP.resolve(path.group(1))).as(name).exists();
      }
    }
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file).replace("\r\n", "\n");
  }
}
