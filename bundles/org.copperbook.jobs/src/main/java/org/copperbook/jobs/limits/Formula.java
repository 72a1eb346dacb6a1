package org.copperbook.jobs.limits;

import java.util.Locale;
import java.util.Map;

/**
 * The formula of a limit: {@code at least} or {@code at most}, then an expression of numbers, named quantities,
 * + - * /, brackets, {@code max(a, b)} and {@code min(a, b)}; for example {@code at least max(1500, 2 * U + 1000)}.
 * Quantities are in SI units; which names a limit may use stands in its {@code appliesTo}.
 */
public final class Formula {

    private static final String AT_LEAST = "at least";
    private static final String AT_MOST = "at most";

    private final boolean lower;
    private final String expression;

    private Formula(boolean lower, String expression) {
        this.lower = lower;
        this.expression = expression;
    }

    /**
     * Reads a formula; the expression itself is checked when it is computed.
     *
     * @throws IllegalArgumentException when it begins with neither word
     */
    public static Formula parse(String text) {
        String t = text.strip();
        String small = t.toLowerCase(Locale.ROOT);
        if (small.startsWith(AT_LEAST)) {
            return new Formula(true, t.substring(AT_LEAST.length()).strip());
        }
        if (small.startsWith(AT_MOST)) {
            return new Formula(false, t.substring(AT_MOST.length()).strip());
        }
        throw new IllegalArgumentException("the formula \"" + t + "\" must begin with \"at least\" or \"at most\"");
    }

    /** Whether it gives a lower bound. */
    public boolean isLower() {
        return lower;
    }

    /** The expression without its first words. */
    public String expression() {
        return expression;
    }

    /** Whether every quantity that the expression names is among the given ones. */
    public boolean computableFrom(Map<String, Double> quantities) {
        try {
            value(quantities);
            return true;
        } catch (UnknownQuantity e) {
            return false;
        }
    }

    /**
     * The bound.
     *
     * @param quantities values by name, SI units
     * @throws IllegalArgumentException when the expression cannot be read, names an unknown quantity or gives no number
     */
    public double value(Map<String, Double> quantities) {
        Reader reader = new Reader(expression, quantities);
        double v = reader.sum();
        reader.end();
        if (!Double.isFinite(v)) {
            throw new IllegalArgumentException("the formula \"" + expression + "\" gives no number");
        }
        return v;
    }

    /** A quantity the formula needs and nobody gave. */
    public static final class UnknownQuantity extends IllegalArgumentException {

        private static final long serialVersionUID = 1L;

        private final String quantity;

        UnknownQuantity(String quantity) {
            super("the quantity \"" + quantity + "\" is not known here");
            this.quantity = quantity;
        }

        /** Its name. */
        public String quantity() {
            return quantity;
        }
    }

    /** Recursive descent: sum of products of factors. */
    private static final class Reader {

        private final String text;
        private final Map<String, Double> quantities;
        private int at;

        Reader(String text, Map<String, Double> quantities) {
            this.text = text;
            this.quantities = quantities;
        }

        double sum() {
            double v = product();
            while (true) {
                if (take('+')) {
                    v += product();
                } else if (take('-')) {
                    v -= product();
                } else {
                    return v;
                }
            }
        }

        private double product() {
            double v = factor();
            while (true) {
                if (take('*')) {
                    v *= factor();
                } else if (take('/')) {
                    v /= factor();
                } else {
                    return v;
                }
            }
        }

        private double factor() {
            if (take('-')) {
                return -factor();
            }
            if (take('(')) {
                double v = sum();
                need(')');
                return v;
            }
            skip();
            int from = at;
            while (at < text.length() && Character.isLetter(text.charAt(at))) {
                at++;
            }
            return at > from ? named(text.substring(from, at)) : number();
        }

        private double named(String name) {
            if (name.equals("max") || name.equals("min")) {
                need('(');
                double a = sum();
                need(',');
                double b = sum();
                need(')');
                return name.equals("max") ? Math.max(a, b) : Math.min(a, b);
            }
            Double v = quantities.get(name);
            if (v == null) {
                throw new UnknownQuantity(name);
            }
            return v;
        }

        private double number() {
            int from = at;
            while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.'
                    || (text.charAt(at) == 'e' && at > from))) {
                at++;
            }
            try {
                return Double.parseDouble(text.substring(from, at));
            } catch (NumberFormatException e) {
                throw wrong("a number or a name", from);
            }
        }

        private boolean take(char c) {
            skip();
            if (at < text.length() && text.charAt(at) == c) {
                at++;
                return true;
            }
            return false;
        }

        private void need(char c) {
            if (!take(c)) {
                throw wrong("\"" + c + "\"", at);
            }
        }

        void end() {
            skip();
            if (at < text.length()) {
                throw wrong("the end", at);
            }
        }

        private void skip() {
            while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
        }

        private IllegalArgumentException wrong(String expected, int place) {
            return new IllegalArgumentException("the formula \"" + text + "\" needs " + expected + " at character "
                    + (place + 1));
        }
    }
}
