package org.stoutwork.bench;

/**
 * The row of screws that holds the top on one top rail. Nobody says where each screw stands, so
 * they are taken to share the rail evenly: half a pitch beyond the outermost. Over posts no screw
 * is driven from below, so a rail that lies over them has its screws between them.
 *
 * @param count of the screws
 * @param pitch from one to the next, mm; of a single one the length of the rail
 * @param fromRailEnd of the outermost from the end of the rail, at its shoulder, mm
 * @param fromTopEdge of the outermost from the nearer long edge of the top, mm
 * @param fromTopEnd of the row from the nearer end of the top, mm
 * @param foremost place of the foremost across the bench, mm
 */
public record ScrewRow(
    int count,
    double pitch,
    double fromRailEnd,
    double fromTopEdge,
    double fromTopEnd,
    double foremost) {

  /** The row of one end frame. */
  public static ScrewRow of(Bench bench, EndFrame frame) {
    return of(bench.top(), frame);
  }

  /** The row of one end frame under a top. */
  public static ScrewRow of(Top top, EndFrame frame) {
    double width = top.width().mm();
    double middle = (Layout.frontLegY(frame) + Layout.backLegY(frame, top.width())) / 2;
    double half = frame.topRail().length().mm() / 2;
    double clear =
        frame.topRail().seat() == Seat.OVER
            ? Layout.backLegY(frame, top.width())
                - Layout.frontLegY(frame)
                - frame.leg().across().mm()
            : 2 * half;
    double from = Math.max(0, middle - clear / 2);
    double to = Math.min(width, middle + clear / 2);
    int count = top.fixing().perRail();
    double pitch = (to - from) / count;
    double at = frame.at().mm();
    return new ScrewRow(
        count,
        pitch,
        pitch / 2 + Math.min(from - (middle - half), middle + half - to),
        pitch / 2 + Math.min(from, width - to),
        Math.min(at, top.length().mm() - at),
        from + pitch / 2);
  }

  /** Place of a screw across the bench, mm, counted from the front, from 0. */
  public double place(int screw) {
    return foremost + screw * pitch;
  }

  /** Place across the bench from which the top moves, mm: its held screw, or the middle. */
  public double still(TopHeld held) {
    return held == TopHeld.FRONT ? foremost : foremost + (count - 1) * pitch / 2;
  }

  /** From the place from which the top moves to the screw farthest off, mm; 0 for one screw. */
  public double reach(TopHeld held) {
    return Math.max(still(held) - foremost, place(count - 1) - still(held));
  }
}
