using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessEdition), Topic(Topics.Tightness), Cites("IGEM-UP-1B")]
[Title("A tightness test follows an edition of the standard that is in force on the day of the test")]
[Why("Test pressures, follow-up tests and permissible drops change from one edition of the standard to the next. Working to one that has been withdrawn can pass an installation that the edition in force would fail.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "the day of the test is held against the days of both editions")]
public sealed class TightnessEditionRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        look.Note(test.TestedOn);
        if (look.Lacks(test.Edition, out var edition))
            return look.Missing();
        if (!TightnessEditions.IsKnown(edition))
            return look.Missing($"'{edition}' is no edition known here, as edition 3 and edition 4 are", $"{look.Subject}/edition");

        var day = TightnessEditions.DayOf(test, visit);
        if (TightnessEditions.IsInForce(edition, day))
            return look.Pass($"edition {edition} was in force on {day}");

        FormattableString why = edition == TightnessEditions.Third
            ? (FormattableString)$"edition {edition} was withdrawn before the test of {day}"
            : $"edition {edition} was not yet published on {day}";
        return look.Advisory(why).Advise("Follow the edition in force on the day of the test.");
    }
}
