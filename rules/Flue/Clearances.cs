using Records;

namespace Rules.Flue;

/// <summary>Which limit concerns a terminal of a room-sealed flue, as building-regulation guidance lays its table out.</summary>
internal static class Clearances
{
    /// <summary>One line of the table: the limit that holds up to an input in kW net; null where no greater class follows.</summary>
    private readonly record struct Line(decimal? UpToNetKw, string LimitId);

    private static readonly Dictionary<(ClearanceTo To, bool IsFanned), Line[]> Table = new()
    {
        [(ClearanceTo.BelowGutter, true)] = [new(null, LimitIds.ClearanceFannedBelowGutter)],
        [(ClearanceTo.BelowEaves, true)] = [new(null, LimitIds.ClearanceFannedBelowEaves)],
        [(ClearanceTo.BelowBalcony, true)] = [new(null, LimitIds.ClearanceFannedBelowBalcony)],
        [(ClearanceTo.VerticalPipe, true)] = [new(5, LimitIds.ClearanceFannedVerticalPipeTo5), new(null, LimitIds.ClearanceFannedVerticalPipeOver5)],
        [(ClearanceTo.Corner, true)] = [new(null, LimitIds.ClearanceFannedCorner)],
        [(ClearanceTo.BoundaryAlongside, true)] = [new(null, LimitIds.ClearanceFannedBoundaryAlongside)],
        [(ClearanceTo.Ground, true)] = [new(null, LimitIds.ClearanceFannedGround)],
        [(ClearanceTo.FacingSurface, true)] = [new(null, LimitIds.ClearanceFannedFacingSurface)],
        [(ClearanceTo.FacingTerminal, true)] = [new(null, LimitIds.ClearanceFannedFacingTerminal)],
        [(ClearanceTo.CarportOpening, true)] = [new(null, LimitIds.ClearanceFannedCarportOpening)],
        [(ClearanceTo.VerticalTerminal, true)] = [new(null, LimitIds.ClearanceFannedVerticalTerminal)],
        [(ClearanceTo.HorizontalTerminal, true)] = [new(null, LimitIds.ClearanceFannedHorizontalTerminal)],
        [(ClearanceTo.BelowOpening, true)] = [new(null, LimitIds.ClearanceFannedBelowOpening)],
        [(ClearanceTo.AboveOpening, true)] = [new(null, LimitIds.ClearanceFannedAboveOpening)],
        [(ClearanceTo.BesideOpening, true)] = [new(null, LimitIds.ClearanceFannedBesideOpening)],
        [(ClearanceTo.BelowGutter, false)] = [new(null, LimitIds.ClearanceNaturalBelowGutter)],
        [(ClearanceTo.BelowEaves, false)] = [new(null, LimitIds.ClearanceNaturalBelowEaves)],
        [(ClearanceTo.BelowBalcony, false)] = [new(null, LimitIds.ClearanceNaturalBelowBalcony)],
        [(ClearanceTo.VerticalPipe, false)] = [new(null, LimitIds.ClearanceNaturalVerticalPipe)],
        [(ClearanceTo.Corner, false)] = [new(null, LimitIds.ClearanceNaturalCorner)],
        [(ClearanceTo.BoundaryAlongside, false)] = [new(null, LimitIds.ClearanceNaturalBoundaryAlongside)],
        [(ClearanceTo.Ground, false)] = [new(null, LimitIds.ClearanceNaturalGround)],
        [(ClearanceTo.FacingSurface, false)] = [new(null, LimitIds.ClearanceNaturalFacingSurface)],
        [(ClearanceTo.FacingTerminal, false)] = [new(null, LimitIds.ClearanceNaturalFacingTerminal)],
        [(ClearanceTo.CarportOpening, false)] = [new(null, LimitIds.ClearanceNaturalCarportOpening)],
        [(ClearanceTo.VerticalTerminal, false)] = [new(null, LimitIds.ClearanceNaturalVerticalTerminal)],
        [(ClearanceTo.HorizontalTerminal, false)] = [new(null, LimitIds.ClearanceNaturalHorizontalTerminal)],
        [(ClearanceTo.BelowOpening, false)] = [new(7, LimitIds.ClearanceNaturalBelowOpeningTo7), new(14, LimitIds.ClearanceNaturalBelowOpeningTo14), new(32, LimitIds.ClearanceNaturalBelowOpeningTo32), new(null, LimitIds.ClearanceNaturalBelowOpeningOver32)],
        [(ClearanceTo.AboveOpening, false)] = [new(32, LimitIds.ClearanceNaturalAboveOpeningTo32), new(null, LimitIds.ClearanceNaturalAboveOpeningOver32)],
        [(ClearanceTo.BesideOpening, false)] = [new(7, LimitIds.ClearanceNaturalBesideOpeningTo7), new(14, LimitIds.ClearanceNaturalBesideOpeningTo14), new(null, LimitIds.ClearanceNaturalBesideOpeningOver14)],
    };

    /// <summary>Products that leave too near to it can come into a building.</summary>
    public static bool LeadsIntoABuilding(this ClearanceTo to) =>
        to is ClearanceTo.BelowOpening or ClearanceTo.AboveOpening or ClearanceTo.BesideOpening or ClearanceTo.CarportOpening;

    /// <summary>Does the distance to keep depend on the heat input?</summary>
    public static bool DependsOnInput(ClearanceTo to, bool isFanned) => Table[(to, isFanned)].Length > 1;

    /// <summary>Id of the limit. <paramref name="netKw"/> matters only where the distance depends on it.</summary>
    public static string LimitId(ClearanceTo to, bool isFanned, decimal netKw) =>
        Table[(to, isFanned)].First(line => line.UpToNetKw is not { } bound || netKw <= bound).LimitId;
}
