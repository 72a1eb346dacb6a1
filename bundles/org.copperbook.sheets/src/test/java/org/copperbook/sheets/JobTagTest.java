package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Hazard;
import org.copperbook.jobs.booking.JobCode;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.booking.ReceivedPart;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.tag.JobTag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes are read back by the reader of the library that is not used to write them; pictures lie in target/tag. */
class JobTagTest {

    private static final String LONG = "a very long word of the customer's own ".repeat(40);

    private static Job job(String number, String customer, String fault, Standing standing) {
        Booking booking = new Booking(1, Instant.parse("2026-11-02T08:30:00Z"), "ada", MachineKind.BRUSHLESS_ALTERNATOR,
                "standby set, pump house 2", customer, null, "PO 77", LocalDate.of(2026, 12, 4), Booking.Priority.URGENT,
                new BigDecimal("1250.500"), "carrier", List.of(new ReceivedPart("regulator", true, "scorched", null),
                        new ReceivedPart("coupling", false, null, null), new ReceivedPart("fan", null, null, null)), "", fault,
                List.of(Hazard.ASBESTOS_ERA_INSULATION, Hazard.HEAVY_LIFT), "lift by the two eyes", 850.0, null, List.of(),
                "T 9", null);
        Job job = new Job("id", number, Map.of(PartKey.of(PartKind.BOOKING), booking));
        return standing == null ? job : job.with(PartKey.of(PartKind.STANDING), standing);
    }

    private static JobTag tag(Job job) {
        return new JobTag(job, SampleShop.shop(), Locale.ENGLISH, ZoneOffset.UTC);
    }

    private static String said(Scene scene) {
        return scene.marks().stream().filter(Mark.Text.class::isInstance).map(m -> ((Mark.Text) m).text())
                .collect(Collectors.joining(" "));
    }

    private static String readBack(Scene scene, String file) throws Exception {
        byte[] png = PngPicture.of(scene, ScenePalette.PRINT, 3);
        Path folder = Files.createDirectories(Path.of("target/tag"));
        Files.write(folder.resolve(file), png);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(
                new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels))),
                Map.of(DecodeHintType.TRY_HARDER, true)).getText();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-0042", "W/26/1", "job no. 123456789012345", "\u4fee-7", "\u05e2-12"})
    void theCodeOnTagAndCardReadsBackAsTheNumber(String number) throws Exception {
        JobTag tag = tag(job(number, "Harbour Ice", "no volts", null));
        String file = Integer.toHexString(number.hashCode());
        assertEquals(number, JobCode.number(readBack(tag.tag(), "tag-" + file + ".png")).orElseThrow());
        assertEquals(number, JobCode.number(readBack(tag.card(), "card-" + file + ".png")).orElseThrow());
    }

    @Test
    void theCardSaysWhatTheBenchMustKnow() {
        String card = said(tag(job("2026-0042", "Harbour Ice", "no volts after the storm", null)).card());
        for (String part : List.of("2026-0042", "Harbour Ice", "PO 77", "standby set, pump house 2", "no volts after the storm",
                "asbestos", "heavy lift", "lift by the two eyes", "850 kg", "Dec 4, 2026", "urgent", "1250.500",
                "regulator (scorched)", "coupling", "fan", "Came with it", "Missing", "Not looked at")) {
            assertTrue(card.contains(part), part + " in: " + card);
        }
    }

    @Test
    void theTagSaysWhoseMachineItIsAndWhatIsDangerous() {
        String tag = said(tag(job("2026-0042", "Harbour Ice", "", null)).tag());
        for (String part : List.of("2026-0042", "Harbour Ice", "standby set", "Dec 4, 2026", "Hazards", "asbestos")) {
            assertTrue(tag.contains(part), part + " in: " + tag);
        }
    }

    @Test
    void aVoidNumberIsMarkedVoidWithItsReason() throws Exception {
        Standing cancelled = new Standing(1, null, new Standing.Closure(Standing.How.CANCELLED, "booked in twice", null,
                Instant.parse("2026-11-03T08:00:00Z"), "ada", null), null);
        JobTag tag = tag(job("2026-0043", "Harbour Ice", "", cancelled));
        for (Scene scene : List.of(tag.tag(), tag.card())) {
            assertTrue(said(scene).toLowerCase(Locale.ENGLISH).contains("void"), said(scene));
            assertTrue(said(scene).contains("booked in twice"), said(scene));
        }
        assertEquals("2026-0043", JobCode.number(readBack(tag.tag(), "tag-void.png")).orElseThrow());
    }

    @Test
    void aMachineWithoutANumberGetsAProvisionalTagWhoseCodeLeadsToItsJob() throws Exception {
        ProvisionalTag provisional = new ProvisionalTag("0b7c91d2-55aa-4e21-9c40-1234567890af");
        JobTag tag = JobTag.provisional(provisional, job("", "Harbour Ice", "no volts", null), SampleShop.shop(),
                Locale.ENGLISH, ZoneOffset.UTC);
        for (Scene scene : List.of(tag.tag(), tag.card())) {
            assertTrue(said(scene).contains("T-90AF"), said(scene));
            assertTrue(said(scene).contains("no job number yet"), said(scene));
            assertEquals(provisional, JobCode.number(readBack(scene, "provisional.png"))
                    .flatMap(ProvisionalTag::read).orElseThrow());
        }
    }

    @Test
    void whateverIsTypedNothingLeavesThePaper() throws Exception {
        for (String name : List.of(LONG, "x".repeat(900), "\u5de5\u5ee0".repeat(300),
                "\u05de\u05e4\u05e2\u05dc \u05d7\u05e9\u05de\u05dc ".repeat(60))) {
            JobTag tag = tag(job("2026-0042", name, name, null));
            for (Scene scene : List.of(tag.tag(), tag.card())) {
                for (Mark mark : scene.marks()) {
                    if (mark instanceof Mark.Text t) {
                        assertTrue(t.left() >= 0 && t.left() + t.width() <= scene.width(), t.text());
                        assertTrue(t.at().y() + t.size() / 2 <= scene.height(), t.text());
                    }
                }
            }
            assertEquals("2026-0042", JobCode.number(readBack(tag.card(), "card-long.png")).orElseThrow());
        }
    }

    @Test
    void aDirtyCornerOfTheCodeDoesNotMatter() throws Exception {
        Scene tag = tag(job("2026-0042", "Harbour Ice", "", null)).tag();
        List<Mark> dirty = new java.util.ArrayList<>(tag.marks());
        dirty.add(Mark.Arc.circle("", ScenePalette.TEXT, 0, true,
                new org.copperbook.sheets.picture.Point(tag.height() * 0.55, tag.height() * 0.55), tag.height() * 0.06));
        assertEquals("2026-0042", JobCode.number(readBack(new Scene("", tag.width(), tag.height(), dirty), "dirty.png"))
                .orElseThrow());
    }

    @Test
    void aJobThatIsNotBookedInHasNoTag() {
        assertThrows(IllegalArgumentException.class, () -> tag(new Job("id", "2026-0001", Map.of())));
        assertThrows(IllegalArgumentException.class, () -> tag(job("", "Harbour Ice", "", null)));
        assertFalse(said(tag(job("1", "", "", null)).tag()).isBlank());
    }
}
