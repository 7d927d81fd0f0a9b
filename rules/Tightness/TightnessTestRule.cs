using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

/// <summary>
/// A rule on each tightness test made after the work. Tests before the work never prove anything; a test that does not say when it
/// was made is asked. Where no gas joint was disturbed no test is demanded (<see cref="TightnessTestedAfterWorkRule"/>), and one that was
/// made is judged all the same.
/// </summary>
public abstract class TightnessTestRule : ComplianceRule<TightnessTest>
{
    protected override IEnumerable<Subject<TightnessTest>>? Subjects(Visit visit) =>
        visit.TestsAfterWork ?? (visit.GasJointsWereDisturbed == false ? [] : null);

    protected sealed override Verdict Assess(TightnessTest test, Visit visit, Look look) =>
        look.Lacks(test.Stage, out _) ? look.Missing() : Judge(test, visit, look);

    protected abstract Verdict Judge(TightnessTest test, Visit visit, Look look);

    /// <summary>What this rule says of the test at a pointer, one made after the work, for rules that rest on it.</summary>
    internal Verdict VerdictOn(string test, Visit visit) => visit.Judgements.ReliedOn(this).Single(answer => answer.Subject == test).Verdict;
}
