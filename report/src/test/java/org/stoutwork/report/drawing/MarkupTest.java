package org.stoutwork.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class MarkupTest {

  private static Run base(String text) {
    return Run.of(text, Face.REGULAR, Level.BASE);
  }

  private static Run sub(String text) {
    return Run.of(text, Face.REGULAR, Level.SUB);
  }

  private static Run raised(String text) {
    return Run.of(text, Face.REGULAR, Level.SUPER);
  }

  @Test
  void an_index_ends_where_letters_and_digits_end() {
    assertEquals(
        List.of(base("σ"), sub("m"), base(" = 7 MPa")), Markup.parse("σ_m = 7 MPa").runs());
  }

  @Test
  void a_comma_belongs_to_an_index_only_before_another_sign_of_it() {
    assertEquals(
        List.of(base("f"), sub("c,90,d"), base(", k"), sub("mod"), base(", done")),
        Markup.parse("f_c,90,d, k_mod, done").runs());
  }

  @Test
  void a_hyphen_in_a_raised_index_becomes_a_minus() {
    assertEquals(
        List.of(base("10"), raised("−3"), base(" s"), raised("−2/3")),
        Markup.parse("10^-3 s^{-2/3}").runs());
  }

  @Test
  void bold_and_italic_open_and_close() {
    assertEquals(
        List.of(
            base("a "),
            Run.of("b", Face.BOLD, Level.BASE),
            base(" "),
            Run.of("c", Face.ITALIC, Level.BASE)),
        Markup.parse("a **b** //c//").runs());
  }

  @Test
  void the_two_strokes_of_an_address_are_not_italic() {
    assertEquals("https://example.org/x", Markup.parse("https://example.org/x").characters());
    assertEquals(1, Markup.parse("https://example.org/x").runs().size());
  }

  @Test
  void a_lone_underscore_is_itself() {
    assertEquals(List.of(base("a _ b_")), Markup.parse("a _ b_").runs());
  }

  @Test
  void braces_make_a_reference() {
    assertEquals(
        List.of(base("see "), new Run("page:top", Face.REGULAR, Level.BASE, true)),
        Markup.parse("see {page:top}").runs());
    assertEquals("see 12", RichText.of("see {page:top}").resolved(name -> "12").characters());
  }

  @Test
  void an_open_brace_is_refused_with_its_place() {
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> Markup.parse("ab {cd"));
    assertEquals(
        "text \"ab {cd\" opens a brace at 3 and does not close it; write \\{ for the sign itself",
        fault.getMessage());
  }

  @Property
  void escaped_characters_read_back_as_they_were(
      @ForAll
          @StringLength(max = 30)
          @CharRange(from = ' ', to = '~')
          @CharRange(from = 'α', to = 'ω')
          String text) {
    RichText read = Markup.parse(Markup.escape(text));
    assertEquals(text, read.characters());
    assertTrue(read.runs().stream().allMatch(run -> run.level() == Level.BASE));
    assertTrue(read.runs().stream().noneMatch(Run::reference));
  }

  @Test
  void symbols_in_prose_get_their_index_and_names_keep_their_low_lines() {
    assertEquals("factor k_{cr} = 0.67, E_{05} too", Markup.prose("factor k_cr = 0.67, E_05 too"));
    assertEquals("bench\\_of\\_four", Markup.prose("bench_of_four"));
  }
}
