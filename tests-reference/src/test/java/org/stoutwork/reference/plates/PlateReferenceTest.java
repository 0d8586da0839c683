package org.stoutwork.reference.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.solve.*;

class PlateReferenceTest {
  @Test
  void probe() {
    Map<String, List<PlateCase>> by =
        PlateCase.all().stream()
            .collect(Collectors.groupingBy(PlateCase::id, LinkedHashMap::new, Collectors.toList()));
    by.forEach(
        (id, rows) -> {
          long t = System.nanoTime();
          PanelResult r = PanelSolver.solve(rows.get(0).panel(rows), rows.get(0).loads());
          System.out.printf("%s grid %dx%d err %.2e eq %.1e res %.1e  %.0f ms%n", id, r.field().countX(), r.field().countY(), r.meshError(), r.equilibriumError(), r.residual(), (System.nanoTime() - t) / 1e6);
          for (int k = 0; k < rows.size(); k++) {
            PlateCase c = rows.get(k);
            PanelPointResult p = r.report().get(k);
            double w = c.number("w_mm");
            System.out.printf("   (%.0f,%.0f) w %.6g ref %.6g rel %.1e tol %.0e", c.x(), c.y(), -p.w(), w, (-p.w() - w) / (w == 0 ? 1 : w), c.number("rel_tolerance_same_theory"));
            if (c.has("Mx_Nmm_per_mm")) {
              double mx = c.number("Mx_Nmm_per_mm"), my = c.number("My_Nmm_per_mm");
              System.out.printf(" | Mx %.6g ref %.6g rel %.1e | My %.6g ref %.6g rel %.1e tol %s", p.forces().mx(), mx, p.forces().mx() / mx - 1, p.forces().my(), my, p.forces().my() / my - 1, c.row().get("rel_tolerance_M"));
            }
            System.out.println();
          }
        });
    assertEquals(44, PlateCase.all().size());
  }
}
