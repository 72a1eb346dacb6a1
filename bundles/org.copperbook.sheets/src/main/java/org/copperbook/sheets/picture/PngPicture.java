package org.copperbook.sheets.picture;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Draws a scene as a PNG image, from its SVG. */
public final class PngPicture {

    /** More pixels than this are not drawn: the image would not fit in memory. */
    private static final double MOST_PIXELS = 40_000_000;

    private PngPicture() {
    }

    /** The image in the colours of light paper. */
    public static byte[] of(Scene scene, double scale) {
        return of(scene, ScenePalette.LIGHT, scale);
    }

    /**
     * @param scale pixels per unit of the scene, above 0; made smaller when the image would be too large for memory
     * @return the file
     */
    public static byte[] of(Scene scene, ScenePalette palette, double scale) {
        double most = Math.sqrt(MOST_PIXELS / Math.max(1, scene.width() * scene.height()));
        double used = Math.min(scale, most);
        int width = Math.max(1, (int) Math.ceil(scene.width() * used));
        int height = Math.max(1, (int) Math.ceil(scene.height() * used));
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(
                SvgPicture.of(scene, palette).getBytes(StandardCharsets.UTF_8)), null, LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("the scene \"" + scene.title() + "\" could not be drawn");
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            document.render((java.awt.Component) null, g, new ViewBox(0, 0, width, height));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            g.dispose();
        }
    }
}
