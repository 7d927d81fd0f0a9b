using Findings;
using Visits;

namespace Kernel.Tests.Misbehaving;

/// <summary>Rows that lack a part each.</summary>
[Topic(Topics.Flue)]
public sealed class MisbehavingStatements : StatementTable
{
    public Statement Bare => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Advisory("it does not hold", advise: "Mend it."));

    [Id("says-nothing"), Title("says nothing"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    public Statement SaysNothing => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass(" "), no: Advisory("", advise: "Mend it."));

    [Id("never-fails"), Title("passes yes and no"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    public Statement NeverFails => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Pass("it does not hold"));

    [Id("never-passes"), Title("finds fault with yes and no"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    public Statement NeverPasses => Ask(
        visit => visit.Record.Flue?.SupportsOk, yes: Advisory("it holds", advise: "Mend it."), no: Unsafe("it does not hold", warn: "", advise: ""));

    [Id("twin"), Title("has a twin"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    public Statement One => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Advisory("it does not hold", advise: "Mend it."));

    [Id("twin"), Title("has a twin"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    private Statement Other => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Advisory("it does not hold", advise: "Mend it."));
}

/// <summary>A table that does not say its topic.</summary>
public sealed class TopiclessStatements : StatementTable
{
    [Id("of-no-topic"), Title("has no topic"), Why("made up"), CommonPractice, Coverage(Coverage.Full, "made up")]
    public Statement Row => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Advisory("it does not hold", advise: "Mend it."));
}

/// <summary>A table that asks somewhere else than in the row itself.</summary>
public sealed class DetouringStatements : StatementTable
{
    public Statement Row => Detour();

    private Statement Detour() => Ask(visit => visit.Record.Flue?.SupportsOk, yes: Pass("it holds"), no: Advisory("it does not hold", advise: "Mend it."));
}
