package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.Mortise;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.section.NetSection;
import org.stoutwork.section.Opening;
import org.stoutwork.section.PiercedSection;
import org.stoutwork.section.Rectangle;
import org.stoutwork.section.Weakened;

/** Finds the places at which the parts of a model are looked at. */
final class Cuts {

  private static final double SAME_PLACE = 1.0;

  /** Pieces longer than this are looked at between their ends, mm. */
  private static final double LONG = 250;

  private Cuts() {}

  static List<Cut> of(BenchModel model) {
    List<Cut> out = new ArrayList<>();
    for (Part part : model.parts()) {
      for (int i = 0; i < part.pieces().size(); i++) {
        Piece piece = part.pieces().get(i);
        double end = i + 1 < part.pieces().size() ? part.pieces().get(i + 1).from() : part.length();
        for (double at : places(part, piece.from(), end)) {
          double along = (at - piece.from()) / (end - piece.from());
          out.addAll(cuts(part, piece, along, at));
        }
      }
    }
    return out;
  }

  /** Where a piece is looked at: its ends, its steps, and every opening between them. */
  private static List<Double> places(Part part, double from, double to) {
    int steps = between(part, to - from);
    TreeSet<Double> out = new TreeSet<>();
    for (int k = 0; k < steps; k++) {
      out.add(from + (to - from) * k / steps);
    }
    out.add(to);
    for (Mortise mortise : part.mortises()) {
      double at = mortise.at();
      boolean inside = at > from && at < to;
      if (inside && out.stream().noneMatch(p -> Math.abs(p - at) < SAME_PLACE)) {
        out.add(at);
      }
    }
    return List.copyOf(out);
  }

  /**
   * Into how many steps a piece is cut. Its own weight and a shelf bend it most between its ends:
   * eight steps come within a sixty-fourth of the greatest moment of a simple span. The strips of a
   * top are in short pieces already.
   */
  private static int between(Part part, double length) {
    return part.kind() != PartKind.TOP && length > LONG ? 8 : 1;
  }

  /** One cut for each mortise here with those that it meets, or one of the whole section. */
  private static List<Cut> cuts(Part part, Piece piece, double along, double at) {
    List<Cut> out = new ArrayList<>();
    Set<List<Mortise>> done = new HashSet<>();
    for (Mortise mortise : part.mortises()) {
      if (Math.abs(mortise.at() - at) < SAME_PLACE) {
        List<Mortise> together = part.mortises().stream().filter(mortise::meets).toList();
        if (done.add(together)) {
          mortised(part, piece, along, at, together).ifPresent(out::add);
        }
      }
    }
    if (out.isEmpty()) {
      Rectangle r = piece.section();
      NetSizes upDown = NetSizes.of(new NetSection(r, Opening.NONE));
      NetSizes sideways = NetSizes.of(new NetSection(r.turned(), Opening.NONE));
      out.add(new Cut(part, piece.member(), along, at, upDown, sideways, 0));
    }
    return out;
  }

  private static Optional<Cut> mortised(
      Part part, Piece piece, double along, double at, List<Mortise> together) {
    if (together.size() == 1) {
      return single(part, piece, along, at, together.get(0));
    }
    PiercedSection upDown =
        new PiercedSection(piece.section(), together.stream().map(Mortise::hole).toList());
    return Optional.of(
        new Cut(
            part,
            piece.member(),
            along,
            at,
            NetSizes.of(upDown),
            NetSizes.of(upDown.turned()),
            together.size()));
  }

  private static Optional<Cut> single(Part part, Piece piece, double along, double at, Mortise m) {
    Rectangle r = piece.section();
    double sizeY = Math.min(m.sizeY(), r.b());
    double sizeZ = Math.min(m.sizeZ(), r.h());
    if (sizeY >= r.b() && sizeZ >= r.h()) {
      return Optional.empty();
    }
    Weakened up = new NetSection(r, shaped(r, sizeY, sizeZ, m.offsetZ()));
    Weakened side = new NetSection(r.turned(), shaped(r.turned(), sizeZ, sizeY, m.offsetY()));
    return Optional.of(
        new Cut(part, piece.member(), along, at, NetSizes.of(up), NetSizes.of(side), 1));
  }

  /** An opening that takes the whole width or depth leaves the larger rest. */
  private static Opening shaped(Rectangle r, double width, double depth, double offset) {
    double w = Math.min(width, r.b() * 0.999);
    double d = Math.min(depth, r.h() * 0.999);
    double most = (r.h() - d) / 2;
    return new Opening(w, d, Math.max(-most, Math.min(most, offset)));
  }
}
