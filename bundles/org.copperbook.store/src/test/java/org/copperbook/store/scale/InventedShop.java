package org.copperbook.store.scale;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/**
 * Jobs of an invented workshop, as many as wanted, the same for the same seed. A job hangs together: the wire fits the
 * rating, the resistance of every coil group follows from turns, mean turn, wire and temperature, dates follow each
 * other, and what is released was signed.
 */
final class InventedShop {

    /** Resistivity of annealed copper at 20 degrees Celsius, ohm metre (IEC 60028), and k of its temperature (IEC 60034-1). */
    static final double COPPER = 1 / 58e6;
    static final double K = 235;
    static final double REFERENCE = 20;

    private static final String[] PLACES = {"Ashgrove", "Birchfield", "Cloverdale", "Dunmere", "Elmstead", "Fernhurst",
        "Greyfold", "Heatherby", "Ivybridge", "Juniper Hill", "Kestrel Bank", "Larkspur", "Millbeck", "Northwick",
        "Oakhollow", "Pinecroft", "Quarrel Moor", "Rowanlea", "Saltmarsh", "Thornwick"};
    private static final String[] TRADES = {"Dairy", "Quarry", "Sawmill", "Laundry", "Harbour Board", "Waterworks",
        "Bakery", "Cold Store", "Foundry", "Brickworks"};
    private static final String[] MACHINES = {"standby set", "pump house set", "crane motor", "fan motor", "ship's set",
        "mill drive"};
    private static final Instant FIRST = Instant.parse("2016-01-04T07:00:00Z");
    private static final long DAY = 86_400;

    private final PartJson json = new PartJson();
    private final Random random;
    private int made;

    InventedShop(long seed) {
        random = new Random(seed);
    }

    /** The next jobs, in the order in which they were booked in; about 30 a day. */
    List<Job> next(int many) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            jobs.add(job(made++));
        }
        return jobs;
    }

    private Job job(int n) {
        Instant booked = FIRST.plusSeconds(n * DAY / 30);
        LocalDate promised = LocalDate.ofInstant(booked, ZoneOffset.UTC).plusDays(10 + random.nextInt(20));
        double kva = Math.round(5 * Math.exp(random.nextDouble() * 4));
        int poles = 2 * (1 + random.nextInt(4));
        int slots = 12 * (1 + random.nextInt(8));
        Map<PartKey, Part> parts = new TreeMap<>();
        put(parts, "booking", String.format(Locale.ROOT, "{\"schema\":1,\"bookedAt\":\"%s\",\"bookedBy\":\"p%02d\","
                + "\"machine\":\"%s %d\",\"customer\":\"%s %s\",\"orderNo\":\"PO-%d\",\"promised\":\"%s\"%s}", booked,
                random.nextInt(9), pick(MACHINES), 1 + random.nextInt(9), pick(PLACES), pick(TRADES), n, promised,
                random.nextInt(30) == 0 && n > 100 ? ",\"earlierJob\":\"" + number(random.nextInt(n)) + "\"" : ""));
        put(parts, "nameplate", String.format(Locale.ROOT, "{\"schema\":1,\"maker\":\"%s Works\",\"type\":\"T%d\","
                + "\"serial\":\"SN-%d\",\"apparentPowerVA\":%s,\"voltageV\":400.0,\"poles\":%d}", pick(PLACES),
                100 + random.nextInt(50), random.nextInt(200_000), kva * 1000, poles));
        put(parts, "winding/main-stator", winding(kva, poles, slots));
        boolean agreed = random.nextInt(5) > 0;
        Instant quoted = booked.plusSeconds(2 * DAY);
        put(parts, "quote/1", quote(quoted, kva, agreed));
        if (agreed && random.nextInt(10) > 0) {
            Instant released = booked.plusSeconds((8 + random.nextInt(25)) * DAY);
            put(parts, "run-up", String.format(Locale.ROOT, "{\"schema\":1,\"withstands\":[{\"winding\":\"main-stator\","
                    + "\"volts\":1800.0,\"seconds\":60.0,\"held\":%s,\"by\":\"p04\",\"at\":\"%s\"}]}",
                    random.nextInt(40) > 0, released.minusSeconds(DAY)));
            put(parts, "sign-offs", String.format(Locale.ROOT, "{\"schema\":1,\"signatures\":[{\"point\":\"RELEASE\","
                    + "\"by\":\"p01\",\"role\":\"FOREMAN\",\"at\":\"%s\"}]}", released));
        }
        return new Job("s-" + n, number(n), parts);
    }

    private static String number(int n) {
        return String.format(Locale.ROOT, "L-%06d", n + 1);
    }

    private String winding(double kva, int poles, int slots) {
        double bore = 0.09 * Math.pow(kva * poles, 0.3) * (0.95 + 0.1 * random.nextDouble());
        double length = 0.8 * bore * (0.9 + 0.2 * random.nextDouble());
        double meanTurn = round(2 * length + 2.6 * bore * Math.PI / poles);
        int turns = (int) Math.max(1, Math.round(120 * 400 / (400 * Math.sqrt(kva)) * 48.0 / slots));
        double mm = 0.5 + 0.01 * random.nextInt(100);
        int strands = (int) Math.max(1, Math.round(kva * 1000 / 693 / (5 * Math.PI * mm * mm / 4)));
        double celsius = 15 + 15 * random.nextDouble();
        StringBuilder groups = new StringBuilder();
        int perGroup = Math.max(1, slots / 12);
        for (int g = 1; g <= 12; g++) {
            StringBuilder coils = new StringBuilder();
            for (int i = 0; i < perGroup; i++) {
                int go = (g - 1) * perGroup + i;
                coils.append(i == 0 ? "" : ",").append("{\"goSlot\":").append(go + 1).append(",\"returnSlot\":")
                        .append((go + slots / poles - 1) % slots + 1).append(",\"turns\":").append(turns).append('}');
            }
            double ohms = ohms(turns * perGroup, meanTurn, mm, strands, celsius) * (1 + 0.003 * random.nextGaussian());
            groups.append(g == 1 ? "" : ",").append(String.format(Locale.ROOT, "{\"number\":%d,\"phase\":\"%s\","
                    + "\"coils\":[%s],\"resistance\":{\"id\":\"g%d\",\"quantity\":\"RESISTANCE\",\"observed\":{\"kind\":"
                    + "\"VALUE\",\"value\":%.6g},\"isolated\":true,\"windingCelsius\":%.1f}}", g, "UVW".charAt((g - 1) % 3),
                    coils, g, ohms, celsius));
        }
        return String.format(Locale.ROOT, "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false,\"slots\":%d,"
                + "\"poles\":%d,\"turnsPerCoil\":%d,\"layers\":2,\"wire\":[{\"size\":\"%.2f mm\",\"strands\":%d,\"grade\":2,"
                + "\"bareMm\":%.2f}],\"circuits\":1,\"connection\":\"STAR\",\"meanTurnM\":%s,\"boreM\":%s,\"coreLengthM\":%s,"
                + "\"groups\":[%s]}", slots, poles, turns, mm, strands, mm, meanTurn, round(bore), round(length), groups);
    }

    /** Resistance of turns in series, ohms. */
    static double ohms(int turns, double meanTurnM, double wireMm, int strands, double celsius) {
        double area = strands * Math.PI * wireMm * wireMm / 4 * 1e-6;
        return COPPER * turns * meanTurnM / area * (K + celsius) / (K + REFERENCE);
    }

    private String quote(Instant at, double kva, boolean agreed) {
        return String.format(Locale.ROOT, "{\"schema\":1,\"revision\":1,\"date\":\"%s\",\"currency\":\"EUR\","
                + "\"alternatives\":[{\"name\":\"full rewind\",\"lines\":[{\"kind\":\"LABOUR\",\"text\":\"strip\","
                + "\"trade\":\"fitter\",\"quantity\":%d,\"unit\":\"h\",\"unitPrice\":46},{\"kind\":\"LABOUR\",\"text\":"
                + "\"wind\",\"trade\":\"winder\",\"quantity\":%d,\"unit\":\"h\",\"unitPrice\":52},{\"kind\":\"MATERIAL\","
                + "\"text\":\"wire\",\"quantity\":%.1f,\"unit\":\"kg\",\"unitPrice\":16}]}]%s}",
                LocalDate.ofInstant(at, ZoneOffset.UTC), 4 + random.nextInt(8), 10 + random.nextInt(40), kva / 3,
                agreed ? ",\"approval\":{\"agreed\":true,\"alternative\":\"full rewind\",\"at\":\"" + at.plusSeconds(DAY)
                        + "\"}" : "");
    }

    private static double round(double metres) {
        return Math.round(metres * 1000) / 1000.0;
    }

    private String pick(String[] words) {
        return words[random.nextInt(words.length)];
    }

    private void put(Map<PartKey, Part> parts, String key, String text) {
        try {
            parts.put(PartKey.parse(key), json.read(PartKey.parse(key), text));
        } catch (BadRecordException e) {
            throw new AssertionError(text, e);
        }
    }
}
