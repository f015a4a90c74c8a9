# SPDX-License-Identifier: Apache-2.0
"""From a picture as a camera writes it to the file that is stored, both looked at with Pillow: nothing of place, time or camera is left,
the picture stands upright, and what is hostile is refused. Exif as in CIPA DC-008-2019 (Exif 2.32): orientation 4.6.4, GPS 4.6.6."""
import hashlib
import io
import os
import pathlib
import struct
import subprocess
import tempfile
import unittest
import zlib

from PIL import Image, ImageDraw

ROAD = os.environ["PHOTO_ROAD"]
MARKS = [b"Exif", b"GPS", b"Maker of cameras", b"Model 5000", b"2026:10:14", b"behind the gym", b"http://ns.adobe.com", b"ICC_PROFILE"]


def helmet(size=(2400, 1800)):
    """Dark at the top left, light elsewhere, so that it can be seen how it stands."""
    image = Image.new("RGB", size, (235, 235, 230))
    draw = ImageDraw.Draw(image)
    draw.rectangle([0, 0, size[0] // 2 - 1, size[1] // 2 - 1], fill=(20, 40, 60))
    return image


def as_a_camera(image, orientation):
    exif = Image.Exif()
    exif[0x010F] = "Maker of cameras"
    exif[0x0110] = "Model 5000"
    exif[0x0112] = orientation
    exif[0x0132] = "2026:10:14 15:30:00"
    exif[0x8825] = {1: "N", 2: (41.0, 30.0, 15.0), 3: "W", 4: (93.0, 5.0, 1.0), 29: "2026:10:14"}
    out = io.BytesIO()
    image.save(out, "JPEG", quality=95, exif=exif, comment=b"behind the gym", icc_profile=None)
    return out.getvalue()


# Where the dark quarter must be once a picture of that orientation stands upright: (right, bottom), and whether sides are changed.
UPRIGHT = {1: (0, 0, False), 2: (1, 0, False), 3: (1, 1, False), 4: (0, 1, False), 5: (0, 0, True), 6: (1, 0, True), 7: (1, 1, True), 8: (0, 1, True)}


class PhotoRoad(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(self.enterContext(tempfile.TemporaryDirectory()))
        self.store = self.folder / "team.book.photos"

    def road(self, content, name="in.jpg"):
        path = self.folder / name
        path.write_bytes(content)
        done = subprocess.run([ROAD, str(self.store), str(path)], capture_output=True, text=True, timeout=60)
        self.assertIn(done.returncode, (0, 2), done.stderr)
        self.assertEqual(done.returncode == 2, not self.stored(done), done.stdout)
        return done

    def stored(self, done):
        path = pathlib.Path(done.stdout.strip())
        return done.returncode == 0 and path.parent == self.store and path.exists()

    def test_nothing_of_place_time_or_camera_is_left_and_the_picture_stands_upright(self):
        for orientation, (right, bottom, is_turned) in UPRIGHT.items():
            with self.subTest(orientation=orientation):
                content = as_a_camera(helmet(), orientation)
                with Image.open(io.BytesIO(content)) as source:
                    self.assertEqual(source.getexif()[0x0112], orientation)
                    self.assertTrue(source.getexif().get_ifd(0x8825))
                path = pathlib.Path(self.road(content).stdout.strip())
                kept = path.read_bytes()
                self.assertEqual(path.name, hashlib.blake2b(kept, digest_size=32).hexdigest() + ".jpg")
                self.assertLess(len(kept), 1024 * 1024)
                for mark in MARKS:
                    self.assertNotIn(mark, kept)
                with Image.open(io.BytesIO(kept)) as image:
                    self.assertEqual((image.format, image.mode), ("JPEG", "RGB"))
                    self.assertEqual(len(image.getexif()), 0)
                    self.assertFalse({"exif", "comment", "icc_profile", "xmp", "photoshop"} & set(image.info), image.info)
                    self.assertEqual(image.size, (1200, 1600) if is_turned else (1600, 1200))
                    for x in (0, 1):
                        for y in (0, 1):
                            pixel = image.getpixel((image.width * (1 + 2 * x) // 4, image.height * (1 + 2 * y) // 4))
                            self.assertEqual(sum(pixel) < 300, (x, y) == (right, bottom), (x, y, pixel))

    def test_a_small_picture_keeps_its_size_and_other_formats_become_the_same_plain_sort(self):
        for sort in ("JPEG", "PNG", "BMP"):
            with self.subTest(sort=sort):
                out = io.BytesIO()
                helmet((320, 200)).save(out, sort)
                with Image.open(self.road(out.getvalue(), "in." + sort.lower()).stdout.strip()) as image:
                    self.assertEqual((image.format, image.size), ("JPEG", (320, 200)))
        grey = io.BytesIO()
        helmet((320, 200)).convert("L").save(grey, "JPEG")
        cmyk = io.BytesIO()
        helmet((320, 200)).convert("CMYK").save(cmyk, "JPEG")
        for content in (grey.getvalue(), cmyk.getvalue()):
            with Image.open(self.road(content).stdout.strip()) as image:
                self.assertEqual(image.size, (320, 200))

    def test_hostile_files_are_refused_and_nothing_is_stored(self):
        whole = as_a_camera(helmet(), 1)
        frame = whole.index(b"\xff\xc0")
        bomb_jpeg = whole[:frame + 5] + struct.pack(">HH", 60000, 60000) + whole[frame + 9:]
        claims = {"empty": b"", "text": b"not a picture\n", "bomb.png": png_of(60000, 60000), "bomb.jpg": bomb_jpeg, "wide.png": png_of(20000, 20000),
                  "head": whole[:20], "svg.jpg": b"<svg xmlns='http://www.w3.org/2000/svg'><image href='/etc/passwd'/></svg>"}
        for name, content in claims.items():
            with self.subTest(name=name):
                done = self.road(content, name)
                self.assertEqual(done.returncode, 2)
                self.assertIn(name, done.stdout)
        self.assertFalse(self.store.exists() and list(self.store.iterdir()))

    def test_a_picture_cut_short_is_refused(self):
        out = io.BytesIO()
        helmet((400, 300)).save(out, "PNG")
        for whole in (as_a_camera(helmet((400, 300)), 6), out.getvalue()):
            for size in [*range(0, len(whole), max(1, len(whole) // 30)), len(whole) - 1]:
                self.assertEqual(self.road(whole[:size]).returncode, 2, (whole[:4], size))
            self.assertEqual(self.road(whole).returncode, 0)
        # What a camera puts behind the end of the picture - a film, say - is left behind.
        kept = pathlib.Path(self.road(as_a_camera(helmet((400, 300)), 6) + b"a film of somebody").stdout.strip())
        self.assertNotIn(b"film", kept.read_bytes())


def png_of(width, height):
    """A PNG of one colour that claims so many pixels and packs them into a few bytes (ISO/IEC 15948)."""
    def chunk(kind, body):
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
    packer = zlib.compressobj(9)
    rows = b"".join(packer.compress(bytes(1 + width * 3)) for _ in range(64)) + packer.flush()
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


if __name__ == "__main__":
    unittest.main(verbosity=2)
