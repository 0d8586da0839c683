package org.stoutwork.study;

import java.util.Optional;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.quantity.Writing;

/** The sizes of a joint in one line. */
final class JointWords {

  private JointWords() {}

  static String sizes(Joint joint) {
    return joint.fold(new Cases());
  }

  private static String mm(double value) {
    return Writing.number(value, 4);
  }

  private static final class Cases implements Joint.Cases<String> {

    @Override
    public String mortiseAndTenon(MortiseAndTenon j) {
      return "tenon %s × %s × %s mm, shoulder below %s mm"
          .formatted(mm(j.height()), mm(j.thickness()), mm(j.length()), mm(j.shoulderBelow()));
    }

    @Override
    public String bridle(Bridle j) {
      return "tongue %s mm thick".formatted(mm(j.thickness()));
    }

    @Override
    public String boltedTenon(BoltedTenon j) {
      return "stub %s × %s × %s mm, %s × M%s, nut %s mm from the shoulder"
          .formatted(
              mm(j.height()),
              mm(j.thickness()),
              mm(j.length()),
              j.bolts(),
              mm(j.bolt().diameter()),
              mm(j.nut().fromEnd()));
    }

    @Override
    public String looseWedgeTenon(LooseWedgeTenon j) {
      return "tenon %s × %s mm, wedge %s × %s mm, relish %s mm"
          .formatted(
              mm(j.height()),
              mm(j.thickness()),
              mm(j.wedgeThickness()),
              mm(j.wedgeWidth()),
              mm(j.relish()));
    }

    @Override
    public String halfLap(HalfLap j) {
      return "%s mm left on the rail".formatted(mm(j.railPart())) + screws(j.screws());
    }

    @Override
    public String dowelledButt(DowelledButt j) {
      return "%s dowels of %s mm, %s mm apart"
          .formatted(j.count(), mm(j.dowel().diameter()), mm(j.spacing()));
    }

    @Override
    public String housing(Housing j) {
      return "%s mm deep".formatted(mm(j.depth())) + screws(j.screws());
    }

    private static String screws(Optional<ScrewSet> set) {
      return set.map(s -> ", " + s.words()).orElse("");
    }

    @Override
    public String screwedButt(ScrewedButt j) {
      return j.screws().words();
    }

    @Override
    public String statedSpring(StatedSpring j) {
      return "stiffness stated by you";
    }
  }
}
