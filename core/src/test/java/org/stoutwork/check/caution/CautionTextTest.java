package org.stoutwork.check.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stoutwork.result.Caution;

/** Codes of cautions are stable: others refer to them, and none may stand for two things. */
class CautionTextTest {

  private static Caution made(Method text) throws ReflectiveOperationException {
    Object[] given =
        Arrays.stream(text.getParameterTypes())
            .map(type -> type == double.class ? (Object) 3.7 : "the middle rail")
            .toArray();
    return (Caution) text.invoke(null, given);
  }

  @Test
  void no_two_cautions_share_a_code() throws ReflectiveOperationException {
    Map<String, String> byCode = new TreeMap<>();
    for (Method text : CautionText.class.getDeclaredMethods()) {
      if (text.getReturnType() == Caution.class
          && !Arrays.asList("warning", "caution", "notice").contains(text.getName())) {
        String before = byCode.put(made(text).code(), text.getName());
        assertEquals(null, before, text.getName());
      }
    }
    assertTrue(byCode.size() > 25, byCode.toString());
  }

  /** C-18 is kept for old or damaged timber, whose strength nobody knows. */
  @Test
  void a_top_that_no_screw_holds_has_a_code_of_its_own_among_the_joints() {
    assertEquals("C-27", CautionText.unheld(2.5).code());
  }
}
