package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Inquiry;
import org.stoutwork.section.Layer;
import org.stoutwork.section.LayerBond;
import org.stoutwork.section.LayeredSection;
import org.stoutwork.section.Rectangle;

/**
 * The stress at the outer fibre of one layer of the top, over that of a solid top of the same
 * thickness under the same moment. Screwed layers are taken as loose, which is the careful side.
 *
 * @param layer whose stress it is
 * @param factor stress over that of the solid top
 */
record LayerStress(TopLayer layer, double factor) {

  static List<LayerStress> of(Inquiry inquiry, Grain way) {
    Top top = inquiry.bench().top();
    List<Layer> layers = new ArrayList<>();
    for (TopLayer layer : top.layers()) {
      FrameTimber timber = inquiry.timbers().get(layer.wood());
      double e = layer.grain() == way ? timber.e() : timber.eAcross();
      layers.add(new Layer(layer.thickness().mm(), e));
    }
    boolean glued = top.hold() instanceof LayerHold.Glued;
    LayeredSection section =
        new LayeredSection(1, layers, glued ? new LayerBond.Glued() : new LayerBond.Loose());
    double solid = new Rectangle(1, top.thicknessMm()).sectionModulus();
    List<LayerStress> out = new ArrayList<>();
    List<LayeredSection.Bent> stresses = section.stresses(1, 1);
    for (int i = 0; i < layers.size(); i++) {
      out.add(new LayerStress(top.layers().get(i), stresses.get(i).greatest() * solid));
    }
    return out;
  }
}
