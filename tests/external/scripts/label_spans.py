# SPDX-License-Identifier: Apache-2.0
# Last good days of a recertification label, by walking every day of its year. One case a line: year, months.
# NOCSAE (Recertification page; ND004): the label carries the firm and the year only.
import datetime
import sys

DAY = datetime.timedelta(days=1)


def ends(day, months):
    """The day before the same day so many months later; the last day of the month where it has no such day."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    first_of_next = datetime.date(year + (month + 1) // 12, (month + 1) % 12 + 1, 1)
    last = (first_of_next - DAY).day
    return datetime.date(year, month + 1, min(day.day, last)) - DAY


for line in sys.stdin:
    year, months = (int(x) for x in line.split())
    day = datetime.date(year, 1, 1)
    all_ends = []
    while day.year == year:
        all_ends.append(ends(day, months))
        day += DAY
    print(min(all_ends), max(all_ends))
