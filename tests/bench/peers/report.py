"""Draws the pages of a report with ReportLab: a line names the file that describes them, the answer is seconds."""

import io
import json
import sys

from reportlab import rl_config
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from watch import Watch

# Streams as they are: text armour would only slow the peer down.
rl_config.useA85 = 0


def colour(canvas, fill, stroke):
    if fill:
        canvas.setFillColorRGB(*[c / 255 for c in fill])
    if stroke:
        canvas.setLineWidth(stroke[0])
        canvas.setStrokeColorRGB(*[c / 255 for c in stroke[1]])


def draw(canvas, item, height):
    kind = item["kind"]
    if kind == "text":
        canvas.setFont("bold" if item["bold"] else "regular", item["size"])
        colour(canvas, item["fill"], None)
        x, y = item["at"]
        put = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
        put[item["anchor"]](x, height - y, item["text"])
    elif kind == "image":
        x, y = item["at"]
        canvas.drawImage(item["path"], x, height - y - item["height"], item["width"], item["height"])
    else:
        fill, stroke = item["fill"], item["stroke"]
        colour(canvas, fill, stroke)
        fills, strokes = int(bool(fill)), int(bool(stroke))
        if kind == "circle":
            x, y = item["at"]
            canvas.circle(x, height - y, item["radius"], stroke=strokes, fill=fills)
        else:
            path = canvas.beginPath()
            (x, y), *rest = item["points"]
            path.moveTo(x, height - y)
            for x, y in rest:
                path.lineTo(x, height - y)
            if item["closed"]:
                path.close()
            canvas.drawPath(path, stroke=strokes, fill=fills)


def make(pages):
    pdfmetrics.registerFont(TTFont("regular", pages["regular"]))
    pdfmetrics.registerFont(TTFont("bold", pages["bold"]))
    out = io.BytesIO()
    height = pages["height"]
    canvas = Canvas(out, pagesize=(pages["width"], height), pageCompression=1)
    for page in pages["pages"]:
        for item in page:
            draw(canvas, item, height)
        canvas.showPage()
    canvas.save()
    return out.getvalue()


for line in sys.stdin:
    with open(line.strip(), encoding="utf-8") as file:
        described = json.load(file)
    watch = Watch()
    made = make(described)
    took = watch.elapsed()
    assert made.startswith(b"%PDF"), "no PDF"
    print(took, flush=True)
