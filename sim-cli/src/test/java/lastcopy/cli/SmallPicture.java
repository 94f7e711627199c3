package lastcopy.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** A picture of a screen with fewer shades, which nobody sees and which take half of the room. */
final class SmallPicture {

  private static final int STEP = 8;
  private static final int WHITE = 252;
  private static final int MOST = 255;

  private SmallPicture() {}

  /** A PNG with every eighth shade of each colour. */
  static byte[] of(byte[] png) throws IOException {
    BufferedImage from = ImageIO.read(new ByteArrayInputStream(png));
    BufferedImage to =
        new BufferedImage(from.getWidth(), from.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < from.getHeight(); y++) {
      for (int x = 0; x < from.getWidth(); x++) {
        int pixel = from.getRGB(x, y);
        to.setRGB(x, y, shade(pixel >> 16) << 16 | shade(pixel >> 8) << 8 | shade(pixel));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(to, "png", out);
    return out.toByteArray();
  }

  private static int shade(int bits) {
    int shade = bits & MOST;
    return shade >= WHITE ? shade : Math.min(MOST, (shade + STEP / 2) / STEP * STEP);
  }
}
