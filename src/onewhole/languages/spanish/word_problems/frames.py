"""Every way to tell a word problem in Spanish: of the kite club, and of a class that names its own things."""

from onewhole.languages.spanish.word_problems import (
    clock,
    lengths,
    money,
    numbers,
    plots,
    sharing,
    situations,
    steps,
    times,
    volumes,
    weights,
)
from onewhole.number.unit import Kind
from onewhole.problems.story_frame import frames_of, joined

FRAMES = frames_of(
    {
        Kind.NUMBER: numbers.KITES,
        Kind.LENGTH: lengths.KITES,
        Kind.WEIGHT: weights.KITES,
        Kind.VOLUME: volumes.KITES,
        Kind.TIME: joined(times.KITES, clock.KITES),
        Kind.METRIC_LENGTH: lengths.KITES,
        Kind.MASS: weights.KITES,
        Kind.METRIC_VOLUME: volumes.KITES,
        Kind.MONEY: money.KITES,
    },
    situations.KITES,
    sharing.KITES,
    steps.KITES,
    plots.KITES,
)

OWN_FRAMES = frames_of(
    {
        Kind.NUMBER: numbers.OWN,
        Kind.LENGTH: lengths.OWN,
        Kind.WEIGHT: weights.OWN,
        Kind.VOLUME: volumes.OWN,
        Kind.TIME: joined(times.OWN, clock.OWN),
        Kind.METRIC_LENGTH: lengths.OWN,
        Kind.MASS: weights.OWN,
        Kind.METRIC_VOLUME: volumes.OWN,
        Kind.MONEY: money.OWN,
    },
    situations.OWN,
    sharing.OWN,
    steps.OWN,
    plots.OWN,
)
