"""Pictures of answers for tests that look at them: a text in a plain face on white, as large as a cell."""

from io import BytesIO

from PIL import Image, ImageDraw, ImageFont


def crop_of(text: str, *, ruled: bool = True) -> bytes:
    """Return a picture of 240 x 96 with a text on its answer line, as PNG."""
    image = Image.new("L", (240, 96), 250)
    pen = ImageDraw.Draw(image)
    if ruled:
        pen.line((8, 80, 232, 80), fill=120, width=2)
    pen.text((24, 22), text, fill=70, font=ImageFont.load_default(44))
    held = BytesIO()
    image.save(held, "PNG")
    return held.getvalue()
