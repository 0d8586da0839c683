package org.stoutwork.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * A formula that calculates and prints itself from one tree.
 *
 * <pre>{@code
 * static final Formula BENDING_STRESS =
 *     Formula.define("σ_m").meaning("bending stress at the outer fibre").unit(Unit.MPA)
 *         .where("M", "moment", Unit.N_MM).where("b", "width", Unit.MM).where("h", "depth", Unit.MM)
 *         .as("6*M/(b*h^2)")
 *         .source(Source.derived("beam theory: stress in a rectangle"));
 * }</pre>
 *
 * <p>Building it checks that every symbol is declared and used, and that the units come out as
 * declared. Formulas fitted to tests, whose units do not come out, say so by {@link
 * Builder#fitted(String)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Formula {

  private final Symbol result;
  private final List<Symbol> symbols;
  private final Expr tree;
  private final Source source;

  private Formula(Symbol result, List<Symbol> symbols, Expr tree, Source source) {
    this.result = result;
    this.symbols = List.copyOf(symbols);
    this.tree = tree;
    this.source = Objects.requireNonNull(source, "source");
  }

  /** Begins a formula for the given symbol. */
  public static Builder define(String symbol) {
    return new Builder(symbol);
  }

  /**
   * The value for given values of the symbols, in the order in which they were declared.
   *
   * @throws IllegalArgumentException if the number of values differs from that of the symbols
   */
  public double value(double... values) {
    if (values.length != symbols.size()) {
      throw new IllegalArgumentException(
          "%s needs %s values; %s were given"
              .formatted(result.symbol(), symbols.size(), values.length));
    }
    return tree.eval(values);
  }

  /** What the formula yields. */
  public Symbol result() {
    return result;
  }

  /** The symbols, in the order of their values. */
  public List<Symbol> symbols() {
    return symbols;
  }

  /** The tree, for printing and typesetting. */
  public Expr tree() {
    return tree;
  }

  /** Where the formula comes from. */
  public Source source() {
    return source;
  }

  /** The right-hand side in symbols. */
  public String inSymbols() {
    return Printing.symbols(this);
  }

  /** The right-hand side with numbers and units put in. */
  public String withNumbers(double... values) {
    return Printing.numbers(this, values);
  }

  @Override
  public String toString() {
    return result.symbol() + " = " + inSymbols();
  }

  /** Collects the parts of a formula. Ends with {@link #source(Source)}. */
  public static final class Builder {

    private final String symbol;
    private final List<Symbol> symbols = new ArrayList<>();
    private String meaning = "";
    private Unit unit = Unit.ONE;
    private String text = "";
    private boolean unitsComeOut = true;

    private Builder(String symbol) {
      this.symbol = symbol;
    }

    /** What the result is, in words. */
    public Builder meaning(String words) {
      meaning = words;
      return this;
    }

    /** The unit of the result; a plain ratio if never called. */
    public Builder unit(Unit resultUnit) {
      unit = resultUnit;
      return this;
    }

    /** Declares the next symbol. */
    public Builder where(String name, String words, Unit inUnit) {
      symbols.add(new Symbol(name, words, inUnit));
      return this;
    }

    /** The right-hand side. */
    public Builder as(String rightHandSide) {
      text = rightHandSide;
      return this;
    }

    /** The right-hand side of a formula fitted to tests in fixed units: they are not followed. */
    public Builder fitted(String rightHandSide) {
      unitsComeOut = false;
      return as(rightHandSide);
    }

    /**
     * Names the source and builds the formula.
     *
     * @throws IllegalArgumentException if a symbol is undeclared or unused, or units do not come
     *     out
     */
    public Formula source(Source source) {
      Expr tree = Reading.of(text, symbols.stream().map(Symbol::symbol).toList());
      Symbols.requireAllUsed(text, tree, symbols);
      if (unitsComeOut) {
        UnitCheck.check(text, tree, symbols.stream().map(Symbol::unit).toList(), unit);
      }
      return new Formula(new Symbol(symbol, meaning, unit), symbols, tree, source);
    }
  }
}
