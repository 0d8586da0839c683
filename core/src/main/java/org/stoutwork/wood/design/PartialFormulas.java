package org.stoutwork.wood.design;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/** The formulas of design strengths by partial factors. */
final class PartialFormulas {

  private static final Source RULE = Source.published("EN 1995-1-1:2004", "eq. 2.14");

  private static final Map<DesignQuantity, Formula> DESIGN = designFormulas();

  static final Formula ROLLING_SHEAR =
      Formula.define("f_{r,k}")
          .meaning("characteristic rolling shear strength")
          .unit(Unit.MPA)
          .where("f_{t,90,k}", "characteristic tension across the grain", Unit.MPA)
          .as("2*f_{t,90,k}")
          .source(Source.fromMemory("EN 1995-1-1:2004", "6.1.7(1), note"));

  static final Formula SHEAR_MODULUS_LOW =
      Formula.define("G_{05}")
          .meaning("5 % shear modulus, as the modulus along the grain")
          .unit(Unit.MPA)
          .where("G_{mean}", "mean shear modulus", Unit.MPA)
          .where("E_{0,05}", "5 % modulus", Unit.MPA)
          .where("E_{0,mean}", "mean modulus", Unit.MPA)
          .as("G_{mean}*E_{0,05}/E_{0,mean}")
          .source(Source.projectDefault("the ratio of the moduli is taken for shear too"));

  private PartialFormulas() {}

  /** The formula k_mod X_k / γ_M for a strength. */
  static Formula design(DesignQuantity what) {
    return DESIGN.get(what);
  }

  private static Map<DesignQuantity, Formula> designFormulas() {
    Map<DesignQuantity, Formula> formulas = new EnumMap<>(DesignQuantity.class);
    for (DesignQuantity what : DesignQuantity.values()) {
      if (what.isStrength()) {
        formulas.put(what, designFormula(what));
      }
    }
    return Collections.unmodifiableMap(formulas);
  }

  private static Formula designFormula(DesignQuantity what) {
    String symbol = what.symbol();
    String plain = symbol.replace("{", "").replace("}", "");
    return Formula.define(indexed(plain, "d"))
        .meaning("design " + what.meaning())
        .unit(Unit.MPA)
        .where("k_{mod}", "factor for duration and service class", Unit.ONE)
        .where(indexed(plain, "k"), "characteristic value", Unit.MPA)
        .where("γ_M", "partial factor", Unit.ONE)
        .as("k_{mod}*" + indexed(plain, "k") + "/γ_M")
        .source(RULE);
  }

  /** {@code f_t,90} with a further index: {@code f_{t,90,k}}. */
  private static String indexed(String plain, String index) {
    int low = plain.indexOf('_');
    return plain.substring(0, low + 1) + "{" + plain.substring(low + 1) + "," + index + "}";
  }
}
