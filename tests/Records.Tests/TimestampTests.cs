using Records.Values;

namespace Records.Tests;

/// <summary>RFC 3339, section 5.6 (grammar), 5.8 (examples) and 4.3 (unknown offset).</summary>
public class TimestampTests
{
    [Theory]
    [InlineData("1985-04-12T23:20:50.52Z", "1985-04-12T23:20:50.5200000+00:00")] // RFC 3339, section 5.8
    [InlineData("1996-12-19T16:39:57-08:00", "1996-12-19T16:39:57.0000000-08:00")] // RFC 3339, section 5.8
    [InlineData("1937-01-01T12:00:27.87+00:20", "1937-01-01T12:00:27.8700000+00:20")] // RFC 3339, section 5.8
    [InlineData("2026-09-14t10:25:00z", "2026-09-14T10:25:00.0000000+00:00")]
    [InlineData("2026-09-14T10:25:00.1234567899+14:00", "2026-09-14T10:25:00.1234567+14:00")]
    [InlineData("2024-02-29T00:00:00-14:00", "2024-02-29T00:00:00.0000000-14:00")]
    public void A_date_time_with_offset_is_read_and_kept_as_written(string text, string roundTrip)
    {
        var timestamp = Timestamp.Parse(text);
        Assert.Equal(roundTrip, timestamp.Value.ToString("O", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(text, timestamp.ToString());
    }

    [Theory]
    [InlineData("1990-12-31T23:59:60Z")] // A leap second of RFC 3339, section 5.8, which the platform's clock cannot hold.
    [InlineData("2026-09-14T10:25:00-00:00")] // "Local time unknown": then the date at its own offset is unknown too.
    [InlineData("2026-09-14T10:25:00")]
    [InlineData("2026-09-14 10:25:00Z")]
    [InlineData("2026-09-14T10:25Z")]
    [InlineData("2026-09-14T10:25:00.Z")]
    [InlineData("2026-09-14T10:25:00,5Z")]
    [InlineData("2026-09-14T10:25:00+0100")]
    [InlineData("2026-09-14T10:25:00+1:00")]
    [InlineData("2026-09-14T10:25:00+01:60")]
    [InlineData("2026-09-14T10:25:00+14:01")]
    [InlineData("2026-09-14T10:25:00+24:00")]
    [InlineData("2026-09-14T24:00:00Z")]
    [InlineData("2026-09-31T10:25:00Z")]
    [InlineData("2026-9-14T10:25:00Z")]
    [InlineData(" 2026-09-14T10:25:00Z")]
    [InlineData("2026-09-14T10:25:00Z ")]
    [InlineData("2026-09-14T10:25:00Z\n")]
    [InlineData("12026-09-14T10:25:00Z")]
    [InlineData("0001-01-01T00:00:00+01:00")]
    [InlineData("9999-12-31T23:59:59-01:00")]
    [InlineData("Mon, 14 Sep 2026 10:25:00 GMT")]
    [InlineData("")]
    [InlineData("Z")]
    public void Anything_else_is_refused(string text)
    {
        Assert.False(Timestamp.TryParse(text, out _));
        Assert.Throws<FormatException>(() => Timestamp.Parse(text));
    }

    [Fact]
    public void The_date_is_the_one_written_and_not_that_of_another_offset() =>
        Assert.Equal(new DateOnly(2026, 10, 1), Timestamp.Parse("2026-10-01T00:30:00+01:00").Date);
}
