"""core.references.low_sugar, compared with other publications than the one it is copied from."""

import pytest

from core.references import low_sugar

GRAMS = 15  # of fast sugar: American Diabetes Association, as a maker of meters reports it; a Canadian pharmacy's page
MINUTES = 15  # until one measures again, in both
TABLETS_OF = (3, 4)  # grams of glucose in one tablet, as sold in Britain and in the United States (common knowledge)


@pytest.mark.parametrize("grams", TABLETS_OF)
def test_the_tablets_we_name_hold_what_other_bodies_advise(grams: int) -> None:
    few, many = low_sugar.GLUCOSE_TABLETS
    assert few * grams <= GRAMS <= many * grams


def test_help_is_called_when_other_bodies_measure_again() -> None:
    assert low_sugar.BETTER_WITHIN == MINUTES
