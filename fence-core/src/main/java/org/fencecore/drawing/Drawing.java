package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;

/**
 * A drawing before it is put on paper: lines, pieces, dimensions and words in the sizes of the real thing, with the
 * title, notes and key that go with it.
 *
 * <p>{@code PlanView}, {@code ElevationView} and {@code GateView} make the drawings of a fence, and {@code Svg} writes any
 * drawing at a standard scale. A drawing is immutable.
 *
 * <pre>{@code
 * Drawing stake = Drawing.titled("Stake")
 *         .add(Outline.rectangle(Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofInches(2), Length.ofInches(24)))
 *         .note("Point the lower end.")
 *         .build();
 * String svg = Svg.write(stake, Paper.LETTER);
 * }</pre>
 */
public final class Drawing {

    private final String title;
    private final Optional<String> job;
    private final String description;
    private final Optional<String> caution;
    private final List<Shape> shapes;
    private final List<String> notes;
    private final List<Key> key;
    private final boolean northUp;

    private Drawing(Builder from) {
        title = from.title;
        job = from.job;
        description = from.description;
        caution = from.caution;
        shapes = List.copyOf(from.shapes);
        notes = List.copyOf(from.notes);
        key = List.copyOf(from.key);
        northUp = from.northUp;
    }

    /**
     * Starts a drawing.
     *
     * @param title what it shows, in a few words
     * @return a builder without shapes
     */
    public static Builder titled(String title) {
        return new Builder(title);
    }

    /**
     * Returns what it shows.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * Returns whose fence it is of, for the title block.
     *
     * @return the name of the job, empty when none was given
     */
    public Optional<String> job() {
        return job;
    }

    /**
     * Returns what it shows in a sentence or two, for the title block and for those who cannot see it.
     *
     * @return the description, empty when none was given
     */
    public String description() {
        return description;
    }

    /**
     * Returns what must be read before anything else.
     *
     * @return the caution, written bold above the notes; empty if there is none
     */
    public Optional<String> caution() {
        return caution;
    }

    /**
     * Returns its parts.
     *
     * @return the parts in the order they were added, unmodifiable
     */
    public List<Shape> shapes() {
        return shapes;
    }

    /**
     * Returns the notes to be written beside it.
     *
     * @return the notes, unmodifiable
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * Returns how its layers and symbols are explained.
     *
     * @return the lines of the key, unmodifiable
     */
    public List<Key> key() {
        return key;
    }

    /**
     * Tells whether it is a plan with north up.
     *
     * @return true if it takes a north arrow
     */
    public boolean isNorthUp() {
        return northUp;
    }

    /**
     * Returns this drawing over several sheets that join at match lines, as few as can be and about equally long. What is
     * at a match line is on both sheets, and each tells which sheets it joins.
     *
     * @param places how far across it may be broken, its ends among them
     * @param longest how much of it may be on one sheet, unless two places are farther apart; over zero
     * @return the sheets from left to right; this drawing alone if it need not or cannot be broken
     * @throws IllegalArgumentException if {@code longest} is not over zero
     */
    public List<Drawing> sheets(List<Length> places, Length longest) {
        if (!longest.isPositive()) {
            throw new IllegalArgumentException("longest was " + longest + "; it must be over 0, such as 30 ft");
        }
        return MatchLines.split(this, places, longest);
    }

    /**
     * Starts another drawing from this one, to put more on it.
     *
     * @return a builder that has everything of this drawing
     */
    public Builder toBuilder() {
        Builder builder = new Builder(title);
        builder.job = job;
        builder.description = description;
        builder.caution = caution;
        builder.shapes.addAll(shapes);
        builder.notes.addAll(notes);
        builder.key.addAll(key);
        builder.northUp = northUp;
        return builder;
    }

    @Override
    public String toString() {
        return title;
    }

    /** Collects the parts of a drawing. */
    public static final class Builder {

        private final String title;
        private Optional<String> job = Optional.empty();
        private String description = "";
        private Optional<String> caution = Optional.empty();
        private final List<Shape> shapes = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final List<Key> key = new ArrayList<>();
        private boolean northUp;

        private Builder(String title) {
            this.title = Objects.requireNonNull(title, "title");
        }

        /**
         * Sets whose fence it is of.
         *
         * @param name the name of the job, in any script
         * @return this builder
         */
        public Builder job(String name) {
            job = Optional.of(name);
            return this;
        }

        /**
         * Sets what it shows in a sentence or two.
         *
         * @param newDescription the description
         * @return this builder
         */
        public Builder description(String newDescription) {
            description = Objects.requireNonNull(newDescription, "newDescription");
            return this;
        }

        /**
         * Sets what must be read before anything else, such as that the design cannot be built.
         *
         * @param newCaution the caution, in sentences
         * @return this builder
         */
        public Builder caution(String newCaution) {
            caution = Optional.of(newCaution);
            return this;
        }

        /**
         * Adds a part. Parts are painted layer by layer, and within a layer in the order they are added; of two labels
         * with room for one, the first added stays.
         *
         * @param shape the part
         * @return this builder
         */
        public Builder add(Shape shape) {
            shapes.add(Objects.requireNonNull(shape, "shape"));
            return this;
        }

        /**
         * Adds a note to be written beside the drawing.
         *
         * @param note the note, in sentences
         * @return this builder
         */
        public Builder note(String note) {
            notes.add(Objects.requireNonNull(note, "note"));
            return this;
        }

        /**
         * Explains how a layer is drawn.
         *
         * @param layer the layer
         * @param text what it is
         * @return this builder
         */
        public Builder key(Layer layer, String text) {
            key.add(new Key(layer, Optional.empty(), text));
            return this;
        }

        /**
         * Explains a symbol.
         *
         * @param layer the layer the symbol is on
         * @param symbol the symbol
         * @param text what it is
         * @return this builder
         */
        public Builder key(Layer layer, Symbol symbol, String text) {
            key.add(new Key(layer, Optional.of(symbol), text));
            return this;
        }

        /** Adds a line of another drawing's key. */
        Builder key(Key entry) {
            key.add(entry);
            return this;
        }

        /**
         * Says that the drawing is a plan with north up, which gets a north arrow.
         *
         * @return this builder
         */
        public Builder northUp() {
            northUp = true;
            return this;
        }

        /**
         * Returns the drawing.
         *
         * @return the drawing
         */
        public Drawing build() {
            return new Drawing(this);
        }
    }
}
