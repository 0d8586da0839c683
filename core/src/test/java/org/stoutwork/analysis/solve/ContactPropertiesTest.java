package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

class ContactPropertiesTest {
  @Property(tries = 60)
  void each_foot_either_presses_or_stands_open(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    LoadCase loads = RandomFrames.loads(r, model, "all");
    Outcome outcome = FrameSolver.prepare(model).prepared().solve(loads);
    if (!(outcome instanceof FrameResult result)) {
      assertTrue(((Loose) outcome).message().contains("lifts"));
      return;
    }
    assertTrue(result.equilibriumError() < 1e-9, () -> "left over " + result.equilibriumError());
    for (ContactState state : result.contacts()) {
      double uz = result.displacement(state.part())[2];
      double rz = result.reaction(state.part())[2];
      assertTrue(rz >= -1e-6, state + "");
      assertEquals(state.force(), rz, 1e-9);
      if (state.touching()) {
        assertTrue(uz <= 1e-9, state + " at " + uz);
      } else {
        assertTrue(uz > 0);
        assertEquals(state.gap(), uz, 1e-7 * (1 + uz));
        assertEquals(0, rz, 0);
      }
    }
  }

  @Property(tries = 25)
  void the_contact_state_found_is_the_only_admissible_of_sixteen(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    LoadCase loads = RandomFrames.loads(r, model, "all");
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    Loading loading =
        new Loading(frame.layout(), org.stoutwork.analysis.model.Combination.of(loads));
    List<boolean[]> admissible = new ArrayList<>();
    for (int bits = 0; bits < 16; bits++) {
      boolean[] open = new boolean[4];
      for (int c = 0; c < 4; c++) {
        open[c] = (bits >> c & 1) == 1;
      }
      if (isAdmissible(frame, loading.forces(), open)) {
        admissible.add(open);
      }
    }
    if (frame.solve(loads) instanceof FrameResult result) {
      assertEquals(1, admissible.size());
      for (int c = 0; c < 4; c++) {
        assertEquals(admissible.get(0)[c], !result.contacts().get(c).touching());
      }
    } else {
      // Feet that would rise by tens of metres before something holds them count as lifting.
      for (boolean[] open : admissible) {
        double rise = rise(frame, loading.forces(), open);
        assertTrue(rise > 3e4, "rises by " + rise + java.util.Arrays.toString(open));
      }
    }
  }

  private static double rise(PreparedFrame frame, double[] f, boolean[] open) {
    Equations equations = frame.layout().equations;
    GlobalSystem.Made made = GlobalSystem.of(equations.withFrozenContacts(open));
    double[] u = ((GlobalSystem.Ready) made).system().solve(f, true, null).u();
    return equations.contacts.stream().mapToDouble(c -> c.gap().at(u)).max().orElseThrow();
  }

  /** Solves a state by a fresh factorisation in which open feet are simply not there. */
  private static boolean isAdmissible(PreparedFrame frame, double[] f, boolean[] open) {
    Equations equations = frame.layout().equations;
    GlobalSystem.Made made = GlobalSystem.of(equations.withFrozenContacts(open));
    if (!(made instanceof GlobalSystem.Ready ready)) {
      return false;
    }
    GlobalSystem.Solved solved = ready.system().solve(f, true, null);
    double[] internal = ready.system().internal(solved.u());
    boolean ok = true;
    for (int c = 0; c < 4; c++) {
      Contact contact = equations.contacts.get(c);
      double gap = contact.gap().at(solved.u());
      int unknown = contact.gap().terms().keySet().iterator().next();
      // A rigid foot's force is what the frame lacks there; a spring's follows from its shortening.
      double force =
          contact.isRigid() ? internal[unknown] - f[unknown] : -contact.stiffness() * gap;
      ok &= open[c] ? gap > 0 : force >= 0;
    }
    return ok;
  }
}
