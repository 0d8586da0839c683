package org.stoutwork.report.file.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelSupport;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

class FrameFilesTest {

  private static final PanelMaterial BEECH = new PanelMaterial(11000, 600, 700, 680, 60, 0.35, 620);

  private static FrameFile read(String text) throws UnreadableFile {
    return FrameFileReader.read(new SourceText("rack.json", text)).value();
  }

  private static FrameFile file(Panel panel) throws UnreadableFile {
    FrameFile frame = read(BrokenFrame.rightText());
    return FrameFiles.of(
        "shelf", frame.model(), List.of(panel), LoadCase.of("none"), EnumSet.of(Analysis.STATIC));
  }

  @Test
  void a_model_becomes_the_file_it_was_made_of() throws UnreadableFile {
    FrameFile file = read(BrokenFrame.rightText());
    FrameFile back =
        FrameFiles.of(
            file.title(),
            file.model(),
            PanelModels.panels(file),
            PanelModels.loads(file),
            file.analyses());
    PanelEntry before = file.panels().get("shelf");
    PanelEntry after = back.panels().get("shelf");
    assertEquals(before.constants().e1(), after.constants().e1(), 1e-8);
    assertEquals(before.constants().e2(), after.constants().e2(), 1e-9);
    assertEquals(before.constants().g12(), after.constants().g12(), 1e-9);
    assertEquals(before.constants().g13(), after.constants().g13(), 1e-9);
    assertEquals(before.constants().g23(), after.constants().g23(), 1e-9);
    assertEquals(before.constants().nu12(), after.constants().nu12(), 1e-12);
    assertEquals(before.constants().density(), after.constants().density(), 1e-9);
    assertEquals(before.supports(), after.supports());
    assertEquals(before.report(), after.report());
    assertEquals(before.mesh(), after.mesh());
    assertEquals(file.panelTies(), back.panelTies());
    assertEquals(file.panelLoads(), back.panelLoads());
    assertEquals(file.loads(), back.loads());
    assertEquals(file.model(), back.model());
    assertEquals(back, read(FrameWriter.json(back)));
  }

  @Test
  void what_the_format_cannot_say_is_refused() throws UnreadableFile {
    Panel plain =
        Panel.builder("shelf", 900, 300, 18)
            .material(BEECH)
            .support(PanelSupport.hard(PanelLine.x(0)))
            .build();
    assertEquals(Set.of("shelf"), file(plain).panels().keySet());
    Panel holed = plain.toBuilder().opening(100, 100, 140, 140).build();
    assertEquals(
        "panel 'shelf' has zones or openings; a frame file cannot say so",
        assertThrows(IllegalArgumentException.class, () -> file(holed)).getMessage());
    Panel partly =
        plain.toBuilder().support(PanelSupport.hard(PanelLine.x(600).between(20, 200))).build();
    assertEquals(
        "the support on x = 600.0 from 20.0 to 200.0 mm is shorter than its panel; a frame file"
            + " cannot say so",
        assertThrows(IllegalArgumentException.class, () -> file(partly)).getMessage());
  }
}
