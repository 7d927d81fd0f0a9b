using System.Globalization;

namespace Calculations.Tests;

public class LandlordCalendarTests
{
    private static DateOnly Day(string iso) => DateOnly.ParseExact(iso, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    // Regulation 36A of SI 1998/2451 (SI 2018/139). First two rows: cases published by letting agents; the rest: the regulation read strictly.
    [Theory]
    [InlineData("2018-02-10", "2019-01-05", "2019-02-10", "2019-02-10", "2020-02-10", 0)]
    [InlineData("2022-08-10", "2023-07-05", "2023-08-10", "2023-08-10", "2024-08-10", 0)]
    [InlineData("2025-03-14", "2026-01-20", "2026-03-14", "2026-03-14", "2027-03-14", 0)]
    [InlineData("2025-03-14", "2026-01-10", "2026-03-14", "2026-01-10", "2027-01-10", 0)]
    [InlineData("2018-02-10", "2018-12-10", "2019-02-10", "2018-12-10", "2019-12-10", 0)]
    [InlineData("2018-02-10", "2018-12-11", "2019-02-10", "2019-02-10", "2020-02-10", 0)]
    [InlineData("2018-02-10", "2019-02-10", "2019-02-10", "2019-02-10", "2020-02-10", 0)]
    [InlineData("2018-02-10", "2019-02-11", "2019-02-10", "2019-02-11", "2020-02-11", 1)]
    [InlineData("2025-03-14", "2026-03-16", "2026-03-14", "2026-03-16", "2027-03-16", 2)]
    [InlineData("2024-02-29", "2025-02-28", "2025-02-28", "2025-02-28", "2026-02-28", 0)]
    [InlineData("2023-02-28", "2024-02-28", "2024-02-28", "2024-02-28", "2025-02-28", 0)]
    public void A_check_in_the_window_keeps_the_anniversary_and_every_other_check_moves_it(
        string previous, string made, string deadline, string deemed, string next, int daysLate)
    {
        var dates = LandlordCalendar.Check(Day(previous), Day(made));

        Assert.Equal((Day(deadline), Day(deemed), Day(next), daysLate), (dates.Deadline, dates.Deemed, dates.NextDeadline, dates.DaysLate));
    }

    [Theory]
    [InlineData("2018-02-10", "2018-12-11")]
    [InlineData("2024-02-29", "2024-12-29")]
    [InlineData("2025-04-30", "2026-03-01")]
    [InlineData("2024-03-31", "2025-02-01")]
    public void The_window_opens_on_the_day_after_two_months_before_the_deadline(string previous, string start) =>
        Assert.Equal(Day(start), LandlordCalendar.Check(Day(previous), Day(previous)).WindowStart);

    [Theory]
    [InlineData("2018-12-09", DisputedDay.None)]
    [InlineData("2018-12-10", DisputedDay.TwoMonthsBefore)]
    [InlineData("2018-12-11", DisputedDay.None)]
    [InlineData("2019-02-09", DisputedDay.None)]
    [InlineData("2019-02-10", DisputedDay.LastDay)]
    [InlineData("2019-02-11", DisputedDay.None)]
    public void Two_days_of_the_year_are_disputed(string made, DisputedDay expected) =>
        Assert.Equal(expected, LandlordCalendar.Check(Day("2018-02-10"), Day(made)).Disputed);

    [Fact]
    public void The_first_check_of_a_new_appliance_may_be_aligned_with_the_others()
    {
        var deadline = LandlordCalendar.AlignedFirstDeadline(Day("2025-11-02"), Day("2026-12-20"));
        var dates = LandlordCalendar.Against(deadline, Day("2026-12-18"));

        Assert.Equal((Day("2026-12-20"), Day("2027-12-20")), (dates.Deemed, dates.NextDeadline));
    }

    [Theory]
    [InlineData("2026-11-02")]
    [InlineData("2027-01-03")]
    public void Alignment_reaches_two_months_and_no_further(string othersDue)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => LandlordCalendar.AlignedFirstDeadline(Day("2025-11-02"), Day(othersDue)));

        Assert.StartsWith("Not within two months", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-03")]
    [InlineData("2027-01-02")]
    public void Alignment_takes_any_day_of_the_two_months(string othersDue) =>
        Assert.Equal(Day(othersDue), LandlordCalendar.AlignedFirstDeadline(Day("2025-11-02"), Day(othersDue)));

    [Fact]
    public void A_check_before_the_previous_one_is_refused()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => LandlordCalendar.Check(Day("2025-03-14"), Day("2025-01-13")));
        Assert.StartsWith("This check lies before", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(Day("2025-01-14"), LandlordCalendar.Check(Day("2025-03-14"), Day("2025-01-14")).Deemed);
    }
}
