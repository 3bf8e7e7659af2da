"""A picture as a page takes it: a drawing, and the words that do its job."""

from onewhole.notations.picture_words import told
from onewhole.notations.svg import svg
from onewhole.notations.words import ClassWords
from onewhole.pictures.choosing import picture
from onewhole.pictures.scene import Scene
from onewhole.working.working import Working
from onewhole.writers.printed import Json


def drawings(working: Working, words: ClassWords) -> list[Json]:
    """Return what a working begins with and what tells most of it; nothing where no picture suits."""
    found = picture(working)
    if found is None:
        return []
    scenes = dict.fromkeys((found.scenes[0], found.telling))
    return [drawing(scene, words) for scene in scenes]


def drawing(scene: Scene, words: ClassWords) -> Json:
    """Return a scene as SVG without squares, with its text alternative."""
    return {"svg": svg(scene, words, grid=False), "alt": told(scene, words)}
