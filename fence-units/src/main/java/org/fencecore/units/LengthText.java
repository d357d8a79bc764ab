package org.fencecore.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * Reads and writes lengths in the units of the trade. What is read stays a fraction of whole numbers until it is
 * rounded, once, to the nanometre.
 */
final class LengthText {

    private static final String NUMBER = "a number such as 5, 5.5, 5 1/2 or 1/2";
    private static final String UNIT = "a unit such as ', \", ft, in, mm or m";
    private static final String SLASHES = "/\u2044";
    private static final long NANOMETRES_PER_64TH = Length.NANOMETRES_PER_INCH / 64;

    private LengthText() {}

    /** A number of units as a fraction, such as 11 over 2 for 5 1/2; over 1 if it was written as a whole number. */
    private record Amount(BigInteger over, BigInteger under) {

        boolean isWhole() {
            return under.equals(BigInteger.ONE);
        }

        boolean isUnder(BigInteger number) {
            return over.compareTo(number.multiply(under)) < 0;
        }

        Amount plusWhole(BigInteger number) {
            return new Amount(number.multiply(under).add(over), under);
        }

        BigInteger nanometres(LengthUnit unit) {
            return new BigDecimal(over.multiply(unit.nanometres()))
                    .divide(new BigDecimal(under.multiply(unit.count())), 0, RoundingMode.HALF_UP)
                    .toBigInteger();
        }
    }

    /** Reads a whole text. */
    static long nanometres(CharSequence text) {
        TextCursor in = new TextCursor("length", text);
        long nanometres = nanometres(in);
        in.takeEnd("the end of the length");
        return nanometres;
    }

    /** Reads a length from the cursor on. */
    static long nanometres(TextCursor in) {
        boolean minus = in.takeMinus();
        int start = in.position();
        BigInteger size = size(in);
        BigInteger nanometres = minus ? size.negate() : size;
        if (nanometres.bitLength() > 63) {
            throw in.refusal(start, "a length within 9,000,000 km of zero");
        }
        return nanometres.longValue();
    }

    private static BigInteger size(TextCursor in) {
        int start = in.position();
        Amount amount = amount(in);
        in.takeBlanks();
        boolean mark = in.nextIsIn(LengthUnit.MARKS);
        LengthUnit unit = LengthUnit.take(in, UNIT);
        LengthUnit smaller = unit.smaller();
        // Drawings have 6' - 2" with blanks; after a name, as in 6 ft - 2 in, the hyphen might mean less.
        if (smaller == unit || !in.takeJoint(mark)) {
            return amount.nanometres(unit);
        }
        String names = smaller == LengthUnit.INCH ? "feet and inches" : "chains and links";
        if (!amount.isWhole()) {
            throw in.refusal(start, "a whole number, as the first of " + names);
        }
        int second = in.position();
        Amount rest = amount(in);
        if (!rest.isUnder(unit.inSmaller())) {
            throw in.refusal(second, "a number under " + unit.inSmaller() + ", as the second of " + names);
        }
        in.takeBlanks();
        int name = in.position();
        if (LengthUnit.take(in, secondUnit(smaller)) != smaller) {
            throw in.refusal(name, secondUnit(smaller));
        }
        return rest.plusWhole(amount.over().multiply(unit.inSmaller())).nanometres(smaller);
    }

    private static String secondUnit(LengthUnit unit) {
        return unit == LengthUnit.INCH ? "an inch mark (\") or \"in\"" : "\"links\"";
    }

    private static Amount amount(TextCursor in) {
        if (in.nextIsVulgarFraction()) {
            return vulgarFraction(in);
        }
        int start = in.position();
        BigDecimal number = in.takeDecimal(NUMBER);
        BigInteger digits = number.unscaledValue();
        if (number.scale() > 0) {
            return new Amount(digits, BigInteger.TEN.pow(number.scale()));
        }
        if (in.take(SLASHES)) {
            return fraction(digits, start, in);
        }
        int end = in.position();
        if (in.takeJoint(false)) {
            if (in.nextIsVulgarFraction()) {
                return vulgarFraction(in).plusWhole(digits);
            }
            int top = in.position();
            if (in.nextIsDigit()) {
                BigInteger over = in.takeWhole(NUMBER);
                if (in.take(SLASHES)) {
                    return fraction(over, top, in).plusWhole(digits);
                }
            }
        }
        in.backTo(end);
        return new Amount(digits, BigInteger.ONE);
    }

    private static Amount fraction(BigInteger over, int start, TextCursor in) {
        BigInteger under = in.takeWhole("the bottom of a fraction");
        if (over.compareTo(under) >= 0) {
            throw in.refusal(start, "a fraction under 1, its top smaller than its bottom");
        }
        return new Amount(over, under);
    }

    private static Amount vulgarFraction(TextCursor in) {
        BigInteger[] parts = in.takeVulgarFraction();
        return new Amount(parts[0], parts[1]);
    }

    /** Writes a length so that it reads back as the very same. */
    static String write(long nanometres) {
        if (nanometres == 0) {
            return "0 in";
        }
        if (nanometres % NANOMETRES_PER_64TH != 0) {
            return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString() + " mm";
        }
        long sixtyFourths = Math.abs(nanometres / NANOMETRES_PER_64TH);
        long feet = sixtyFourths / (12 * 64);
        long inches = sixtyFourths / 64 % 12;
        long rest = sixtyFourths % 64;
        long reduce = Long.lowestOneBit(rest | 64);
        StringBuilder out = new StringBuilder(nanometres < 0 ? "-" : "");
        if (feet > 0) {
            out.append(feet).append(" ft ");
        }
        if (inches > 0) {
            out.append(inches).append(' ');
        }
        if (rest > 0) {
            out.append(rest / reduce).append('/').append(64 / reduce).append(' ');
        }
        if (inches > 0 || rest > 0) {
            out.append("in ");
        }
        return out.substring(0, out.length() - 1);
    }
}
