package org.stoutwork.working;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the text of a formula into its tree. Symbols are letters of any alphabet with an optional
 * index after a low line ({@code f_m}) or an index in braces that may hold commas ({@code
 * k_{c,90}}). {@code π} is the number unless it is declared.
 */
final class Reading {

  private final String text;
  private final List<String> symbols;
  private int at;

  private Reading(String text, List<String> symbols) {
    this.text = text;
    this.symbols = symbols;
  }

  static Expr of(String text, List<String> symbols) {
    Reading reading = new Reading(text, symbols);
    Expr whole = reading.sum();
    reading.skipBlanks();
    if (reading.at < text.length()) {
      throw reading.fault("nothing more was expected");
    }
    return whole;
  }

  private Expr sum() {
    Expr left = product();
    for (char c = peek(); c == '+' || c == '-'; c = peek()) {
      at++;
      left = new Expr.Binary(c, left, product());
    }
    return left;
  }

  private Expr product() {
    Expr left = signed();
    for (char c = peek(); c == '*' || c == '/'; c = peek()) {
      at++;
      left = new Expr.Binary(c, left, signed());
    }
    return left;
  }

  private Expr signed() {
    if (peek() == '-') {
      at++;
      return new Expr.Negative(signed());
    }
    return power();
  }

  private Expr power() {
    Expr base = primary();
    if (peek() != '^') {
      return base;
    }
    at++;
    return new Expr.Binary('^', base, signed());
  }

  private Expr primary() {
    char c = peek();
    if (c == '(') {
      at++;
      Expr inner = sum();
      expect(')');
      return inner;
    }
    if (Character.isDigit(c)) {
      return number();
    }
    if (Character.isLetter(c)) {
      return named();
    }
    throw fault("a number, a symbol or a bracket was expected");
  }

  private Expr number() {
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    if (at < text.length() && text.charAt(at) == 'e') {
      at += 2;
      while (at < text.length() && Character.isDigit(text.charAt(at))) {
        at++;
      }
    }
    String written = text.substring(from, at);
    return new Expr.Num(Double.parseDouble(written), written);
  }

  private Expr named() {
    int from = at;
    String word = word();
    if (peek() == '(' && !symbols.contains(word)) {
      return call(word);
    }
    int index = symbols.indexOf(word);
    if (index < 0 && word.equals("π")) {
      return new Expr.Num(Math.PI, word);
    }
    if (index < 0) {
      at = from;
      throw fault("symbol \"%s\" is not declared".formatted(word));
    }
    return new Expr.Sym(index);
  }

  private Expr call(String word) {
    Function function =
        Function.named(word).orElseThrow(() -> fault("no function \"%s\"".formatted(word)));
    expect('(');
    List<Expr> inputs = new ArrayList<>();
    inputs.add(sum());
    while (peek() == ',') {
      at++;
      inputs.add(sum());
    }
    expect(')');
    if (function.takesSeveral() != inputs.size() > 1) {
      throw fault("%s was given %s parts".formatted(word, inputs.size()));
    }
    return new Expr.Call(function, inputs);
  }

  private String word() {
    int from = at;
    while (at < text.length() && isWordPart(text.charAt(at))) {
      if (text.charAt(at) == '{') {
        at = text.indexOf('}', at);
        if (at < 0) {
          throw fault("a brace is not closed");
        }
      }
      at++;
    }
    return text.substring(from, at);
  }

  private static boolean isWordPart(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '{' || c == '′';
  }

  private char peek() {
    skipBlanks();
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private void skipBlanks() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private void expect(char c) {
    if (peek() != c) {
      throw fault("'%s' was expected".formatted(c));
    }
    at++;
  }

  private IllegalArgumentException fault(String why) {
    return new IllegalArgumentException(
        "formula \"%s\", at character %s: %s".formatted(text, at + 1, why));
  }
}
