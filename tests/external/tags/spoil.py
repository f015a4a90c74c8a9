# SPDX-License-Identifier: Apache-2.0
"""Pictures as a camera sees them, by Pillow. Standard input: one a line, "SOURCE TARGET WAY"; TARGET becomes a grey PGM. The chance is the
line's own number, so that every run spoils alike."""
import random
import sys

from PIL import Image, ImageFilter


def padded(image, share=0.35):
    wide, high = image.size
    page = Image.new("L", (int(wide * (1 + 2 * share)), int(high * (1 + 2 * share))), 235)
    page.paste(image, (int(wide * share), int(high * share)))
    return page


def turned(image, angle):
    return image.rotate(angle, resample=Image.BICUBIC, expand=True, fillcolor=235)


def skewed(image, shear):
    wide, high = image.size
    return image.transform((int(wide + shear * high), high), Image.AFFINE, (1, shear, -shear * high, 0, 1, 0), Image.BICUBIC, fillcolor=235)


def tilted(image, share):
    """Seen from one side: the right edge is further away."""
    wide, high = image.size
    off = int(high * share)
    return image.transform((wide, high), Image.QUAD, (0, 0, 0, high, wide, high + off, wide, -off), Image.BICUBIC, fillcolor=235)


def faint(image, dark, light):
    return image.point(lambda v: int(dark + v * (light - dark) / 255))


def noisy(image, spread, chance):
    pixels = image.load()
    for y in range(image.size[1]):
        for x in range(image.size[0]):
            pixels[x, y] = max(0, min(255, pixels[x, y] + chance.randint(-spread, spread)))
    return image


def shaded(image):
    ramp = Image.linear_gradient("L").rotate(90).resize(image.size)
    return Image.composite(image, image.point(lambda v: int(v * 0.45)), ramp)


WAYS = {
    "plain": lambda i, c: i,
    "turned-8": lambda i, c: turned(i, 8),
    "turned-90": lambda i, c: turned(i, 90),
    "turned-180": lambda i, c: turned(i, 180),
    "turned-33": lambda i, c: turned(i, 33),
    "turned-200": lambda i, c: turned(i, 200),
    "blurred": lambda i, c: i.filter(ImageFilter.GaussianBlur(1.6)),
    "skewed": lambda i, c: skewed(i, 0.15),
    "tilted": lambda i, c: tilted(i, 0.05),
    "faint": lambda i, c: faint(i, 96, 150),
    "noisy": lambda i, c: noisy(i, 28, c),
    "shaded": lambda i, c: shaded(i),
    "all": lambda i, c: noisy(faint(turned(i, 6).filter(ImageFilter.GaussianBlur(1.0)), 70, 180), 10, c),
}

for number, line in enumerate(sys.stdin):
    source, target, way = line.split()
    image = padded(Image.open(source).convert("L"))
    WAYS[way](image, random.Random(number)).save(target, "PPM")
