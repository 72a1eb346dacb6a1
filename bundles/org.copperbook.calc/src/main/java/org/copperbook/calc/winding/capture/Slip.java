package org.copperbook.calc.winding.capture;

import org.copperbook.calc.wire.WireSize;

/** A single slip that may have crept into a capture, or a defect that looks like one. */
public sealed interface Slip {
    /** @return what would have to be true, as the end of a sentence beginning with "as if" */
    String inWords();

    /**
     * One turn more or fewer than counted in one coil of a group.
     *
     * @param group group from 1
     * @param turns +1 when the machine has one turn more than was counted, -1 when it has one fewer
     */
    record Turn(int group, int turns) implements Slip {
        @Override
        public String inWords() {
            return "one coil of group " + group + " had one turn " + (turns > 0 ? "more" : "fewer") + " than counted";
        }
    }

    /**
     * One turn more or fewer than counted in every coil: the count of one coil was taken for all.
     *
     * @param turns +1 when the machine has one turn more than was counted, -1 when it has one fewer
     */
    record TurnInEveryCoil(int turns) implements Slip {
        @Override
        public String inWords() {
            return "every coil had one turn " + (turns > 0 ? "more" : "fewer") + " than counted";
        }
    }

    /**
     * One turn of a coil shorted.
     *
     * @param group group from 1
     */
    record ShortedTurn(int group) implements Slip {
        @Override
        public String inWords() {
            return "one turn in group " + group + " was shorted";
        }
    }

    /**
     * Other number of strands than counted.
     *
     * @param size size of the strands concerned
     * @param actual number that would fit
     */
    record Strands(String size, int actual) implements Slip {
        @Override
        public String inWords() {
            return "the wire was " + actual + " strand" + (actual == 1 ? "" : "s") + " of " + size + " in hand";
        }
    }

    /**
     * Neighbouring wire size.
     *
     * @param captured size that was written down
     * @param actual size that would fit
     */
    record Gauge(WireSize captured, WireSize actual) implements Slip {
        @Override
        public String inWords() {
            return "the wire was " + actual.label() + " and not " + captured.label();
        }
    }

    /**
     * Other number of parallel circuits.
     *
     * @param actual number that would fit
     */
    record Circuits(int actual) implements Slip {
        @Override
        public String inWords() {
            return "each phase had " + actual + " parallel circuit" + (actual == 1 ? "" : "s");
        }
    }

    /**
     * Winding warmer than written down.
     *
     * @param kelvin by how much in K
     */
    record HotReading(double kelvin) implements Slip {
        @Override
        public String inWords() {
            return "the winding was about " + Math.round(kelvin) + " K warmer than written down";
        }
    }
}
