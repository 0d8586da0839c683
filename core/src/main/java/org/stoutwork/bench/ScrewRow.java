package org.stoutwork.bench;

/**
 * The row of screws that holds the top on one top rail. Nobody says where each screw stands, so
 * they are taken to share the rail evenly: half a pitch beyond the outermost.
 *
 * @param count of the screws
 * @param pitch from one to the next, mm
 * @param fromRailEnd of the outermost from the end of the rail, at its shoulder, mm
 * @param fromTopEdge of the outermost from the nearer long edge of the top, mm
 * @param fromTopEnd of the row from the nearer end of the top, mm
 */
public record ScrewRow(
    int count, double pitch, double fromRailEnd, double fromTopEdge, double fromTopEnd) {

  /** The row of one end frame. */
  public static ScrewRow of(Bench bench, EndFrame frame) {
    double width = bench.top().width().mm();
    double middle = (Layout.frontLegY(frame) + Layout.backLegY(bench, frame)) / 2;
    double half = frame.topRail().length().mm() / 2;
    double from = Math.max(0, middle - half);
    double to = Math.min(width, middle + half);
    int count = bench.top().fixing().perRail();
    double pitch = (to - from) / count;
    double at = frame.at().mm();
    return new ScrewRow(
        count,
        pitch,
        pitch / 2 + Math.min(from - (middle - half), middle + half - to),
        pitch / 2 + Math.min(from, width - to),
        Math.min(at, bench.top().length().mm() - at));
  }
}
