using System.Linq.Expressions;
using System.Reflection;
using FluentValidation;
using Records.Faults;
using Records.Members;

namespace Records.Validation;

/// <summary>
/// Validates one section by what its members' attributes say, and each section in it by the validator of that type. A section whose
/// members limit each other has a validator of its own, derived from this one.
/// </summary>
/// <remarks>
/// Each demand is declared once and read in two ways: <see cref="IsSound"/> asks in a fraction of the time whether all of them are met,
/// and <c>Validate</c> names the faults where they are not. It must bear a record in pieces: a required member may be null or default
/// here, and a list may hold gaps.
/// </remarks>
/// <typeparam name="T">The type of the section.</typeparam>
public class SectionValidator<T> : AbstractValidator<T> where T : class
{
    private readonly List<Func<T, bool>> demands = [];

    /// <summary>Makes the rules from the attributes.</summary>
    public SectionValidator()
    {
        var members = RecordMembers.SectionOf(typeof(T)).Members;
        MemberCheck<T>[] checks = [.. members.Select(MemberChecks.Of<T>).OfType<MemberCheck<T>>()];
        demands.AddRange(checks.Select(check => check.IsMet));
        RuleFor(section => section).Custom((section, context) =>
        {
            foreach (var check in checks.Where(check => !check.IsMet(section)))
            {
                check.AddFaults(section, context);
            }
        });

        foreach (var member in members.Where(m => m.IsSection))
        {
            (member.IsList ? AddListMethod : AddSectionMethod).MakeGenericMethod(member.ClrType).Invoke(this, [member]);
        }
    }

    private static MethodInfo AddListMethod { get; } = Own(nameof(AddList));

    private static MethodInfo AddSectionMethod { get; } = Own(nameof(AddSection));

    /// <summary>Whether nothing is wrong with the section: exactly when <c>Validate</c> finds no fault.</summary>
    public bool IsSound(T section)
    {
        foreach (var isMet in demands)
        {
            if (!isMet(section))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Demands what members of the section owe each other.</summary>
    /// <param name="place">The member that is named where it is not met; the section that holds it may be absent.</param>
    /// <param name="isMet">Whether it is met.</param>
    /// <param name="code">One of <see cref="FaultCodes"/>.</param>
    /// <param name="detail">What is wrong.</param>
    protected void Demand<TValue>(Expression<Func<T, TValue>> place, Func<T, bool> isMet, string code, string detail)
    {
        var name = NameOf(place.Body);
        demands.Add(isMet);
        RuleFor(section => section).Custom((section, context) =>
        {
            if (!isMet(section))
            {
                context.AddFault(name, code, detail);
            }
        });
    }

    /// <summary>Demands something of each item of a list, which is named where it is not met.</summary>
    /// <param name="place">The list.</param>
    /// <param name="isMet">Whether it is met by an item, which may be a gap.</param>
    /// <param name="code">One of <see cref="FaultCodes"/>.</param>
    /// <param name="detail">What is wrong.</param>
    protected void DemandOfEach<TItem>(Expression<Func<T, IEnumerable<TItem?>?>> place, Func<T, TItem?, bool> isMet, string code, string detail)
        where TItem : class
    {
        var get = place.Compile();
        demands.Add(section => get(section) is not { } items || items.All(item => isMet(section, item)));
        RuleForEach(place).Must(isMet).WithErrorCode(code).WithMessage(detail);
    }

    /// <summary>C# names from the section to a member, such as <c>Appliance.Fuel</c>.</summary>
    private static string NameOf(Expression place) =>
        place is MemberExpression { Expression: MemberExpression outer } inner ? $"{NameOf(outer)}.{inner.Member.Name}" : ((MemberExpression)place).Member.Name;

    private static MethodInfo Own(string name) => typeof(SectionValidator<T>).GetMethod(name, BindingFlags.NonPublic | BindingFlags.Instance)!;

    private void AddList<TItem>(RecordMember member) where TItem : class
    {
        var validator = SectionValidators.New<TItem>();
        var get = MemberChecks.Getter<T, IReadOnlyList<TItem?>?>(member);
        demands.Add(section => get(section) is not { } items || items.All(item => item is null || validator.IsSound(item)));
        RuleForEach(Reach<IEnumerable<TItem>>(member)).SetValidator(validator);
    }

    private void AddSection<TSection>(RecordMember member) where TSection : class
    {
        var validator = SectionValidators.New<TSection>();
        var get = MemberChecks.Getter<T, TSection?>(member);
        demands.Add(section => get(section) is not { } inner || validator.IsSound(inner));
        RuleFor(Reach<TSection>(member)).SetValidator(validator);
    }

    private static Expression<Func<T, TValue>> Reach<TValue>(RecordMember member)
    {
        var section = Expression.Parameter(typeof(T));
        return Expression.Lambda<Func<T, TValue>>(Expression.Property(section, member.Property), section);
    }
}

/// <summary>Finds the validator of a section type: its own, or else the one made from attributes alone.</summary>
internal static class SectionValidators
{
    public static SectionValidator<T> New<T>() where T : class
    {
        var own = typeof(SectionValidators).Assembly.GetTypes().FirstOrDefault(t => t.BaseType == typeof(SectionValidator<T>));
        return (SectionValidator<T>)Activator.CreateInstance(own ?? typeof(SectionValidator<T>))!;
    }
}
