using Findings;
using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Operating pressure and heat input, and whether both are necessary.</summary>
internal static class Gas
{
    /// <summary>After a gas valve or an injector, which set how much gas burns. Common practice, no source.</summary>
    public static bool AreBothNecessary(Visit visit) => visit.HasPart(PartKind.GasValve, PartKind.Injector);

    public static bool IsPressureGood(Visit visit) => Examination.PressureExamined(visit.One)
        && OpinionTable.All["inlet-pressure"](visit.One).All(opinion => opinion.Outcome is Outcome.Pass or Outcome.Advisory);

    public static bool IsRateGood(Visit visit) => Examination.RateIsRight(visit.One) == true;

    /// <summary>A rate on record of which every figure is there.</summary>
    public static bool IsRateTaken(Visit visit) => Examination.HeatInputExamined(visit.One) || HeatInputOpinions.IsProperlyTimed(visit.One) is null or true && Examination.MeasuredKw(visit.One, InputBasis.Gross) is not null;

    /// <summary>A nipple was opened to read a pressure: the maker's own procedure needs none.</summary>
    public static bool IsNippleOpened(Visit visit) =>
        (Examination.PressureExamined(visit.One) && visit.Record.GasSupply!.PressureBy != PressureReadBy.MakersProcedure)
        || visit.Joints.Any(joint => joint.Place == JointPlace.TestNipple)
        || ((visit.IsService || visit.Record.JobType == JobType.LandlordCheck) && visit.Record.TightnessTests?.Count > 0);
}
