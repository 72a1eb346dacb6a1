package org.copperbook.desk.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.eclipse.swt.graphics.ImageData;

/**
 * A program that takes damaged and crafted pictures in and makes them small, as the window does, and prints what became of
 * them. In a process of its own, with little memory: what brings down the toolkit's decoders brings down this program.
 */
public final class HostileImages {

    static final int EDGE = 160;

    private final Random random;
    private final List<byte[]> sound;
    private int refused;
    private int notShown;
    private int shown;
    private long slowest;

    private HostileImages(long seed) throws IOException {
        random = new Random(seed);
        sound = List.of(encoded("png"), encoded("jpg"), encoded("gif"), encoded("bmp"));
    }

    /** Arguments: how many, and the seed. */
    public static void main(String[] arguments) throws IOException {
        System.setProperty("java.awt.headless", "true");
        HostileImages images = new HostileImages(Long.parseLong(arguments[1]));
        for (byte[] base : images.sound) {
            images.take(base);
        }
        if (images.shown != images.sound.size()) {
            throw new IllegalStateException("the sound pictures are not shown: the decoders were not tried at all");
        }
        for (byte[] crafted : images.crafted()) {
            images.take(crafted);
        }
        int many = Integer.parseInt(arguments[0]);
        for (int i = 0; i < many; i++) {
            images.take(images.damaged());
        }
        System.out.printf("%d %d %d %d%n", images.refused, images.notShown, images.shown, images.slowest / 1_000_000);
    }

    private void take(byte[] bytes) {
        long begin = System.nanoTime();
        if (PhotoIntake.look("a picture", bytes) instanceof PhotoIntake.Looked.Refused) {
            refused++;
        }
        // Also what is refused: a job file that is taken in may bring it all the same.
        Optional<ImageData> small = Pixels.shown(bytes, EDGE, EDGE);
        if (small.isEmpty()) {
            notShown++;
        } else {
            shown++;
            if (small.get().width > EDGE || small.get().height > EDGE) {
                throw new IllegalStateException("larger than asked for: " + small.get().width + " x " + small.get().height);
            }
        }
        slowest = Math.max(slowest, System.nanoTime() - begin);
    }

    private byte[] encoded(String format) throws IOException {
        BufferedImage image = new BufferedImage(64 + random.nextInt(64), 48, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 20; i++) {
            g.setColor(new Color(random.nextInt(1 << 24)));
            g.fillOval(random.nextInt(100), random.nextInt(40), 20, 20);
        }
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private byte[] damaged() {
        byte[] b = sound.get(random.nextInt(sound.size())).clone();
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            int at = random.nextInt(10) < 5 ? random.nextInt(Math.min(b.length, 64)) : random.nextInt(b.length);
            switch (random.nextInt(6)) {
                case 0 -> b[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> b = Arrays.copyOf(b, Math.max(1, at));
                case 2 -> extreme(b, at);
                case 3 -> b = twice(b, at);
                case 4 -> Arrays.fill(b, at, Math.min(b.length, at + random.nextInt(32)), (byte) random.nextInt());
                default -> b = joined(b, sound.get(random.nextInt(sound.size())), at);
            }
        }
        return b;
    }

    private void extreme(byte[] b, int at) {
        int[] extremes = {0, -1, Integer.MAX_VALUE, Integer.MIN_VALUE, 0xFFFF, 1 << 16};
        for (int i = 0; i < 4 && at + i < b.length; i++) {
            b[at + i] = (byte) (extremes[random.nextInt(extremes.length)] >> 8 * i);
        }
    }

    private static byte[] twice(byte[] b, int at) {
        byte[] next = Arrays.copyOf(b, b.length + (b.length - at));
        System.arraycopy(b, at, next, b.length, b.length - at);
        return next;
    }

    private static byte[] joined(byte[] b, byte[] other, int at) {
        byte[] next = Arrays.copyOf(b, at + other.length);
        System.arraycopy(other, 0, next, at, other.length);
        return next;
    }

    /** Pictures made to fill the memory, to take for ever, or to read other files. */
    private List<byte[]> crafted() throws IOException {
        return List.of(
                png(65_535, 65_535, 10), png(1, 64_000_000, 10), png(60_000, 1_000, 60_000 * 3), png(0, 0, 0),
                png(-1, 5, 0), gif(4_000, 4_000, 4_000, 4_000, 50_000), gif(1, 1, 65_535, 65_535, 1),
                gif(65_535, 65_535, 1, 1, 1), gif(0, 0, 0, 0, 3), bmp(Integer.MAX_VALUE, 1), bmp(1, Integer.MIN_VALUE),
                bmp(30_000, -30_000), bmp(-1, -1), jpeg(65_535, 65_535), jpeg(0, 0),
                text("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><image width='9' height='9'"
                        + " href='file:///etc/passwd'/></svg>"),
                text("<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY a 'aaaaaaaa'>]><svg width='9' height='9'>&a;</svg>"),
                laughing(), "PK\u0003\u0004 no picture".getBytes(StandardCharsets.ISO_8859_1), new byte[0]);
    }

    private static byte[] text(String svg) {
        return svg.getBytes(StandardCharsets.UTF_8);
    }

    /** A drawing of a few lines that refers to itself ten to the power of thirty times. */
    private static byte[] laughing() {
        StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><defs>"
                + "<g id='g0'><path d='M0 0L9 9'/></g>");
        for (int i = 1; i <= 30; i++) {
            svg.append("<g id='g").append(i).append("'>").append(("<use href='#g" + (i - 1) + "'/>").repeat(10)).append("</g>");
        }
        return text(svg.append("</defs><use href='#g30'/></svg>").toString());
    }

    private static byte[] png(int width, int height, int zeros) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8).put((byte) 2).array());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(data)) {
            byte[] row = new byte[Math.max(1, zeros)];
            for (int i = 0; i < 1_000; i++) {
                deflater.write(row);
            }
        }
        chunk(out, "IDAT", data.toByteArray());
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String name, byte[] data) {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(type);
        crc.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(type);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }

    private static byte[] gif(int width, int height, int frameWidth, int frameHeight, int frames) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("GIF89a".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(words(width, height));
        out.writeBytes(new byte[] {(byte) 0x80, 0, 0, 0, 0, 0, -1, -1, -1});
        for (int i = 0; i < frames; i++) {
            out.write(0x2C);
            out.writeBytes(words(0, 0, frameWidth, frameHeight));
            out.writeBytes(new byte[] {0, 2, 2, 0x4C, 1, 0});
        }
        out.write(0x3B);
        return out.toByteArray();
    }

    private static byte[] words(int... values) {
        ByteBuffer b = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int v : values) {
            b.putShort((short) v);
        }
        return b.array();
    }

    private static byte[] bmp(int width, int height) {
        ByteBuffer b = ByteBuffer.allocate(100).order(ByteOrder.LITTLE_ENDIAN);
        b.put((byte) 'B').put((byte) 'M').putInt(100).putInt(0).putInt(54).putInt(40).putInt(width).putInt(height)
                .putShort((short) 1).putShort((short) 24);
        return b.array();
    }

    private static byte[] jpeg(int width, int height) {
        ByteBuffer b = ByteBuffer.allocate(64);
        b.putShort((short) 0xFFD8).putShort((short) 0xFFC0).putShort((short) 17).put((byte) 8).putShort((short) height)
                .putShort((short) width).put((byte) 3).put(new byte[] {1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1});
        return b.array();
    }
}
