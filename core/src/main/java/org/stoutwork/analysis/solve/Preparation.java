package org.stoutwork.analysis.solve;

/** What comes of preparing a frame: something that can be solved, or the reason why not. */
public sealed interface Preparation permits PreparedFrame, Loose {

  /** The prepared frame. Throws {@link IllegalStateException} with the reason when it is loose. */
  default PreparedFrame prepared() {
    if (this instanceof PreparedFrame frame) {
      return frame;
    }
    throw new IllegalStateException(((Loose) this).message());
  }
}
