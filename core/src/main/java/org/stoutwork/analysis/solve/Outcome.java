package org.stoutwork.analysis.solve;

/** What comes of solving a load case: a result, or the reason why there is none. */
public sealed interface Outcome permits FrameResult, Loose, Unsettled {

  /** The result. Throws {@link IllegalStateException} with the reason when there is none. */
  default FrameResult result() {
    if (this instanceof FrameResult found) {
      return found;
    }
    throw new IllegalStateException(
        this instanceof Loose loose ? loose.message() : ((Unsettled) this).message());
  }
}
