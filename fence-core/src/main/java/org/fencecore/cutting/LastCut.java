package org.fencecore.cutting;

/** Whether the saw cut behind the last piece of a stick must lie within the stick: the rule for how many kerfs it takes. */
public enum LastCut {
    /**
     * It may run off the end. A stick cut into n pieces gives n - 1 kerfs, and what is left, if anything, goes into the
     * last cut first: the pieces and n - 1 kerfs must come to no more than the stick. The usual rule.
     */
    MAY_RUN_OFF_THE_END,

    /**
     * It must lie within the stick, because the end of the stick is no good as the end of a piece: n pieces take n kerfs.
     */
    WITHIN_THE_STICK
}
