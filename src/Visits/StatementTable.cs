using System.Reflection;
using System.Runtime.CompilerServices;
using Findings;
using Kernel;
using Kernel.Catalogues;

namespace Visits;

/// <summary>The statements of one topic: every property that gives a <see cref="Statement"/> is a row, and bears the attributes of a rule.</summary>
public abstract class StatementTable : IRuleTable
{
    private const BindingFlags Any = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;

    /// <inheritdoc />
    public IEnumerable<FirstPassRule> Rows =>
        GetType().GetProperties(Any).Where(row => row.PropertyType == typeof(Statement)).Select(row => (Statement)row.GetValue(this, BindingFlags.DoNotWrapExceptions, null, null, null)!);

    /// <summary>The row that asks whether a member of the record is so.</summary>
    /// <param name="member">The member, as <c>visit => visit.Record.Flue?.SupportsOk</c>.</param>
    /// <param name="yes">What a yes shows: <see cref="Pass"/>, or where the yes is the fault <c>Advisory</c>, <c>Missing</c> or <c>Unsafe</c>.</param>
    /// <param name="no">What a no shows.</param>
    /// <param name="applies">Does it concern this visit? Null from it as from a rule's <c>Applies</c>; left out: it concerns every visit.</param>
    /// <param name="aboutItself">Is its finding about the member itself, and not about the section of the record in which the member stands?</param>
    /// <param name="row">The name of the property, from the compiler: its attributes are the row's.</param>
    /// <param name="expression">The text of <paramref name="member"/>, from the compiler.</param>
    /// <exception cref="CatalogueException">It is asked by something else than a property, which bears no attributes of a rule.</exception>
    protected Statement Ask(
        [NamesMember] Func<Visit, bool?> member, Reply yes, Reply no, Func<Visit, bool?>? applies = null, bool aboutItself = false,
        [CallerMemberName] string row = "", [CallerArgumentExpression(nameof(member))] string expression = "") =>
        new(
            GetType().GetProperty(row, Any) ?? throw new CatalogueException([$"the row of {GetType().Name} that {row} asks is no property"]),
            member, expression, aboutItself, applies, yes, no);

    /// <summary>The record shows what the rule demands.</summary>
    protected static Reply Pass(string sentence) => new(Outcome.Pass, sentence);

    /// <summary>Not as it should be, and no danger on its own.</summary>
    /// <param name="sentence">What the record shows.</param>
    /// <param name="warn">The caution: who can be hurt, and what to mind.</param>
    /// <param name="advise">The work that would put it right.</param>
    /// <param name="asks">What keeps the job open until it is answered, as JSON Pointers; left out: nothing.</param>
    protected static Reply Advisory(string sentence, string advise, string? warn = null, Func<Visit, IReadOnlyList<string>>? asks = null) =>
        new(Outcome.Advisory, sentence, warn, advise, asks: asks);

    /// <summary>As good as not said: the member is asked for again.</summary>
    /// <param name="sentence">What the record shows.</param>
    /// <param name="advise">The work that would put it right.</param>
    protected static Reply Missing(string sentence, string advise) => new(Outcome.Missing, sentence, remedy: advise);

    /// <summary>It cannot be left so: the member is asked for again until it says otherwise.</summary>
    /// <param name="sentence">What the record shows.</param>
    /// <param name="warn">The caution.</param>
    /// <param name="advise">The work that would put it right.</param>
    protected static Reply Missing(string sentence, string advise, string? warn = null) => new(Outcome.Missing, sentence, warn, advise);

    /// <summary>A danger.</summary>
    /// <param name="sentence">What the record shows.</param>
    /// <param name="warn">The caution.</param>
    /// <param name="advise">The remedy.</param>
    /// <param name="expected">The class that the trade's procedure would be expected to give.</param>
    protected static Reply Unsafe(string sentence, string warn, string advise, ExpectedClass expected = ExpectedClass.AtRisk) =>
        Unsafe(sentence, warn, advise, (_, _) => expected);

    /// <summary>A danger whose class hangs on what else the visit shows.</summary>
    /// <inheritdoc cref="Unsafe(string, string, string, ExpectedClass)" />
    protected static Reply Unsafe(string sentence, string warn, string advise, Func<Look, Visit, ExpectedClass> expected) =>
        new(Outcome.Unsafe, sentence, warn, advise, expected);
}
