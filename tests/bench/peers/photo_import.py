"""Takes photos in as Holdfast does, by Pillow: turned upright, averaged over areas to 1,600 and 1,080 pixels, the file as
taken kept beside them, all of it on disk. One path a line comes in, the seconds it took go out. A line that begins
with `draft ` lets the decoder itself shrink first, which is quicker and averages otherwise."""

import os
import sys
import time

from PIL import Image, ImageOps


def keep(path, data):
    with open(path, "wb") as out:
        out.write(data)
        out.flush()
        os.fsync(out.fileno())


def rendition(image, longest, path):
    image.thumbnail((longest, longest), Image.Resampling.BOX, reducing_gap=None)
    with open(path, "wb") as out:
        image.save(out, "JPEG", quality=85, subsampling=2)
        out.flush()
        os.fsync(out.fileno())


def take_in(path, draft):
    with open(path, "rb") as taken:
        data = taken.read()
    with Image.open(path) as image:
        if draft:
            image.draft("RGB", (1600, 1600))
        upright = ImageOps.exif_transpose(image).convert("RGB")
    upright.info.clear()
    rendition(upright, 1600, path + ".print.jpg")
    rendition(upright, 1080, path + ".screen.jpg")
    keep(path + ".kept.jpg", data)


for line in sys.stdin:
    line = line.rstrip("\n")
    draft = line.startswith("draft ")
    path = line.removeprefix("draft ")
    start = time.perf_counter()
    take_in(path, draft)
    print(time.perf_counter() - start, flush=True)
