package org.stoutwork.report.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.report.file.wood.Pick;
import org.stoutwork.report.file.wood.WoodResultsWriter;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wood}: looks up species, strength classes and sheets. */
@Command(
    name = "wood",
    description =
        "Lists species, strength classes and sheets; with a name, everything that is known of a"
            + " wood with its source; with several, one beside the other.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "A name may be a key, a name in use, a botanical name, or a part of one.",
      "Among several names, one that is borne by several woods shows the one in",
      "widest use and says so.",
      "Exit codes: 0 found, 2 no such wood or wrong arguments.",
      "",
      "Example: stoutwork wood oak-white ash-white --at \"9 %%\""
    })
final class WoodCommand implements Callable<Integer> {

  private static final Pattern MOISTURE = Pattern.compile("\\s*(\\d{1,2}(\\.\\d+)?)\\s*%?\\s*");
  private static final double DRIEST = 3;
  private static final double WETTEST = 30;

  private final Console console;

  @Parameters(paramLabel = "KEY", arity = "0..*", description = "Names of woods.")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--at",
      paramLabel = "MOISTURE",
      description = "Moisture content from 3 %% to 30 %% at which the means of species are given.")
  private String at;

  @Option(
      names = "--results",
      paramLabel = "OUT.json|-",
      description = "Write the woods as JSON to a file, or with - to standard output.")
  private String results;

  WoodCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Ending {
    OptionalDouble moisture = moisture();
    WoodCatalogue catalogue = WoodCatalogue.load();
    List<Pick> choices = new ArrayList<>();
    List<Wood> woods = woods(catalogue, choices);
    boolean isList = names.isEmpty() || (names.size() == 1 && woods.size() > 1);
    if (isList && moisture.isPresent()) {
      throw new Ending(
          ExitCode.BAD_INPUT, "--at goes with the name of one wood or of several; name them");
    }
    Target target = results == null ? null : Target.of(results);
    if (target != null) {
      target.write(WoodResultsWriter.json(woods, choices, moisture), console);
    }
    choices.forEach(
        choice -> WoodTable.wrap("", choice.sentence()).forEach(people(target)::println));
    if (target == null || !target.isOut()) {
      List<String> lines = isList ? WoodLists.lines(woods) : WoodTable.lines(woods, moisture);
      lines.forEach(console.out()::println);
      console.out().flush();
    }
    return ExitCode.DONE;
  }

  private PrintStream people(Target target) {
    return console.people(target != null && target.isOut());
  }

  /** The woods to show; where a name among several is borne by more than one, a choice is noted. */
  private List<Wood> woods(WoodCatalogue catalogue, List<Pick> choices) throws Ending {
    WoodSearch search = new WoodSearch(catalogue);
    if (names.isEmpty()) {
      return catalogue.all();
    }
    if (names.size() == 1) {
      return search.matches(names.get(0));
    }
    List<Wood> woods = new ArrayList<>();
    for (String name : names) {
      Pick pick = search.one(name);
      woods.add(pick.wood());
      if (pick.isChoice()) {
        choices.add(pick);
      }
    }
    return woods.stream().distinct().toList();
  }

  private OptionalDouble moisture() throws Ending {
    if (at == null) {
      return OptionalDouble.empty();
    }
    Matcher shape = MOISTURE.matcher(at);
    double value = shape.matches() ? Double.parseDouble(shape.group(1)) : Double.NaN;
    if (!(value >= DRIEST && value <= WETTEST)) {
      throw new Ending(
          ExitCode.BAD_INPUT,
          "--at is \"" + at + "\"; a moisture content from 3 % to 30 % is needed, such as 9");
    }
    return OptionalDouble.of(value);
  }
}
