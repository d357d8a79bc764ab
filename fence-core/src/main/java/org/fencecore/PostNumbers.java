package org.fencecore;

import java.util.HashMap;
import java.util.Map;

/** Numbers posts from 1 along the fence; one where two lines meet has one number. */
final class PostNumbers {

    private final Map<Integer, Integer> shared = new HashMap<>();
    private int last;

    int next() {
        return ++last;
    }

    /** Returns the number of the post at the end of a line, which another line may share. */
    int at(int node) {
        return shared.computeIfAbsent(node, unseen -> next());
    }
}
