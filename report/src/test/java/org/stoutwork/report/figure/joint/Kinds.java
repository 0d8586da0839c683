package org.stoutwork.report.figure.joint;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.Washer;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.advice.TenonProportions;

/** A joint of every kind that fits a rail of 127 mm by 41 mm into a post of 83 mm by 74 mm. */
final class Kinds {

  static final Joint.Members MEMBERS = new Joint.Members(127, 41, 83, 74);

  private static final Peg PEG = new Peg(8, TenonProportions.OAK);

  private Kinds() {}

  static MortiseAndTenon tenon(Fit fit) {
    return new MortiseAndTenon(77, 13, 58, 19, 0, 1, false, Optional.empty(), fit);
  }

  static Map<String, Joint> all() {
    Map<String, Joint> out = new LinkedHashMap<>();
    out.put("glued tenon", tenon(new Fit.Glued()));
    out.put("pegged tenon", tenon(new Fit.Pegged(true, PEG, 2, 0, 21, 29)));
    out.put("drawbored tenon", tenon(new Fit.Pegged(false, PEG, 1, 1.5, 22, 0)));
    out.put(
        "haunched tenon",
        new MortiseAndTenon(
            71,
            12,
            59,
            9,
            3,
            1,
            false,
            Optional.of(new MortiseAndTenon.Haunch(26, 14)),
            new Fit.Glued()));
    out.put(
        "wedged through tenon",
        new MortiseAndTenon(
            95,
            14,
            86,
            16,
            0,
            1,
            true,
            Optional.empty(),
            new Fit.Wedged(true, 2, 15, 6, 3, 52, 3)));
    out.put(
        "twin tenon",
        new MortiseAndTenon(101, 9, 61, 11, 0, 2, false, Optional.empty(), new Fit.Dry(0.3)));
    out.put("bridle", new Bridle(17, 1, false, new Fit.Pegged(true, PEG, 1, 0, 39, 0)));
    out.put("double corner bridle", new Bridle(8, 2, true, new Fit.Glued()));
    Bolt bolt = new Bolt(BoltSize.M10, 400, new Washer(34, 11, 3));
    out.put(
        "bolted tenon",
        new BoltedTenon(93, 25, 23, 18, bolt, 2, 47, new BoltedTenon.Nut(16, 31, 62, true), 1900));
    out.put(
        "bolted tenon with a slot for its nut",
        new BoltedTenon(88, 26, 21, 22, bolt, 1, 0, new BoltedTenon.Nut(24, 12, 57, false), 0));
    out.put("loose-wedge tenon", new LooseWedgeTenon(69, 24, 31, 46, 18, 11, 7));
    out.put("half-lap", new HalfLap(20, true, false));
    out.put(
        "dowelled butt", new DowelledButt(new Peg(10, TenonProportions.BEECH), 3, 36, 32, 38, 24));
    out.put("housing", new Housing(14, true));
    WoodScrew slim = WoodScrew.plain(3, 62, 41, 6);
    out.put(
        "screwed half-lap",
        new HalfLap(21, false, false, Optional.of(new ScrewSet(slim, 3, 28, 2))));
    WoodScrew stout = WoodScrew.plain(4.5, 62, 41, 9);
    out.put(
        "half-lap with one line of screws",
        new HalfLap(21, false, false, Optional.of(new ScrewSet(stout, 3, 28, 2.5))));
    WoodScrew longer = WoodScrew.plain(5, 126, 60, 10);
    out.put(
        "screwed housing", new Housing(12, false, Optional.of(new ScrewSet(longer, 2, 33, 2.7))));
    out.put(
        "screwed butt",
        new ScrewedButt(new ScrewSet(CoachScrew.plain(8, 155, 60, 25), 2, 39, 5.4)));
    return out;
  }

  static Place leg(double above, double below) {
    return new Place(MEMBERS, Place.Run.UPRIGHT, above, below);
  }
}
