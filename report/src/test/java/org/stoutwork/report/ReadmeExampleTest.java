package org.stoutwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stoutwork.report.file.bench.BenchFile;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.result.BenchResult;
import org.stoutwork.source.Mark;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.wood.catalogue.Census;

/** What README.md shows must be so. */
class ReadmeExampleTest {

  private static final Pattern BLOCK = Pattern.compile("(?m)^```(\\w*)\\n((?s:.*?))^```$");
  private static final BenchCheck CHECK = BenchCheck.load();

  @TempDir private Path folder;

  /** A fenced block. */
  private record Fenced(String language, String text) {}

  private static String readme() throws IOException {
    return Files.readString(Path.of("..", "README.md"));
  }

  private static List<Fenced> blocks() throws IOException {
    List<Fenced> out = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(readme());
    while (matcher.find()) {
      out.add(new Fenced(matcher.group(1), matcher.group(2)));
    }
    return out;
  }

  private static String only(String language) throws IOException {
    List<Fenced> found = blocks().stream().filter(b -> b.language().equals(language)).toList();
    assertEquals(1, found.size(), language);
    return found.get(0).text();
  }

  /** What a program of the block printed, run with the class path of this test. */
  private List<String> run(String program) throws Exception {
    Path source = Files.writeString(folder.resolve("FirstCheck.java"), program);
    String classPath = System.getProperty("java.class.path");
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    int compiled =
        compiler.run(
            null, null, null, "-Xlint:all", "-Werror", "-proc:none", "-cp", classPath, "" + source);
    assertEquals(0, compiled);
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                folder + System.getProperty("path.separator") + classPath,
                "FirstCheck")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    int ended = process.waitFor();
    String printed = Files.readString(out, StandardCharsets.UTF_8);
    assertEquals(0, ended, printed);
    return printed.lines().toList();
  }

  @Test
  void ten_lines_of_java_print_the_worst_utilisation_and_write_the_sheet() throws Exception {
    String program = only("java");
    List<String> lines = program.lines().toList();
    int body = lines.indexOf("  public static void main(String[] arguments) throws Exception {");
    assertTrue(lines.lastIndexOf("  }") - body - 1 <= 11, program);
    List<String> printed = run(program);
    BenchFile same = BenchFileReader.read(new SourceText("README.md", only("yaml")), CHECK.woods());
    BenchResult result = CHECK.run(same.bench());
    assertEquals(
        List.of(
            "verdict: " + result.verdict().words(),
            "governs: " + result.worst().title(),
            "worst utilisation: " + result.worst().utilisation()),
        printed);
    byte[] sheet = Files.readAllBytes(folder.resolve("first-bench-sheet.pdf"));
    assertEquals("%PDF-", new String(sheet, 0, 5, StandardCharsets.US_ASCII));
  }

  @Test
  void the_first_block_is_the_main_job_and_the_second_the_tests() throws IOException {
    String job = blocks().get(0).text();
    assertEquals(1, job.lines().count());
    Matcher command =
        Pattern.compile(
                "mvn -q -B -DskipTests package && java -jar report/target/stoutwork\\.jar"
                    + " check (\\S+\\.yaml) --sheet (\\S+-sheet\\.pdf)\n")
            .matcher(job);
    assertTrue(command.matches(), job);
    assertTrue(Files.exists(Path.of("..", command.group(1))), job);
    assertTrue(readme().contains("`" + command.group(2) + "`"), job);
    assertEquals("mvn -B verify\n", blocks().get(1).text());
  }

  @Test
  void the_counts_of_marks_are_those_of_the_tables() throws IOException {
    int published = 0;
    int remembered = 0;
    for (Census table : Census.ofAllTables()) {
      published += table.rows(Mark.PUBLISHED);
      remembered += table.rows(Mark.FROM_MEMORY);
    }
    String said = "hold " + published + " published marks and " + remembered + " from memory";
    assertTrue(readme().contains(said), said);
  }

  @Test
  void every_mark_is_explained_in_its_words() throws IOException {
    String text = readme();
    for (Mark mark : Set.of(Mark.values())) {
      assertTrue(text.contains("| `" + mark.words() + "` |"), mark.words());
    }
  }
}
