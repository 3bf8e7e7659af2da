"""What a group is about, in plain words, for the teacher's eyes."""

from onewhole.languages.english.placing import group_about
from onewhole.marking.grouping.group import Group
from onewhole.sentences.sentence import Sentences


def about(group: Group) -> Sentences:
    """Say in a few words what a group is about: its ideas, or why it is together."""
    return group_about(group.place, [held.idea for held in group.ideas if held.idea], group.families)
