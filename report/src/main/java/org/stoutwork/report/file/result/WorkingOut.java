package org.stoutwork.report.file.result;

import java.util.List;
import java.util.stream.IntStream;
import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.source.Source;
import org.stoutwork.working.Line;
import org.stoutwork.working.Symbol;

/** One line of a working: as text for people, and in its parts for programs. */
final class WorkingOut {

  private WorkingOut() {}

  static void line(JsonOut out, Line line) {
    if (line instanceof Line.Given given) {
      out.put("kind", "given");
      value(out, given.symbol(), given.value());
      source(out, given.source());
    } else if (line instanceof Line.Calculated calculated) {
      out.put("kind", "calculated");
      value(out, calculated.formula().result(), calculated.value());
      out.put("formula", calculated.formula().inSymbols());
      out.put("withNumbers", calculated.withNumbers());
      List<Symbol> symbols = calculated.formula().symbols();
      out.objects(
          "inputs",
          IntStream.range(0, symbols.size()).boxed().toList(),
          (o, i) -> value(o, symbols.get(i), calculated.values().get(i)));
      source(out, calculated.formula().source());
    } else if (line instanceof Line.Remark) {
      out.put("kind", "remark");
    }
    out.put("text", line.text());
  }

  private static void value(JsonOut out, Symbol symbol, double value) {
    out.put("symbol", symbol.symbol()).put("meaning", symbol.meaning());
    Plain.number(out, "value", value);
    out.put("unit", symbol.unit().symbol());
  }

  static void source(JsonOut out, Source source) {
    out.object(
        "source",
        o ->
            o.put("document", source.document())
                .put("place", source.place())
                .put("mark", source.mark().words()));
  }
}
