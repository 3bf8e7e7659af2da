"""A page before anybody wrote on it."""

from onewhole.presses.blank_pages import SCALE, blank_pages
from tests.kit.papers import mapped, page, texts


def test_what_the_map_says_is_there_in_pixels() -> None:
    """The marks are black and the white round them white, at four pixels a millimetre."""
    for text in texts().values():
        pages = mapped(text).pages
        blank = blank_pages(page(text))
        assert len(blank) == len(pages)
        for one, pixels in zip(pages, blank, strict=True):
            assert pixels.shape == (-(-one.height * SCALE // 100), -(-one.width * SCALE // 100))
            for box in one.marks:
                left, top, wide, high = (
                    side * SCALE // 100 for side in (box.left, box.top, box.width, box.height)
                )
                assert pixels[top + 1 : top + 3, left + 1 : left + wide - 1].max() < 40
                assert pixels[top + high - 2, left + 1 : left + wide - 1].max() < 40
                assert pixels[top - 3 : top - 1, left : left + wide].min() > 215
                assert pixels[top + high + 2 : top + high + 4, left : left + wide].min() > 215
