package org.fencecore.style;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.strength.WoodMember;
import org.fencecore.strength.WoodSection;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * One size of wood as a yard sells it: what it is called, its dressed size, and the lengths on the shelf.
 *
 * <p>Example: {@code Lumber.twoByFour()} is 1 1/2 by 3 1/2 in, sold in 8, 10, 12, 14 and 16 ft.
 *
 * <p>Dressed sizes of the ready-made kinds are the dry minimum of the American Softwood Lumber Standard PS 20 (2 in
 * nominal is 1 1/2 in, 4 is 3 1/2, 6 is 5 1/2; 1 in is 3/4 and 5/4 is 1). The lengths they are sold in are common
 * practice, no source; pass the local yard's with {@link #soldIn}.
 */
public final class Lumber {

    private final String name;
    private final Length thickness;
    private final Length width;
    private final List<Length> lengths;
    private final @Nullable Wood wood;

    private record Wood(
            @Nullable SpeciesGroup species,
            @Nullable WoodGrade grade,
            @Nullable ReferenceValues own) {}

    private Lumber(String name, Length thickness, Length width, List<Length> lengths, @Nullable Wood wood) {
        this.name = name;
        this.thickness = thickness;
        this.width = width;
        this.lengths = lengths;
        this.wood = wood;
    }

    /**
     * Returns a size of wood that is not sold yet in any length; follow with {@link #soldIn}.
     *
     * @param name what the yard calls it, not blank
     * @param thickness the dressed thickness, over zero
     * @param width the dressed width, at least the thickness
     * @return the lumber
     * @throws IllegalArgumentException if the name is blank or a size is out of range
     */
    public static Lumber of(String name, Length thickness, Length width) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name was blank; use what the yard calls it, such as 2x4");
        }
        if (!thickness.isPositive() || width.compareTo(thickness) < 0) {
            throw new IllegalArgumentException("thickness of " + name + " was " + thickness + " and width " + width
                    + "; thickness must be over 0 and width at least the thickness");
        }
        return new Lumber(name, thickness, width, List.of(), null);
    }

    /**
     * Returns this size sold in these lengths.
     *
     * @param newLengths the lengths on the shelf, each over zero, in any order
     * @return the lumber
     * @throws IllegalArgumentException if there is no length or one is not over zero
     */
    public Lumber soldIn(Length... newLengths) {
        TreeSet<Length> sorted = new TreeSet<>(List.of(newLengths));
        if (sorted.isEmpty() || !sorted.first().isPositive()) {
            throw new IllegalArgumentException(
                    "lengths of " + name + " were " + sorted + "; give at least one, each over 0");
        }
        return new Lumber(name, thickness, width, List.copyOf(sorted), wood);
    }

    /**
     * Returns this size in a wood of which the strength is known; not said, strength is not checked.
     *
     * <p>Example: {@code Lumber.fourByFour().graded(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2)}.
     *
     * @param species the wood
     * @param grade the grade it is stamped with
     * @return the lumber
     */
    public Lumber graded(SpeciesGroup species, WoodGrade grade) {
        return new Lumber(
                name,
                thickness,
                width,
                lengths,
                new Wood(Objects.requireNonNull(species, "species"), Objects.requireNonNull(grade, "grade"), null));
    }

    /**
     * Returns this size in a wood of which the strength was given, for this very size, with where it is listed. A species
     * that was said before stays, for what it weighs.
     *
     * @param values the values before any factor
     * @return the lumber
     */
    public Lumber graded(ReferenceValues values) {
        return new Lumber(
                name,
                thickness,
                width,
                lengths,
                new Wood(species().orElse(null), grade().orElse(null), Objects.requireNonNull(values, "values")));
    }

    private static Length[] feet(int... lengths) {
        Length[] sold = new Length[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            sold[i] = Length.ofFeet(lengths[i]);
        }
        return sold;
    }

    /**
     * Returns posts 3 1/2 in square, sold in 8, 9, 10 and 12 ft.
     *
     * @return 4x4
     */
    public static Lumber fourByFour() {
        return of("4x4", Length.ofInches(3.5), Length.ofInches(3.5)).soldIn(feet(8, 9, 10, 12));
    }

    /**
     * Returns posts 5 1/2 in square, sold in 8, 10 and 12 ft.
     *
     * @return 6x6
     */
    public static Lumber sixBySix() {
        return of("6x6", Length.ofInches(5.5), Length.ofInches(5.5)).soldIn(feet(8, 10, 12));
    }

    /**
     * Returns rails 1 1/2 by 3 1/2 in, sold in 8, 10, 12, 14 and 16 ft.
     *
     * @return 2x4
     */
    public static Lumber twoByFour() {
        return of("2x4", Length.ofInches(1.5), Length.ofInches(3.5)).soldIn(feet(8, 10, 12, 14, 16));
    }

    /**
     * Returns boards 3/4 by 5 1/2 in, sold in 6 and 8 ft.
     *
     * @return 1x6
     */
    public static Lumber oneBySix() {
        return of("1x6", Length.ofInches(0.75), Length.ofInches(5.5)).soldIn(feet(6, 8));
    }

    /**
     * Returns battens 3/4 by 2 1/2 in, sold in 6 and 8 ft.
     *
     * @return 1x3
     */
    public static Lumber oneByThree() {
        return of("1x3", Length.ofInches(0.75), Length.ofInches(2.5)).soldIn(feet(6, 8));
    }

    /**
     * Returns boards 3/4 by 3 1/2 in, sold in 6 and 8 ft.
     *
     * @return 1x4
     */
    public static Lumber oneByFour() {
        return of("1x4", Length.ofInches(0.75), Length.ofInches(3.5)).soldIn(feet(6, 8));
    }

    /**
     * Returns what the yard calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns the dressed thickness.
     *
     * @return the smaller size of the section
     */
    public Length thickness() {
        return thickness;
    }

    /**
     * Returns the dressed width.
     *
     * @return the larger size of the section
     */
    public Length width() {
        return width;
    }

    /**
     * Returns the wood it is.
     *
     * @return the species; empty when not said
     */
    public Optional<SpeciesGroup> species() {
        return Optional.ofNullable(wood).map(Wood::species);
    }

    /**
     * Returns the grade it is stamped with.
     *
     * @return the grade; empty when not said
     */
    public Optional<WoodGrade> grade() {
        return Optional.ofNullable(wood).map(Wood::grade);
    }

    /**
     * Returns the values it is reckoned with in place of those of its species and grade.
     *
     * @return the values given; empty when those of species and grade count, or none were given
     */
    public Optional<ReferenceValues> ownValues() {
        return Optional.ofNullable(wood).map(Wood::own);
    }

    /**
     * Returns what its strength is reckoned from: wet in service and, unless it says otherwise, in the wind.
     *
     * @return a piece of this size; empty where the wood was not said or no values are held for it in this size
     */
    public Optional<WoodMember> member() {
        if (wood == null || !WoodSection.isReckoned(thickness, width)) {
            return Optional.empty();
        }
        WoodSection section = WoodSection.of(thickness, width);
        if (wood.own != null) {
            return Optional.of(WoodMember.builder(wood.own, section).build());
        }
        SpeciesGroup species = wood.species;
        WoodGrade grade = wood.grade;
        return species == null
                        || grade == null
                        || ReferenceValues.find(species, grade, section).isEmpty()
                ? Optional.empty()
                : Optional.of(WoodMember.builder(species, section).grade(grade).build());
    }

    /**
     * Returns the lengths on the shelf.
     *
     * @return the lengths, shortest first, unmodifiable
     */
    public List<Length> lengths() {
        return lengths;
    }

    /**
     * Returns the shortest length on the shelf that a piece can be cut from.
     *
     * @param piece the finished length of the piece
     * @return the length to buy; empty when none is long enough
     */
    public Optional<Length> shortestFor(Length piece) {
        return lengths.stream().filter(length -> length.compareTo(piece) >= 0).findFirst();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Lumber that
                && name.equals(that.name)
                && thickness.equals(that.thickness)
                && width.equals(that.width)
                && lengths.equals(that.lengths)
                && Objects.equals(wood, that.wood);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, thickness, width, lengths, wood);
    }

    @Override
    public String toString() {
        return name;
    }
}
