"""The ways to multiply, in the order in which they are offered."""

from onewhole.working.products.by_heart import BY_HEART
from onewhole.working.products.each_unit import EACH_UNIT
from onewhole.working.products.equal_jumps import EQUAL_JUMPS
from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
from onewhole.working.products.share_then_times import SHARE_THEN_TIMES
from onewhole.working.products.tops_and_bottoms import TOPS_AND_BOTTOMS

#: Those that a class is taught first stand first.
PRODUCT_WAYS = (
    BY_HEART,
    EACH_UNIT,
    SHARE_THEN_TIMES,
    TOPS_AND_BOTTOMS,
    PARTIAL_PRODUCTS,
    EQUAL_JUMPS,
    MULTIPLY_IN_COLUMNS,
)
