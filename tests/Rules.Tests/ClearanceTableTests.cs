using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Records;

namespace Rules.Tests;

/// <summary>The clearances of room-sealed terminals, against the table to Diagram 34 of Approved Document J (England).</summary>
public sealed class ClearanceTableTests
{
    public static TheoryData<FlueType, ClearanceTo> Rows
    {
        get
        {
            var rows = new TheoryData<FlueType, ClearanceTo>();
            foreach (var type in new[] { FlueType.RoomSealedFanned, FlueType.RoomSealedNatural })
                foreach (var to in Enum.GetValues<ClearanceTo>())
                    rows.Add(type, to);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_has_a_limit_that_decides(FlueType type, ClearanceTo to)
    {
        Assert.Equal(Outcome.Pass, Judge(type, to, 2_000).Outcome);
        Assert.True(Judge(type, to, 50).Outcome is Outcome.Unsafe or Outcome.Advisory);
    }

    [Theory]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.BelowOpening, 300)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.BelowGutter, 75)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.BelowEaves, 200)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.VerticalPipe, 150)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.FacingSurface, 600)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.FacingTerminal, 1200)]
    [InlineData(FlueType.RoomSealedFanned, ClearanceTo.VerticalTerminal, 1500)]
    [InlineData(FlueType.RoomSealedNatural, ClearanceTo.VerticalTerminal, 1200)]
    [InlineData(FlueType.RoomSealedNatural, ClearanceTo.BelowBalcony, 600)]
    [InlineData(FlueType.RoomSealedNatural, ClearanceTo.Corner, 600)]
    [InlineData(FlueType.RoomSealedNatural, ClearanceTo.BelowOpening, 1500)]
    public void A_terminal_of_26_kW_keeps_the_published_distance(FlueType type, ClearanceTo to, int distanceMm)
    {
        Assert.Equal(0, Judge(type, to, distanceMm).Margin);
        Assert.NotEqual(Outcome.Pass, Judge(type, to, distanceMm - 1).Outcome);
    }

    private static Finding Judge(FlueType type, ClearanceTo to, int distanceMm)
    {
        var record = JsonNode.Parse(RuleSet.Catalogue.ExampleRecord)!;
        record["appliance"]!["flueType"] = Kernel.WireText.Of(type);
        record["flue"]!["terminalClearances"] = new JsonArray(new JsonObject { ["to"] = Kernel.WireText.Of(to), ["distanceMm"] = distanceMm });
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Read(Encoding.UTF8.GetBytes(record.ToJsonString())));
        return Assert.Single(RuleSet.AnswersOf(RuleIds.TerminalClearance, evaluation));
    }
}
