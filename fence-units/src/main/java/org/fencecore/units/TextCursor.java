package org.fencecore.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.text.Normalizer;
import java.util.Locale;

/**
 * Reads a short text from left to right, and says where and why when it cannot go on.
 *
 * <p>The readers of lengths, angles and grades share it, so that all of them have the same idea of a blank, a hyphen, a
 * number and a unit's name, and refuse in the same words.
 */
final class TextCursor {

    /** The longest text that is read: no measurement needs more, and it bounds the work on any input. */
    static final int MAX_LENGTH = 64;

    // A typeset page has its own hyphens, dashes and minus sign; each can only mean what the typewriter's one means.
    private static final String DASHES = "-\u2010\u2011\u2013\u2212";
    private static final String VULGAR_FRACTIONS = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private final String kind;
    private final String text;
    private int at;

    /**
     * Starts at the beginning of a text.
     *
     * @param kind what is to be read, for the messages
     * @param text the text
     * @throws IllegalArgumentException if the text is too long
     */
    TextCursor(String kind, CharSequence text) {
        int length = text.length();
        if (length > MAX_LENGTH) {
            throw new IllegalArgumentException(kind + " \"" + printable(text.subSequence(0, 20)) + "...\" has " + length
                    + " characters; it must have " + MAX_LENGTH + " or fewer");
        }
        this.kind = kind;
        this.text = text.toString();
    }

    int position() {
        return at;
    }

    void backTo(int position) {
        at = position;
    }

    boolean atEnd() {
        return at == text.length();
    }

    boolean nextIsIn(String characters) {
        return !atEnd() && characters.indexOf(text.charAt(at)) >= 0;
    }

    boolean nextIsDigit() {
        return nextIsIn("0123456789");
    }

    boolean nextIsVulgarFraction() {
        return nextIsIn(VULGAR_FRACTIONS);
    }

    /** Takes one character if it is among those given. */
    boolean take(String characters) {
        boolean matches = nextIsIn(characters);
        if (matches) {
            at++;
        }
        return matches;
    }

    /** Takes one hyphen, dash or minus sign. */
    boolean takeDash() {
        return take(DASHES);
    }

    /** Takes all blanks, and tells whether there were any. */
    boolean takeBlanks() {
        int start = at;
        while (!atEnd() && (Character.getType(text.charAt(at)) == Character.SPACE_SEPARATOR || nextIsIn("\t"))) {
            at++;
        }
        return at > start;
    }

    /** Takes leading blanks and the sign of the whole, and tells whether it is a minus. */
    boolean takeMinus() {
        takeBlanks();
        return !take("+") && takeDash();
    }

    /**
     * Takes what stands between two parts of one measurement, if a number follows: nothing, blanks, or a hyphen.
     *
     * @param spacedHyphen whether the hyphen may also have blanks on both sides
     * @return whether a number follows; if not, nothing was taken
     */
    boolean takeJoint(boolean spacedHyphen) {
        int start = at;
        boolean before = takeBlanks();
        boolean hyphen = takeDash();
        boolean after = hyphen && takeBlanks();
        // In 6' -2" the dash looks like a minus, which no part of a measurement can have.
        boolean clear = !hyphen || (before == after && (spacedHyphen || !before));
        if (clear && (nextIsDigit() || nextIsVulgarFraction() || nextIsIn("."))) {
            return true;
        }
        backTo(start);
        return false;
    }

    /** Takes whole digits. */
    BigInteger takeWhole(String expected) {
        int start = at;
        while (nextIsDigit()) {
            at++;
        }
        if (at == start) {
            throw refusal(expected);
        }
        return new BigInteger(text.substring(start, at));
    }

    /** Takes a number with or without decimals; only one written with a decimal point has a scale over zero. */
    BigDecimal takeDecimal(String expected) {
        int start = at;
        if (!nextIsIn(".")) {
            takeWhole(expected);
        }
        if (nextIsIn(",")) {
            throw refusal("a decimal point, and no commas");
        }
        if (take(".")) {
            takeWhole("a digit after the decimal point");
        }
        return new BigDecimal(text.substring(start, at));
    }

    /** Takes one vulgar fraction character and gives its two numbers, such as 1 and 2 for one half. */
    BigInteger[] takeVulgarFraction() {
        String spelled = Normalizer.normalize(text.substring(at, at + 1), Normalizer.Form.NFKD);
        int slash = spelled.indexOf('\u2044');
        at++;
        return new BigInteger[] {
            new BigInteger(spelled.substring(0, slash)), new BigInteger(spelled.substring(slash + 1))
        };
    }

    /** Takes a mark, or a name in letters with the stop of its abbreviation; gives it in lower case without the stop. */
    String takeUnit(String marks) {
        int start = at;
        if (take(marks)) {
            return text.substring(start, at);
        }
        while (!atEnd() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        String name = text.substring(start, at).toLowerCase(Locale.ROOT);
        if (!name.isEmpty() && take(".") && nextIsDigit()) {
            throw refusal("a blank between the unit and the number");
        }
        return name;
    }

    /** Takes trailing blanks, and refuses anything after them. */
    void takeEnd(String expected) {
        takeBlanks();
        if (!atEnd()) {
            throw refusal(expected);
        }
    }

    /** Returns the refusal to go on from here. */
    IllegalArgumentException refusal(String expected) {
        return refusal(at, expected);
    }

    /** Returns the refusal of what stands at a place. */
    IllegalArgumentException refusal(int position, String expected) {
        String found = position == text.length() ? "the text ends" : "stands " + shown(text.codePointAt(position));
        return new IllegalArgumentException(kind + " \"" + printable(text) + "\" cannot be read: at column "
                + (position + 1) + " " + found + "; expected " + expected);
    }

    private static String shown(int character) {
        return character > ' ' && character < 0x7f
                ? "'" + (char) character + "'"
                : String.format(Locale.ROOT, "U+%04X", character);
    }

    private static String printable(CharSequence text) {
        return text.toString().replaceAll("\\p{Cntrl}", "?");
    }
}
