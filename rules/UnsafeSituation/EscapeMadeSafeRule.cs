using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.EscapeMadeSafe), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "37"), Cites("GSMR-1996", "7")]
[Description("After a known or suspected escape the gas is shut off and the emergency provider's reference recorded; carbon monoxide from an appliance counts")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class EscapeMadeSafeRule : VisitRule
{
    protected override string SubjectPointer => "/escape";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Escape?.Reported, out var isReported))
            return look.Missing();
        if (!isReported)
            return look.Pass($"no escape is known or suspected");

        look.Note(visit.Record.Escape?.ReportedAt);
        var isShut = look.Note(visit.Record.Escape?.GasIsolated) == true;
        var hasReference = look.Note(visit.Record.Escape?.Reference) is not null;
        if (isShut && hasReference)
            return look.Pass($"after an escape the gas was shut off and the emergency provider's reference is recorded");

        IReadOnlyList<string> open = [.. isShut ? Array.Empty<string>() : ["/escape/gasIsolated"], .. hasReference ? Array.Empty<string>() : ["/escape/reference"]];
        return look.Unsafe($"an escape is recorded, and {(isShut ? "no reference of the emergency provider" : hasReference ? "not that the gas was shut off" : "neither that the gas was shut off nor a reference of the emergency provider")} with it", ExpectedClass.ImmediatelyDangerous)
            .AndMissing(open).Warn(Cautions.EscapingGas).Advise("Shut the gas off, let air in, call the gas emergency provider, and record the reference.");
    }
}
