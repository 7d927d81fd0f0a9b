using Findings;
using Kernel;
using NRules.RuleModel;
using Records;
using Visits;

namespace Rules.Duties.Work;

/// <summary>A rule that infers from a record what was worked on. What the engineer states adds to it and takes nothing away.</summary>
public abstract class WorkRule : DutyRule
{
    /// <summary>The parts that this visit touched, each with what shows it.</summary>
    protected abstract IEnumerable<(TouchedPart Part, string Pointer, string Words)> TouchedAt(Visit visit);

    /// <inheritdoc />
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit);
        Then().Do(context => Infer(context, visit));
    }

    private void Infer(IContext context, Visit visit) =>
        context.InsertAll(TouchedAt(visit).Select(found => new Touched(found.Part, new DutyCause(found.Pointer, found.Words))));
}
