package org.stoutwork.joint.advice;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.joint.setting.JointSetting;

/** Holds a joint against the proportions of the trade. Soft: nothing fails by it. */
public final class Review implements Joint.Cases<List<Note>> {

  private final JointSetting setting;
  private final Joint.Members members;

  private Review(JointSetting setting) {
    this.setting = setting;
    this.members = setting.members();
  }

  /** One note for each piece of advice that speaks of the joint. */
  public static List<Note> of(Joint joint, JointSetting setting) {
    return joint.fold(new Review(setting));
  }

  private List<Note> tenon(double height, double thickness, double below) {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(Advice.TENON_THICKNESS, thickness / members.railThickness()));
    notes.add(new Note(Advice.CROSSED_GLUE, height));
    notes.add(new Note(Advice.SHOULDER, below));
    return notes;
  }

  @Override
  public List<Note> mortiseAndTenon(MortiseAndTenon joint) {
    List<Note> notes = tenon(joint.height(), joint.thickness(), joint.shoulderBelow());
    notes.add(new Note(Advice.CHEEK, joint.cheek(members)));
    notes.add(new Note(Advice.CHEEK_RATIO, joint.cheek(members) / joint.thickness()));
    if (!joint.through()) {
      notes.add(new Note(Advice.TENON_LENGTH, joint.length() / members.postDepth()));
    }
    joint
        .haunch()
        .ifPresent(
            h -> {
              notes.add(new Note(Advice.HAUNCH_HEIGHT, h.height() / members.railDepth()));
              notes.add(new Note(Advice.HAUNCH_LENGTH, h.length()));
            });
    double horn = Math.min(setting.postAbove(), setting.postBelow());
    if (Double.isFinite(horn)) {
      notes.add(new Note(Advice.HORN, horn));
    }
    notes.addAll(fit(joint.fit(), joint.thickness(), joint.length()));
    return List.copyOf(notes);
  }

  private static List<Note> fit(Fit fit, double thickness, double length) {
    if (fit instanceof Fit.Wedged wedged) {
      return List.of(new Note(Advice.WEDGE, wedged.angle()));
    }
    if (!(fit instanceof Fit.Pegged pegged)) {
      return List.of();
    }
    double d = pegged.peg().diameter();
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(Advice.PEG, d / thickness));
    notes.add(new Note(Advice.PEG_PLACE, pegged.fromShoulder()));
    notes.add(new Note(Advice.RELISH, (length - pegged.fromShoulder() - d / 2) / d));
    if (pegged.drawbored()) {
      notes.add(new Note(Advice.DRAWBORE, pegged.offset()));
    }
    return notes;
  }

  @Override
  public List<Note> bridle(Bridle joint) {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(Advice.TENON_THICKNESS, joint.thickness() / members.railThickness()));
    notes.add(new Note(Advice.CHEEK, joint.cheek(members)));
    notes.addAll(fit(joint.fit(), joint.thickness(), members.postDepth()));
    return List.copyOf(notes);
  }

  @Override
  public List<Note> boltedTenon(BoltedTenon joint) {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(Advice.BORED_TENON, joint.thickness() / joint.bore()));
    notes.add(new Note(Advice.SHOULDER, joint.shoulderBelow()));
    double d = joint.bolt().diameter();
    notes.add(new Note(Advice.BOLT_HOLE, joint.bolt().washer().hole() - d));
    notes.add(new Note(Advice.WASHER, joint.bolt().washer().outer() / d));
    return List.copyOf(notes);
  }

  @Override
  public List<Note> looseWedgeTenon(LooseWedgeTenon joint) {
    List<Note> notes = tenon(joint.height(), joint.thickness(), joint.shoulderBelow());
    notes.add(new Note(Advice.WEDGE, joint.angle()));
    notes.add(new Note(Advice.LOOSE_RELISH, joint.relish() / joint.wedgeThickness()));
    notes.add(new Note(Advice.LOOSE_WIDTH, joint.wedgeWidth() / joint.thickness()));
    return List.copyOf(notes);
  }

  @Override
  public List<Note> halfLap(HalfLap joint) {
    return List.of();
  }

  @Override
  public List<Note> dowelledButt(DowelledButt joint) {
    double d = joint.dowel().diameter();
    return List.of(
        new Note(Advice.DOWEL, d / members.railThickness()),
        new Note(Advice.DOWEL_EDGE, joint.edge() / d),
        new Note(Advice.DOWEL_SPACING, joint.spacing() / d));
  }

  @Override
  public List<Note> housing(Housing joint) {
    return List.of(new Note(Advice.HOUSING, joint.depth() / members.postDepth()));
  }

  @Override
  public List<Note> screwedButt(ScrewedButt joint) {
    return List.of();
  }

  @Override
  public List<Note> statedSpring(StatedSpring joint) {
    return List.of();
  }
}
