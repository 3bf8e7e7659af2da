"""How people spell the units of measures: each spelling with the usual abbreviation of its unit."""

from collections.abc import Mapping
from types import MappingProxyType

#: The spellings of each unit in small letters, by its usual abbreviation; our own list.
SPELT: Mapping[str, str] = MappingProxyType(
    {
        "mi": "mi mile miles",
        "yd": "yd yard yards yds",
        "ft": "ft foot feet ' ′ ’",
        "in": 'in inch inches ins " ″ ”',
        "T": "t ton tons",
        "lb": "lb lbs pound pounds",
        "oz": "oz ounce ounces",
        "gal": "gal gals gallon gallons",
        "qt": "qt qts quart quarts",
        "pt": "pt pts pint pints",
        "c": "c cup cups",
        "wk": "wk wks week weeks",
        "d": "d day days",
        "h": "h hr hrs hour hours",
        "min": "min mins minute minutes",
        "s": "s sec secs second seconds",
        "km": "km kilometer kilometers kilometre kilometres",
        "m": "m meter meters metre metres",
        "cm": "cm centimeter centimeters centimetre centimetres",
        "mm": "mm millimeter millimeters millimetre millimetres",
        "kg": "kg kgs kilogram kilograms",
        "g": "g gram grams",
        "L": "l liter liters litre litres",
        "mL": "ml milliliter milliliters millilitre millilitres",
        "¢": "¢ cent cents",
    }
)
#: A fluid ounce, however it is spelt, is read as one word (:mod:`~.tokens`).
FLUID_OUNCE = "fl oz"

#: The usual abbreviation of a unit by each of its spellings.
MARKS: Mapping[str, str] = MappingProxyType(
    {spelling: mark for mark, spellings in SPELT.items() for spelling in spellings.split()}
    | {FLUID_OUNCE: FLUID_OUNCE}
)
